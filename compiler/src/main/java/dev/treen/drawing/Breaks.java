package dev.treen.drawing;

import dev.treen.solid.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a long part is broken off and its ends are drawn nearer to each other (ISO 128-3, interrupted views; from memory): a
 * mortise of 6 mm at the end of a long leg is then drawn as large as it is. Only what runs straight through, with nothing to
 * mark out on it, is left out; all figures stay true.
 *
 * @param factor so much on paper for one millimetre of the part
 * @param left the stretches that are left out, from the left end, in order
 */
record Breaks(double factor, List<Stretch> left) {
    /** Between the two ends of a break, on paper. */
    static final double GAP = 3;
    /** What may be kept beside whatever is marked out, on paper: the more, the more it looks like the part. */
    static final List<Integer> KEPT = List.of(40, 28, 20, 14);
    /** A break that saves less than this on paper is none. */
    private static final double WORTH = 12;

    /** A stretch along the grain, in millimetres from the left end. */
    record Stretch(double from, double to) {}

    /** Keeps its own copy. */
    Breaks {
        left = List.copyOf(left);
    }

    /** The whole part. */
    static Breaks none(double factor) {
        return new Breaks(factor, List.of());
    }

    /** All left out that the views allow but {@code keep} millimetres on paper beside whatever is marked out. */
    static Breaks of(List<PartView> views, double factor, double keep) {
        List<Stretch> busy = new ArrayList<>();
        views.stream().filter(Breaks::lengthwise).forEach(view -> busy(view, busy));
        busy.sort(Comparator.comparingDouble(Stretch::from));
        double kept = keep / factor;
        List<Stretch> left = new ArrayList<>();
        double free = Double.POSITIVE_INFINITY;
        for (Stretch each : busy) {
            double from = free + kept;
            double to = each.from() - kept;
            if ((to - from) * factor > GAP + WORTH) {
                left.add(new Stretch(from, to));
            }
            free = Double.isInfinite(free) ? each.to() : Math.max(free, each.to());
        }
        return new Breaks(factor, left);
    }

    /** Whether a view shows a part's length. */
    static boolean lengthwise(PartView view) {
        return view.way().across() == Measured.LENGTH;
    }

    /** Whatever lies in a view at one place along the grain, or slants over a stretch of it. */
    private static void busy(PartView view, List<Stretch> busy) {
        for (Stroke stroke : view.strokes()) {
            double from = view.across(stroke.from().u()).toDoubleMm();
            double to = view.across(stroke.to().u()).toDoubleMm();
            if (stroke.from().v().equals(stroke.to().v())) {
                busy.add(new Stretch(from, from));
                busy.add(new Stretch(to, to));
            } else {
                busy.add(new Stretch(Math.min(from, to), Math.max(from, to)));
            }
        }
        for (PartView.Disc disc : view.discs()) {
            double middle = disc.hole().middle(Measured.LENGTH).toDoubleMm();
            double radius = disc.hole().diameter().toDoubleMm() / 2;
            busy.add(new Stretch(middle - radius, middle + radius));
        }
    }

    /** How far from the drawn left end a place lies on paper. */
    double at(double mm) {
        double paper = mm * factor;
        for (Stretch each : left) {
            if (mm > each.from()) {
                paper -= (Math.min(mm, each.to()) - each.from()) * factor;
                paper += mm >= each.to() ? GAP : 0;
            }
        }
        return paper;
    }

    /** What is drawn of a stretch, piece by piece, on paper. */
    List<Stretch> drawn(double from, double to) {
        List<Stretch> drawn = new ArrayList<>();
        double start = from;
        for (Stretch each : left) {
            if (each.from() > start && each.to() < to) {
                drawn.add(new Stretch(at(start), at(each.from())));
                start = each.to();
            }
        }
        drawn.add(new Stretch(at(start), at(to)));
        return drawn;
    }
}
