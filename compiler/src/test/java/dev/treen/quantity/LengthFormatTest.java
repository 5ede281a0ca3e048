package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.treen.quantity.LengthFormat.FractionalInches;
import dev.treen.quantity.LengthFormat.Metric;
import dev.treen.quantity.LengthFormat.Remainder;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthFormatTest {
    private static final LengthFormat TENTHS = new Metric(1);
    private static final LengthFormat FEET = new FractionalInches(16, true, Remainder.SILENT);

    @ParameterizedTest
    @CsvSource({"178, 178 mm", "86.3, 86.3 mm", "86.30, 86.3 mm", "0.05, 0.1 mm", "0.04, 0 mm", "-0.04, 0 mm",
            "-0.05, -0.1 mm", "100, 100 mm", "1200.96, 1201 mm"})
    void millimetresAreTrimmedAndNeverMinusZero(BigDecimal mm, String text) {
        assertThat(TENTHS.text(of(mm))).isEqualTo(text);
    }

    @Test
    void millimetresAgreeWithTheJavaLibrarysOwnRounding() {
        Random random = new Random(3);
        for (int i = 0; i < 3000; i++) {
            BigDecimal mm = new BigDecimal(random.nextInt(-2_000_000, 2_000_000)).movePointLeft(4);
            int places = random.nextInt(0, 5);
            BigDecimal expected = mm.setScale(places, RoundingMode.HALF_UP);
            LengthFormat format = new Metric(places);
            assertThat(new BigDecimal(format.figure(of(mm)))).isEqualByComparingTo(expected);
            assertThat(format.shown(of(mm))).isEqualTo(of(expected));
            assertThat(format.figure(of(mm))).doesNotMatch(".*\\..*0$").isNotEqualTo("-0");
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0 in", "1524, 5 ft", "304.8, 1 ft", "88.9, 3 1/2 in", "1612.9, 5 ft 3 1/2 in",
            "307.975, 1 ft 1/8 in", "-1612.9, -5 ft 3 1/2 in", "304.7, 1 ft"})
    void feetAndInches(BigDecimal mm, String text) {
        assertThat(FEET.text(of(mm))).isEqualTo(text);
    }

    @Test
    void aColumnHeadedInInchesHasNoFeet() {
        assertThat(FEET.figure(Length.ofInches(127, 2))).isEqualTo("63 1/2");
        assertThat(FEET.unit()).isEqualTo("in");
        assertThat(TENTHS.figure(Length.ofMm(9))).isEqualTo("9");
        assertThat(TENTHS.unit()).isEqualTo("mm");
    }

    @Test
    void fractionsAgreeWithRoundingDoneInWholeNumbers() {
        Random random = new Random(4);
        for (int i = 0; i < 3000; i++) {
            long tenths = random.nextInt(0, 60_000);
            int n = 1 << random.nextInt(7);
            long marks = (2 * tenths * n + 254) / (2 * 254); // half up, no fraction anywhere
            Length length = Length.ofMm(BigFraction.of(tenths, 10));
            assertThat(new FractionalInches(n).shown(length)).isEqualTo(Length.ofInches(marks, n));
        }
    }

    @Test
    void aTieGoesToTheMarkFurtherFromZero() {
        LengthFormat sixteenths = new FractionalInches(16);
        assertThat(sixteenths.text(Length.ofInches(5, 32))).isEqualTo("3/16 in");
        assertThat(sixteenths.text(Length.ofInches(-5, 32))).isEqualTo("-3/16 in");
    }

    @ParameterizedTest
    // Common practice, no source: what shops say of a metric size with only an inch rule at hand.
    @CsvSource({
            "60, 2, just under 2 1/2 in",
            "5, 4, just under 1/4 in",
            "25, 1, just under 1 in",
            "26, 1, just over 1 in",
            "38.1, 2, 1 1/2 in",
            "-60, 2, just under -2 1/2 in",
            "0.1, 16, just over 0 in"
    })
    void justUnderAndJustOver(BigDecimal mm, int denominator, String text) {
        assertThat(new FractionalInches(denominator, false, Remainder.JUST).text(of(mm))).isEqualTo(text);
    }

    @Test
    void heavyAndLightBeginBeyondAnEighthOfADivision() {
        // Common practice, no source; the threshold is Treen's own.
        LengthFormat format = new FractionalInches(16, false, Remainder.HEAVY_LIGHT);
        Length inch = Length.INCH;
        Length eighth = Length.ofInches(1, 128);
        Length hair = Length.ofMm(BigFraction.of(1, 1000));
        assertThat(format.text(inch.plus(eighth))).isEqualTo("1 in");
        assertThat(format.text(inch.minus(eighth))).isEqualTo("1 in");
        assertThat(format.text(inch.plus(eighth).plus(hair))).isEqualTo("1 in heavy");
        assertThat(format.figure(inch.minus(eighth).minus(hair))).isEqualTo("1 light");
        assertThat(format.text(inch.plus(eighth).plus(hair).negate())).isEqualTo("-1 in heavy");
    }

    @Test
    void aSignStandsBehindTheFigureForTheSame() {
        LengthFormat format = new FractionalInches(16, true, Remainder.SIGN);
        Length more = Length.ofInches(1, 64);
        assertThat(format.text(Length.INCH)).isEqualTo("1 in");
        assertThat(format.text(Length.INCH.plus(more))).isEqualTo("1+ in");
        assertThat(format.figure(Length.ofInches(7, 8).minus(more))).isEqualTo("7/8-");
        assertThat(format.text(Length.FOOT.plus(more))).isEqualTo("1+ ft");
        assertThat(format.text(Length.FOOT.plus(Length.INCH).minus(more))).isEqualTo("1 ft 1- in");
        assertThat(format.text(Length.INCH.plus(more).negate())).isEqualTo("-1+ in");
    }

    @Test
    void theRoundingLossIsTold() {
        assertThat(LengthFormat.millimetres().loss(Length.ofInches(1, 64)).mm())
                .isEqualTo(BigFraction.of(4, 10).subtract(BigFraction.of(254, 640)));
        assertThat(LengthFormat.inches().loss(Length.ofInches(7, 32)).isZero()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 10, 128, -16, Integer.MIN_VALUE})
    void noRuleIsDividedSo(int denominator) {
        assertThatThrownBy(() -> new FractionalInches(denominator)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void placesHaveBounds() {
        assertThatThrownBy(() -> new Metric(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Metric(7)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Length of(BigDecimal mm) {
        return LengthText.read(mm.toPlainString(), Unit.MM).found().orElseThrow();
    }
}
