package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A door, drawer or lid that lies loose in its opening (rules of the trade M-11, M-13 and M-14). It is written as large as
 * the opening; the joint takes off the gap on each side.
 */
public final class Inset implements JointKind {
    /** The word of the language. */
    public static final String KIND = "inset";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a door, a drawer or a lid, lies loose in the opening that the right ones make. Write it as large"
                    + " as the opening: the joint takes off the gap on each side.",
            "joint inset door into stile_left, stile_right, rail_top { gap auto; hinge left }",
            List.of(
                    PropertySchema.optional(
                            "gap",
                            new Shape.LengthOrAuto(),
                            "what the wettest season needs on that side, and 1 mm (a drawer 0.8 mm)",
                            "Room left on each side. With a hinge the whole growth goes to the side opposite; else each"
                                    + " side takes half, and above a drawer all of it. `auto` goes up to the next 0.01 mm,"
                                    + " in inches to the next 1/64."),
                    PropertySchema.optional(
                            "hinge", Shape.Plain.DIRECTION, "none: it is free on both sides",
                            "The side on which it is hinged, which stays where it is."),
                    PropertySchema.optional(
                            "runs", Shape.Plain.DIRECTION, "none: it does not slide",
                            "The way in which a drawer comes out; it stands on its lower edge.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) == 2) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "What lies in an opening has its edges or ends against the parts round it."));
        }
        Optional<Finding> unhinged = unhinged(meeting);
        if (unhinged.isPresent()) {
            return Effect.only(unhinged.get());
        }
        Measure gap = meeting.joint().length("gap").orElseGet(() -> Loose.gap(meeting, face.get(), surroundings));
        Length opening = meeting.left().along(face.get().axis()).value();
        if (gap.value().times(2).compareTo(opening) >= 0) {
            return Effect.only(Faults.eaten(meeting.joint(), gap, opening, surroundings.settings().format(),
                    "What lies in an opening is smaller than it by its gaps."));
        }
        Length taken = gap.value().negate();
        Measure less = new Measure(
                taken,
                meeting.joint().at(),
                Derivation.combined("", Measure.datum(taken), "−", nothing(), gap.how().named("gap")));
        return Effect.of(
                List.of(new Addition(meeting.left().part().name(), face.get(), less)),
                List.of(
                        new Figure("gap", gap, meeting.joint().given("gap").isEmpty()),
                        new Figure("opening", meeting.left().along(face.get().axis()), false)),
                List.of());
    }

    /** A side on which nothing can be hinged: the part's own wide faces look there. */
    private static Optional<Finding> unhinged(Meeting meeting) {
        Joint joint = meeting.joint();
        Direction thick = meeting.left().placing().thickness();
        return joint.given("hinge")
                .filter(hinge -> joint.word("hinge").flatMap(Direction::named).filter(d -> d.axis() == thick.axis())
                        .isPresent())
                .map(hinge -> {
                    String there = meeting.left().placing().width().opposite().word();
                    return Faults.said(joint, JoineryFindings.DOES_NOT_FIT, hinge.valueAt(),
                            "`" + joint.left().name() + "` has no edge on that side to be hinged by")
                            .found("Its faces look " + thick.opposite().word() + " and " + thick.word() + ".")
                            .because(
                                    "The side on which it is hinged stays; all that it grows goes to the side opposite.")
                            .remedy(Faults.setting(joint, "hinge", there, "name an edge, as `hinge " + there + "`"))
                            .build();
                });
    }

    private static Derivation nothing() {
        return new Derivation("", Measure.datum(Length.ZERO), new Derivation.Standard("as the opening"),
                Optional.empty());
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> loose = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> round = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<Work.GaugeSetting> gaps = gaps(statement);
        return List.of(new Work(
                Work.Stage.AFTER_MEASURING,
                "Plane " + String.join(", ", loose) + " to the opening as it was measured, its gaps taken off",
                loose,
                round,
                "smoothing plane and shooting board",
                gaps,
                "the opening as made",
                "the gap is even all round",
                ""));
    }

    /** One gap where all are alike; else which part each lies beside. */
    private static List<Work.GaugeSetting> gaps(List<MadeJoint> statement) {
        Map<Length, List<String>> beside = new LinkedHashMap<>();
        for (MadeJoint made : statement) {
            made.figure("gap").ifPresent(figure -> beside
                    .computeIfAbsent(figure.measure().value(), gap -> new ArrayList<>())
                    .add("`" + made.joint().right().name() + "`"));
        }
        List<Work.GaugeSetting> gaps = new ArrayList<>();
        beside.forEach((gap, parts) -> gaps.add(new Work.GaugeSetting(
                beside.size() == 1 ? "gap" : "gap at " + String.join(", ", parts), gap)));
        return gaps;
    }
}
