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
 * A hole, a countersink, a round tenon or the round end of a slot.
 *
 * @param along the way its middle line runs
 * @param low its lowest measures
 * @param high its highest measures
 * @param form what it is; the diameter of a countersink is that of its mouth
 */
record RoundHole(Measured along, Map<Measured, Length> low, Map<Measured, Length> high, Form form) {
    /** Fewer facets than this are no full circle. */
    private static final int FULL = 20;
    /** Fewer facets than this are no part of one that is worth knowing. */
    private static final int PART = 4;

    /** What is round. */
    enum Form {
        /** A full circle all the way. */
        HOLE,
        /** A cone at the mouth of a hole. */
        COUNTERSINK,
        /** Part of a circle, as at the end of a slot. */
        END
    }

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
        return holes.stream().map(hole -> hole.form() == Form.HOLE ? hole.joined(holes) : hole).toList();
    }

    /** The same from the surface on where it begins at the bottom of a countersink. */
    private RoundHole joined(List<RoundHole> all) {
        Map<Measured, Length> lower = new EnumMap<>(low);
        Map<Measured, Length> higher = new EnumMap<>(high);
        for (RoundHole cone : all) {
            boolean same = cone.form() == Form.COUNTERSINK && cone.along() == along && cone.holds(this);
            if (same && cone.to(along).equals(from(along))) {
                lower.put(along, cone.from(along));
            } else if (same && cone.from(along).equals(to(along))) {
                higher.put(along, cone.to(along));
            }
        }
        return new RoundHole(along, lower, higher, form);
    }

    /** Whether another lies within it, seen end on. */
    private boolean holds(RoundHole other) {
        return List.of(Measured.values()).stream()
                .filter(measured -> measured != along)
                .allMatch(measured -> from(measured).compareTo(other.from(measured)) <= 0
                        && to(measured).compareTo(other.to(measured)) >= 0);
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
        if (normals.size() < PART) {
            return Optional.empty();
        }
        boolean full = normals.size() >= FULL;
        for (Measured measured : Measured.values()) {
            Vec3 arrow = part.view(measured == Measured.LENGTH ? Way.RIGHT
                    : measured == Measured.WIDTH ? Way.ABOVE : Way.FRONT).toViewer();
            if (normals.stream().allMatch(n -> n.dot(arrow).signum() == 0)) {
                return Optional.of(new RoundHole(measured, low, high, full ? Form.HOLE : Form.END));
            }
            boolean cone = cluster.getFirst().face().origin().form() == Origin.Form.CONE;
            if (full && cone && normals.stream().map(n -> n.dot(arrow).signum()).distinct().count() == 1) {
                return Optional.of(new RoundHole(measured, low, high, Form.COUNTERSINK));
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
