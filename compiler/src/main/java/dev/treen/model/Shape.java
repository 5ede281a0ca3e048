package dev.treen.model;

import java.util.List;

/** What kind of value a property takes. */
public sealed interface Shape {
    /** How a message and the reference name it: "a length", "one of `flat`, `rift`". */
    String phrase();

    /** The kinds that need no more words. */
    enum Plain implements Shape {
        LENGTH("a length, as `9` or `3/8in`"),
        SIZE("two or three measures, as `160 x 80 x 70`"),
        SIZE_2("two measures, as `5 x 4`"),
        SIZE_3("three measures, as `900 x 140 x 27`"),
        POINT_2("two lengths, as `310, 45`"),
        POINT_3("three lengths, as `0, -9, 0`"),
        ANGLE("an angle, as `45deg` or `1:8`"),
        PERCENT("a percentage, as `9%`"),
        PERCENT_RANGE("a range of percentages, as `35%..65%`, or twelve of them, January first"),
        TEMPERATURE_RANGE("a range of temperatures, as `18degC..24degC`, or twelve of them, January first"),
        COUNT("a whole number"),
        TEXT("text in quotes"),
        DIRECTION("a direction: right, left, back, front, up or down"),
        SPECIES("a species, as `black_cherry`"),
        STUFF("what it is of, as `glass`, `plywood` or `european_beech`"),
        BOARD("the name of a board or sheet, or a species: then any board of it"),
        PART("the name of a part"),
        PARTS("the names of parts, with commas between"),
        SAW("the name of a saw"),
        ROOM("the name of a `climate`"),
        LOAD("`books`, `heavy_books`, `library`, `things` or a weight, as `20kg`"),
        MASS("a weight, as `20kg`"),
        NUMBER("a number, as `0.72`"),
        PAIR("two figures, along the rings and across them"),
        FLAWS("`knot`, `check`, `sapwood`, `worm` or `pith`, several with commas, perhaps `on` one face; or `none`"),
        RINGS("flat, rift, quarter or an angle; a range as `flat..rift`; or one for each stave");

        private final String phrase;

        Plain(String phrase) {
            this.phrase = phrase;
        }

        @Override
        public String phrase() {
            return phrase;
        }
    }

    /** A length, or {@code auto}: then Treen chooses by the rule in the property's documentation. */
    record LengthOrAuto() implements Shape {
        @Override
        public String phrase() {
            return "a length or `auto`";
        }
    }

    /** One of a few words. */
    record OneOf(List<String> words) implements Shape {
        @Override
        public String phrase() {
            return "one of `" + String.join("`, `", words) + "`";
        }
    }

    /** One of a few words, with a block of what goes with it: {@code floating { thick 7 }}. */
    record Choice(List<String> words, BlockSchema options) implements Shape {
        @Override
        public String phrase() {
            return "one of `" + String.join("`, `", words) + "`, perhaps with a block";
        }
    }

    /** The name of what stands elsewhere, or a block, or both: then the block overrules. */
    record Named(BlockSchema schema) implements Shape {
        @Override
        public String phrase() {
            return "a block `{ … }`, or the name of one";
        }
    }

    /** A block of properties of its own. */
    record Inner(BlockSchema schema) implements Shape {
        @Override
        public String phrase() {
            return "a block `{ … }`";
        }
    }
}
