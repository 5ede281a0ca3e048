package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something that is bought besides boards: the glue, the finish, or a piece of hardware.
 *
 * @param name as the project calls it; empty where it does not
 * @param at where it is written
 * @param kind which finish it is, or what joints it is for
 * @param thick which of them, by thickness
 * @param length which of them, by length
 * @param count how many are wanted, of what no joint counts
 * @param selling how it is sold
 */
public record Ware(
        String name,
        Span at,
        Optional<String> kind,
        Optional<Length> thick,
        Optional<Length> length,
        OptionalInt count,
        Selling selling) {
    /** Whether it is hardware that joints take and count. */
    public boolean isTakenByJoints() {
        return kind.isPresent();
    }

    /** Whether it is for the same joints and sizes as {@code other}. */
    boolean isForTheSameAs(Ware other) {
        return isTakenByJoints() && kind.equals(other.kind) && thick.equals(other.thick)
                && length.equals(other.length);
    }
}
