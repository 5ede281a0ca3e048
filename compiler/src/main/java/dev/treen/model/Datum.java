package dev.treen.model;

import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value of the language. Unknown is one of them: it spreads silently and is reported once, at its source. */
public sealed interface Datum {

    /** A quantity with its dimension; counts and ratios are of dimension NUMBER. */
    record Exactly(Quantity quantity) implements Datum {}

    /** A bare number, which becomes a length of {@code unit} where a length is wanted, and a count where a count is. */
    record Bare(BigFraction amount, Unit unit) implements Datum {}

    /** Two or three measures: {@code 160 x 80 x 70}. */
    record Sizes(List<Datum> measures) implements Datum {}

    /** {@code low..high}. */
    record Between(Datum low, Datum high) implements Datum {}

    /** Several values with commas between: a point, a list of parts. */
    record Several(List<Datum> values) implements Datum {}

    /** Text. */
    record Text(String text) implements Datum {}

    /** True or false. */
    record Truth(boolean value) implements Datum {}

    /** A word that means itself: {@code flat}, {@code auto}, a species. */
    record Word(String word) implements Datum {}

    /** A named thing of the project: a part, a board, a species on the rack, an instance, an array; {@code path} is its dotted name. */
    record Thing(String path, Kind kind) implements Datum {
        /** What kind of thing. */
        public enum Kind {
            PART, BOARD, SPECIES, INSTANCE, ARRAY, FILE, PATTERN, PARAMETER, PRESET
        }
    }

    /** Not known, because of a fault that has been reported where it is. */
    record Unknown() implements Datum {}

    /** The one unknown. */
    Datum UNKNOWN = new Unknown();
}
