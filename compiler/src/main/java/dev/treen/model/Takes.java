package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/** The flaws that a part may have in it, away from its joints; of all others it keeps clear. */
public record Takes(List<Taken> flaws) {
    /** What a part can be made of at need. Where wood is missing or decayed no part can lie. */
    public static final List<String> KINDS = List.of("knot", "check", "sapwood", "worm", "pith");

    /** None: the part is sawn from clear wood. */
    public static final Takes NONE = new Takes(List.of());

    /** Keeps its own copy. */
    public Takes {
        flaws = List.copyOf(flaws);
    }

    /**
     * A kind of flaw.
     *
     * @param kind as boards name it: knot, check, sapwood, worm, pith
     * @param on the one face on which it may be seen; empty where it may be seen on both
     * @param at where the project says so
     */
    public record Taken(String kind, Optional<Direction> on, Span at) {}

    /** The same in a thing that stands turned: a face is named as its pattern draws it. */
    Takes turned(Pose pose) {
        return new Takes(flaws.stream()
                .map(flaw -> new Taken(flaw.kind(), flaw.on().map(pose::turned), flaw.at()))
                .toList());
    }

    /** Whether it says anything. */
    public boolean any() {
        return !flaws.isEmpty();
    }

    /** Whether a flaw of a kind may be seen on the faces that look these ways. */
    public boolean allows(String kind, List<Direction> seen) {
        return flaws.stream().anyMatch(flaw -> flaw.kind().equals(kind)
                && flaw.on().map(on -> seen.stream().allMatch(on::equals)).orElse(true));
    }
}
