package dev.treen.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A set of exact stretches of a line: sorted, apart from each other, each with a length. */
record Intervals(List<Stretch> stretches) {

    /** One stretch, from the smaller to the greater parameter. */
    record Stretch(Rat low, Rat high) {}

    static final Intervals NONE = new Intervals(List.of());

    static Intervals of(Rat low, Rat high) {
        return low.lessThan(high) ? new Intervals(List.of(new Stretch(low, high))) : NONE;
    }

    /** The union of stretches in any order; stretches that meet become one. */
    static Intervals union(List<Stretch> parts) {
        List<Stretch> sorted = new ArrayList<>(parts);
        sorted.sort(Comparator.comparing(Stretch::low));
        List<Stretch> merged = new ArrayList<>(sorted.size());
        for (Stretch next : sorted) {
            if (!next.low().lessThan(next.high())) {
                continue;
            }
            if (!merged.isEmpty() && next.low().compareTo(merged.getLast().high()) <= 0) {
                Stretch last = merged.removeLast();
                merged.add(new Stretch(last.low(), last.high().max(next.high())));
            } else {
                merged.add(next);
            }
        }
        return new Intervals(merged);
    }

    boolean isEmpty() {
        return stretches.isEmpty();
    }

    Intervals with(Intervals other) {
        if (isEmpty() || other.isEmpty()) {
            return isEmpty() ? other : this;
        }
        List<Stretch> all = new ArrayList<>(stretches);
        all.addAll(other.stretches);
        return union(all);
    }

    Intervals minus(Intervals other) {
        if (isEmpty() || other.isEmpty()) {
            return this;
        }
        List<Stretch> left = new ArrayList<>();
        for (Stretch stretch : stretches) {
            Rat at = stretch.low();
            for (Stretch hole : other.stretches) {
                if (hole.high().compareTo(at) <= 0) {
                    continue;
                }
                if (hole.low().compareTo(stretch.high()) >= 0) {
                    break;
                }
                if (at.lessThan(hole.low())) {
                    left.add(new Stretch(at, hole.low()));
                }
                at = hole.high();
            }
            if (at.lessThan(stretch.high())) {
                left.add(new Stretch(at, stretch.high()));
            }
        }
        return new Intervals(left);
    }

    Intervals intersect(Intervals other) {
        return minus(minus(other));
    }
}
