package dev.treen.cutting;

import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.yield.Rect;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Between exact lengths and the whole numbers in which the solver counts: thousandths of a millimetre. What takes room is
 * rounded up and what gives room is rounded down, so that rounding never lets a part in that does not fit.
 */
final class Units {
    /** Units in a millimetre. */
    static final int FINE = 1000;

    private Units() {
    }

    static long up(Length length) {
        return Exact.ceiling(length.mm().multiply(FINE)).longValueExact();
    }

    static long down(Length length) {
        return Exact.floor(length.mm().multiply(FINE)).longValueExact();
    }

    static Length length(long units) {
        return Length.ofMm(BigFraction.of(units, FINE));
    }

    static Rectangle rectangle(Rect rect) {
        return new Rectangle(length(rect.x()), length(rect.y()), length(rect.length()), length(rect.width()));
    }
}
