package dev.treen.joinery;

import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import java.util.ArrayList;
import java.util.List;

/** Wood screws through the left part into the right one (rules of the trade J-18). */
public final class Screw implements JointKind {
    /** The word of the language. */
    public static final String KIND = "screw";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "A row of wood screws through the left part into the right one: the shanks slip through the first, the threads"
                    + " hold in the second. Where one part moves with the seasons and the other does not, those that it"
                    + " would strain stand in slots.",
            "joint screw cleat into top { gauge 8; count 3 }",
            properties());

    static List<PropertySchema> properties() {
        List<PropertySchema> all = new ArrayList<>(List.of(
                PropertySchema.optional(
                        "gauge", Shape.Plain.COUNT, "what `thick` says", "The number of the screw, from 0 to 24."),
                PropertySchema.optional(
                        "thick",
                        new Shape.LengthOrAuto(),
                        "the thickest usual screw for the edge it enters, or for the thinner part",
                        "How thick the shank is, and how wide its hole in the left part.")));
        all.addAll(Fastening.SHARED);
        all.addAll(List.of(
                PropertySchema.optional(
                        "bore",
                        new Shape.LengthOrAuto(),
                        "70 % of the root in softwood, 90 % in hardwood",
                        "How wide the hole for the thread is; 0 for none."),
                PropertySchema.optional(
                        "sink",
                        Shape.Plain.LENGTH,
                        "0: the head comes flush",
                        "How deep the head is let in below the surface, to be plugged or to reach farther."),
                PropertySchema.optional(
                        "head",
                        new Shape.OneOf(List.of("countersunk", "round")),
                        "countersunk",
                        "Whether the head lies in a countersink or on the wood. Screws in slots want round heads on"
                                + " washers: there a countersunk head binds."),
                PropertySchema.optional(
                        "slots",
                        new Shape.OneOf(List.of("auto", "none")),
                        "auto",
                        "`auto` makes a slot for each screw past which the wood would move more than 0.3 mm."),
                PropertySchema.optional(
                        "fixed",
                        Shape.Plain.DIRECTION,
                        "its middle",
                        "The edge of the moving part that stays where it is.")));
        return all;
    }

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean fastens() {
        return true;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        return Fastening.make(meeting, surroundings, FastenerSizes::screw);
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> held = Fastening.named(statement, true);
        boolean slotted = statement.stream().flatMap(m -> m.fasteners().stream()).anyMatch(f -> f.slotted() > 0);
        boolean sunk = statement.stream().anyMatch(m -> m.figure("head").isPresent());
        List<Work> works = new ArrayList<>();
        works.add(new Work(
                Work.Stage.AFTER_LENGTH,
                "Bore the screws' shank holes"
                        + (sunk ? " and countersink them" : "")
                        + (slotted
                                ? "; saw or file those away from the fixed line into slots, for round heads on washers"
                                : ""),
                held,
                List.of(),
                (sunk ? "drill, countersink" : "drill") + (slotted ? ", fine file" : ""),
                Fastening.settings(statement, "thick", "end", "every", "sink", "slot"),
                "the face that shows, marked from one end",
                slotted ? "each slot lies the way in which the wood moves" : "a screw slips through by its own weight",
                "Clamp the work over waste wood; keep sleeves and hair away from the drill."));
        works.add(new Work(
                Work.Stage.WHEN_SET,
                "Bore through the holes for the threads and drive the screws",
                Rebate.names(statement),
                List.of(),
                "drill with a stop, screwdriver that fits",
                Fastening.settings(statement, "bore", "grip", "long"),
                "the parts clamped where they belong",
                slotted
                        ? "screws in slots are drawn up and then turned back a little, so that the wood can slide"
                        : "the heads draw the parts together and lie flush",
                "Set the stop so that nothing comes through. Soap the threads; into hardwood drive a steel screw before a"
                        + " brass one."));
        return works;
    }
}
