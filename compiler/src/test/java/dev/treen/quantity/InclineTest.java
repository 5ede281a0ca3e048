package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InclineTest {
    @ParameterizedTest
    // Arctangents to four places; from memory of any four-figure table, and 1:1 by geometry.
    @CsvSource({"1, 8, 7.1250", "1, 6, 9.4623", "1, 1, 45.0000", "0, 5, 0"})
    void aSlopeStandsForAnAngle(long rise, long run, double degrees) {
        Slope slope = Slope.of(rise, run);
        assertThat(slope.toDoubleDegrees()).isCloseTo(degrees, within(5e-5));
        assertThat(slope.toAngle().toDoubleTangent()).isCloseTo(slope.toDoubleTangent(), within(2e-6));
    }

    @Test
    void aSlopeIsSetOutExactly() {
        assertThat(Slope.of(1, 8).over(Length.ofMm(9))).isEqualTo(Length.ofMm(BigFraction.of(9, 8)));
        assertThat(Slope.of(2, 16)).isEqualTo(Slope.of(1, 8));
        assertThat(Slope.of(1, 8)).isLessThan(Slope.of(1, 6));
        assertThat(Slope.of(4, 30).text()).isEqualTo("2:15");
    }

    @Test
    void whatIsNoSlopeIsRefused() {
        assertThat(Slope.of(BigFraction.ONE, BigFraction.ZERO).refusal().map(Refusal::kind))
                .contains(Refusal.Kind.DIVISION_BY_ZERO);
        assertThat(Slope.of(BigFraction.ONE, BigFraction.of(-8)).found()).isEmpty();
        assertThat(Slope.of(BigFraction.of(1, 2), BigFraction.of(4)).found()).contains(Slope.of(1, 8));
        assertThatThrownBy(() -> Slope.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Slope.of(-1, 8)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anglesAddUpExactly() {
        Angle third = Angle.RIGHT.times(BigFraction.of(1, 7));
        assertThat(third.times(BigFraction.of(7))).isEqualTo(Angle.RIGHT);
        assertThat(Angle.ofDegrees(30).complement()).isEqualTo(Angle.ofDegrees(60));
        assertThat(Angle.ofDegrees(30).plus(Angle.ofDegrees(15)).toDoubleTangent()).isCloseTo(1, within(1e-12));
        assertThat(Angle.ofDegrees(10).minus(Angle.ofDegrees(20)).signum()).isEqualTo(-1);
        assertThat(new Angle(BigFraction.of(15, 2)).text()).isEqualTo("7.5°");
        assertThat(Angle.nearest(7.1250163, BigFraction.of(1, 8))).isEqualTo(new Angle(BigFraction.of(57, 8)));
        assertThatThrownBy(() -> Angle.nearest(Double.NaN, BigFraction.ONE))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
