package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A panel in a groove: its edge, or a tongue on it, lies loose in a groove ploughed along the other part, so that it can
 * move with the seasons (rules of the trade J-05, M-05 to M-07).
 */
public final class Groove implements JointKind {
    /** The word of the language. */
    public static final String KIND = "groove";

    private static final String MIDDLE = "middle";
    private static final List<String> HELD = List.of("free", MIDDLE, "left", "right", "front", "back", "down", "up");

    /** Longer than any part: a groove runs through to both ends. */
    static final BigFraction FAR = BigFraction.of(1_000_000);

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a panel, lies loose in a groove along the right one, free to move with the seasons. It is"
                    + " never glued all round. Write the panel as large as the opening: the grooves add what goes into them.",
            "joint groove base into front, back { wide 5; deep 4; gap auto }",
            List.of(
                    PropertySchema.optional(
                            "wide",
                            new Shape.LengthOrAuto(),
                            "the widest usual iron that is not wider than the panel",
                            "How wide the groove is: the tongue is as thick."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a third of the right part's thickness",
                            "How deep the groove is ploughed."),
                    PropertySchema.optional(
                            "gap",
                            new Shape.LengthOrAuto(),
                            "what the wettest season needs across the grain, and 0.5 mm for making (0.3 mm if it slides)",
                            "Room left between the panel and the bottom of the groove, on each side. `auto` goes up to the next"
                                    + " 0.01 mm; in inches to the next 1/64, unless that takes over a third of the groove."),
                    PropertySchema.optional(
                            "shoulder_gap",
                            new Shape.LengthOrAuto(),
                            "what the wettest season needs, and 0.3 mm",
                            "Room between the shoulder of the tongue and the right part."),
                    PropertySchema.optional(
                            "shoulder",
                            Shape.Plain.DIRECTION,
                            "the side away from the nearest edge",
                            "On which side of the panel the shoulder is cut, where the panel is thicker than the"
                                    + " groove."),
                    PropertySchema.optional(
                            "raise",
                            new Shape.LengthOrAuto(),
                            "none: a square shoulder",
                            "How wide the bevel is that is planed round a raised panel, from its tongue up to the field in"
                                    + " its middle; `auto` is three times what the panel is thicker than the groove is"
                                    + " wide."),
                    PropertySchema.optional(
                            "stop",
                            new Shape.LengthOrAuto(),
                            "none: it runs through",
                            "How far the groove stays from both ends of the right part, or from the one named with `from`,"
                                    + " so that it does not show in an open corner; `auto` goes as far as the panel's"
                                    + " corner needs, in walls of one thickness that less the groove's depth."),
                    PropertySchema.optional(
                            "held",
                            new Shape.OneOf(HELD),
                            "free: it may wander from side to side",
                            "How the panel is kept in its place across the grain: `middle`, by one pin or a thumb's width of"
                                    + " glue at the middle of both ends, so that both edges move alike; or a direction, the"
                                    + " edge along which it is glued, so that the other makes the whole movement."),
                    PropertySchema.optional(
                            "slide",
                            Shape.Plain.DIRECTION,
                            "none: it is closed in",
                            "The way a sliding lid comes out.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) == 2) {
            return Effect.only(meetsWrongly(
                    meeting, "A groove wants an edge of the panel against the face of the part that is ploughed."));
        }
        Joint joint = meeting.joint();
        Optional<Effect> nothing = joint.length("deep")
                .flatMap(deep -> Faults.ofNoSize(joint, "deep", deep))
                .or(() -> joint.length("wide").flatMap(wide -> Faults.ofNoSize(joint, "wide", wide)))
                .or(() -> joint.length("raise").flatMap(raise -> Faults.ofNoSize(joint, "raised", raise)));
        if (nothing.isPresent()) {
            return nothing.get();
        }
        GrooveSizes sizes = GrooveSizes.of(meeting, face.get(), surroundings);
        if (sizes.adds().value().times(-2).compareTo(sizes.opening().value()) >= 0) {
            return Effect.only(Faults.eaten(
                    joint, sizes.gap(), sizes.opening().value(), surroundings.settings().format(),
                    "A panel is smaller than its opening between the bottoms of the grooves by its gaps."));
        }
        List<Cut> cuts = new ArrayList<>();
        Box trench = trench(meeting, face.get(), sizes);
        Optional<CutStop> stop = CutStop.of(meeting, face.get(), sizes.deep());
        Optional<Finding> wrong = stop.flatMap(each -> each.fault(meeting, surroundings));
        List<Finding> faults = new ArrayList<>(faults(meeting));
        wrong.ifPresent(faults::add);
        heldWrongly(meeting).ifPresent(faults::add);
        if (stop.isPresent() && wrong.isEmpty()) {
            cuts.addAll(stop.get().cuts(meeting, trench, sizes.gap().value(), meeting.origin()));
        } else {
            cuts.add(new Cut.Hollow(meeting.right().part().name(), trench, meeting.origin()));
        }
        sizes.shoulderSides().forEach(side -> cuts.add(new Cut.Hollow(
                meeting.left().part().name(),
                shoulder(meeting, face.get(), side, sizes),
                meeting.origin())));
        Optional<RaisedPanel> raised = RaisedPanel.of(meeting, face.get(), sizes);
        raised.ifPresent(each -> cuts.addAll(each.bevels()));
        raised.flatMap(each -> each.fault(surroundings.settings().format())).ifPresent(faults::add);
        List<Figure> figures = new ArrayList<>(sizes.figures());
        raised.ifPresent(each -> figures.add(each.figure()));
        stop.filter(each -> wrong.isEmpty()).ifPresent(each -> figures.add(
                new Figure("stop", each.length(), joint.given("stop").isEmpty())));
        return Effect.of(
                List.of(new Addition(meeting.left().part().name(), face.get(), sizes.adds())), figures, cuts)
                .saying(faults);
    }

    /** Whether the panel is pinned at the middle of both ends. */
    public static boolean heldInTheMiddle(Joint joint) {
        return joint.kind().equals(KIND) && joint.word("held").filter(MIDDLE::equals).isPresent();
    }

    /** The side on which the panel is glued along its edge. */
    public static Optional<Side> heldAt(Joint joint) {
        return joint.kind().equals(KIND)
                ? joint.word("held").flatMap(Direction::named).map(way -> Side.of(Axes.of(way.axis()), way.sign()))
                : Optional.empty();
    }

    /** An edge to glue it by lies along its grain. */
    private static Optional<Finding> heldWrongly(Meeting meeting) {
        Joint joint = meeting.joint();
        int across = meeting.left().placing().width().axis();
        return heldAt(joint)
                .filter(side -> side.axis() != Axes.of(across))
                .flatMap(side -> joint.given("held"))
                .map(setting -> Finding.of(
                        JoineryFindings.DOES_NOT_FIT, setting.valueAt(),
                        "`" + joint.left().name() + "` has no long edge on that side to be glued by")
                        .found("Its grain runs so that its long edges look " + Direction.of(across, -1).word() + " and "
                                + Direction.of(across, 1).word() + ".")
                        .because("Glued across the grain at an end it could not move, and would split.")
                        .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                        .about(joint.left().name())
                        .remedy(Remedy.choice("pin it at the middle: `held middle`",
                                new Edit(setting.valueAt(), MIDDLE)))
                        .build());
    }

    /** Directions that the panel cannot have. */
    private static List<Finding> faults(Meeting meeting) {
        Joint joint = meeting.joint();
        int thick = meeting.left().placing().thickness().axis();
        List<Finding> findings = new ArrayList<>();
        for (String name : List.of("shoulder", "slide")) {
            boolean shoulder = name.equals("shoulder");
            joint.given(name)
                    .filter(setting -> joint.word(name)
                            .flatMap(Direction::named)
                            .filter(said -> (said.axis() == thick) != shoulder)
                            .isPresent())
                    .ifPresent(setting -> findings.add(wrongWay(meeting, setting, thick, shoulder)));
        }
        return findings;
    }

    private static Finding wrongWay(Meeting meeting, Setting setting, int thick, boolean shoulder) {
        String panel = meeting.joint().left().name();
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                setting.valueAt(),
                shoulder
                        ? "`" + panel + "` has no face on that side to cut a shoulder on"
                        : "`" + panel + "` cannot slide out of its groove that way")
                .found("Its faces look " + Direction.of(thick, -1).word() + " and " + Direction.of(thick, 1).word()
                        + (shoulder ? "; a shoulder is cut on one of them." : "; it slides along them."))
                .related(meeting.left().placing().span(), "`" + panel + "` lies here")
                .about(panel)
                .build();
    }

    /** The groove: through to both ends, as wide as the tongue, as deep as it is ploughed. */
    static Box trench(Meeting meeting, Side face, GrooveSizes sizes) {
        Box step = Rebate.step(mouth(meeting, sizes), face, sizes.deep().value());
        Axis along = Rebate.running(meeting, face);
        return new Box(step.min().with(along, FAR.negate()), step.max().with(along, FAR));
    }

    /** Where the groove opens beside the panel; wider than a thin panel on the side away from the nearest edge. */
    private static Box mouth(Meeting meeting, GrooveSizes sizes) {
        Box tongue = sizes.tongue(meeting.left().box(), Axes.of(meeting.left().placing().thickness().axis()));
        Length play = sizes.wide().value().minus(meeting.left().part().thickness().value());
        if (play.signum() <= 0) {
            return tongue;
        }
        int up = GrooveSizes.below(meeting).compareTo(GrooveSizes.above(meeting)) <= 0 ? 1 : -1;
        Side away = Side.of(Axes.of(meeting.left().placing().thickness().axis()), up);
        return tongue.join(Rebate.step(tongue, away, play));
    }

    /** What is taken off the panel beside its tongue: from the shoulder outward. */
    private static Box shoulder(Meeting meeting, Side face, Side side, GrooveSizes sizes) {
        Box panel = meeting.left().box();
        Axis thick = side.axis();
        Box tongue = sizes.tongue(panel, thick);
        Vec3 min = panel.min();
        Vec3 max = panel.max();
        if (side.sign() > 0) {
            min = min.with(thick, tongue.max().get(thick));
        } else {
            max = max.with(thick, tongue.min().get(thick));
        }
        BigFraction back = sizes.shoulderGap().map(m -> m.value().mm()).orElse(BigFraction.ZERO);
        Axis out = face.axis();
        Axis other = Meeting.third(out, thick);
        min = min.with(other, FAR.negate());
        max = max.with(other, FAR);
        return face.sign() > 0
                ? new Box(min.with(out, panel.max().get(out).subtract(back)), max.with(out, FAR))
                : new Box(min.with(out, FAR.negate()), max.with(out, panel.min().get(out).add(back)));
    }

    static Finding meetsWrongly(Meeting meeting, String because) {
        Joint joint = meeting.joint();
        return Faults.meetsWrongly(
                meeting,
                "`" + joint.left().name() + "` does not meet `" + joint.right().name() + "` as a "
                        + joint.kind().replace('_', ' ') + " wants",
                because);
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        return GrooveWorks.of(statement);
    }
}
