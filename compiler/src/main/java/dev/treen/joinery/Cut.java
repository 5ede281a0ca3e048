package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Plane;
import java.util.Optional;

/** What a joint takes out of a part; the faces it leaves are known by the joint's name. */
public sealed interface Cut {
    /** The part that is cut. */
    String part();

    /** The joint that cuts. */
    Origin origin();

    /** A groove, housing, rebate, shoulder or notch: what lies in {@code space} goes. */
    record Hollow(String part, Box space, Origin origin) implements Cut {}

    /**
     * A groove that stops short of the ends of the part it is cut in, which only all joints together settle.
     *
     * @param space the groove as if it ran through
     * @param along the axis along which it runs
     * @param of the part whose finished ends count: the one that is cut, or the panel, which wants no more room
     * @param low how far it stays from the lower end, less than zero past it; absent where it runs through
     * @param high how far it stays from the upper end
     * @param within whether the stretch between the stops is cut, or, on the panel, what lies beyond them
     */
    record Stopped(
            String part, Box space, Axis along, String of, Optional<Length> low, Optional<Length> high, boolean within,
            Origin origin) implements Cut {}

    /** A mitre: what lies on the outer side of {@code plane} goes. */
    record Slice(String part, Plane plane, Origin origin) implements Cut {}

    /** A socket between dovetails, a bevel: what lies in a convex {@code body} goes. */
    record Carve(String part, Convex body, Origin origin) implements Cut {}

    /** A round hole: the {@code rod} goes that would fill it, and its faces keep their names, so that it is drawn round. */
    record RoundHole(String part, Convex rod, Origin origin) implements Cut {}

    /** A hole or slot for a screw, nail or peg: what lies in {@code body} goes. It changes nothing of how parts fit. */
    record Bore(String part, Convex body, Origin origin) implements Cut {}
}
