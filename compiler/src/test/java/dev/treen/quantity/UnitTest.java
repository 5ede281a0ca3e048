package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {
    @ParameterizedTest
    @EnumSource
    void everySpellingIsFoundAndGoesBothWays(Unit unit) {
        assertThat(unit.spellings()).allSatisfy(s -> assertThat(Unit.spelled(s)).contains(unit));
        for (BigFraction number : List.of(BigFraction.of(-40), BigFraction.ZERO, BigFraction.of(7, 3))) {
            assertThat(unit.in(unit.of(number))).contains(number);
        }
        assertThat(unit.of(BigFraction.ONE).dimension()).isEqualTo(unit.dimension());
    }

    @Test
    void noSpellingBelongsToTwoUnits() {
        List<String> all = Arrays.stream(Unit.values()).flatMap(unit -> unit.spellings().stream()).toList();
        assertThat(all).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({
            // Boiling, freezing and the point where the scales meet: the definition of the Fahrenheit scale.
            "212, 100", "32, 0", "-40, -40", "68, 20"
    })
    void fahrenheitHasAZeroOfItsOwn(int fahrenheit, int celsius) {
        assertThat(Unit.DEGF.of(BigFraction.of(fahrenheit))).isEqualTo(Unit.DEGC.of(BigFraction.of(celsius)));
    }

    @Test
    void poundsOuncesAndTimes() {
        // A pound is 453.59237 g and sixteen ounces: international yard and pound agreement, 1959.
        assertThat(Unit.LB.of(BigFraction.ONE).amount()).isEqualTo(BigFraction.of(45_359_237, 100_000));
        assertThat(Unit.OZ.of(BigFraction.of(16))).isEqualTo(Unit.LB.of(BigFraction.ONE));
        assertThat(Unit.DAY.of(BigFraction.ONE)).isEqualTo(Unit.H.of(BigFraction.of(24)));
        assertThat(Unit.PERCENT.of(BigFraction.of(50))).isEqualTo(Quantity.number(BigFraction.of(1, 2)));
        assertThat(Unit.MM.in(Quantity.number(1))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
            "inch, in", "inches, in", "MM, mm", "millimetres, mm", "feet, ft", "degrees, deg", "Lbs, lb", "hrs, h",
            "days, day", "celsius, degC", "mn, mm", "ktg, kg", "degK, degC", "cmm, cm", "tf, ft"
    })
    void aNearMissIsAnsweredWithAUnit(String typed, String meant) {
        assertThat(Unit.spelled(typed)).isEmpty();
        assertThat(Unit.suggestions(typed)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "furlong", "xyz", "s", "\"\"\"", "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"})
    void aFarMissIsNotGuessedAt(String typed) {
        assertThat(Unit.suggestions(typed)).isEmpty();
    }
}
