package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;

/** A flaw of a board; places count from the left end and the near edge of its upper face. */
public sealed interface Defect {
    /** Where the project says it. */
    Span span();

    /** What the maker calls it: knot, check, wane, sapwood, worm, pith, punky. */
    String kind();

    /** A round one, a knot for instance. */
    record Disc(String kind, Length x, Length y, Length radius, Span span) implements Defect {}

    /** A line with a width, a split for instance. */
    record Line(String kind, Length x1, Length y1, Length x2, Length y2, Length width, Span span) implements Defect {}

    /** A rectangle. */
    record Patch(String kind, Length x, Length y, Length length, Length width, Span span) implements Defect {}
}
