package dev.treen.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Works out the true surface of a solid from its pieces.
 *
 * <p>Faces are gathered by plane. Where a face of one piece looks into a face of another, both vanish: that was a seam.
 * What is left of each plane is outlined, and the outlines of all planes are gathered by the line they lie on, so that
 * each edge knows the faces on its sides.
 */
final class SurfaceBuilder {

    private final Map<Plane, List<Patch>> facing = new LinkedHashMap<>();
    private final Map<Line3, List<Stretch>> lines = new LinkedHashMap<>();

    private record Stretch(Rat low, Rat high, SurfaceEdge.Rim rim) {}

    private SurfaceBuilder() {
    }

    static Surface build(Solid solid) {
        SurfaceBuilder builder = new SurfaceBuilder();
        for (Convex piece : solid.pieces()) {
            for (Facet facet : piece.facets()) {
                builder.facing.computeIfAbsent(facet.plane(), p -> new ArrayList<>())
                        .addAll(facet.patches(piece));
            }
        }
        List<SurfaceFace> faces = new ArrayList<>();
        builder.facing.forEach((plane, patches) -> builder.open(plane, patches, faces));
        List<SurfaceEdge> edges = new ArrayList<>();
        builder.lines.forEach((line, stretches) -> edges(line, stretches, edges));
        return new Surface(faces, edges);
    }

    /** Adds what is open of one plane to the faces, and its outline to the lines. */
    private void open(Plane plane, List<Patch> patches, List<SurfaceFace> faces) {
        List<Patch> open = Patch.minus(patches, facing.getOrDefault(plane.flip(), List.of()));
        Map<Origin, List<Poly>> byOrigin = new LinkedHashMap<>();
        open.forEach(patch -> byOrigin.computeIfAbsent(patch.origin(), o -> new ArrayList<>()).add(patch.poly()));
        byOrigin.forEach((origin, polys) -> faces.add(new SurfaceFace(origin, new Region(plane, polys))));
        Frame frame = Frame.of(plane);
        for (Outline.Border border : Outline.borders(open)) {
            Vec3 from = frame.lift(border.from());
            Vec3 to = frame.lift(border.to());
            Line3 line = Line3.through(from, to);
            Rat a = line.parameter(from);
            Rat b = line.parameter(to);
            lines.computeIfAbsent(line, l -> new ArrayList<>(2))
                    .add(new Stretch(a.min(b), a.max(b), new SurfaceEdge.Rim(plane, border.origin())));
        }
    }

    private static void edges(Line3 line, List<Stretch> stretches, List<SurfaceEdge> edges) {
        TreeSet<Rat> stops = new TreeSet<>();
        stretches.forEach(s -> {
            stops.add(s.low());
            stops.add(s.high());
        });
        Rat start = stops.first();
        List<SurfaceEdge.Rim> current = List.of();
        Rat before = start;
        for (Rat stop : stops) {
            if (stop.equals(before)) {
                continue;
            }
            Rat from = before;
            List<SurfaceEdge.Rim> rims = stretches.stream()
                    .filter(s -> s.low().compareTo(from) <= 0 && s.high().compareTo(stop) >= 0)
                    .map(Stretch::rim)
                    .distinct()
                    .toList();
            if (!rims.equals(current)) {
                emit(line, start, before, current, edges);
                start = before;
                current = rims;
            }
            before = stop;
        }
        emit(line, start, before, current, edges);
    }

    private static void emit(Line3 line, Rat from, Rat to, List<SurfaceEdge.Rim> rims, List<SurfaceEdge> edges) {
        if (!rims.isEmpty() && from.lessThan(to)) {
            edges.add(new SurfaceEdge(line.point(from), line.point(to), rims));
        }
    }
}
