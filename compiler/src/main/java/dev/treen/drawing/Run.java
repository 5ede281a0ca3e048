package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Figures that count from one datum, along one line, as on a marking stick: running dimensions (ISO 129-1; from memory). A
 * small ring stands at the datum; each figure stands at the end of the line that its place sends out.
 *
 * <p>A run lies below a view, with places from its left, or to the left of a view, with places from its foot; the same
 * reckoning serves both, in coordinates along the run and out from the view.
 */
final class Run {
    /** From the view to the line of the run. */
    static final double OUT = 7;
    private static final double BEYOND = 1.2;
    private static final double ELBOW = 5;
    private static final double ARROW = 2.2;
    private static final double PITCH = 4.2;

    private final boolean below;
    private final double datum;
    private final double edge;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * A place in a run.
     *
     * @param at along the run
     * @param start how far out its line begins: nothing at the edge of the view, less inside it
     */
    record Place(double at, double start, String figure) {}

    /**
     * @param below whether the run lies below the view rather than to its left
     * @param datum where the figures count from, along the run
     * @param edge of the view from which the run keeps its distance
     */
    Run(boolean below, double datum, double edge) {
        this.below = below;
        this.datum = datum;
        this.edge = edge;
    }

    private Spot spot(double along, double out) {
        return below ? new Spot(along, edge + out) : new Spot(edge - out, along);
    }

    private void line(double along1, double out1, double along2, double out2) {
        marks.add(new Mark.Line(spot(along1, out1), spot(along2, out2), Pen.THIN));
    }

    /** The run; {@code places} must not be empty. */
    List<Mark> draw(List<Place> places) {
        List<Place> sorted = places.stream().sorted(java.util.Comparator.comparingDouble(Place::at)).toList();
        double first = Math.min(datum, sorted.getFirst().at());
        double last = Math.max(datum, sorted.getLast().at());
        line(first, OUT, last, OUT);
        line(datum, 0.5, datum, OUT);
        double closest = Double.POSITIVE_INFINITY;
        double before = datum;
        for (Place place : sorted) {
            line(place.at(), place.start() + 0.5, place.at(), OUT + BEYOND);
            closest = Math.min(closest, Math.abs(place.at() - before));
            before = place.at();
        }
        for (Place place : sorted) {
            pointer(place.at(), closest < ARROW + 0.6);
        }
        marks.add(new Mark.Ring(spot(datum, OUT), 0.8, false));
        figures(sorted);
        return marks;
    }

    /** An arrow head away from the datum, or a stroke where there is no room for one. */
    private void pointer(double at, boolean narrow) {
        if (narrow) {
            marks.add(new Mark.Line(spot(at - 0.9, OUT + (below ? 0.9 : -0.9)),
                    spot(at + 0.9, OUT + (below ? -0.9 : 0.9)),
                    Pen.SEEN));
            return;
        }
        double back = at > datum ? -ARROW : ARROW;
        marks.add(new Mark.Area(
                List.of(List.of(spot(at, OUT), spot(at + back, OUT - 0.45), spot(at + back, OUT + 0.45))), 0));
    }

    private void figures(List<Place> places) {
        boolean turned = below && !fitsUpright(places);
        boolean close = false;
        List<Double> at = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            at.add(places.get(i).at());
            close |= i > 0 && places.get(i).at() - places.get(i - 1).at() < PITCH;
        }
        boolean upright = below && !turned;
        List<Double> spread = close && !upright ? Spread.apart(at, PITCH, Double.NEGATIVE_INFINITY) : at;
        for (int i = 0; i < places.size(); i++) {
            double from = OUT + BEYOND;
            if (close && !upright) {
                line(at.get(i), from, spread.get(i), from + ELBOW);
                from += ELBOW;
            }
            String figure = places.get(i).figure();
            double long_ = Lettering.width(figure, Lettering.USUAL, false);
            double half = upright ? Lettering.height(Lettering.USUAL) / 2 : long_ / 2;
            marks.add(new Mark.Label(spot(spread.get(i), from + 0.6 + half), figure, Lettering.USUAL, false, turned,
                    below ? Mark.Label.From.MIDDLE : Mark.Label.From.RIGHT));
        }
    }

    private static boolean fitsUpright(List<Place> places) {
        double end = Double.NEGATIVE_INFINITY;
        for (Place place : places) {
            double half = Lettering.width(place.figure(), Lettering.USUAL, false) / 2;
            if (place.at() - half < end + 1) {
                return false;
            }
            end = place.at() + half;
        }
        return true;
    }
}
