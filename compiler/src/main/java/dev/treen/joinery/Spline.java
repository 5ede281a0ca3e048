package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A loose tongue in grooves of both parts, along a mitre or a glued edge (rules of the trade J-16). */
public final class Spline implements JointKind {
    /** The word of the language. */
    public static final String KIND = "spline";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "A loose tongue, glued into a groove in each part, along a mitre or along two edges. Its grain runs across the"
                    + " joint: along it, it would split and hold nothing.",
            "joint spline front to left, left to back { thick 3 }",
            List.of(
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the usual iron nearest to a third of the thickness",
                            "How thick the tongue is, and how wide each groove."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "half the thickness; across the mitre of a box a third",
                            "How deep the groove in each part is; the tongue is 1 mm narrower than both."),
                    PropertySchema.optional(
                            "stop",
                            new Shape.LengthOrAuto(),
                            "none: it runs through",
                            "How far the grooves stay from both ends of the joint, so that the tongue does not show."),
                    PropertySchema.optional(
                            "grain",
                            new Shape.OneOf(List.of("across", "along")),
                            "across",
                            "How the tongue's grain runs to the joint.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Optional<Effect> nothing = joint.length("thick")
                .flatMap(thick -> Faults.ofNoSize(joint, "thick", thick))
                .or(() -> joint.length("deep").flatMap(deep -> Faults.ofNoSize(joint, "deep", deep)));
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Optional<SplineSizes> found = SplineSizes.of(meeting, surroundings);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "A loose tongue wants the corner of two ends, written inside to inside, or two boards edge to edge."));
        }
        SplineSizes sizes = found.get();
        SplineFaults faults = new SplineFaults(sizes, surroundings.settings().format());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        List<Finding> said = new ArrayList<>();
        along(joint).ifPresent(said::add);
        faults.weak().ifPresent(said::add);
        return Effect.of(sizes.additions(), sizes.figures(), sizes.cuts()).saying(said)
                .taking(List.of(sizes.piece()));
    }

    /** Grain along the joint: the tongue splits. */
    private static Optional<Finding> along(Joint joint) {
        return joint.given("grain")
                .filter(setting -> joint.word("grain").filter("along"::equals).isPresent())
                .map(setting -> Finding.of(
                        JoineryFindings.SPLINE_ALONG,
                        setting.valueAt(),
                        "The tongue between `" + joint.left().name() + "` and `" + joint.right().name()
                                + "` will split along its grain")
                        .found("Its grain runs along the joint.")
                        .because("Wood splits along its grain with hardly any force, and that is where this joint is"
                                + " pulled (Fairham, Woodwork Joints: the cross tongue is the stronger).")
                        .about(joint.left().name())
                        .about(joint.right().name())
                        .about(joint.name())
                        .remedy(Remedy.safe("turn its grain: `grain across`", new Edit(setting.valueAt(), "across")))
                        .build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> parts = Rebate.names(statement);
        boolean mitred = statement.getFirst().meeting().edge().isPresent();
        boolean stopped = statement.getFirst().figure("stop").isPresent();
        Work.GaugeSetting iron = new Work.GaugeSetting("iron", Work.figure(statement, "thick"));
        Work groove = new Work(
                Work.Stage.AFTER_LENGTH,
                (mitred ? "Saw and shoot the mitres, and cut the grooves for the tongues square into them"
                        : "Shoot the edges and plough the grooves for the tongues")
                        + (stopped ? ", stopped before both ends" : ""),
                parts,
                List.of(),
                mitred
                        ? "mitre shooting board, fine saw and chisel, or a cutter against a cradle"
                        : "plough plane, or a cutter against a fence",
                List.of(iron, new Work.GaugeSetting("depth", Work.figure(statement, "deep"))),
                mitred ? "the inside corner, where there is depth" : "the face side of every board",
                "the grooves of two parts lie level",
                "Hold short parts in a cradle, never by hand alone.");
        Work glue = new Work(
                Work.Stage.GLUE,
                "Glue the tongues into one part, then the other part onto them",
                parts,
                List.of(),
                "glue brush, clamps",
                List.of(),
                "",
                "the tongue goes in by hand; the joint closes all along",
                "Read the glue's label.");
        return List.of(groove, LoosePiece.making(statement, LoosePiece.Kind.TONGUE), glue);
    }

    /** Where a setting is written, or the joint. */
    static Measure none(Joint joint) {
        return Measure.written("stop", Length.ZERO, joint.given("stop").map(Setting::valueAt).orElseGet(joint::at));
    }
}
