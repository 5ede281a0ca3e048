package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A flaw of a board; places count from the left end and the near edge of its upper face. */
public sealed interface Defect {
    /** Where the project says it. */
    Span span();

    /** What the maker calls it: knot, check, wane, sapwood, worm, pith, punky. */
    String kind();

    /** The face on which it is seen. */
    Face face();

    /** Which face of its board a flaw is seen on. */
    enum Face {
        /** It goes through. */
        BOTH,
        /** The face from which places are measured. */
        UPPER,
        /** The other one. */
        UNDER;

        /** The words of all. */
        public static List<String> words() {
            return Arrays.stream(values()).map(Face::word).toList();
        }

        /** As the project says it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A round one, a knot for instance. */
    record Disc(String kind, Length x, Length y, Length radius, Face face, Span span) implements Defect {}

    /** A line with a width, a split for instance. */
    record Line(String kind, Length x1, Length y1, Length x2, Length y2, Length width, Face face, Span span)
            implements Defect {}

    /** A rectangle. */
    record Patch(String kind, Length x, Length y, Length length, Length width, Face face, Span span)
            implements Defect {}
}
