package dev.treen.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The boundary of a union of flat convex bits that share no area.
 *
 * <p>Edges are gathered by the line they lie on. Where two bits meet, their edges run along that line in opposite ways
 * and cancel; what is left is the boundary, with the area on its left.
 */
final class Outline {

    /** A stretch of boundary with the area on its left, and the origin of the surface there. */
    record Border(Vec2 from, Vec2 to, Origin origin) {}

    private record Edge(Intervals.Stretch stretch, boolean forward, Origin origin) {}

    private Outline() {
    }

    static List<Border> borders(List<Patch> patches) {
        Map<Line2, List<Edge>> lines = new LinkedHashMap<>();
        for (Patch patch : patches) {
            List<Vec2> corners = patch.poly().corners();
            for (int i = 0; i < corners.size(); i++) {
                Vec2 from = corners.get(i);
                Vec2 to = patch.poly().next(i);
                Line2 line = Line2.through(from, to);
                Rat start = line.parameter(from);
                Rat end = line.parameter(to);
                boolean forward = start.lessThan(end);
                Intervals.Stretch stretch = new Intervals.Stretch(start.min(end), start.max(end));
                lines.computeIfAbsent(line, l -> new ArrayList<>(2)).add(new Edge(stretch, forward, patch.origin()));
            }
        }
        List<Border> borders = new ArrayList<>();
        lines.forEach((line, edges) -> remaining(line, edges, borders));
        return borders;
    }

    private static void remaining(Line2 line, List<Edge> edges, List<Border> borders) {
        Intervals forward = gather(edges, true);
        Intervals backward = gather(edges, false);
        for (Edge edge : edges) {
            Intervals own = new Intervals(List.of(edge.stretch()));
            for (Intervals.Stretch left : own.minus(edge.forward() ? backward : forward).stretches()) {
                Vec2 low = line.point(left.low());
                Vec2 high = line.point(left.high());
                borders.add(
                        edge.forward() ? new Border(low, high, edge.origin()) : new Border(high, low, edge.origin()));
            }
        }
    }

    private static Intervals gather(List<Edge> edges, boolean forward) {
        return Intervals.union(edges.stream().filter(e -> e.forward() == forward).map(Edge::stretch).toList());
    }

    /**
     * The boundary as closed outlines with true corners only: counter-clockwise around areas, clockwise around holes. Areas
     * that touch at a corner only get outlines of their own.
     */
    static List<List<Vec2>> loops(List<Patch> patches) {
        Map<Vec2, List<Border>> byStart = new HashMap<>();
        List<Border> borders = borders(patches);
        borders.forEach(b -> byStart.computeIfAbsent(b.from(), p -> new ArrayList<>(1)).add(b));
        List<List<Vec2>> loops = new ArrayList<>();
        for (Border start : borders) {
            if (!leaving(byStart, start.from()).contains(start)) {
                continue;
            }
            List<Vec2> loop = new ArrayList<>();
            Border at = start;
            do {
                loop.add(at.from());
                leaving(byStart, at.from()).remove(at);
                at = sharpestLeft(at, leaving(byStart, at.to()), start);
            } while (!at.equals(start));
            loops.add(trueCorners(loop));
        }
        return loops;
    }

    private static List<Border> leaving(Map<Vec2, List<Border>> byStart, Vec2 corner) {
        return byStart.getOrDefault(corner, List.of());
    }

    /** The next border: where several leave a corner, the one that turns most to the left keeps to the same area. */
    private static Border sharpestLeft(Border from, List<Border> choices, Border start) {
        Border best = start;
        boolean found = start.from().equals(from.to());
        for (Border choice : choices) {
            if (!found || turnsMore(from, choice, best)) {
                best = choice;
                found = true;
            }
        }
        return best;
    }

    private static boolean turnsMore(Border from, Border a, Border b) {
        Vec2 way = from.to().minus(from.from());
        Vec2 toA = a.to().minus(a.from());
        Vec2 toB = b.to().minus(b.from());
        int halfA = half(way, toA);
        int halfB = half(way, toB);
        return halfA != halfB ? halfA > halfB : toB.cross(toA).signum() > 0;
    }

    /** Plus one for a turn to the left, zero for straight on, minus one to the right; nothing turns straight back. */
    private static int half(Vec2 way, Vec2 next) {
        return way.cross(next).signum();
    }

    private static List<Vec2> trueCorners(List<Vec2> loop) {
        List<Vec2> corners = new ArrayList<>(loop.size());
        int n = loop.size();
        for (int i = 0; i < n; i++) {
            Vec2 before = loop.get((i + n - 1) % n);
            Vec2 here = loop.get(i);
            if (!here.minus(before).cross(loop.get((i + 1) % n).minus(here)).isZero()) {
                corners.add(here);
            }
        }
        return corners;
    }
}
