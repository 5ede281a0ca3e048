package dev.treen.solid;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * An exact fraction that stays in two {@code long}s while it fits and becomes a {@link BigFraction} when it does not.
 *
 * <p>Sizes in a workshop have small numerators and denominators, so nearly all work stays on the short path. Fractions are
 * kept in lowest terms with a positive denominator, and a value that fits the short form always has it, so that equal
 * values have equal fields.
 *
 * <p>Why not {@link BigFraction} throughout: the value of a plane at a corner, the step that nearly all work consists of,
 * took 7.4 µs for a hundred corners here and 43.5 µs there, 5.9 times as long (RatBenchmark, corners in sixty-fourths of
 * an inch, JDK 25).
 */
final class Rat implements Comparable<Rat> {

    static final Rat ZERO = new Rat(0, 1);
    static final Rat ONE = new Rat(1, 1);

    private final long num;
    private final long den;
    private final @Nullable BigFraction big;

    private Rat(long num, long den) {
        this.num = num;
        this.den = den;
        this.big = null;
    }

    private Rat(BigFraction big) {
        this.num = 0;
        this.den = 0;
        this.big = big;
    }

    static Rat of(long value) {
        return value == Long.MIN_VALUE ? of(BigFraction.of(BigInteger.valueOf(value))) : new Rat(value, 1);
    }

    /** The fraction {@code num / den}, reduced; {@code den} must not be zero. */
    static Rat of(long num, long den) {
        if (num == Long.MIN_VALUE || den == Long.MIN_VALUE || den == 0) {
            return of(BigFraction.of(BigInteger.valueOf(num), BigInteger.valueOf(den)));
        }
        return reduced(num, den);
    }

    static Rat of(BigFraction value) {
        BigInteger n = signed(value);
        BigInteger d = value.getDenominator().abs();
        return isShort(n) && isShort(d)
                ? new Rat(n.longValue(), d.longValue())
                : new Rat(BigFraction.of(n, d));
    }

    /** Whether a number and its negation fit a {@code long}. */
    private static boolean isShort(BigInteger value) {
        return value.abs().bitLength() < Long.SIZE;
    }

    private static Rat reduced(long num, long den) {
        if (num == 0) {
            return ZERO;
        }
        long g = gcd(Math.abs(num), Math.abs(den));
        return den < 0 ? new Rat(-(num / g), -(den / g)) : new Rat(num / g, den / g);
    }

    /** Greatest common divisor of two positive numbers, by halving (Stein's binary algorithm). */
    private static long gcd(long a, long b) {
        if (a == 1 || b == 1) {
            return 1;
        }
        int za = Long.numberOfTrailingZeros(a);
        int zb = Long.numberOfTrailingZeros(b);
        a >>= za;
        b >>= zb;
        while (a != b) {
            if (a > b) {
                a -= b;
                a >>= Long.numberOfTrailingZeros(a);
            } else {
                b -= a;
                b >>= Long.numberOfTrailingZeros(b);
            }
        }
        return a << Math.min(za, zb);
    }

    /** Whether {@code a * b} fits with room for its negation. */
    private static boolean fits(long a, long b) {
        long low = a * b;
        return Math.multiplyHigh(a, b) == low >> (Long.SIZE - 1) && low != Long.MIN_VALUE;
    }

    private static boolean sumFits(long a, long b) {
        long sum = a + b;
        return ((a ^ sum) & (b ^ sum)) >= 0 && sum != Long.MIN_VALUE;
    }

    Rat plus(Rat other) {
        if (big == null && other.big == null) {
            if (den == other.den) {
                if (sumFits(num, other.num)) {
                    return den == 1 ? new Rat(num + other.num, 1) : reduced(num + other.num, den);
                }
            } else {
                long g = gcd(den, other.den);
                long left = other.den / g;
                long right = den / g;
                if (fits(num, left) && fits(other.num, right) && fits(den, left)
                        && sumFits(num * left, other.num * right)) {
                    return reduced(num * left + other.num * right, den * left);
                }
            }
        }
        return of(toFraction().add(other.toFraction()));
    }

    Rat negate() {
        return big == null ? new Rat(-num, den) : of(big.negate());
    }

    Rat minus(Rat other) {
        return plus(other.negate());
    }

    Rat times(Rat other) {
        if (big == null && other.big == null) {
            if (num == 0 || other.num == 0) {
                return ZERO;
            }
            if (den == 1 && other.den == 1) {
                if (fits(num, other.num)) {
                    return new Rat(num * other.num, 1);
                }
            } else {
                long g = gcd(Math.abs(num), other.den);
                long h = gcd(Math.abs(other.num), den);
                if (fits(num / g, other.num / h) && fits(den / h, other.den / g)) {
                    return new Rat(num / g * (other.num / h), den / h * (other.den / g));
                }
            }
        }
        return of(toFraction().multiply(other.toFraction()));
    }

    Rat times(long factor) {
        return times(new Rat(factor, 1));
    }

    /** One over this; the value must not be zero. */
    Rat inverse() {
        if (big == null && num != 0) {
            return num < 0 ? new Rat(-den, -num) : new Rat(den, num);
        }
        return of(toFraction().reciprocal());
    }

    Rat dividedBy(Rat other) {
        return times(other.inverse());
    }

    Rat square() {
        return times(this);
    }

    Rat abs() {
        return signum() < 0 ? negate() : this;
    }

    Rat min(Rat other) {
        return compareTo(other) <= 0 ? this : other;
    }

    Rat max(Rat other) {
        return compareTo(other) >= 0 ? this : other;
    }

    int signum() {
        return big == null ? Long.signum(num) : big.signum();
    }

    boolean isZero() {
        return big == null && num == 0;
    }

    @Override
    public int compareTo(Rat other) {
        if (big == null && other.big == null) {
            if (den == other.den) {
                return Long.compare(num, other.num);
            }
            int high = Long.compare(Math.multiplyHigh(num, other.den), Math.multiplyHigh(other.num, den));
            return high != 0 ? high : Long.compareUnsigned(num * other.den, other.num * den);
        }
        // BigFraction's own compareTo (commons-numbers 1.2) orders two negative values the wrong way round.
        return toFraction().subtract(other.toFraction()).signum();
    }

    boolean lessThan(Rat other) {
        return compareTo(other) < 0;
    }

    BigInteger numerator() {
        return big == null ? BigInteger.valueOf(num) : signed(big);
    }

    private static BigInteger signed(BigFraction value) {
        return value.getDenominator().signum() < 0 ? value.getNumerator().negate() : value.getNumerator();
    }

    BigInteger denominator() {
        return big == null ? BigInteger.valueOf(den) : big.getDenominator().abs();
    }

    /** The positive factor that turns three fractions, not all zero, into whole numbers without a common divisor. */
    static Rat primitiveFactor(Rat a, Rat b, Rat c) {
        if (a.big == null && b.big == null && c.big == null && a.den == 1 && b.den == 1 && c.den == 1) {
            long g = gcdOrZero(gcdOrZero(Math.abs(a.num), Math.abs(b.num)), Math.abs(c.num));
            return new Rat(1, g);
        }
        BigInteger tops = a.numerator().gcd(b.numerator()).gcd(c.numerator());
        BigInteger bottoms = lcm(lcm(a.denominator(), b.denominator()), c.denominator());
        return of(BigFraction.of(bottoms, tops));
    }

    private static long gcdOrZero(long a, long b) {
        return a == 0 ? b : b == 0 ? a : gcd(a, b);
    }

    private static BigInteger lcm(BigInteger a, BigInteger b) {
        return a.divide(a.gcd(b)).multiply(b);
    }

    BigFraction toFraction() {
        return big == null ? BigFraction.of(BigInteger.valueOf(num), BigInteger.valueOf(den)) : big;
    }

    double toDouble() {
        return big == null ? (double) num / den : big.doubleValue();
    }

    /** A double that is certainly not above this value. */
    double lower() {
        double near = toDouble();
        return isExactDouble() ? near : Math.nextDown(near - Math.abs(near) * 0x1p-50);
    }

    /** A double that is certainly not below this value. */
    double upper() {
        double near = toDouble();
        return isExactDouble() ? near : Math.nextUp(near + Math.abs(near) * 0x1p-50);
    }

    private boolean isExactDouble() {
        return big == null && den == 1 && Math.abs(num) < 1L << 53;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Rat that
                && (big == null ? that.big == null && num == that.num && den == that.den : big.equals(that.big));
    }

    @Override
    public int hashCode() {
        return big == null ? Long.hashCode(num * 0x9E3779B97F4A7C15L + den) : big.hashCode();
    }

    @Override
    public String toString() {
        return big == null ? (den == 1 ? Long.toString(num) : num + "/" + den) : big.toString();
    }
}
