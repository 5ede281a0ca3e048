package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.List;

/** Measures that a rule of the trade gives, where the project leaves them to Treen; each knows its rule and its source. */
final class Ruled {
    /** The source of a rule that has none. */
    static final String PRACTICE = "common practice, no source";

    private Ruled() {
    }

    /** What follows from one other measure, and is told at its place. */
    static Measure of(String label, Length value, String text, String source, Measure from) {
        return at(from.at(), label, value, text, source, List.of(from.how()));
    }

    /** The same brought down to a mark of the rule, and one mark at the least. */
    static Measure onMark(
            String label, Length value, String text, String source, Measure from, Surroundings surroundings) {
        return of(label, onMark(value, surroundings), text, source, from);
    }

    /** A third of a thickness, on a mark of the rule. */
    static Measure third(String label, Measure thickness, Surroundings surroundings) {
        return onMark(label, thickness.value().dividedBy(3), "a third of the thickness, on a mark of the rule",
                PRACTICE,
                thickness, surroundings);
    }

    /** A length brought down to a mark of the rule, and one mark at the least. */
    static Length onMark(Length value, Surroundings surroundings) {
        Length mark = surroundings.markOfTheRule();
        return value.roundDownTo(mark).max(mark);
    }

    /** What follows from any number of others, told at {@code at}. */
    static Measure at(Span at, String label, Length value, String text, String source, List<Derivation> from) {
        return new Measure(value, at, Derivation.rule(label, Measure.datum(value), text, source, from));
    }
}
