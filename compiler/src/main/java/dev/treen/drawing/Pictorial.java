package dev.treen.drawing;

import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Drawing;
import dev.treen.solid.Fill;
import dev.treen.solid.Placed;
import dev.treen.solid.Stroke;
import dev.treen.solid.Vec2;
import dev.treen.solid.Vec3;
import dev.treen.solid.View;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** An assembly as the eye sees it: isometric (ISO 5456-3), faces in three light greys, names outside with leaders. */
final class Pictorial {
    private static final View VIEW = View.ISOMETRIC;
    private static final double PITCH = 5.5;
    private static final double ASIDE = 9;

    private final Drawing drawing;
    private final List<Mark> ways = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final double scale;
    private final double dx;
    private final double dy;

    Pictorial(Drawing drawing, Bounds room, double forNames) {
        this.drawing = drawing;
        Bounds all = drawing.strokes().stream()
                .flatMap(s -> java.util.stream.Stream.of(s.from(), s.to()))
                .map(drawing.view()::onPaper)
                .map(s -> new Bounds(s.x(), -s.y(), s.x(), -s.y()))
                .reduce(Bounds::join)
                .orElseThrow();
        scale = Math.min((room.width() - 2 * forNames) / all.width(), room.height() / all.height());
        dx = room.middle().x() - all.middle().x() * scale;
        dy = room.middle().y() - all.middle().y() * scale;
    }

    /** The drawing so many times as large as the parts, with the assembly's origin at nought. */
    Pictorial(Drawing drawing, double scale) {
        this.drawing = drawing;
        this.scale = scale;
        this.dx = 0;
        this.dy = 0;
    }

    private Spot spot(View.Spot on) {
        return new Spot(dx + on.x() * scale, dy - on.y() * scale);
    }

    Spot spot(Vec2 flat) {
        return spot(drawing.view().onPaper(flat));
    }

    /** What is seen of parts. */
    static Drawing seen(List<Placed> parts) {
        return Drawing.shaded(parts, VIEW);
    }

    /** The parts where they stand. */
    static Sheet assembled(String title, List<Placed> parts, Drawing seen, LengthFormat format) {
        return sheet(title, "assembled", parts, seen, List.of(), format);
    }

    /** The parts drawn out of their joints, with the ways along which they go together. */
    static Sheet exploded(String title, List<Placed> parts, Drawing seen, List<Explosion.Back> back,
            LengthFormat format) {
        return sheet(title, "taken apart", parts, seen, back, format);
    }

    /** The parts out of their joints. */
    static List<Placed> moved(List<Placed> parts, Map<String, Vec3> shifts) {
        return parts.stream()
                .map(p -> new Placed(p.name(), p.solid().translate(shifts.getOrDefault(p.name(), Vec3.ZERO))))
                .toList();
    }

    private static Sheet sheet(String title, String what, List<Placed> parts, Drawing seen,
            List<Explosion.Back> back, LengthFormat format) {
        Paper paper = Paper.of(format);
        double longest = parts.stream()
                .mapToDouble(p -> Lettering.width(p.name(), Lettering.USUAL, false)).max().orElse(0);
        double names = Math.min(longest, paper.width() / 5) + ASIDE + 2;
        Pictorial pictorial = new Pictorial(seen, paper.room(), names);
        pictorial.ways(parts, back);
        pictorial.faces();
        pictorial.edges();
        String unseen = pictorial.names(parts, paper.room());
        List<Mark> frame = paper.frame(title + ", " + what, unseen.isEmpty()
                ? parts.size() + (parts.size() == 1 ? " part" : " parts")
                : unseen, List.of(new Paper.Cell("view", "isometric"), new Paper.Cell("scale", "none")), false);
        List<Mark> marks = new ArrayList<>(pictorial.ways);
        marks.addAll(pictorial.marks);
        String description = "An isometric view. " + String.join(", ", parts.stream().map(Placed::name).toList()) + ".";
        return new Sheet(paper.width(), paper.height(), title + ", " + what, description, "", frame, marks);
    }

    /** For each part out of its place, the line back to it. */
    List<Mark> waysOf(List<Placed> parts, Map<String, Vec3> shifts) {
        ways(parts, parts.stream()
                .map(part -> new Explosion.Back(part.name(), shifts.getOrDefault(part.name(), Vec3.ZERO).negate()))
                .toList());
        return List.copyOf(ways);
    }

    private void ways(List<Placed> parts, List<Explosion.Back> all) {
        Map<String, Vec3> centres = new LinkedHashMap<>();
        parts.forEach(part -> centres.put(part.name(), part.solid().bounds().orElseThrow().centre()));
        for (Explosion.Back back : all) {
            Vec3 centre = Optional.ofNullable(centres.get(back.part())).orElseThrow();
            if (back.by().lengthSquared().signum() != 0) {
                View view = drawing.view();
                ways.add(new Mark.Line(spot(view.onPaper(centre)), spot(view.onPaper(centre.plus(back.by()))),
                        Pen.CHAIN));
            }
        }
    }

    private void faces() {
        for (Fill fill : drawing.fills()) {
            List<List<Spot>> outlines = fill.outlines().stream().map(o -> o.stream().map(this::spot).toList()).toList();
            marks.add(new Mark.Area(outlines, grey(fill.face().plane().normal())));
        }
    }

    /** Light comes from above and a little from the left. */
    static int grey(Vec3 normal) {
        double up = normal.z().doubleValue() / normal.length();
        double left = -normal.y().doubleValue() / normal.length();
        return (int) Math.round(Math.clamp(212 + 43 * Math.max(up, 0) + 24 * Math.max(left, 0), 200, 255));
    }

    private void edges() {
        for (Stroke stroke : drawing.visible()) {
            marks.add(new Mark.Line(spot(stroke.from()), spot(stroke.to()), Pen.SEEN));
        }
    }

    /** A place on each part that is seen, where its name points to, by the part; parts with more area first. */
    Map<String, Spot> anchors() {
        Map<String, Spot> anchors = new LinkedHashMap<>();
        Map<String, Double> areas = new LinkedHashMap<>();
        for (Fill fill : drawing.fills()) {
            for (List<Vec2> outline : fill.outlines()) {
                List<Spot> spots = outline.stream().map(this::spot).toList();
                double area = -Flat.area(spots);
                if (area > areas.getOrDefault(fill.part(), 0.0)) {
                    areas.put(fill.part(), area);
                    anchors.put(fill.part(), Flat.inside(spots));
                }
            }
        }
        Map<String, Spot> sorted = new LinkedHashMap<>();
        anchors.keySet().stream()
                .sorted(Comparator.comparingDouble((String n) -> -areas.getOrDefault(n, 0.0)).thenComparing(n -> n))
                .forEach(name -> sorted.put(name, at(anchors, name)));
        return sorted;
    }

    /** Writes the names beside the picture; returns what there was to say of parts without one. */
    private String names(List<Placed> parts, Bounds room) {
        Map<String, Spot> anchors = anchors();
        int named = name(anchors, Mark.bounds(marks), room, ASIDE, name -> name, marks);
        List<String> hidden = parts.stream().map(Placed::name).filter(n -> !anchors.containsKey(n)).toList();
        String unseen = hidden.isEmpty() ? "" : "not seen: " + String.join(", ", hidden);
        int unnamed = anchors.size() - named;
        return unnamed == 0 ? unseen : unnamed + " parts without their names" + (unseen.isEmpty() ? "" : "; " + unseen);
    }

    /** Writes as many of the names as there is room for beside a picture, those that come first; returns how many. */
    static int name(Map<String, Spot> anchors, Bounds picture, Bounds room, double aside,
            UnaryOperator<String> called, List<Mark> marks) {
        int most = (int) (room.height() / PITCH);
        List<String> ordered = anchors.keySet().stream().limit(2L * most).toList();
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (String name : ordered) {
            boolean wantsLeft = at(anchors, name).x() < picture.middle().x();
            boolean goesLeft = right.size() >= most || (wantsLeft && left.size() < most);
            (goesLeft ? left : right).add(name);
        }
        column(left, anchors, picture, room, -aside, called, marks);
        column(right, anchors, picture, room, aside, called, marks);
        return ordered.size();
    }

    private static Spot at(Map<String, Spot> anchors, String name) {
        return Optional.ofNullable(anchors.get(name)).orElseThrow();
    }

    private static void column(List<String> names, Map<String, Spot> anchors, Bounds picture, Bounds room, double aside,
            UnaryOperator<String> called, List<Mark> marks) {
        boolean left = aside < 0;
        if (names.isEmpty()) {
            return;
        }
        List<String> sorted = names.stream()
                .sorted(Comparator.comparingDouble((String n) -> at(anchors, n).y()).thenComparing(n -> n)).toList();
        double last = room.bottom() - 2 - (sorted.size() - 1) * PITCH;
        List<Double> at = Spread.apart(sorted.stream().map(n -> at(anchors, n).y()).toList(), PITCH, room.top() + 2);
        double over = Math.max(0, at.getFirst() > last ? at.getLast() - (room.bottom() - 2) : 0);
        double edge = (left ? picture.left() : picture.right()) + aside;
        for (int i = 0; i < sorted.size(); i++) {
            String name = Flat.shortened(called.apply(sorted.get(i)), room.width() / 5);
            double wide = Lettering.width(name, Lettering.USUAL, false);
            double y = Math.min(at.get(i) - over, room.bottom() - 2 - (sorted.size() - 1 - i) * PITCH);
            double x = left ? edge - wide / 2 : edge + wide / 2;
            Spot from = new Spot(left ? edge + 1 : edge - 1, y);
            Spot anchor = at(anchors, sorted.get(i));
            marks.add(new Mark.Line(from, anchor, Pen.THIN));
            marks.add(new Mark.Ring(anchor, 0.6, true));
            marks.add(new Mark.Label(new Spot(x, y), name, Lettering.USUAL, false, false,
                    left ? Mark.Label.From.RIGHT : Mark.Label.From.LEFT));
        }
    }
}
