package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A panel in a groove: its edge, or a tongue on it, lies loose in a groove ploughed along the other part, so that it can
 * move with the seasons (rules of the trade J-05, M-05 to M-07).
 */
public final class Groove implements JointKind {
    /** The word of the language. */
    public static final String KIND = "groove";

    /** Longer than any part: a groove runs through to both ends. */
    private static final BigFraction FAR = BigFraction.of(1_000_000);

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a panel, lies loose in a groove along the right one, free to move with the seasons. It is"
                    + " never glued. Write the panel as large as the opening: the grooves add what goes into them.",
            "joint groove base into front, back { wide 5; deep 4; gap auto }",
            List.of(
                    PropertySchema.optional(
                            "wide",
                            new Shape.LengthOrAuto(),
                            "the panel's thickness",
                            "How wide the groove is: the tongue is as thick."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a third of the right part's thickness",
                            "How deep the groove is ploughed."),
                    PropertySchema.optional(
                            "gap",
                            new Shape.LengthOrAuto(),
                            "what the wettest season needs, and 0.5 mm for making",
                            "Room left between the panel and the bottom of the groove, on each side."),
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
        GrooveSizes sizes = GrooveSizes.of(meeting, face.get(), surroundings);
        Measure adds = sizes.adds();
        List<Figure> figures = new ArrayList<>(sizes.figures());
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Hollow(
                meeting.right().part().name(), trench(meeting, face.get(), sizes)));
        sizes.shoulderSide().ifPresent(side -> cuts.add(new Cut.Hollow(
                meeting.left().part().name(), shoulder(meeting, face.get(), side, sizes))));
        return Effect.of(
                List.of(new Addition(meeting.left().part().name(), face.get(), adds)), figures, cuts);
    }

    /** The groove: through along the grain of the part, as wide as the tongue, as deep as it is ploughed. */
    private static Box trench(Meeting meeting, Side face, GrooveSizes sizes) {
        Box tongue = sizes.tongue(meeting.left().box());
        Box step = Rebate.step(tongue, face, sizes.deep().value());
        Axis grain = meeting.right().grain();
        return new Box(step.min().with(grain, FAR.negate()), step.max().with(grain, FAR));
    }

    /** What is taken off the panel beside its tongue: from the shoulder outward. */
    private static Box shoulder(Meeting meeting, Side face, Side side, GrooveSizes sizes) {
        Box panel = meeting.left().box();
        Axis thick = side.axis();
        Length tongue = sizes.wide().value();
        Vec3 min = panel.min();
        Vec3 max = panel.max();
        if (side.sign() > 0) {
            min = min.with(thick, panel.min().get(thick).add(tongue.mm()));
        } else {
            max = max.with(thick, panel.max().get(thick).subtract(tongue.mm()));
        }
        BigFraction back = sizes.shoulderGap().map(m -> m.value().mm()).orElse(BigFraction.ZERO);
        Axis out = face.axis();
        Axis other = Axes.of(3 - Axes.number(out) - Axes.number(thick));
        min = min.with(other, FAR.negate());
        max = max.with(other, FAR);
        return face.sign() > 0
                ? new Box(min.with(out, panel.max().get(out).subtract(back)), max.with(out, FAR))
                : new Box(min.with(out, FAR.negate()), max.with(out, panel.min().get(out).add(back)));
    }

    static Finding meetsWrongly(Meeting meeting, String because) {
        Joint joint = meeting.joint();
        return Finding.of(
                JoineryFindings.MEETS_WRONGLY,
                joint.at(),
                "`" + joint.left().name() + "` does not meet `" + joint.right().name() + "` as a "
                        + joint.kind() + " wants")
                .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                .related(meeting.right().placing().span(), "`" + joint.right().name() + "` lies here")
                .because(because)
                .about(joint.left().name())
                .about(joint.right().name())
                .build();
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        Set<String> walls = new LinkedHashSet<>();
        Set<String> panels = new LinkedHashSet<>();
        statement.forEach(made -> {
            walls.add(made.joint().right().name());
            panels.add(made.joint().left().name());
        });
        MadeJoint first = statement.getFirst();
        List<Work.GaugeSetting> settings = new ArrayList<>();
        first.figure("up").ifPresent(f -> settings.add(new Work.GaugeSetting("fence", f.measure().value())));
        first.figure("wide").ifPresent(f -> settings.add(new Work.GaugeSetting("iron", f.measure().value())));
        first.figure("deep").ifPresent(f -> settings.add(new Work.GaugeSetting("depth", f.measure().value())));
        String panel = String.join(", ", panels);
        List<Work> works = new ArrayList<>();
        works.add(new Work(
                Work.Stage.ALONG_STRIP,
                "Plough the groove for " + panel + ", at one setting and while the strips are whole",
                List.copyOf(walls),
                List.of(),
                "plough plane, or a cutter against a fence",
                settings,
                "the inside face, the fence against the edge nearest to the groove",
                "an offcut of the panel's edge slides in it without force",
                "Clamp the strip; keep the other hand behind the iron."));
        works.add(new Work(
                Work.Stage.AFTER_MEASURING,
                "Make " + panel + " to the opening as measured: cut to size, then "
                        + (first.figure("shoulder_gap").isPresent() ? "work its tongue" : "ease its edges"),
                List.copyOf(panels),
                List.copyOf(walls),
                "shooting board, rebate plane, gauge",
                tongue(first),
                "the face that lies at the groove",
                "it goes in dry all round, and can be moved by hand",
                "Finish the panel before it is closed in, or a raw line shows when it shrinks."));
        if (first.joint().word("slide").isPresent()) {
            works.add(new Work(
                    Work.Stage.FIT,
                    "Fit " + panel + " so that it slides; wax its tongue",
                    List.copyOf(panels),
                    List.copyOf(walls),
                    "block plane, wax",
                    List.of(),
                    "",
                    "it slides from end to end without a stop",
                    ""));
        }
        return works;
    }

    private static List<Work.GaugeSetting> tongue(MadeJoint made) {
        List<Work.GaugeSetting> settings = new ArrayList<>();
        made.figure("gap").ifPresent(f -> settings.add(new Work.GaugeSetting("gap each side", f.measure().value())));
        made.figure("tongue").ifPresent(f -> settings.add(new Work.GaugeSetting("tongue", f.measure().value())));
        return settings;
    }
}
