package dev.treen.quantity;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
    @ParameterizedTest
    @CsvSource({"9, 9, 1", "2.5, 5, 2", "0.1, 1, 10", "-0.4, -2, 5", "007, 7, 1", "1.250, 5, 4", "-0, 0, 1"})
    void decimalsAreReadExactly(String text, long numerator, long denominator) {
        assertThat(NumberText.decimal(text).found()).contains(BigFraction.of(numerator, denominator));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", ".5", "5.", "1..2", "1.2.3", "1_000", "1e3", "0x10", "+1", "--1", " 1", "1 ",
            "٣",
            "２", "NaN", "½", "1/2"})
    void whatIsNotANumberIsRefused(String text) {
        assertThat(NumberText.decimal(text).refusal().map(Refusal::kind)).contains(Refusal.Kind.NOT_A_NUMBER);
    }

    @Test
    void aDecimalCommaIsExplained() {
        assertThat(NumberText.decimal("2,5").refusal().map(Refusal::text))
                .contains("\"2,5\" is not a number; write the decimal point as a point");
    }

    @Test
    void thirtyDigitsAreReadAndMoreAreNot() {
        assertThat(NumberText.decimal("1".repeat(15) + "." + "1".repeat(15)).found()).isPresent();
        assertThat(NumberText.decimal("1".repeat(31)).refusal().map(Refusal::kind)).contains(Refusal.Kind.TOO_LONG);
        assertThat(NumberText.fraction("1", "9".repeat(1000)).refusal().map(Refusal::kind))
                .contains(Refusal.Kind.TOO_LONG);
    }

    @Test
    void aHugeNumberIsCheapToRefuseAndItsMessageStaysALine() {
        String huge = "9".repeat(20_000_000);
        String junk = "x".repeat(20_000_000);
        assertTimeoutPreemptively(ofSeconds(5), () -> {
            for (int i = 0; i < 1000; i++) {
                assertThat(NumberText.decimal(huge).refusal()).isPresent();
                assertThat(NumberText.decimal(junk).refusal().orElseThrow().text()).hasSizeLessThan(60);
            }
        });
    }

    @Test
    void fractionsAndMixedNumbers() {
        assertThat(NumberText.fraction("3", "8").found()).contains(BigFraction.of(3, 8));
        assertThat(NumberText.mixed("2", "3", "8").found()).contains(BigFraction.of(19, 8));
        assertThat(NumberText.fraction("3", "0").refusal().map(Refusal::kind))
                .contains(Refusal.Kind.DIVISION_BY_ZERO);
        assertThat(NumberText.fraction("3", "-8").found()).isEmpty();
        assertThat(NumberText.mixed("2.5", "3", "8").found()).isEmpty();
    }
}
