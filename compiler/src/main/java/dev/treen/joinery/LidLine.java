package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import java.util.List;
import java.util.Optional;

/**
 * A lid cut free: the box is glued up closed and sawn round at a line, so that lid and box fit as grown. What the saw and
 * the planing of both rims take is part of the walls' height (common practice, no source).
 */
public final class LidLine implements JointKind {
    /** The word of the language. */
    public static final String KIND = "lid_line";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "The box is glued up closed; then its lid is cut free at a line round the right parts, its walls, and takes"
                    + " the left part, its panel, with it. The walls are written in one, with what the saw takes and what is"
                    + " planed off both rims. Dovetails and fingers are laid out on both sides of the line, so that it"
                    + " falls within a pin.",
            "joint lid_line top to front, right, back, left { tall 25; kerf 1; dress 0.5 }",
            List.of(
                    PropertySchema.optional(
                            SawLine.TALL,
                            new Shape.LengthOrAuto(),
                            "a quarter of the walls' height",
                            "How high the walls of the lid are in the end, from the edge that they lie nearest to."),
                    PropertySchema.optional(
                            SawLine.KERF,
                            new Shape.LengthOrAuto(),
                            "the kerf of the project's saw",
                            "What the saw takes."),
                    PropertySchema.optional(
                            SawLine.DRESS,
                            new Shape.LengthOrAuto(),
                            "0.5 mm",
                            "What is planed off each of both rims to take the marks of the saw away.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public Turn turn() {
        return Turn.CUTS_APART;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<SawLine> found = SawLine.of(meeting, surroundings);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "A lid is cut free with its panel: the panel's edges lie against the insides of the walls."));
        }
        SawLine line = found.get();
        LidLineFaults faults = new LidLineFaults(line, surroundings);
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        boolean first = surroundings.alike(meeting).getFirst().equals(meeting);
        return Effect.of(
                List.of(),
                List.of(
                        new Figure(SawLine.TALL, line.tall(), meeting.joint().given(SawLine.TALL).isEmpty()),
                        new Figure(SawLine.KERF, line.kerf(), meeting.joint().given(SawLine.KERF).isEmpty()),
                        new Figure(SawLine.DRESS, line.dress(), meeting.joint().given(SawLine.DRESS).isEmpty()),
                        new Figure("lost", Ruled.at(meeting.joint().at(), "lost", line.lost(),
                                "the kerf and the planing of both rims", "from the line",
                                List.of(line.kerf().how(), line.dress().how())), true)),
                List.of(new Cut.Hollow(meeting.right().part().name(), line.sawn(), meeting.origin())))
                .saying(faults.all(first));
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> walls = statement.stream().map(made -> made.joint().right().name()).distinct().toList();
        List<String> panel = statement.stream().map(made -> made.joint().left().name()).distinct().toList();
        Work.GaugeSetting tall = new Work.GaugeSetting("lid", Work.figure(statement, SawLine.TALL));
        Work.GaugeSetting lost = new Work.GaugeSetting("saw and planing", Work.figure(statement, "lost"));
        return List.of(new Work(
                Work.Stage.CUT_FREE,
                "Cut the lid free: gauge both rims right round the closed box, saw between the lines one wall after the"
                        + " other, with slips of wood wedged into the kerf of each wall that is through, and plane both rims"
                        + " to their lines",
                walls,
                panel,
                "two marking gauges, fine saw, slips as thick as the kerf, plane or paper on a flat board",
                List.of(tall, lost),
                "the lid's outside",
                "lid and box lie on each other without a gap and without rocking; both are marked at the front, so that the"
                        + " grain meets again",
                "The lid drops at the last cut and pinches the saw: wedge the kerf, hold both halves, and keep hands out of"
                        + " the line. At a machine saw leave a web as thin as paper in the last two walls and cut it by hand;"
                        + " keep to the machine's manual."));
    }
}
