package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class LengthTest {
    private static final Length TENTH = Length.ofMm(BigFraction.of(1, 10));

    @Test
    void anInchIsTwentyFivePointFourMillimetres() {
        // International yard and pound agreement, 1959: exact by definition.
        assertThat(Length.ofInches(1, 1).mm()).isEqualTo(BigFraction.of(254, 10));
        assertThat(Length.FOOT.mm()).isEqualTo(BigFraction.of(3048, 10));
        assertThat(Length.ofInches(19, 8).mm()).isEqualTo(BigFraction.of(60_325, 1000));
    }

    @Test
    void thirdsAndSixtyFourthsComeOutWhole() {
        Length third = Length.ofInches(10, 1).dividedBy(3);
        assertThat(third.plus(third).plus(third)).isEqualTo(Length.ofInches(10, 1));
        Length sum = Length.ZERO;
        for (int i = 0; i < 64; i++) {
            sum = sum.plus(Length.ofInches(1, 64));
        }
        assertThat(sum).isEqualTo(Length.INCH);
    }

    @Test
    void equalLengthsAreEqualRecordsHoweverTheyCameAbout() {
        Length below = Length.ofMm(BigFraction.of(3, -2));
        Length above = Length.ofMm(BigFraction.of(-6, 4));
        assertThat(below).isEqualTo(above).hasSameHashCodeAs(above).hasToString("-1.5 mm");
        assertThat(below.mm().getDenominator().signum()).isEqualTo(1);
        assertThat(Length.ofMm(-3).dividedBy(-2)).isEqualTo(above.negate());
    }

    @Test
    void arithmeticObeysTheLawsOfArithmetic() {
        Random random = new Random(20260101);
        for (int i = 0; i < 500; i++) {
            Length a = any(random);
            Length b = any(random);
            BigFraction k = any(random).mm();
            assertThat(a.plus(b).minus(b)).isEqualTo(a);
            assertThat(a.plus(b).times(k)).isEqualTo(a.times(k).plus(b.times(k)));
            assertThat(a.plus(a.negate())).isEqualTo(Length.ZERO);
            assertThat(a.min(b).plus(a.max(b))).isEqualTo(a.plus(b));
            assertThat(a.compareTo(b)).isEqualTo(a.minus(b).signum());
            if (!b.isZero()) {
                assertThat(b.times(a.ratioTo(b))).isEqualTo(a);
            }
        }
    }

    @Test
    void roundingUpAndDownEncloseTheLength() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Length a = any(random);
            Length step = any(random).abs().plus(TENTH);
            Length down = a.roundDownTo(step);
            Length up = a.roundUpTo(step);
            assertThat(down).isLessThanOrEqualTo(a);
            assertThat(up).isGreaterThanOrEqualTo(a);
            assertThat(up.minus(down)).isIn(Length.ZERO, step);
            assertThat(a.roundTo(step)).isIn(down, up);
            assertThat(a.minus(a.roundTo(step)).abs().times(2)).isLessThanOrEqualTo(step);
            assertThat(a.negate().roundTo(step)).isEqualTo(a.roundTo(step).negate());
        }
    }

    @Test
    void tiesGoAwayFromZero() {
        Length half = Length.ofMm(BigFraction.of(1, 2));
        assertThat(half.roundTo(Length.ofMm(1))).isEqualTo(Length.ofMm(1));
        assertThat(half.negate().roundTo(Length.ofMm(1))).isEqualTo(Length.ofMm(-1));
    }

    @Test
    void aStepThatIsNotAboveZeroIsTheProgramsMistake() {
        assertThatThrownBy(() -> Length.INCH.roundTo(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.INCH.roundUpTo(TENTH.negate())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.nearest(1, Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aNaturalNumberComesBackToAnExactStep() {
        assertThat(Length.nearest(0.1 + 0.2, TENTH)).isEqualTo(Length.ofMm(BigFraction.of(3, 10)));
        assertThat(Length.nearest(-0.0, TENTH)).isEqualTo(Length.ZERO);
        assertThat(Length.nearest(Double.MIN_VALUE, TENTH)).isEqualTo(Length.ZERO);
        for (double bad : new double[]{Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Length.nearest(bad, TENTH)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    static Length any(Random random) {
        return Length.ofMm(BigFraction.of(random.nextInt(-100_000, 100_000), random.nextInt(1, 1000)));
    }
}
