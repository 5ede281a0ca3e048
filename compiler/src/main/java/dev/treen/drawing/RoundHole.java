package dev.treen.drawing;

import dev.treen.quantity.Length;
import dev.treen.solid.Origin;
import dev.treen.solid.SurfaceFace;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A hole or a round tenon.
 *
 * @param along the way its middle line runs
 * @param low its lowest measures
 * @param high its highest measures
 */
record RoundHole(Measured along, Map<Measured, Length> low, Map<Measured, Length> high) {
    /** Fewer facets than this are no full circle. */
    private static final int FULL = 20;

    Length from(Measured measured) {
        return low.getOrDefault(measured, Length.ZERO);
    }

    Length to(Measured measured) {
        return high.getOrDefault(measured, Length.ZERO);
    }

    /** The middle, as far as it is one. */
    Length middle(Measured measured) {
        return from(measured).plus(to(measured)).dividedBy(2);
    }

    Length diameter() {
        Measured across = along == Measured.LENGTH ? Measured.WIDTH : Measured.LENGTH;
        return to(across).minus(from(across));
    }

    /** All round holes of a part. */
    static List<RoundHole> of(Laid part) {
        List<RoundHole> holes = new ArrayList<>();
        for (List<Facet> cluster : clusters(part)) {
            of(part, cluster).ifPresent(holes::add);
        }
        return holes;
    }

    private record Facet(SurfaceFace face, List<Vec3> corners) {}

    private static Optional<RoundHole> of(Laid part, List<Facet> cluster) {
        Map<Measured, Length> low = new EnumMap<>(Measured.class);
        Map<Measured, Length> high = new EnumMap<>(Measured.class);
        Set<Vec3> normals = new HashSet<>();
        for (Facet facet : cluster) {
            normals.add(facet.face().plane().normal());
            for (Vec3 corner : facet.corners()) {
                for (Measured measured : Measured.values()) {
                    Length at = part.measure(measured, corner);
                    low.merge(measured, at, Length::min);
                    high.merge(measured, at, Length::max);
                }
            }
        }
        if (normals.size() < FULL) {
            return Optional.empty();
        }
        for (Measured measured : Measured.values()) {
            Vec3 arrow = part.view(measured == Measured.LENGTH ? Way.RIGHT
                    : measured == Measured.WIDTH ? Way.ABOVE : Way.FRONT).toViewer();
            if (normals.stream().allMatch(n -> n.dot(arrow).signum() == 0)) {
                return Optional.of(new RoundHole(measured, low, high));
            }
        }
        return Optional.empty();
    }

    /** Facets that hang together by their corners. */
    private static List<List<Facet>> clusters(Laid part) {
        Map<Origin, List<Facet>> byOrigin = new LinkedHashMap<>();
        for (SurfaceFace face : part.solid().surface().faces()) {
            if (face.origin().round()) {
                face.region().pieces().forEach(piece -> byOrigin
                        .computeIfAbsent(face.origin(), o -> new ArrayList<>())
                        .add(new Facet(face, piece)));
            }
        }
        List<List<Facet>> clusters = new ArrayList<>();
        byOrigin.values().forEach(facets -> clusters.addAll(hanging(facets)));
        return clusters;
    }

    private static List<List<Facet>> hanging(List<Facet> facets) {
        Map<Vec3, List<Facet>> byCorner = new HashMap<>();
        facets.forEach(f -> f.corners().forEach(c -> byCorner.computeIfAbsent(c, x -> new ArrayList<>()).add(f)));
        Set<Facet> seen = new HashSet<>();
        List<List<Facet>> clusters = new ArrayList<>();
        for (Facet start : facets) {
            if (seen.add(start)) {
                List<Facet> cluster = new ArrayList<>(List.of(start));
                for (int i = 0; i < cluster.size(); i++) {
                    for (Vec3 corner : cluster.get(i).corners()) {
                        for (Facet next : byCorner.getOrDefault(corner, List.of())) {
                            if (seen.add(next)) {
                                cluster.add(next);
                            }
                        }
                    }
                }
                clusters.add(cluster);
            }
        }
        return clusters;
    }
}
