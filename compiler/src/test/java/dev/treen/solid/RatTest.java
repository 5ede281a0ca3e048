package dev.treen.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The short fractions against commons-numbers' BigFraction, which never leaves the long path. */
class RatTest {

    private static long any(Random random) {
        long bits = random.nextLong() >> random.nextInt(63);
        return random.nextInt(20) == 0 ? Long.MIN_VALUE + random.nextInt(3) : bits;
    }

    private static BigFraction fraction(long num, long den) {
        return BigFraction.of(BigInteger.valueOf(num), BigInteger.valueOf(den));
    }

    @Test
    void agreesWithBigFractionUpToTheBrinkOfOverflow() {
        Random random = new Random(20);
        for (int round = 0; round < 4_000; round++) {
            long an = any(random);
            long ad = any(random) | 1;
            long bn = any(random);
            long bd = any(random) | 1;
            Rat a = Rat.of(an, ad);
            Rat b = Rat.of(bn, bd);
            BigFraction fa = fraction(an, ad);
            BigFraction fb = fraction(bn, bd);
            same(a, fa);
            same(a.plus(b), fa.add(fb));
            same(a.minus(b), fa.subtract(fb));
            same(a.times(b), fa.multiply(fb));
            same(a.negate(), fa.negate());
            if (!b.isZero()) {
                same(a.dividedBy(b), fa.divide(fb));
            }
            assertThat(Integer.signum(a.compareTo(b))).isEqualTo(fa.subtract(fb).signum());
            assertThat(a.signum()).isEqualTo(fa.signum());
        }
    }

    private static void same(Rat value, BigFraction expected) {
        assertThat(value.toFraction()).isEqualTo(expected);
        assertThat(value).isEqualTo(Rat.of(expected)).hasSameHashCodeAs(Rat.of(expected));
        assertThat(BigFraction.from(value.lower()).subtract(expected).signum()).isLessThanOrEqualTo(0);
        assertThat(BigFraction.from(value.upper()).subtract(expected).signum()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void primitiveFactorClearsDenominatorsAndDivisors() {
        assertThat(Rat.primitiveFactor(Rat.of(3, 4), Rat.of(-9, 2), Rat.ZERO)).isEqualTo(Rat.of(4, 3));
        assertThat(Rat.primitiveFactor(Rat.of(6), Rat.of(-9), Rat.of(15))).isEqualTo(Rat.of(1, 3));
    }
}
