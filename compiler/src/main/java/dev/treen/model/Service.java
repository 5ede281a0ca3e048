package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * What a part has to stand.
 *
 * @param room the air of its own room, where it is not the project's
 * @param carries what lies on it, where the project says so
 * @param finish which of its faces are finished, where the project says so
 */
public record Service(Optional<RoomClimate> room, Optional<Carried> carries, Optional<Finish> finish) {
    /** The project's room, and no load that is known. */
    public static final Service USUAL = new Service(Optional.empty(), Optional.empty(), Optional.empty());

    /** The uses that a shelf may be said to have. */
    public static final List<String> USES = List.of("books", "heavy_books", "library", "things");

    /** The same, with no face finished: what is bought comes as it is. */
    Service bare(Span at) {
        return new Service(room, carries, Optional.of(new Finish("none", at)));
    }

    /** Which faces are finished: both where the project says nothing. */
    public String faces() {
        return finish.map(Finish::faces).orElse("both");
    }

    /** What lies on a part. */
    public sealed interface Carried {
        /** Where it is written. */
        Span at();

        /** A use of the trade, such as {@code books}. */
        record For(String use, Span at) implements Carried {}

        /** A mass in kilograms, spread evenly or at mid-span. */
        record Mass(double kilograms, boolean middle, Span at) implements Carried {}
    }

    /** Which faces are finished: {@code both}, {@code one} or {@code none}. */
    public record Finish(String faces, Span at) {}
}
