package dev.treen.drawing;

import dev.treen.solid.Stroke;
import dev.treen.solid.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** One view of a part on paper with all that is written round it; its upper left corner is at 0, 0. */
final class ViewBlock {
    private static final double CENTRE_BEYOND = 1.5;
    /** How far a break line stands out beyond the part, and half the height of its zigzag. */
    private static final double ZIGZAG = 1.2;

    private final PartViews part;
    private final PartView view;
    private final Breaks breaks;
    private final double scale;
    private final Figures figures;
    private final boolean grained;
    private final List<Mark> marks = new ArrayList<>();
    private final Clearing clearing = new Clearing();
    private boolean complete = true;

    /** {@code grained} says whether it has a grain, which a pane of glass has not. */
    ViewBlock(PartViews part, PartView view, Breaks breaks, Figures figures, boolean grained) {
        this.part = part;
        this.view = view;
        this.breaks = Breaks.lengthwise(view) ? breaks : Breaks.none(breaks.factor());
        this.scale = breaks.factor();
        this.figures = figures;
        this.grained = grained;
    }

    private Spot spot(Vec2 flat) {
        return new Spot(across(breaks.at(view.across(flat.u()).toDoubleMm())),
                view.high().subtract(flat.v()).doubleValue() * scale);
    }

    /** From the left of the view, what is so far from where figures count from. */
    private double across(double counted) {
        return view.way().fromRight() ? width() - counted : counted;
    }

    private double width() {
        return breaks.at(view.width());
    }

    private double height() {
        return view.height() * scale;
    }

    /** The outline alone, in the order in which pens are laid over each other. */
    private void strokes() {
        view.strokes().stream().sorted(Comparator.comparing(Stroke::visible)).forEach(this::stroke);
        breaks.left().forEach(each -> {
            double at = breaks.at(each.from());
            breakLine(across(at));
            breakLine(across(at + Breaks.GAP));
        });
    }

    private void stroke(Stroke stroke) {
        Pen pen = stroke.visible() ? Pen.SEEN : Pen.HIDDEN;
        Spot from = spot(stroke.from());
        Spot to = spot(stroke.to());
        if (breaks.left().isEmpty() || from.y() != to.y()) {
            add(new Mark.Line(from, to, pen));
            return;
        }
        double one = view.across(stroke.from().u()).toDoubleMm();
        double other = view.across(stroke.to().u()).toDoubleMm();
        breaks.drawn(Math.min(one, other), Math.max(one, other)).forEach(piece -> add(new Mark.Line(
                new Spot(across(piece.from()), from.y()), new Spot(across(piece.to()), from.y()), pen)));
    }

    /** A thin line with a zigzag (ISO 128-2, long breaks; from memory). */
    private void breakLine(double x) {
        double middle = height() / 2;
        List<Spot> spots = List.of(new Spot(x, -ZIGZAG), new Spot(x, middle - ZIGZAG),
                new Spot(x + ZIGZAG / 2, middle - ZIGZAG / 2), new Spot(x - ZIGZAG / 2, middle + ZIGZAG / 2),
                new Spot(x, middle + ZIGZAG), new Spot(x, height() + ZIGZAG));
        for (int i = 1; i < spots.size(); i++) {
            add(new Mark.Line(spots.get(i - 1), spots.get(i), Pen.THIN));
        }
    }

    private void add(Mark mark) {
        marks.add(mark);
        clearing.add(mark);
    }

    List<Mark> draw() {
        strokes();
        centreLines();
        runs();
        if (view.way() == Way.FRONT) {
            datum("face edge", new Spot(width() / 2, height()), true);
            if (grained) {
                grain();
            }
        } else if (view.way() == Way.LEFT || view.way() == Way.RIGHT) {
            boolean left = view.way() == Way.LEFT;
            datum("face side", new Spot(left ? width() : 0, height() / 2), false);
        }
        slopes();
        diameters();
        caption();
        return marks;
    }

    /** Whether all that is to be said found its place. */
    boolean complete() {
        return complete;
    }

    private void runs() {
        List<Level> levels = part.levels().getOrDefault(view.way(), List.of());
        Way way = view.way();
        List<Run.Place> across = new ArrayList<>();
        List<Run.Place> upward = new ArrayList<>();
        for (Level level : levels) {
            PartView.Sight sight = view.sight(level).orElseThrow();
            String figure = figures.figure(level.at());
            if (level.along() == way.across()) {
                Spot at = spot(Vec2.of(view.flat(level.along(), level.at()), sight.near()));
                across.add(new Run.Place(at.x(), at.y() - height(), figure));
            } else {
                Spot at = spot(Vec2.of(sight.near(), view.flat(level.along(), level.at())));
                upward.add(new Run.Place(at.y(), -at.x(), figure));
            }
        }
        if (!across.isEmpty()) {
            new Run(true, way.fromRight() ? width() : 0, height()).draw(across).forEach(this::add);
        }
        if (!upward.isEmpty()) {
            new Run(false, way.fromTop() ? 0 : height(), 0).draw(upward).forEach(this::add);
        }
    }

    private void centreLines() {
        for (PartView.Disc disc : view.discs()) {
            Spot middle = spot(disc.middle());
            double reach = disc.hole().diameter().toDoubleMm() / 2 * scale + CENTRE_BEYOND;
            add(new Mark.Line(middle.plus(-reach, 0), middle.plus(reach, 0), Pen.CHAIN));
            add(new Mark.Line(middle.plus(0, -reach), middle.plus(0, reach), Pen.CHAIN));
        }
    }

    /** A black triangle against the line that figures count from. */
    private void datum(String words, Spot on, boolean level) {
        List<Spot> triangle = level
                ? List.of(on, on.plus(-1.3, 2.2), on.plus(1.3, 2.2))
                : List.of(on, on.plus(on.x() > 0 ? 2.2 : -2.2, -1.3), on.plus(on.x() > 0 ? 2.2 : -2.2, 1.3));
        Mark.Area mark = new Mark.Area(List.of(triangle), 0);
        int shift = 0;
        while (shift < 40 && crossed(shifted(mark, level, shift))) {
            shift++;
        }
        Mark.Area placed = shifted(mark, level, shift < 40 ? shift : 0);
        add(placed);
        words(placed.bounds().middle(), words);
    }

    private Mark.Area shifted(Mark.Area mark, boolean level, int shift) {
        double reach = (level ? width() : height()) / 42;
        double by = reach * (shift % 2 == 0 ? shift / 2 : -(shift + 1) / 2);
        return mark.moved(level ? by : 0, level ? 0 : by);
    }

    /** Whether a line other than the datum runs through the triangle. */
    private boolean crossed(Mark.Area mark) {
        Bounds box = mark.bounds();
        return marks.stream()
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .filter(line -> line.pen() != Pen.SEEN)
                .anyMatch(line -> box.grown(0.3).crossedBy(line.from(), line.to()));
    }

    private void words(Spot anchor, String words) {
        List<Mark> found = clearing.words(anchor, words, Lettering.USUAL);
        complete &= !found.isEmpty();
        marks.addAll(found);
    }

    private void slopes() {
        List<Slope> told = part.slopes().getOrDefault(view.way(), java.util.Set.of()).stream()
                .sorted(Comparator.comparing(Slope::text))
                .toList();
        for (Slope slope : told) {
            List<Stroke> strokes = view.slopes().getOrDefault(slope, List.of());
            List<Stroke> seen = strokes.stream().filter(Stroke::visible).toList();
            List<Stroke> shown = seen.isEmpty() ? strokes : seen;
            Stroke first = shown.stream()
                    .max(Comparator.comparingDouble(s -> spot(s.from()).to(spot(s.to())))).orElseThrow();
            Spot a = spot(first.from());
            Spot b = spot(first.to());
            String count = shown.size() > 1 ? shown.size() + "× " : "";
            words(new Spot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2), count + slope.text());
        }
    }

    private void diameters() {
        Map<String, List<PartView.Disc>> alike = new java.util.LinkedHashMap<>();
        for (PartView.Disc disc : part.holes().getOrDefault(view.way(), List.of())) {
            String figure = figures.figure(disc.hole().diameter())
                    + (disc.hole().form() == RoundHole.Form.COUNTERSINK ? " countersunk" : "");
            alike.computeIfAbsent(figure, d -> new ArrayList<>()).add(disc);
        }
        alike.forEach((figure, discs) -> {
            Spot middle = spot(discs.getFirst().middle());
            double radius = discs.getFirst().hole().diameter().toDoubleMm() / 2 * scale;
            String count = discs.size() > 1 ? discs.size() + "× " : "";
            words(middle.plus(radius * 0.7, -radius * 0.7), count + "⌀ " + figure);
        });
    }

    /** An arrow both ways along the grain, within the part where there is room. */
    private void grain() {
        double wide = Lettering.width("grain", Lettering.USUAL, false) + 16;
        double high = Lettering.height(Lettering.USUAL);
        Spot inside = new Spot(width() / 2, height() / 2);
        boolean fits = width() > wide + 4 && height() > high + 3;
        Spot middle = fits && clearing.free(Bounds.about(inside, wide, high))
                ? inside
                : clearing.near(fits ? inside : new Spot(width() / 2, -2), wide, high).orElse(new Spot(0, -20));
        double end = wide / 2;
        double half = Lettering.width("grain", Lettering.USUAL, false) / 2 + 1;
        for (int sign : new int[]{-1, 1}) {
            Spot tip = middle.plus(sign * end, 0);
            add(new Mark.Line(middle.plus(sign * half, 0), tip, Pen.THIN));
            add(new Mark.Area(List.of(List.of(tip, tip.plus(-sign * 2.2, -0.7), tip.plus(-sign * 2.2, 0.7))), 0));
        }
        add(new Mark.Label(middle, "grain", Lettering.USUAL, false, false));
    }

    private void caption() {
        double wide = Lettering.width(view.way().caption(), Lettering.SMALL, false);
        double high = Lettering.height(Lettering.SMALL);
        Spot middle = new Spot(Math.max(width(), wide) / 2, -3);
        while (!clearing.free(Bounds.about(middle, wide, high))) {
            middle = middle.plus(0, -1);
        }
        add(new Mark.Label(middle, view.way().caption(), Lettering.SMALL, false, false));
    }
}
