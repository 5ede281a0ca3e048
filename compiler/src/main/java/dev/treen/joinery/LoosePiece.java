package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A small piece of wood that a joint takes and that the project does not write as a part: it follows from the joint. It is
 * made of an offcut or a rod, so it asks for no room on a board; who wants it out of a board writes a part instead.
 *
 * @param size finished, the length along its own grain, even where it is the shorter; of a round one the width and the
 *     thickness are its diameter
 * @param count how many of them one joint takes
 */
public record LoosePiece(Kind kind, Size size, int count) {
    static LoosePiece of(Kind kind, Length length, Length width, Length thickness, int count) {
        return new LoosePiece(kind, new Size(length, width, thickness), count);
    }

    /** What it is. */
    public enum Kind {
        /** A tenon that is a piece by itself, let into both parts. */
        TENON("loose tenon", "loose tenons", false),
        /** A tongue in grooves of both parts. */
        TONGUE("loose tongue", "loose tongues", false),
        /** A slip across the outer corner of a mitre. */
        KEY("key", "keys", false),
        /** What spreads a through tenon. */
        WEDGE("wedge", "wedges", false),
        /** What holds or draws a tenon in its mortise. */
        PEG("peg", "pegs", true),
        /** A bought dowel, or a length of rod. */
        DOWEL("dowel", "dowels", true);

        private final String one;
        private final String several;
        private final boolean round;

        Kind(String one, String several, boolean round) {
            this.one = one;
            this.several = several;
            this.round = round;
        }

        /** The word for one, or for several. */
        public String word(int count) {
            return count == 1 ? one : several;
        }

        /** Whether it is round. */
        public boolean round() {
            return round;
        }

        /** Whether it is bought, or cut from a bought rod, and not made of an offcut. */
        public boolean bought() {
            return this == DOWEL;
        }
    }

    /** The making of all pieces of a kind that a statement takes: after what they fit into, well before any glue. */
    static Work making(List<MadeJoint> statement, Kind kind) {
        Set<LoosePiece> pieces = new LinkedHashSet<>();
        statement.forEach(made -> made.pieces().stream().filter(p -> p.kind() == kind).forEach(pieces::add));
        List<Work.GaugeSetting> settings = new ArrayList<>();
        pieces.stream().findFirst().map(LoosePiece::size).ifPresent(size -> {
            settings.add(new Work.GaugeSetting("thick", size.thickness()));
            if (!kind.round()) {
                settings.add(new Work.GaugeSetting("wide", size.width()));
            }
            settings.add(new Work.GaugeSetting("along the grain", size.length()));
        });
        return new Work(
                Work.Stage.PIECES,
                "Make the " + kind.word(2) + " of offcuts with straight grain, as many as the cut list says and one to"
                        + " try",
                Rebate.names(statement),
                List.of(),
                switch (kind) {
                    case PEG -> "chisel to split them, knife or dowel plate";
                    case WEDGE -> "fine saw, chisel, a wedge-shaped notch in a board to hold them";
                    case TENON, TONGUE, KEY, DOWEL -> "fine saw, block plane";
                },
                settings,
                switch (kind) {
                    case PEG -> "the grain, split and not sawn";
                    case WEDGE -> "the end, to nothing at its point";
                    case TONGUE -> "the grain, which runs across the joint";
                    case KEY -> "the grain, which runs across the corner";
                    case TENON -> "a trial mortise";
                    case DOWEL -> "the rod";
                },
                switch (kind) {
                    case PEG -> "one goes through a trial hole under light taps";
                    case WEDGE -> "all have one slope";
                    case TONGUE, KEY -> "one goes in by hand and does not fall out";
                    case TENON -> "one goes in by hand pressure and holds its own weight";
                    case DOWEL -> "one goes in by hand";
                },
                "Plane one long strip and saw it up: short pieces are not held by hand at a machine.");
    }
}
