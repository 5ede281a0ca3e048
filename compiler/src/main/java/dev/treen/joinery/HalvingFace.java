package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * The mitred face of a halved corner: on the side on which the left part lies over the right one both meet along the
 * diagonal of the block that they share, and behind it the right part goes on to the corner.
 *
 * @param over 1 or −1: the side of the face, along the axis through both
 * @param outer the outer edge of the right part's end, which the left part's edge lies flush with
 */
record HalvingFace(Lap lap, int over, Side outer) {
    private static final String MITRED = "mitred";

    /** How a project writes it. */
    static final PropertySchema SCHEMA = PropertySchema.optional(
            "face",
            new Shape.OneOf(List.of("square", MITRED)),
            "square",
            "Whether the joint shows as a mitre on the side on which the left part lies over the right one: at a corner,"
                    + " as in a frame. It leaves half of the glue of a plain one.");

    /** Whether a project asks for a mitred face. */
    static boolean asked(Joint joint) {
        return joint.word(SCHEMA.name()).filter(MITRED::equals).isPresent();
    }

    /** The mitred face of a halved corner whose parts lie flush; nothing where they do not, or at a tee or a cross. */
    static Optional<HalvingFace> of(Lap lap, int over) {
        Side face = Side.of(lap.through(), over);
        Box left = lap.meeting().left().box();
        Box right = lap.meeting().right().box();
        boolean flush = left.coordinate(face).equals(right.coordinate(face));
        if (lap.where() != Lap.Where.CORNER || !flush) {
            return Optional.empty();
        }
        return lap.endOfRight()
                .or(() -> flushEnd(lap))
                .map(outer -> new HalvingFace(lap, over, outer));
    }

    /** The end of the right part that lies in one line with an edge of the left one. */
    private static Optional<Side> flushEnd(Lap lap) {
        Box left = lap.meeting().left().box();
        Box right = lap.meeting().right().box();
        return List.of(Side.of(lap.across(), 1), Side.of(lap.across(), -1)).stream()
                .filter(side -> left.coordinate(side).equals(right.coordinate(side)))
                .findFirst();
    }

    /** What the left part loses of its face. */
    Convex offLeft(Length split) {
        return half(split, lap.endOfLeft().orElseThrow(), outer.opposite());
    }

    /** What the right part loses of its face. */
    Convex offRight(Length split) {
        return half(split, lap.endOfLeft().orElseThrow().opposite(), outer);
    }

    /** Half of the block's face: between its diagonal and the corner on two of its sides. */
    private Convex half(Length split, Side alongCorner, Side acrossCorner) {
        Side end = lap.endOfLeft().orElseThrow();
        Side face = Side.of(lap.through(), over);
        Vec3 base = lap.block().min().with(lap.through(), split.mm());
        return Convex.prism(
                List.of(
                        at(base, end.opposite(), outer.opposite()),
                        at(base, end, outer),
                        at(base, alongCorner, acrossCorner)),
                Vec3.along(lap.through(), lap.block().coordinate(face).subtract(split.mm())),
                lap.meeting().origin());
    }

    private Vec3 at(Vec3 base, Side one, Side other) {
        return base.with(one.axis(), lap.block().coordinate(one)).with(other.axis(), lap.block().coordinate(other));
    }

    /** A face that cannot be mitred. */
    static Finding impossible(Lap lap) {
        Joint joint = lap.meeting().joint();
        boolean corner = lap.where() == Lap.Where.CORNER;
        return Faults.said(joint, JoineryFindings.DOES_NOT_FIT,
                joint.given(SCHEMA.name()).map(Setting::valueAt).orElseGet(joint::at),
                "The face of `" + joint.left().name() + "` and `" + joint.right().name() + "` cannot be mitred")
                .found(corner
                        ? "They do not lie flush on that face, or at the corner."
                        : "They meet in a " + lap.where().word() + ", not at a corner.")
                .because("A mitre runs from the inner corner to the outer one, in one face of both.")
                .remedy(corner
                        ? Remedy.choice("lay both flush, or choose the flush face with `over`")
                        : Faults.setting(joint, SCHEMA.name(), "square", "let it show square: `face square`"))
                .build();
    }
}
