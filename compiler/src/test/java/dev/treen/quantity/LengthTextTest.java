package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.treen.quantity.LengthFormat.FractionalInches;
import dev.treen.quantity.LengthFormat.Metric;
import dev.treen.quantity.LengthFormat.Remainder;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {
    @ParameterizedTest
    @CsvSource({
            "9, 9, 1", "9mm, 9, 1", "9 mm, 9, 1", "1.2m, 1200, 1", "2.5 cm, 25, 1", "3/4in, 381, 20",
            "2 3/8in, 2413, 40", "2  3/8   in, 2413, 40", "5ft 3 1/2in, 16129, 10", "5 ft, 1524, 1",
            "5ft 0.5in, 15367, 10",
            "-2 3/8 in, -2413, 40", "1/3, 1, 3", "1/3 m, 1000, 3"
    })
    void lengthsAreReadAsPeopleWriteThem(String text, long numerator, long denominator) {
        assertThat(LengthText.read(text, Unit.MM).found())
                .contains(Length.ofMm(BigFraction.of(numerator, denominator)));
    }

    @Test
    void aBareNumberTakesTheUnitOfTheProject() {
        assertThat(LengthText.read("2 3/8", Unit.IN).found()).contains(Length.ofInches(19, 8));
        assertThatThrownBy(() -> LengthText.read("2", Unit.KG)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
            "'', NOT_A_NUMBER", "in, NOT_A_NUMBER", "3/, NOT_A_NUMBER", "2 3 in, NOT_A_NUMBER",
            "1 2 3/8in, NOT_A_NUMBER",
            "3/0in, DIVISION_BY_ZERO", "3kg, UNKNOWN_UNIT", "3 inch, UNKNOWN_UNIT", "5ft 3, UNKNOWN_UNIT",
            "5ft 3mm, UNKNOWN_UNIT", "1234567890123456789012345678901mm, TOO_LONG"
    })
    void whatIsNotALengthIsRefusedWithAReason(String text, Refusal.Kind kind) {
        assertThat(LengthText.read(text, Unit.MM).refusal().map(Refusal::kind)).contains(kind);
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", " ", "1/", "x", "1 1/1ft "})
    void aPageInPlaceOfALengthIsRefusedAtOnce(String piece) {
        assertThat(LengthText.read(piece.repeat(100_000) + ".", Unit.MM).found()).isEmpty();
    }

    @Test
    void everySixtyFourthOfAnInchSurvivesTheRoundTrip() {
        LengthFormat plain = new FractionalInches(64);
        LengthFormat withFeet = new FractionalInches(64, true, Remainder.HEAVY_LIGHT);
        for (int n = 0; n <= 6400; n++) {
            Length length = Length.ofInches(n, 64);
            assertThat(roundTrip(length, plain)).isEqualTo(length);
            assertThat(roundTrip(length, withFeet)).isEqualTo(length);
            assertThat(plain.loss(length).isZero()).isTrue();
        }
    }

    @Test
    void everyThousandthOfAMillimetreSurvivesTheRoundTrip() {
        LengthFormat format = new Metric(3);
        Random random = new Random(64);
        for (int i = 0; i < 5000; i++) {
            Length length = Length.ofMm(BigFraction.of(random.nextInt(-3_000_000, 3_000_000), 1000));
            assertThat(roundTrip(length, format)).isEqualTo(length);
        }
    }

    private static Length roundTrip(Length length, LengthFormat format) {
        String text = format.text(length);
        Length back = LengthText.read(text, Unit.M).found().orElseThrow();
        assertThat(format.text(back)).isEqualTo(text);
        return back;
    }
}
