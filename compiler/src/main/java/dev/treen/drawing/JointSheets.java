package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Drawings of joints by themselves: one on a sheet, apart and together, or all that there are on one. */
public final class JointSheets {
    private static final double APART = 92;
    private static final double TOGETHER = 62;
    private static final double HIGH = 78;
    private static final double BETWEEN = 8;
    private static final double EDGE = 3;

    private static final int COLUMNS = 5;
    private static final double CELL_WIDE = 54;
    private static final double CELL_HIGH = 48;
    private static final double CAPTION = 9;

    private JointSheets() {
    }

    /** The parts of a joint apart and together. */
    public static Sheet of(JointPicture picture) {
        double scale = picture.scale(APART, TOGETHER, HIGH);
        List<Mark> marks = new ArrayList<>(picture.apart(scale));
        marks.addAll(picture.names(scale, marks));
        Bounds left = Mark.bounds(marks);
        List<Mark> joined = picture.together(scale);
        Bounds right = Mark.bounds(joined);
        List<Mark> beside = Mark.moved(joined, left.right() + BETWEEN - right.left(),
                left.middle().y() - right.middle().y());
        marks.addAll(beside);
        Bounds all = Mark.bounds(marks);
        caption(marks, left.middle().x(), all.bottom() + 5, "apart");
        caption(marks, Mark.bounds(beside).middle().x(), all.bottom() + 5, "together");
        Bounds whole = Mark.bounds(marks).grown(EDGE);
        String names = String.join(", ", picture.parts());
        return new Sheet(whole.width(), whole.height(), names,
                "An isometric view of " + names + ", apart and together; what the joint cuts is darker.", "",
                List.of(), Mark.moved(marks, -whole.left(), -whole.top()));
    }

    private static void caption(List<Mark> marks, double x, double y, String words) {
        marks.add(new Mark.Label(new Spot(x, y), words, Lettering.USUAL, false, false));
    }

    /** Every joint of {@code pictures} by its name, apart, on one sheet. */
    public static Sheet all(Map<String, JointPicture> pictures) {
        List<Mark> marks = new ArrayList<>();
        int at = 0;
        for (Map.Entry<String, JointPicture> each : pictures.entrySet()) {
            int row = at / COLUMNS;
            double x = EDGE + at % COLUMNS * CELL_WIDE;
            double y = EDGE + row * CELL_HIGH;
            JointPicture picture = each.getValue();
            double scale = picture.scale(CELL_WIDE - 6, CELL_WIDE, CELL_HIGH - CAPTION - 3);
            List<Mark> drawn = picture.apart(scale);
            Bounds bounds = Mark.bounds(drawn);
            Spot middle = bounds.middle();
            marks.addAll(Mark.moved(drawn, x + CELL_WIDE / 2 - middle.x(),
                    y + (CELL_HIGH - CAPTION) / 2 - middle.y()));
            marks.add(new Mark.Label(new Spot(x + CELL_WIDE / 2, y + CELL_HIGH - CAPTION / 2), each.getKey(),
                    Lettering.USUAL, true, false));
            at++;
        }
        int rows = (at + COLUMNS - 1) / COLUMNS;
        return new Sheet(2 * EDGE + COLUMNS * CELL_WIDE, 2 * EDGE + rows * CELL_HIGH, "All joints",
                "One picture of each joint, its parts apart: " + String.join(", ", pictures.keySet()) + ".", "",
                List.of(), marks);
    }
}
