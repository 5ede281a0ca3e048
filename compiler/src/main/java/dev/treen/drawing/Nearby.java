package dev.treen.drawing;

import dev.treen.quantity.Exact;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Origin;
import dev.treen.solid.Placed;
import dev.treen.solid.Plane;
import dev.treen.solid.Region;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.SurfaceFace;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The stretch of a joint's parts that matters for the joint. What runs on far beyond it is broken off, so that a tongue on
 * a long board is large enough to be seen.
 */
final class Nearby {
    /** What a face is called along which a part was broken off; no cut of a project can have this name. */
    static final String BROKEN = "\u2026";

    /** So many thicknesses of the thinnest part beside the joint, and so many along it. */
    private static final int BESIDE = 3;
    private static final int ALONG = 9;
    /** What would be broken off and is shorter than this share of what is shown stays. */
    private static final BigFraction SCRAP = BigFraction.of(1, 3);

    private final Map<Side, BigFraction> sides = new EnumMap<>(Side.class);
    private final BigFraction beside;

    private record Extent(BigFraction low, BigFraction high) {
        Extent join(Extent other) {
            return new Extent(least(low, other.low), most(high, other.high));
        }
    }

    private Nearby(List<Placed> parts, Set<String> joints) {
        BigFraction thin = parts.stream().map(Nearby::thickness).reduce(Nearby::least).orElseThrow();
        beside = thin.multiply(BESIDE);
        BigFraction along = thin.multiply(ALONG);
        for (Axis axis : Axis.values()) {
            Extent zone = zone(parts, joints, axis);
            // The end that the eye sees in the usual view is kept: right, front, upper.
            boolean high = axis != Axis.Y;
            BigFraction low = zone.low();
            BigFraction top = zone.high();
            if (Exact.compare(top.subtract(low), along) > 0) {
                if (high) {
                    low = top.subtract(along);
                } else {
                    top = low.add(along);
                }
            }
            sides.put(Side.of(axis, -1), low.subtract(beside));
            sides.put(Side.of(axis, 1), top.add(beside));
        }
    }

    /** The parts near {@code joints}; none may be empty. */
    static List<Placed> of(List<Placed> parts, Set<String> joints) {
        Nearby near = new Nearby(parts, joints);
        return parts.stream().map(p -> new Placed(p.name(), near.broken(p.solid()))).toList();
    }

    private static BigFraction thickness(Placed part) {
        Box box = part.solid().bounds().orElseThrow();
        return Stream.of(Axis.values()).map(box::extent).reduce(Nearby::least).orElseThrow();
    }

    /** Where the first part meets the others, and all that the joint has cut. */
    private static Extent zone(List<Placed> parts, Set<String> joints, Axis axis) {
        List<Extent> zones = new ArrayList<>();
        Box first = parts.getFirst().solid().bounds().orElseThrow();
        for (Placed other : parts.subList(1, parts.size())) {
            Box box = other.solid().bounds().orElseThrow();
            BigFraction low = most(first.min().get(axis), box.min().get(axis));
            BigFraction high = least(first.max().get(axis), box.max().get(axis));
            zones.add(new Extent(least(low, high), most(low, high)));
        }
        for (Placed part : parts) {
            part.solid().surface().faces().stream()
                    .filter(face -> joints.contains(face.origin().name()))
                    .map(SurfaceFace::region)
                    .map(Region::extent)
                    .flatMap(Optional::stream)
                    .forEach(e -> zones.add(new Extent(e.min().get(axis), e.max().get(axis))));
        }
        return zones.stream().reduce(Extent::join).orElseThrow();
    }

    private Solid broken(Solid solid) {
        Solid rest = solid;
        for (Side side : Side.values()) {
            BigFraction at = sides.getOrDefault(side, BigFraction.ZERO);
            BigFraction end = solid.bounds().orElseThrow().coordinate(side);
            BigFraction over = end.subtract(at).multiply(side.sign());
            if (Exact.compare(over, beside.multiply(SCRAP)) > 0) {
                Solid kept = rest.keep(Plane.at(side, at), Origin.cut(BROKEN));
                rest = kept.isEmpty() ? rest : kept;
            }
        }
        return rest;
    }

    private static BigFraction least(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) < 0 ? a : b;
    }

    private static BigFraction most(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) < 0 ? b : a;
    }
}
