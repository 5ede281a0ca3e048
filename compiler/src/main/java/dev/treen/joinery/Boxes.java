package dev.treen.joinery;

import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Boxes cut up into boxes. */
final class Boxes {
    private Boxes() {
    }

    /** What of {@code whole} lies in none of {@code kept}, as boxes that do not overlap. */
    static List<Box> without(Box whole, List<Box> kept) {
        List<Box> rest = List.of(whole);
        for (Box keep : kept) {
            List<Box> next = new ArrayList<>();
            rest.forEach(piece -> next.addAll(without(piece, keep)));
            rest = next;
        }
        return rest;
    }

    private static List<Box> without(Box piece, Box keep) {
        Optional<Box> shared = piece.overlap(keep);
        if (shared.isEmpty()) {
            return List.of(piece);
        }
        List<Box> parts = new ArrayList<>();
        Box left = piece;
        for (Axis axis : Axis.values()) {
            var low = shared.get().min().get(axis);
            var high = shared.get().max().get(axis);
            if (!left.min().get(axis).equals(low)) {
                parts.add(TenonSizes.between(left, axis, left.min().get(axis), low));
            }
            if (!left.max().get(axis).equals(high)) {
                parts.add(TenonSizes.between(left, axis, high, left.max().get(axis)));
            }
            left = TenonSizes.between(left, axis, low, high);
        }
        return parts;
    }
}
