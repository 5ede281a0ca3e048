package dev.treen.drawing;

import dev.treen.joinery.Joined;
import dev.treen.joinery.JointNumbers;
import dev.treen.quantity.Length;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where on each part the numbers stand by which it is kept to its mates ({@link JointNumbers}). */
public final class Corners {
    /** Two parts that go together. */
    public record Pair(int number, String left, String right) {}

    /** Where on a part a number stands, as its drawing shows it. */
    public enum Spot {
        /** At its left end. */
        LEFT_END("left end"),
        /** At its right end. */
        RIGHT_END("right end"),
        /** Between its ends, or over its length. */
        BETWEEN("between");

        private final String words;

        Spot(String words) {
            this.words = words;
        }

        /** In the words of the bench. */
        public String words() {
            return words;
        }
    }

    /** A number on a part. */
    public record Mark(int number, Spot spot) {}

    private final List<Pair> pairs = new ArrayList<>();
    private final Map<String, List<Mark>> marks = new HashMap<>();

    private Corners() {
    }

    /** The numbers of a project. */
    public static Corners of(Joined joined) {
        Corners corners = new Corners();
        Map<String, Laid> laid = new HashMap<>();
        joined.parts().forEach(part -> laid.put(part.part().name(), Laid.of(part)));
        for (JointNumbers.Pair pair : JointNumbers.of(joined).pairs()) {
            corners.pairs.add(new Pair(pair.number(), pair.left(), pair.right()));
            List.of(pair.left(), pair.right()).forEach(name -> Optional.ofNullable(laid.get(name))
                    .flatMap(part -> spot(part, pair.first().meeting().contact()))
                    .ifPresent(spot -> corners.marks.computeIfAbsent(name, n -> new ArrayList<>())
                            .add(new Mark(pair.number(), spot))));
        }
        return corners;
    }

    /** All pairs, by their numbers. */
    public List<Pair> pairs() {
        return List.copyOf(pairs);
    }

    /** The numbers on a part, in their order. */
    public List<Mark> on(String part) {
        return List.copyOf(marks.getOrDefault(part, List.of()));
    }

    private static Optional<Spot> spot(Laid part, BoxContact contact) {
        return switch (contact) {
            case BoxContact.FaceToFace(var side, var min, var max) -> Optional.of(spot(part, min, max));
            case BoxContact.Edge(var along, var from, var to, var first, var second) ->
                Optional.of(spot(part, from, to));
            case BoxContact.Corner(var at) -> Optional.of(spot(part, at, at));
            case BoxContact.Overlapping(var shared) -> Optional.of(spot(part, shared.min(), shared.max()));
            case BoxContact.Apart apart -> Optional.empty();
        };
    }

    // The ends are the outer thirds: a corner lies inside the thickness of its mate.
    private static Spot spot(Laid part, Vec3 one, Vec3 other) {
        Length third = part.all(Measured.LENGTH).dividedBy(3);
        Length near = part.measure(Measured.LENGTH, one);
        Length far = part.measure(Measured.LENGTH, other);
        if (near.max(far).compareTo(third) <= 0) {
            return Spot.LEFT_END;
        }
        return near.min(far).compareTo(third.times(2)) >= 0 ? Spot.RIGHT_END : Spot.BETWEEN;
    }
}
