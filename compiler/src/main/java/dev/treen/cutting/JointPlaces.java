package dev.treen.cutting;

import dev.treen.joinery.Axes;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Direction;
import dev.treen.model.Placing;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where joints touch a part, as rectangles on its wide face: where it and the other part lie in or against each other, and
 * what the joint cuts.
 */
final class JointPlaces {
    /** From corner to corner; as flat as a face or an edge where parts only touch. */
    private record Reach(Vec3 min, Vec3 max) {}

    private final Joined joined;

    JointPlaces(Joined joined) {
        this.joined = joined;
    }

    /** The places on {@code part}, from the end and edge where its length and width begin; none where it is not placed. */
    List<Rectangle> of(FinishedPart part) {
        Optional<Placing> placing = part.part().placing();
        Optional<Solid> solid = part.solid();
        Optional<Box> own = solid.flatMap(Solid::bounds);
        if (placing.isEmpty() || own.isEmpty()) {
            return List.of();
        }
        List<Reach> reaches = new ArrayList<>();
        for (MadeJoint joint : joined.joints()) {
            other(joint, part).ifPresent(name -> {
                joined.part(name)
                        .flatMap(FinishedPart::solid)
                        .flatMap(Solid::bounds)
                        .flatMap(box -> common(own.get(), box))
                        .ifPresent(reaches::add);
                // Pairs of one statement share its name, so faces of a name may lie at both ends: each counts by itself.
                solid.get().surface().madeBy(joint.joint().name())
                        .flatMap(face -> face.region().extent().stream())
                        .map(extent -> new Reach(extent.min(), extent.max()))
                        .forEach(reaches::add);
            });
        }
        List<Rectangle> found = reaches.stream()
                .map(reach -> seen(reach, own.get(), placing.get(), part))
                .distinct()
                .toList();
        return found.stream().filter(one -> found.stream().noneMatch(other -> holds(other, one))).toList();
    }

    private static boolean holds(Rectangle outer, Rectangle inner) {
        return !outer.equals(inner)
                && outer.x().compareTo(inner.x()) <= 0
                && outer.y().compareTo(inner.y()) <= 0
                && outer.x().plus(outer.length()).compareTo(inner.x().plus(inner.length())) >= 0
                && outer.y().plus(outer.width()).compareTo(inner.y().plus(inner.width())) >= 0;
    }

    private static Optional<String> other(MadeJoint joint, FinishedPart part) {
        String left = joint.meeting().left().part().name();
        String right = joint.meeting().right().part().name();
        String name = part.part().name();
        return left.equals(name) ? Optional.of(right) : right.equals(name) ? Optional.of(left) : Optional.empty();
    }

    /** What two boxes have in common, be it a face or an edge. */
    private static Optional<Reach> common(Box a, Box b) {
        Vec3 min = a.min();
        Vec3 max = a.max();
        for (int i = 0; i < 3; i++) {
            var axis = Axes.of(i);
            BigFraction low = greater(a.min().get(axis), b.min().get(axis));
            BigFraction high = lesser(a.max().get(axis), b.max().get(axis));
            if (Exact.compare(low, high) > 0) {
                return Optional.empty();
            }
            min = min.with(axis, low);
            max = max.with(axis, high);
        }
        return Optional.of(new Reach(min, max));
    }

    private static BigFraction greater(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) >= 0 ? a : b;
    }

    private static BigFraction lesser(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) <= 0 ? a : b;
    }

    private static Rectangle seen(Reach place, Box whole, Placing placing, FinishedPart part) {
        Length[] along = span(place, whole, placing.length(), part.length().value());
        Length[] across = span(place, whole, placing.width(), part.width().value());
        return new Rectangle(along[0], across[0], along[1].minus(along[0]), across[1].minus(across[0]));
    }

    // Where a part has been measured since, it is drawn as planned; what lies towards its far end stays with that end.
    private static Length[] span(Reach place, Box whole, Direction way, Length size) {
        var axis = Axes.of(way.axis());
        BigFraction from = way.sign() > 0 ? place.min.get(axis).subtract(whole.min().get(axis))
                : whole.max().get(axis).subtract(place.max.get(axis));
        BigFraction to = from.add(place.max.get(axis).subtract(place.min.get(axis)));
        BigFraction drawn = whole.extent(axis);
        BigFraction drift = size.mm().subtract(drawn);
        BigFraction half = drawn.divide(2);
        BigFraction start = Exact.compare(from, half) > 0 ? from.add(drift) : from;
        BigFraction end = Exact.compare(to, half) > 0 ? to.add(drift) : to;
        return new Length[]{inside(start, size), inside(end, size)};
    }

    private static Length inside(BigFraction at, Length size) {
        return Length.ofMm(at).max(Length.ZERO).min(size);
    }
}
