package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
    private static final LengthFormat MM = LengthFormat.millimetres();
    private static final LengthFormat IN = LengthFormat.inches();

    @ParameterizedTest
    @CsvSource({
            "NUMBER, 1, 0.3333", "LENGTH, 258.9, 86.3 mm", "AREA, 378000, 0.126 m²", "VOLUME, 3000000, 1 L",
            "ANGLE, 22.5, 7.5°", "TEMPERATURE, 63, 21 °C", "MASS, 750, 250 g", "MASS, 3750, 1.25 kg",
            "DURATION, 4320, 1 d", "DURATION, 8865, 2 d 1 h 15 min", "DURATION, 0, 0 min",
            "DURATION, -270, -1 h 30 min",
            "MONEY, 37.5, 12.50"
    })
    void aThirdOfEachIsWrittenInUnitsThatSuit(Dimension dimension, String tripled, String text) {
        BigFraction amount = NumberText.decimal(tripled).found().orElseThrow().divide(3);
        assertThat(QuantityText.write(new Quantity(amount, dimension), MM)).isEqualTo(text);
    }

    @Test
    void areasAndVolumesFollowTheLengthsIntoFeet() {
        Size board = new Size(Length.FOOT, Length.FOOT, Length.INCH);
        assertThat(QuantityText.write(board.faceArea(), IN)).isEqualTo("1 ft²");
        assertThat(QuantityText.write(board.volume(), IN)).isEqualTo("1 board ft");
        QuantityRange range = new QuantityRange(Quantity.of(Length.ofMm(6)), Quantity.of(Length.ofMm(9)));
        assertThat(QuantityText.write(range, MM)).isEqualTo("6 mm .. 9 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "de-DE", "th-TH-u-nu-thai"})
    void theMachinesLocaleChangesNothing(String tag) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(tag));
        try {
            Length length = LengthText.read("1234.5 mm", Unit.MM).found().orElseThrow();
            assertThat(QuantityText.write(Quantity.of(length), MM)).isEqualTo("1234.5 mm");
            assertThat(QuantityText.write(Quantity.of(length), IN)).isEqualTo("48 19/32+ in");
            assertThat(DecimalText.percent(BigFraction.of(1, 8), 1)).isEqualTo("12.5%");
            assertThat(DecimalText.exact(BigFraction.of(4, 3))).isEqualTo("4/3");
            assertThat(Unit.suggestions("INCH")).containsExactly("in");
            assertThat(Unit.suggestions("MIN")).containsExactly("min");
            assertThat(NumberText.decimal("1".repeat(31)).refusal().orElseThrow().text()).contains("30 digits");
        } finally {
            Locale.setDefault(before);
        }
    }
}
