package dev.treen.yield.engine;

import dev.treen.yield.Defect;
import dev.treen.yield.Rect;
import dev.treen.yield.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of a board no part can cover because of its defects, kerf folded in: never more than the truth. A part that
 * carries its kerf on the right and above reaches a kerf's breadth into a defect from there, so a defect counts less that
 * breadth. Of defects that overlap only one counts.
 */
final class LostArea {
    private static final int SLICES = 48;

    private LostArea() {
    }

    static double of(Folded f, int b) {
        Stock stock = f.problem.stocks().get(b);
        long ends = f.problem.settings().endWaste();
        long edges = f.problem.settings().edgeWaste();
        List<Rect> counted = new ArrayList<>();
        double lost = 0;
        for (Defect defect : stock.defects()) {
            for (Rect box : Covers.of(defect, stock)) {
                if (counted.stream().anyMatch(box::overlaps)) {
                    continue;
                }
                counted.add(box);
                // On the folded board a defect begins at its own end plus a kerf and ends where it ends.
                long x1 = Math.max(box.x() - ends + f.kerf, f.kerf);
                long y1 = Math.max(box.y() - edges + f.kerf, f.kerf);
                long x2 = Math.min(box.right() - ends, f.boardLength[b]);
                long y2 = Math.min(box.top() - edges, f.boardWidth[b]);
                boolean inside = box.x() >= ends && box.y() >= edges
                        && box.right() - ends + f.kerf <= f.boardLength[b]
                        && box.top() - edges + f.kerf <= f.boardWidth[b];
                lost += switch (defect) {
                    case Defect.Box whole -> area(x2 - x1, y2 - y1);
                    case Defect.Strip strip -> area(x2 - x1, y2 - y1);
                    case Defect.Knot knot -> inside ? knot(box, f.kerf) : 0;
                    case Defect.Split split -> 0;
                };
            }
        }
        return lost;
    }

    private static double area(long l, long w) {
        return l > 0 && w > 0 ? (double) l * w : 0;
    }

    // What four ellipses, each a kerf's breadth from the next, have in common: by chords, which lie inside as it is convex.
    private static double knot(Rect box, long kerf) {
        double a = box.length() / 2.0;
        double b = box.width() / 2.0;
        double low = -b + kerf;
        double step = (b - low) / SLICES;
        if (step <= 0 || 2 * a <= kerf) {
            return 0;
        }
        double sum = 0;
        double before = 0;
        for (int i = 1; i <= SLICES; i++) {
            double y = low + i * step;
            double chord = Math.max(0, 2 * a * Math.min(half(y, b), half(y - kerf, b)) - kerf);
            if (before > 0 && chord > 0) {
                sum += (before + chord) / 2 * step;
            }
            before = chord;
        }
        return sum * (1 - 1e-9);
    }

    private static double half(double y, double b) {
        return Math.sqrt(Math.max(0, 1 - y * y / (b * b)));
    }
}
