package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.solid.Side;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A door, drawer or lid that lies loose in its opening (rules of the trade M-11, M-13 and M-14). It is written as large as
 * the opening; the joint takes off the gap on each side.
 */
public final class Inset implements JointKind {
    /** The word of the language. */
    public static final String KIND = "inset";

    private static final Length FINEST = Length.ofMm(1).dividedBy(100);
    private static final Length NATURES = Length.ofMm(1).dividedBy(100_000);

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
        Measure gap = meeting.joint().length("gap").orElseGet(() -> gap(meeting, face.get(), surroundings));
        Length taken = gap.value().negate();
        Measure less = new Measure(
                taken,
                meeting.joint().at(),
                Derivation.combined("", Measure.datum(taken), "−", nothing(), gap.how().named("gap")));
        return Effect.of(
                List.of(new Addition(meeting.left().part().name(), face.get(), less)),
                List.of(
                        new dev.treen.joinery.Figure("gap", gap, meeting.joint().given("gap").isEmpty()),
                        new dev.treen.joinery.Figure("opening", meeting.left().along(face.get().axis()), false)),
                List.of());
    }

    private static Derivation nothing() {
        return new Derivation("", Measure.datum(Length.ZERO), new Derivation.Standard("as the opening"),
                Optional.empty());
    }

    private static Measure gap(Meeting meeting, Side side, Surroundings surroundings) {
        Measure opening = meeting.left().along(side.axis());
        int measure = meeting.left().measure(side.axis());
        Figure clear = clear(meeting.joint());
        boolean stands = stands(meeting.joint(), side);
        double room = stands ? 0 : clear.value();
        double share = share(meeting.joint(), side);
        Nature nature = surroundings.nature(meeting.left().part());
        // The part is smaller than the opening by what is taken off; its growth hardly differs for that.
        double grows = share * nature.swelling(measure, opening.value().toDoubleMm());
        Length needed = Length.nearest(grows + room, NATURES);
        Length value = surroundings.inches()
                ? needed.roundUpTo(Length.ofInches(1, 64))
                : needed.roundUpTo(FINEST);
        return new Measure(
                value,
                opening.at(),
                Derivation.rule(
                        "gap",
                        Measure.datum(value),
                        stands
                                ? "it stands on this side"
                                : DecimalText.write(grows, 2)
                                        + " mm that it grows to this side in the dampest season, and "
                                        + DecimalText.write(room, 2) + " mm to be free",
                        clear.citation().source(),
                        List.of(opening.how().named("opening"))));
    }

    /** The room that is to be left in the dampest season. */
    public static Figure clear(Joint joint) {
        return Figures.standard().get(joint.word("runs").isPresent() ? "drawer.run" : "door.gap");
    }

    /** Whether the part stands on this side, as a drawer does on its lower edge. */
    public static boolean stands(Joint joint, Side side) {
        return joint.word("runs").isPresent() && side == Side.BOTTOM;
    }

    /**
     * How much of the part's growth comes out at one side: all of it opposite to the hinge and above a drawer, none on the
     * hinge and below, else half.
     */
    public static double share(Joint joint, Side side) {
        Optional<Side> hinge = joint.word("hinge").flatMap(Direction::named)
                .map(d -> Side.of(Axes.of(d.axis()), d.sign()));
        Stream<Side> fixed = joint.word("runs").isPresent()
                ? Stream.concat(hinge.stream(), Stream.of(Side.BOTTOM))
                : hinge.stream();
        return fixed.filter(still -> still.axis() == side.axis())
                .findFirst()
                .map(still -> still == side ? 0.0 : 1.0)
                .orElse(0.5);
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> loose = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> round = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<Work.GaugeSetting> gaps = statement.stream()
                .flatMap(made -> made.figure("gap").stream())
                .map(figure -> new Work.GaugeSetting("gap", figure.measure().value()))
                .distinct()
                .toList();
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
}
