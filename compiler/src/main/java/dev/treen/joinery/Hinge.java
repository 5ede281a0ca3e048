package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Hinges let into a lid or door and the part that carries it (rules of the trade J-20). */
public final class Hinge implements JointKind {
    /** The word of the language. */
    public static final String KIND = "hinge";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "Hinges with two leaves hang the left part, a lid or a door, on the right one: half the knuckle is let into"
                    + " each. Both lie on each other, or edge to edge with the gap that `inset` leaves.",
            "joint hinge lid into back { long 40; count 2 }",
            List.of(
                    PropertySchema.optional(
                            "long",
                            new Shape.LengthOrAuto(),
                            "the longest usual hinge up to a sixth of the line and ten thirds of the thickness",
                            "How long a hinge is, along its pin."),
                    PropertySchema.optional(
                            "wide",
                            new Shape.LengthOrAuto(),
                            "a third of its length, and no more than leaves 3 mm of wood",
                            "From the middle of the pin to the edge of a leaf: half of what the open hinge measures."),
                    PropertySchema.optional(
                            "knuckle",
                            new Shape.LengthOrAuto(),
                            "a tenth of its length, and 3 mm at the least",
                            "How thick the hinge is round its pin."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "half the knuckle, less half the gap; all of it with `only`",
                            "How deep a leaf is let in."),
                    PropertySchema.optional(
                            "only", Shape.Plain.PART, "neither", "The part that takes the whole hinge."),
                    PropertySchema.optional(
                            "set",
                            new Shape.LengthOrAuto(),
                            "0: it opens all the way",
                            "How far the middle of the pin stands out of the face."),
                    PropertySchema.optional(
                            "pin",
                            Shape.Plain.DIRECTION,
                            "the one on which both are flush; of a lid the outside, of a door the front",
                            "The side on which the pin lies, flush on both parts."),
                    PropertySchema.optional("count", Shape.Plain.COUNT, "2; 3 over 900 mm", "How many hinges."),
                    PropertySchema.optional(
                            "end",
                            new Shape.LengthOrAuto(),
                            "the length of a hinge",
                            "From each end of the line on which both meet to the nearest hinge."),
                    PropertySchema.optional(
                            "screws",
                            new Shape.LengthOrAuto(),
                            "the longest usual ones up to 25 mm or 1 in that leave 2 mm of wood under their points",
                            "How long their screws are."),
                    PropertySchema.optional(
                            "grip",
                            new Shape.OneOf(List.of("overhang", "notch", "knob")),
                            "overhang",
                            "How a lid is lifted: by its edge that stands out, by a notch for the fingers that Treen cuts in the"
                                    + " middle of the free edge, or by a knob.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public boolean fastens() {
        return true;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<HingeSizes> found = HingePlace.of(meeting, surroundings)
                .map(place -> HingeRules.of(place, surroundings));
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "Hinges go where a lid lies on its case, or where a door's edge meets the part it hangs on."));
        }
        HingeSizes sizes = found.get();
        boolean cutFree = !sizes.place().hungName().equals(meeting.left().part().name());
        if (cutFree && meeting.joint().word("grip").filter("notch"::equals).isPresent()) {
            return Effect.only(Faults.said(meeting.joint(), JoineryFindings.DOES_NOT_FIT,
                    meeting.joint().given("grip").orElseThrow().valueAt(),
                    "A lid that is cut free has no edge of its own for a notch")
                    .found("Its walls are sawn from those of the box, and the line is to stay closed.")
                    .remedy(Faults.setting(meeting.joint(), "grip", "knob", "lift it by a knob: `grip knob`"))
                    .build());
        }
        HingeFaults faults = new HingeFaults(sizes, surroundings.settings().format());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        List<Cut> cuts = new ArrayList<>();
        sizes.recesses(true).forEach(
                box -> cuts.add(new Cut.Hollow(sizes.place().hungName(), box, meeting.origin())));
        sizes.recesses(false).forEach(
                box -> cuts.add(new Cut.Hollow(meeting.right().part().name(), box, meeting.origin())));
        if (meeting.joint().word("grip").filter("notch"::equals).isPresent()) {
            cuts.add(new Cut.Hollow(sizes.place().hungName(), sizes.notch(), meeting.origin()));
        }
        return Effect.of(List.of(), figures(meeting.joint(), sizes), cuts).saying(faults.all())
                .taking(Hardware.Kind.HINGE, sizes.count(), sizes.reach());
    }

    /** The side on which a lid opens, where it can be hinged at all. */
    public static Optional<Side> free(Meeting meeting) {
        return meeting.contact() instanceof BoxContact.FaceToFace(Side closing, Vec3 low, Vec3 high)
                ? Optional.of(HingePlace.pin(
                        meeting, meeting.left().box(), meeting.right().box(), closing, high.minus(low)).opposite())
                : Optional.empty();
    }

    private static List<Figure> figures(Joint joint, HingeSizes sizes) {
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("long", sizes.reach(), joint.given("long").isEmpty()),
                new Figure("wide", sizes.wide(), joint.given("wide").isEmpty()),
                new Figure("knuckle", sizes.knuckle(), joint.given("knuckle").isEmpty()),
                new Figure("end", sizes.end(), joint.given("end").isEmpty()),
                new Figure("screws", sizes.screws(), joint.given("screws").isEmpty())));
        boolean inFixed = sizes.deepFixed().value().signum() > 0;
        figures.add(new Figure("deep", inFixed ? sizes.deepFixed() : sizes.deepHung(), joint.given("deep").isEmpty()));
        return figures;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        boolean lid = statement.stream().anyMatch(
                made -> Axes.of(made.meeting().left().placing().thickness().axis()) == Axis.Z);
        return List.of(new Work(
                Work.Stage.WHEN_SET,
                "Let in the hinges, once the " + (lid ? "lid" : "door")
                        + " fits: mark them from the piece in its place, gauge, chop, screw them on"
                        + " with one screw each, try, then the rest; take them off for the finish",
                Rebate.names(statement),
                List.of(),
                "marking gauge, knife, chisel, awl, screwdriver",
                Fastening.settings(statement, "wide", "deep", "long", "end", "screws"),
                "the middle of the pin to the edge of the leaf; the gauge for the depth set a shade under",
                "all pins lie in one line, no screw head stands above its leaf, and nothing springs when it is shut",
                "Chop with both hands behind the edge."
                        + (lid ? " A lid needs a stay, so that it neither falls on fingers nor tears its screws out."
                                : " A heavy door is held up by a helper or a block while it is screwed on.")));
    }
}
