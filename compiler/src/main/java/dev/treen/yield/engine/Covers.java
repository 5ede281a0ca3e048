package dev.treen.yield.engine;

import dev.treen.yield.Defect;
import dev.treen.yield.Rect;
import dev.treen.yield.Stock;
import java.util.ArrayList;
import java.util.List;

/** Rectangles that cover a defect; the search knows only these, the checker the true shape. */
final class Covers {
    private static final int PARTS_OF_A_SPLIT = 4;

    private Covers() {
    }

    /** Rectangles whose union holds the defect. */
    static List<Rect> of(Defect defect, Stock stock) {
        return switch (defect) {
            case Defect.Box box -> List.of(box.area());
            case Defect.Knot knot -> List.of(knot.box());
            case Defect.Split split -> split(split);
            case Defect.Strip strip -> List.of(strip(strip, stock));
        };
    }

    private static Rect strip(Defect.Strip strip, Stock stock) {
        long alongDepth = Math.min(strip.depth(), stock.length());
        long acrossDepth = Math.min(strip.depth(), stock.width());
        return switch (strip.side()) {
            case LEFT_END -> new Rect(0, 0, alongDepth, stock.width());
            case RIGHT_END -> new Rect(stock.length() - alongDepth, 0, alongDepth, stock.width());
            case LOWER_EDGE -> new Rect(0, 0, stock.length(), acrossDepth);
            case UPPER_EDGE -> new Rect(0, stock.width() - acrossDepth, stock.length(), acrossDepth);
        };
    }

    // A split that runs across the fibres would lose a great box, so it is covered in a few pieces end to end.
    private static List<Rect> split(Defect.Split s) {
        boolean straight = s.x1() == s.x2() || s.y1() == s.y2();
        int parts = straight ? 1 : PARTS_OF_A_SPLIT;
        long half = (s.width() + 1) / 2;
        var boxes = new ArrayList<Rect>();
        for (int i = 0; i < parts; i++) {
            double xa = s.x1() + (s.x2() - s.x1()) * (double) i / parts;
            double xb = s.x1() + (s.x2() - s.x1()) * (double) (i + 1) / parts;
            double ya = s.y1() + (s.y2() - s.y1()) * (double) i / parts;
            double yb = s.y1() + (s.y2() - s.y1()) * (double) (i + 1) / parts;
            long x = (long) Math.floor(Math.min(xa, xb)) - half;
            long y = (long) Math.floor(Math.min(ya, yb)) - half;
            long right = (long) Math.ceil(Math.max(xa, xb)) + half;
            long top = (long) Math.ceil(Math.max(ya, yb)) + half;
            boxes.add(new Rect(x, y, right - x, top - y));
        }
        return boxes;
    }
}
