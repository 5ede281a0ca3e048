package dev.treen.model;

import dev.treen.source.Span;

/**
 * One property of a joint as the project gives it.
 *
 * @param name the property
 * @param nameAt where its name stands
 * @param valueAt where its value stands: what a fix replaces
 * @param value the value; the word {@code auto} where Treen is to choose
 * @param how its derivation
 */
public record Setting(String name, Span nameAt, Span valueAt, Datum value, Derivation how) {
    /** Whether Treen is to choose. */
    public boolean auto() {
        return Auto.is(value);
    }

    /** The same in a thing that stands turned: a direction is written as its pattern draws it. */
    Setting turned(Pose pose) {
        return value instanceof Datum.Word(String word)
                ? Direction.named(word)
                        .map(way -> new Setting(name, nameAt, valueAt, new Datum.Word(pose.turned(way).word()), how))
                        .orElse(this)
                : this;
    }
}
