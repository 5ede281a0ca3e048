package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A halving: two parts cross or meet in one thickness, each cut away by half (rules of the trade J-07). */
final class Halving implements JointKind {
    private static final JointSchema SCHEMA = JointSchema.to(
            "halving",
            "Two parts lie in one another, each cut away by half: a cross where both run on, a tee where the end of the"
                    + " left one meets the right one, a corner where both end. Parts that cross are written through"
                    + " each other; ends are written to the edge that they meet, and are lengthened over it.",
            "joint halving rail to post_left, rail to post_right { over front }",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "half of what both share",
                            "How deep the left part is cut; the right one loses the rest."),
                    PropertySchema.optional(
                            "over",
                            Shape.Plain.DIRECTION,
                            "the side on which least is cut away; where both are alike right, back or up",
                            "The side on which the left part stays whole and lies over the right one."),
                    HalvingFace.SCHEMA));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean crosses() {
        return true;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Lap> found = Lap.of(meeting);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "A halving wants two parts square to each other that cross, or the end of the left part at an edge"
                            + " of the right one."));
        }
        Lap lap = found.get();
        LengthFormat format = surroundings.settings().format();
        Optional<Finding> wrongWay = wrongWay(lap);
        if (wrongWay.isPresent()) {
            return Effect.only(wrongWay.get());
        }
        int over = over(lap);
        Measure deep = meeting.joint().length("deep").orElseGet(() -> half(lap, over));
        Optional<Effect> nothing = Faults.ofNoSize(meeting.joint(), "deep", deep);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Length split = surface(lap.meeting().left(), lap, -over).plus(deep.value().times(over));
        if (split.compareTo(lap.low()) <= 0 || split.compareTo(lap.high()) >= 0) {
            return Effect.only(pastTheWood(lap, deep, format));
        }
        boolean mitred = HalvingFace.asked(meeting.joint());
        Optional<HalvingFace> face = HalvingFace.of(lap, over).filter(each -> mitred);
        if (mitred && face.isEmpty()) {
            return Effect.only(HalvingFace.impossible(lap));
        }
        return Effect.of(
                lap.additions(),
                List.of(
                        new Figure("deep", deep, meeting.joint().given("deep").isEmpty()),
                        new Figure("deep_right", ofRight(lap, over, split, deep), true),
                        lap.reach()),
                cuts(lap, over, split, face))
                .saying(weak(lap, over, split, deep, format).stream().toList());
    }

    private static List<Cut> cuts(Lap lap, int over, Length split, Optional<HalvingFace> face) {
        Meeting meeting = lap.meeting();
        String left = meeting.left().part().name();
        String right = meeting.right().part().name();
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Hollow(left, lap.beyond(split, -over), meeting.origin()));
        face.ifPresent(each -> cuts.add(new Cut.Carve(left, each.offLeft(split), meeting.origin())));
        cuts.add(face.<Cut>map(each -> new Cut.Carve(right, each.offRight(split), meeting.origin()))
                .orElseGet(() -> new Cut.Hollow(right, lap.beyond(split, over), meeting.origin())));
        return cuts;
    }

    /** The surface of a part on one side of the axis through both. */
    private static Length surface(Meeting.Placed part, Lap lap, int sign) {
        return Length.ofMm(part.box().coordinate(Side.of(lap.through(), sign)));
    }

    /** On which side the left part stays whole: as said, or where least is cut away. */
    private static int over(Lap lap) {
        return lap.meeting().joint().word("over").flatMap(Direction::named).map(Direction::sign).orElseGet(() -> {
            Length up = surface(lap.meeting().right(), lap, 1).minus(surface(lap.meeting().left(), lap, -1));
            Length down = surface(lap.meeting().left(), lap, 1).minus(surface(lap.meeting().right(), lap, -1));
            return up.compareTo(down) <= 0 ? 1 : -1;
        });
    }

    private static Measure half(Lap lap, int over) {
        Measure wood = lap.meeting().left().along(lap.through());
        Length middle = lap.low().plus(lap.high()).dividedBy(2);
        Length value = middle.minus(surface(lap.meeting().left(), lap, -over)).times(over);
        return Ruled.at(wood.at(), "deep", value, "to the middle of what both share",
                "Fairham, Woodwork Joints, The Halved Joint",
                List.of(wood.how(), lap.meeting().right().along(lap.through()).how()));
    }

    private static Measure ofRight(Lap lap, int over, Length split, Measure deep) {
        Measure wood = lap.meeting().right().along(lap.through());
        Length value = surface(lap.meeting().right(), lap, over).minus(split).times(over);
        return Ruled.at(deep.at(), "deep_right", value, "what the left part keeps", "from the places of both parts",
                List.of(wood.how(), deep.how()));
    }

    private static Optional<Finding> wrongWay(Lap lap) {
        Joint joint = lap.meeting().joint();
        int axis = Axes.number(lap.through());
        return joint.given("over")
                .filter(setting -> joint.word("over").flatMap(Direction::named).filter(d -> d.axis() != axis)
                        .isPresent())
                .map(setting -> Finding.of(
                        JoineryFindings.DOES_NOT_FIT,
                        setting.valueAt(),
                        "`" + joint.left().name() + "` cannot lie over `" + joint.right().name() + "` on that side")
                        .found("They lie beside each other there; one lies over the other "
                                + Direction.of(axis, -1).word() + " or " + Direction.of(axis, 1).word() + ".")
                        .remedy(Faults.setting(
                                joint, "over", Direction.of(axis, 1).word(),
                                "write `over " + Direction.of(axis, 1).word() + "`"))
                        .about(joint.left().name())
                        .about(joint.name())
                        .build());
    }

    private static Finding pastTheWood(Lap lap, Measure deep, LengthFormat format) {
        Joint joint = lap.meeting().joint();
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                deep.at(),
                "The halving of `" + joint.left().name() + "` and `" + joint.right().name() + "` leaves one of them"
                        + " nothing")
                .found("It is " + format.text(deep.value()) + " deep; they share "
                        + format.text(lap.high().minus(lap.low())) + ".")
                .remedy(Faults.setting(joint, "deep", "auto", "let each lose half: `deep auto`"))
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .build();
    }

    /** Less than a third left of one of them: it breaks there (common practice, no source). */
    private static Optional<Finding> weak(Lap lap, int over, Length split, Measure deep, LengthFormat format) {
        Meeting meeting = lap.meeting();
        Length leftStays = surface(meeting.left(), lap, over).minus(split).times(over);
        Length rightStays = split.minus(surface(meeting.right(), lap, -over)).times(over);
        boolean left = leftStays.times(3).compareTo(meeting.left().along(lap.through()).value()) < 0;
        boolean right = rightStays.times(3).compareTo(meeting.right().along(lap.through()).value()) < 0;
        if (!left && !right) {
            return Optional.empty();
        }
        Meeting.Placed thin = left ? meeting.left() : meeting.right();
        Length stays = left ? leftStays : rightStays;
        Joint joint = meeting.joint();
        Finding.Builder finding = Finding.of(
                JoineryFindings.HALVING_TOO_DEEP,
                deep.at(),
                "The halving leaves too little of `" + thin.part().name() + "`")
                .found("Of " + format.text(thin.along(lap.through()).value()) + " there stays " + format.text(stays)
                        + ".")
                .because("Each part keeps half (Fairham, Woodwork Joints); under a third it breaks at the shoulder"
                        + " (common practice, no source).")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
        finding.remedy(joint.given("deep").isPresent()
                ? Faults.setting(joint, "deep", "auto", "let each lose half: `deep auto`")
                : Remedy.choice("lay both flush on one face, or take stock of one thickness"));
        return Optional.of(finding.build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> parts = Rebate.names(statement);
        boolean ends = statement.stream()
                .flatMap(made -> Lap.of(made.meeting()).stream())
                .anyMatch(lap -> lap.where() != Lap.Where.CROSS);
        boolean mitred = HalvingFace.asked(statement.getFirst().joint());
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the shoulders and " + (ends ? "cheeks" : "pare out the waste") + " of the halvings"
                                + (mitred ? ", the shoulders in the face along the mitre" : ""),
                        parts,
                        List.of(),
                        mitred
                                ? "knife, mitre square or bevel, marking gauge, tenon saw, chisel"
                                : "knife, marking gauge, tenon saw, chisel",
                        List.of(new Work.GaugeSetting("gauge", Work.figure(statement, "deep"))),
                        "the face that ends flush, on all parts: then an error of the depth cancels; the width scribed"
                                + " from the mate as made",
                        "they go together under the hand and lie flush",
                        "Clamp the work; keep both hands behind the edge."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the halvings and clamp them through the faces",
                        parts,
                        List.of(),
                        "clamps and blocks, glue brush",
                        List.of(),
                        "",
                        "square, and flush on the face",
                        "Read the glue's label."));
    }
}
