package dev.treen.joinery;

import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Plane;

/** What a joint takes out of a part; the faces it leaves are known by the joint's name. */
public sealed interface Cut {
    /** The part that is cut. */
    String part();

    /** The joint that cuts. */
    Origin origin();

    /** A groove, housing, rebate, shoulder or notch: what lies in {@code space} goes. */
    record Hollow(String part, Box space, Origin origin) implements Cut {}

    /** A mitre: what lies on the outer side of {@code plane} goes. */
    record Slice(String part, Plane plane, Origin origin) implements Cut {}

    /** A socket between dovetails, a bevel: what lies in a convex {@code body} goes. */
    record Carve(String part, Convex body, Origin origin) implements Cut {}

    /** A hole or slot for a screw, nail or peg: what lies in {@code body} goes. It changes nothing of how parts fit. */
    record Bore(String part, Convex body, Origin origin) implements Cut {}
}
