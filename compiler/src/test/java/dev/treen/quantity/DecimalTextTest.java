package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalTextTest {
    @ParameterizedTest
    @CsvSource({"1, 3, 2, 0.33", "2, 3, 2, 0.67", "1, 8, 2, 0.13", "-1, 8, 2, -0.13", "-1, 1000, 2, 0", "5, 1, 2, 5",
            "1000, 1, 0, 1000", "1, 2, 0, 1"})
    void upToSoManyPlaces(long numerator, long denominator, int places, String text) {
        assertThat(DecimalText.write(BigFraction.of(numerator, denominator), places)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"1, 64, 0.015625", "1, 3, 1/3", "-7, 6, -7/6", "12, 1, 12", "1, 5, 0.2", "-1, 40, -0.025", "0, 1, 0"})
    void theWholeNumberIsADecimalOnlyIfThatHasAnEnd(long numerator, long denominator, String text) {
        assertThat(DecimalText.exact(BigFraction.of(numerator, denominator))).isEqualTo(text);
    }

    @Test
    void percentDegreesTemperatureAndMoney() {
        assertThat(DecimalText.percent(BigFraction.of(1, 8), 1)).isEqualTo("12.5%");
        assertThat(DecimalText.degrees(BigFraction.of(57, 8), 2)).isEqualTo("7.13°");
        assertThat(DecimalText.celsius(BigFraction.of(-43, 2), 1)).isEqualTo("-21.5 °C");
        assertThat(DecimalText.fixed(BigFraction.of(5, 2), 2)).isEqualTo("2.50");
        assertThat(DecimalText.fixed(BigFraction.of(-1, 1000), 2)).isEqualTo("0.00");
    }

    @Test
    void floatingNumbersAreWrittenToo() {
        assertThat(DecimalText.write(0.1 + 0.2, 2)).isEqualTo("0.3");
        assertThat(DecimalText.write(-0.0, 2)).isEqualTo("0");
        assertThatThrownBy(() -> DecimalText.write(Double.NaN, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DecimalText.write(BigFraction.ONE, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
