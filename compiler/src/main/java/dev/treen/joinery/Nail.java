package dev.treen.joinery;

import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** Nails, brads and pins through the left part into the right one (rules of the trade J-19). */
public final class Nail implements JointKind {
    /** The word of the language. */
    public static final String KIND = "nail";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "A row of nails or brads through the left part into the right one. They are bored for where the wood is thin or"
                    + " its end near.",
            "joint nail base into front, back { thick 1.2; long 25 }",
            properties());

    private static List<PropertySchema> properties() {
        List<PropertySchema> all = new ArrayList<>(List.of(
                PropertySchema.optional(
                        "kind",
                        new Shape.OneOf(List.of("plain", "ringed")),
                        "plain",
                        "`plain` are smooth; `ringed` have rings that hold better."),
                PropertySchema.optional(
                        "thick",
                        new Shape.LengthOrAuto(),
                        "the thickest usual one up to a sixth of hardwood, a quarter of softwood, a tenth of an edge it"
                                + " enters",
                        "How thick they are.")));
        all.addAll(Fastening.SHARED);
        all.add(PropertySchema.optional(
                "bore",
                new Shape.LengthOrAuto(),
                "three quarters of the nail near an end or in thin wood, else 0",
                "How wide the hole is that is bored for them; 0 for none."));
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
        return Fastening.make(meeting, surroundings, FastenerSizes::nail);
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        boolean bored = Work.figure(statement, "bore").compareTo(Length.ZERO) > 0;
        return List.of(new Work(
                Work.Stage.WHEN_SET,
                (bored ? "Bore for the nails and drive them" : "Drive the nails")
                        + ", slanted a little toward each other, and set the heads below the surface",
                Rebate.names(statement),
                List.of(),
                bored ? "drill, hammer, nail set" : "hammer, nail set",
                Fastening.settings(statement, "thick", "long", "bore", "end", "every"),
                "a line over the middle of the part that is entered",
                "no point shows, and no wood has split",
                "Wear eye protection; start a small nail in a strip of card or with pliers, not with the fingers."));
    }
}
