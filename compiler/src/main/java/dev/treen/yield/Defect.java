package dev.treen.yield;

/**
 * A place on a board that no part may touch from inside. Parts may lie against it, saw cuts may pass through it. Which
 * flaw forbids which part is decided before the problem is put; here a defect is a shape.
 */
public sealed interface Defect permits Defect.Box, Defect.Knot, Defect.Split, Defect.Strip {

    /**
     * A plain rectangle: a damaged corner, a patch of wane.
     *
     * @param area the rectangle that is lost
     */
    record Box(Rect area) implements Defect {}

    /**
     * A knot, round or drawn out along the grain, as the ellipse inscribed in a box.
     *
     * @param box the box around it
     */
    record Knot(Rect box) implements Defect {

        /** A round knot about a centre. */
        public static Knot round(long centreX, long centreY, long radius) {
            return new Knot(new Rect(centreX - radius, centreY - radius, 2 * radius, 2 * radius));
        }
    }

    /**
     * A split, shake or line of pith: a straight line with some width, kept clear to half that width on both sides.
     *
     * @param x1 one end, along
     * @param y1 one end, across
     * @param x2 other end, along
     * @param y2 other end, across
     * @param width full width kept clear
     */
    record Split(long x1, long y1, long x2, long y2, long width) implements Defect {

        /** Refuses a negative width. */
        public Split {
            if (width < 0) {
                throw new IllegalArgumentException("a split of negative width");
            }
        }
    }

    /**
     * A strip along a whole side of the board: bark, sapwood, end checks.
     *
     * @param side the side it lies on
     * @param depth how far it reaches into the board
     */
    record Strip(Side side, long depth) implements Defect {

        /** Refuses a negative depth. */
        public Strip {
            if (depth < 0) {
                throw new IllegalArgumentException("a strip of negative depth");
            }
        }
    }

    /** A side of a board. */
    enum Side {
        /** The end at x = 0. */
        LEFT_END,
        /** The end at x = length. */
        RIGHT_END,
        /** The edge at y = 0. */
        LOWER_EDGE,
        /** The edge at y = width. */
        UPPER_EDGE
    }
}
