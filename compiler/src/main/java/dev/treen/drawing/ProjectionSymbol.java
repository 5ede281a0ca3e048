package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;

/** The symbol of first-angle projection (ISO 5456-2; from memory): a cone cut short, and to its right its left end. */
public final class ProjectionSymbol {
    private static final double WIDE = 24;
    private static final double HIGH = 11;

    private ProjectionSymbol() {
    }

    /** The symbol by itself. */
    public static Sheet sheet() {
        return new Sheet(WIDE, HIGH, "First-angle projection",
                "The symbol of first-angle projection: a cone cut short from the side, and to its right two rings, as it is"
                        + " seen from the left.",
                "", List.of(), marks(new Spot(WIDE / 2, HIGH / 2)));
    }

    /** The same about {@code middle}. */
    static List<Mark> marks(Spot middle) {
        List<Mark> marks = new ArrayList<>();
        Spot cone = middle.plus(-5.5, 0);
        Spot[] corners = {cone.plus(-4, -2), cone.plus(4, -4), cone.plus(4, 4), cone.plus(-4, 2)};
        for (int i = 0; i < corners.length; i++) {
            marks.add(new Mark.Line(corners[i], corners[(i + 1) % corners.length], Pen.SEEN));
        }
        Spot end = middle.plus(6, 0);
        marks.add(new Mark.Ring(end, 4, false));
        marks.add(new Mark.Ring(end, 2, false));
        marks.add(new Mark.Line(cone.plus(-5.5, 0), cone.plus(5.5, 0), Pen.CHAIN));
        marks.add(new Mark.Line(end.plus(-5, 0), end.plus(5, 0), Pen.CHAIN));
        marks.add(new Mark.Line(end.plus(0, -5), end.plus(0, 5), Pen.CHAIN));
        return marks;
    }
}
