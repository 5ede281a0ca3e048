package dev.treen.drawing;

import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.solid.Drawing;
import dev.treen.solid.Stroke;
import dev.treen.solid.Vec2;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A part seen from one way, with the levels and slopes that can be read there and how well. */
final class PartView {
    private final Laid part;
    private final Way way;
    private final List<Stroke> strokes;
    private final BigFraction left;
    private final BigFraction right;
    private final BigFraction low;
    private final BigFraction high;
    private final Map<Level, Sight> sights = new HashMap<>();
    private final Map<Slope, List<Stroke>> slopes = new HashMap<>();
    private final List<Disc> discs = new ArrayList<>();

    /** How well a level is seen. */
    enum Quality {
        /** At the end of a hidden line. */
        END_HIDDEN(0),
        /** As a hidden line. */
        HIDDEN(1),
        /** At the end of a line. */
        END(2),
        /** As a line. */
        LINE(3);

        private final int rank;

        Quality(int rank) {
            this.rank = rank;
        }

        /** The higher, the better it is seen. */
        int rank() {
            return rank;
        }
    }

    /**
     * A level as it is seen in this view.
     *
     * @param near where its line comes nearest to the left or to the foot of the view
     */
    record Sight(Quality quality, BigFraction near) {}

    /** A round hole seen end on. */
    record Disc(RoundHole hole, Vec2 middle, boolean visible) {}

    PartView(Laid part, Way way, List<RoundHole> holes) {
        this.part = part;
        this.way = way;
        this.strokes = Drawing.lines(List.of(part.placed()), part.view(way)).strokes();
        List<Vec2> ends = strokes.stream().<Vec2>mapMulti((s, sink) -> {
            sink.accept(s.from());
            sink.accept(s.to());
        }).toList();
        left = ends.stream().map(Vec2::u).min(Exact::compare).orElseThrow();
        right = ends.stream().map(Vec2::u).max(Exact::compare).orElseThrow();
        low = ends.stream().map(Vec2::v).min(Exact::compare).orElseThrow();
        high = ends.stream().map(Vec2::v).max(Exact::compare).orElseThrow();
        List<Hollow> hollows = holes.stream().map(this::hollow).toList();
        List<Stroke> straight = strokes.stream().filter(s -> hollows.stream().noneMatch(h -> h.holds(s))).toList();
        straight.forEach(this::read);
        hollows.forEach(this::read);
    }

    /** The rectangle in this view in which a hole lies. */
    private record Hollow(RoundHole hole, Vec2 least, Vec2 most, List<Stroke> within) {
        boolean holds(Stroke stroke) {
            return holds(stroke.from()) && holds(stroke.to());
        }

        private boolean holds(Vec2 point) {
            return Exact.compare(point.u(), least.u()) >= 0 && Exact.compare(point.u(), most.u()) <= 0
                    && Exact.compare(point.v(), least.v()) >= 0 && Exact.compare(point.v(), most.v()) <= 0;
        }
    }

    private Hollow hollow(RoundHole hole) {
        BigFraction u1 = flat(way.across(), hole.from(way.across()));
        BigFraction u2 = flat(way.across(), hole.to(way.across()));
        BigFraction v1 = flat(way.upward(), hole.from(way.upward()));
        BigFraction v2 = flat(way.upward(), hole.to(way.upward()));
        boolean swapU = Exact.compare(u1, u2) > 0;
        boolean swapV = Exact.compare(v1, v2) > 0;
        Hollow hollow = new Hollow(hole, Vec2.of(swapU ? u2 : u1, swapV ? v2 : v1),
                Vec2.of(swapU ? u1 : u2, swapV ? v1 : v2), List.of());
        return new Hollow(hole, hollow.least(), hollow.most(), strokes.stream().filter(hollow::holds).toList());
    }

    /** Where a measure lies on paper: the reverse of {@link #across(BigFraction)} and {@link #upward(BigFraction)}. */
    BigFraction flat(Measured measured, Length at) {
        if (measured == way.across()) {
            return way.fromRight() ? right.subtract(at.mm()) : left.add(at.mm());
        }
        return way.fromTop() ? high.subtract(at.mm()) : low.add(at.mm());
    }

    Length across(BigFraction u) {
        return Length.ofMm(way.fromRight() ? right.subtract(u) : u.subtract(left));
    }

    Length upward(BigFraction v) {
        return Length.ofMm(way.fromTop() ? high.subtract(v) : v.subtract(low));
    }

    private void read(Stroke stroke) {
        boolean upright = stroke.from().u().equals(stroke.to().u());
        boolean level = stroke.from().v().equals(stroke.to().v());
        Quality line = stroke.visible() ? Quality.LINE : Quality.HIDDEN;
        Quality end = stroke.visible() ? Quality.END : Quality.END_HIDDEN;
        if (upright) {
            see(way.across(), across(stroke.from().u()), line, least(stroke.from().v(), stroke.to().v()));
        } else if (level) {
            see(way.upward(), upward(stroke.from().v()), line, least(stroke.from().u(), stroke.to().u()));
        } else {
            for (Vec2 point : List.of(stroke.from(), stroke.to())) {
                see(way.across(), across(point.u()), end, point.v());
                see(way.upward(), upward(point.v()), end, point.u());
            }
            Slope.of(way.across(), Length.ofMm(stroke.to().u().subtract(stroke.from().u())), way.upward(),
                    Length.ofMm(stroke.to().v().subtract(stroke.from().v())))
                    .ifPresent(slope -> slopes.computeIfAbsent(slope, s -> new ArrayList<>()).add(stroke));
        }
    }

    private static BigFraction least(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) < 0 ? a : b;
    }

    private void see(Measured along, Length at, Quality quality, BigFraction near) {
        sights.merge(new Level(along, at), new Sight(quality, near), (known, now) -> {
            int order = known.quality().compareTo(now.quality());
            boolean nearer = order == 0 && Exact.compare(now.near(), known.near()) < 0;
            return order < 0 || nearer ? now : known;
        });
    }

    private void read(Hollow hollow) {
        RoundHole hole = hollow.hole();
        boolean visible = hollow.within().stream().anyMatch(Stroke::visible);
        if (hole.form() == RoundHole.Form.END) {
            extent(hollow, visible ? Quality.LINE : Quality.HIDDEN);
            return;
        }
        if (hole.along() != way.across() && hole.along() != way.upward()) {
            Vec2 middle = Vec2.of(flat(way.across(), hole.middle(way.across())),
                    flat(way.upward(), hole.middle(way.upward())));
            discs.add(new Disc(hole, middle, visible));
            Quality quality = visible ? Quality.LINE : Quality.END_HIDDEN;
            see(way.across(), hole.middle(way.across()), quality, middle.v());
            see(way.upward(), hole.middle(way.upward()), quality, middle.u());
            return;
        }
        if (hole.form() == RoundHole.Form.COUNTERSINK) {
            // It is sunk until the head fits, and not to a depth.
            return;
        }
        Quality quality = visible ? Quality.END : Quality.HIDDEN;
        boolean lying = hole.along() == way.across();
        for (Length end : List.of(hole.from(hole.along()), hole.to(hole.along()))) {
            if (!end.isZero() && !end.equals(part.all(hole.along()))) {
                see(hole.along(), end, quality, lying ? hollow.least().v() : hollow.least().u());
            }
        }
    }

    /** The round end of a slot: how far it reaches each way, and nothing of its facets. */
    private void extent(Hollow hollow, Quality quality) {
        RoundHole hole = hollow.hole();
        for (Measured measured : List.of(way.across(), way.upward())) {
            BigFraction near = measured == way.across() ? hollow.least().v() : hollow.least().u();
            for (Length end : List.of(hole.from(measured), hole.to(measured))) {
                if (!end.isZero() && !end.equals(part.all(measured))) {
                    see(measured, end, quality, near);
                }
            }
        }
    }

    Way way() {
        return way;
    }

    List<Stroke> strokes() {
        return strokes;
    }

    Map<Level, Sight> sights() {
        return sights;
    }

    Optional<Sight> sight(Level level) {
        return Optional.ofNullable(sights.get(level));
    }

    Map<Slope, List<Stroke>> slopes() {
        return slopes;
    }

    List<Disc> discs() {
        return discs;
    }

    BigFraction left() {
        return left;
    }

    BigFraction high() {
        return high;
    }

    double width() {
        return right.subtract(left).doubleValue();
    }

    double height() {
        return high.subtract(low).doubleValue();
    }
}
