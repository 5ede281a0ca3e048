package dev.treen.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * A triangle of a solid's surface, for three-dimensional pictures.
 *
 * @param a a corner
 * @param b the next corner counter-clockwise, seen from outside
 * @param c the last corner
 * @param normal an arrow out of the material, of any length
 * @param origin the cut that made the face
 */
public record Triangle(Vec3 a, Vec3 b, Vec3 c, Vec3 normal, Origin origin) {

    /**
     * The whole surface of a solid as triangles that meet corner to corner, so that it is watertight: every side of a
     * triangle is the side of another one, run the other way.
     */
    public static List<Triangle> of(Solid solid) {
        Map<Line3, NavigableSet<Rat>> stops = new LinkedHashMap<>();
        List<SurfaceFace> faces = solid.surface().faces();
        for (SurfaceFace face : faces) {
            face.region().pieces().forEach(bit -> note(bit, stops));
        }
        List<Triangle> triangles = new ArrayList<>();
        for (SurfaceFace face : faces) {
            for (List<Vec3> bit : face.region().pieces()) {
                List<Vec3> refined = refine(bit, stops);
                fan(refined, refined.size() == bit.size(), face, triangles);
            }
        }
        return triangles;
    }

    private static void note(List<Vec3> bit, Map<Line3, NavigableSet<Rat>> stops) {
        for (int i = 0; i < bit.size(); i++) {
            Vec3 from = bit.get(i);
            Vec3 to = bit.get((i + 1) % bit.size());
            Line3 line = Line3.through(from, to);
            NavigableSet<Rat> own = stops.computeIfAbsent(line, l -> new TreeSet<>());
            own.add(line.parameter(from));
            own.add(line.parameter(to));
        }
    }

    /** The outline with all corners of neighbours that lie within its sides. */
    private static List<Vec3> refine(List<Vec3> bit, Map<Line3, NavigableSet<Rat>> stops) {
        List<Vec3> refined = new ArrayList<>(bit.size());
        for (int i = 0; i < bit.size(); i++) {
            Vec3 from = bit.get(i);
            Vec3 to = bit.get((i + 1) % bit.size());
            refined.add(from);
            Line3 line = Line3.through(from, to);
            Rat a = line.parameter(from);
            Rat b = line.parameter(to);
            NavigableSet<Rat> all = stops.getOrDefault(line, new TreeSet<>());
            NavigableSet<Rat> within = all.subSet(a.min(b), false, a.max(b), false);
            (a.lessThan(b) ? within : within.descendingSet()).forEach(stop -> refined.add(line.point(stop)));
        }
        return refined;
    }

    /** Triangles from one corner, or from the middle where corners lie within sides and would give flat triangles. */
    private static void fan(List<Vec3> outline, boolean trueCorners, SurfaceFace face, List<Triangle> triangles) {
        Vec3 normal = face.plane().normal();
        int n = outline.size();
        if (trueCorners) {
            for (int i = 2; i < n; i++) {
                triangles.add(
                        new Triangle(outline.getFirst(), outline.get(i - 1), outline.get(i), normal, face.origin()));
            }
            return;
        }
        Vec3 middle = outline.stream().reduce(Vec3.ZERO, Vec3::plus).times(Rat.of(1, n));
        for (int i = 0; i < n; i++) {
            triangles.add(new Triangle(middle, outline.get(i), outline.get((i + 1) % n), normal, face.origin()));
        }
    }
}
