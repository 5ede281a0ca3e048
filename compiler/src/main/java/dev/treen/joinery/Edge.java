package dev.treen.joinery;

import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.DecimalText;
import dev.treen.solid.BoxContact;
import java.util.List;
import java.util.Optional;

/** Staves glued edge to edge into a wide board (rules of the trade J-01, edge joint). */
public final class Edge implements JointKind {
    /** The word of the language. */
    public static final String KIND = "edge";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Boards glued edge to edge, long grain to long grain, make one wide board: the joint is as strong as the wood,"
                    + " and stronger plain than shaped.",
            "joint edge stave_1 to stave_2, stave_2 to stave_3 { rings alternate }",
            List.of(PropertySchema.optional(
                    "rings",
                    new Shape.OneOf(List.of("alternate", "alike")),
                    "alternate",
                    "How the heart sides lie: `alternate` up and down by turns, so that the whole stays flat and each"
                            + " stave hollows by itself; `alike` all one way, for a panel that is held flat by battens or"
                            + " a frame.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Edges> edges = Edges.of(meeting);
        if (edges.isEmpty()) {
            boolean endToEnd = meeting.face()
                    .filter(side -> meeting.left().measure(side.axis()) == 0)
                    .isPresent();
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    endToEnd
                            ? "End grain holds hardly any glue (Wood Handbook ch. 10): staves are joined edge to edge."
                            : "An edge joint wants two boards edge to edge, the grain of both the same way."));
        }
        return Effect.of(List.of(), List.of(), List.of());
    }

    /** The glued surface of one joint in square millimetres. */
    private static double areaMm2(MadeJoint made) {
        return made.meeting().contact() instanceof BoxContact.FaceToFace touch ? touch.area().doubleValue() : 0;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> staves = Rebate.names(statement);
        double area = statement.stream().mapToDouble(Edge::areaMm2).sum();
        boolean alike = statement.getFirst().joint().word("rings").filter("alike"::equals).isPresent();
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Lay the staves by their grain, "
                                + (alike ? "their heart sides all one way" : "their heart sides up and down by turns")
                                + ", mark the face across all, and shoot the edges in pairs, one face up and one down",
                        staves,
                        List.of(),
                        "try plane, shooting board, pencil",
                        List.of(),
                        "the marked face: errors of the angle then cancel (Fairham)",
                        "held to the light the edges close, long ones a hair hollow in the middle",
                        "Clamp the work; keep fingers off the edge that is planed."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the edges, " + DecimalText.write(area / 100, 0)
                                + " cm² in all, and clamp them from both faces by turns",
                        staves,
                        List.of(),
                        "bar clamps every 200 to 300 mm, cauls, glue brush",
                        List.of(),
                        "",
                        "flat under a straight edge; a bead of glue all along",
                        "Read the glue's label; scrape the bead before it is hard, away from the hand."));
    }
}
