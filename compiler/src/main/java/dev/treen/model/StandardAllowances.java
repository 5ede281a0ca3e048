package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import org.apache.commons.numbers.fraction.BigFraction;

/** The usual allowances by hand and by machine: common practice, no source; a project says its own. */
final class StandardAllowances {
    private StandardAllowances() {
    }

    /** The usual ones, as if written at {@code at}. */
    static Allowances of(boolean hand, Span at) {
        return new Allowances(
                tenths("kerf", hand ? 12 : 32, at),
                tenths("shooting", 5, at),
                tenths("planing", hand ? 5 : 10, at),
                tenths("resaw", 10, at),
                tenths("end_waste", 150, at));
    }

    private static Measure tenths(String label, long tenths, Span at) {
        Length value = Length.ofMm(BigFraction.of((int) tenths, 10));
        Derivation how = new Derivation(
                label,
                Measure.datum(value),
                new Derivation.Standard("common practice, no source"),
                java.util.Optional.of(at));
        return new Measure(value, at, how);
    }
}
