package dev.treen.joinery;

import dev.treen.solid.Box;
import dev.treen.solid.Plane;

/** What a joint takes out of a part. */
public sealed interface Cut {
    /** The part that is cut. */
    String part();

    /** A groove, housing or rebate: what lies in {@code space} goes. */
    record Hollow(String part, Box space) implements Cut {}

    /** A mitre: what lies on the outer side of {@code plane} goes. */
    record Slice(String part, Plane plane) implements Cut {}
}
