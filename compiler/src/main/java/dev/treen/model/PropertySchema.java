package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;

/**
 * One property of a block, declared once: checking, completion, hover and the reference all read this.
 *
 * @param name the word
 * @param shape what it takes
 * @param standard what holds when it is absent, in words; empty for nothing
 * @param doc one or two sentences
 * @param needed whether a block without it is a finding
 * @param repeats whether it may stand more than once
 */
public record PropertySchema(
        String name, Shape shape, String standard, String doc, boolean needed, boolean repeats) {

    /** A property that may be left out. */
    public static PropertySchema optional(String name, Shape shape, String standard, String doc) {
        return new PropertySchema(name, shape, standard, doc, false, false);
    }

    /** A property that must be there. */
    public static PropertySchema needed(String name, Shape shape, String doc) {
        return new PropertySchema(name, shape, "", doc, true, false);
    }

    /** What works in any project instead of a value that stands at {@code valueAt} and cannot be. */
    public Remedy wayOut(Span valueAt) {
        boolean chosen = shape instanceof Shape.LengthOrAuto;
        String then = standard.isEmpty() ? "" : " (then: " + standard + ")";
        return chosen
                ? Remedy.choice("leave it to Treen: `" + name + " auto`" + then, new Edit(valueAt, Auto.WORD))
                : Remedy.choice((needed ? "write " + shape.phrase() : "leave `" + name + "` out") + then);
    }

    /** A property that may stand more than once. */
    public static PropertySchema repeated(String name, Shape shape, String doc) {
        return new PropertySchema(name, shape, "", doc, false, true);
    }
}
