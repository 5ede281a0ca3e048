package dev.treen.model;

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

    /** A property that may stand more than once. */
    public static PropertySchema repeated(String name, Shape shape, String doc) {
        return new PropertySchema(name, shape, "", doc, false, true);
    }
}
