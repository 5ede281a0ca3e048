package dev.treen.solid;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Square roots that are fractions. */
final class Roots {

    private Roots() {
    }

    /** The root of a fraction that is not negative, when it is itself a fraction. */
    static Optional<Rat> exact(Rat value) {
        if (value.equals(Rat.ONE) || value.isZero()) {
            return Optional.of(value);
        }
        BigInteger[] top = value.numerator().sqrtAndRemainder();
        BigInteger[] bottom = value.denominator().sqrtAndRemainder();
        return top[1].signum() == 0 && bottom[1].signum() == 0
                ? Optional.of(Rat.of(BigFraction.of(top[0], bottom[0])))
                : Optional.empty();
    }
}
