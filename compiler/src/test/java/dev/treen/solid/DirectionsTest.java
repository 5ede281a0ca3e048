package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rational directions against the sines of the Java library. */
class DirectionsTest {

    @Test
    void lieOnTheCircleAndNearTheAngle() {
        Random random = new Random(9);
        for (int i = 0; i < 2000; i++) {
            double angle = i < 1500 ? (i - 750) / 2.0 : random.nextDouble() * 720 - 360;
            Vec2 found = Directions.rational(angle);
            assertThat(found.inner(found)).isEqualTo(Rat.ONE);
            double off = Math.atan2(found.v.toDouble(), found.u.toDouble()) - Math.toRadians(angle);
            assertThat(Math.IEEEremainder(off, 2 * Math.PI)).isCloseTo(0, within(Directions.ERROR_RADIANS));
            assertThat(found.u.denominator().bitLength()).isLessThanOrEqualTo(32);
        }
    }

    @Test
    void quartersAreExact() {
        assertThat(Directions.rational(0)).isEqualTo(Vec2.of(whole(1), whole(0)));
        assertThat(Directions.rational(90)).isEqualTo(Vec2.of(whole(0), whole(1)));
        assertThat(Directions.rational(180)).isEqualTo(Vec2.of(whole(-1), whole(0)));
        assertThat(Directions.rational(-90)).isEqualTo(Vec2.of(whole(0), whole(-1)));
        for (Axis axis : Axis.values()) {
            assertThat(Turn.about(axis, Directions.rational(90))).isEqualTo(Turn.quarter(axis, 1));
            assertThat(Turn.quarter(axis, 1).then(Turn.quarter(axis, 3))).isEqualTo(Turn.NONE);
        }
        assertThat(Turn.quarter(Axis.Z, 1).apply(at(1, 0, 0))).isEqualTo(at(0, 1, 0));
    }

    @Test
    void anyTurnKeepsVolume() {
        Turn turn = Turn.about(Axis.X, Directions.rational(15)).then(Turn.about(Axis.Z, Directions.rational(37.5)));
        Convex box = Numbers.cutter(0, 0, 0, 30, 20, 10);
        assertThat(box.turn(turn).volume()).isEqualTo(whole(6000));
        assertThat(box.turn(turn).turn(turn.inverse())).isEqualTo(box);
    }
}
