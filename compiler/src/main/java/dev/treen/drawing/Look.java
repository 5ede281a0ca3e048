package dev.treen.drawing;

import dev.treen.quantity.Length;
import dev.treen.solid.SurfaceEdge;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a part looks like, wherever it stands: all its edges, measured from left end, face edge and face side. */
record Look(Set<Set<List<Length>>> edges) {
    static Look of(Laid part) {
        Set<Set<List<Length>>> edges = new HashSet<>();
        for (SurfaceEdge edge : part.edges()) {
            edges.add(Set.copyOf(List.of(corner(part, edge.from()), corner(part, edge.to()))));
        }
        return new Look(edges);
    }

    private static List<Length> corner(Laid part, dev.treen.solid.Vec3 point) {
        return List.of(part.measure(Measured.LENGTH, point), part.measure(Measured.WIDTH, point),
                part.measure(Measured.THICKNESS, point));
    }
}
