package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A lid that is lifted off: it lies on the rims and covers them, and what is left of it between two steps, the lip, drops
 * into the opening and keeps it in place (rules of the trade J-03 for the step, M-13 and F-01 for the room it needs).
 */
public final class Lip implements JointKind {
    /** The word of the language. */
    public static final String KIND = "lip";
    /** Beyond whatever the other sides add to a lid. */
    private static final Length FAR = Length.ofMm(10_000);

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a lid, lies loose on the rims of the right ones and covers them; its lip drops into the"
                    + " opening. Write it as large as the opening, and place it as deep in as its lip is to reach: the"
                    + " joint adds what covers the rims, and cuts the steps that lie on them.",
            "joint lip lid into front, back, left, right { gap auto; overhang 2 }",
            List.of(
                    PropertySchema.optional(
                            "gap",
                            new Shape.LengthOrAuto(),
                            "half of what the lip grows to the dampest season, and 0.5 mm",
                            "Room left between the lip and each side. `auto` goes up to the next 0.01 mm, in inches to"
                                    + " the next 1/64."),
                    PropertySchema.optional(
                            "overhang", Shape.Plain.LENGTH, "0 mm: flush with the outside",
                            "How far the lid stands out beyond the outside of each side: something to lift it by.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) == 2) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A lid with a lip has its edges and ends against the sides that it closes."));
        }
        Side side = face.get();
        Axis up = Axes.of(meeting.left().placing().thickness().axis());
        Optional<Box> over = over(meeting, up);
        if (over.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "The rim has to end within the thickness of the lid: what lies below it is the lip, what lies above"
                            + " covers the rim."));
        }
        Measure gap = meeting.joint().length("gap").orElseGet(() -> Loose.gap(meeting, side, surroundings));
        Measure wall = meeting.right().along(side.axis());
        Measure covers = meeting.joint().length("overhang")
                .map(out -> new Measure(
                        wall.value().plus(out.value()),
                        out.at(),
                        Derivation.combined("", Measure.datum(wall.value().plus(out.value())), "+",
                                wall.how().named("thickness"), out.how().named("overhang"))))
                .orElse(wall);
        Measure opening = meeting.left().along(side.axis());
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        side,
                        Mitre.named(covers, "over the rim of " + meeting.right().part().name()))),
                List.of(
                        new Figure("gap", gap, meeting.joint().given("gap").isEmpty()),
                        new Figure("opening", opening, false),
                        new Figure("lip", lip(opening, gap), false),
                        new Figure("deep", deep(meeting, over.get(), up), false)),
                List.of(new Cut.Hollow(
                        meeting.left().part().name(),
                        step(over.get(), up, side, gap.value(), covers.value()),
                        meeting.origin())));
    }

    /** The lip, where it has its room on both sides. */
    private static Measure lip(Measure opening, Measure gap) {
        Length both = gap.value().times(2);
        Derivation twice = Derivation.rule(
                "both gaps", Measure.datum(both), "twice, for both sides", "gap", List.of(gap.how()));
        Length value = opening.value().minus(both);
        return new Measure(
                value,
                gap.at(),
                Derivation.combined("lip", Measure.datum(value), "−", opening.how().named("opening"), twice));
    }

    private static Measure deep(Meeting meeting, Box over, Axis up) {
        Length value = Length.ofMm(over.max().get(up)).minus(Length.ofMm(over.min().get(up)));
        return Ruled.at(meeting.left().placing().span(), "deep", value, "as far as it is placed below the rim",
                "the places of both parts", List.of());
    }

    /** That slice of the lid which lies below the rim; none if the rim does not end within its thickness. */
    private static Optional<Box> over(Meeting meeting, Axis up) {
        Box lid = meeting.left().box();
        Box wall = meeting.right().box();
        BigFraction low = lid.min().get(up);
        BigFraction high = lid.max().get(up);
        if (within(wall.max().get(up), low, high) && !within(wall.min().get(up), low, high)) {
            return Optional.of(new Box(lid.min(), lid.max().with(up, wall.max().get(up))));
        }
        if (within(wall.min().get(up), low, high) && !within(wall.max().get(up), low, high)) {
            return Optional.of(new Box(lid.min().with(up, wall.min().get(up)), lid.max()));
        }
        return Optional.empty();
    }

    private static boolean within(BigFraction at, BigFraction low, BigFraction high) {
        return Length.ofMm(at).compareTo(Length.ofMm(low)) > 0 && Length.ofMm(at).compareTo(Length.ofMm(high)) < 0;
    }

    /**
     * The step: from the gap inside the opening out over the rim, and from end to end of the lid, whatever the other sides
     * add there.
     */
    private static Box step(Box lip, Axis up, Side side, Length gap, Length covers) {
        Axis out = side.axis();
        Axis along = Meeting.third(out, up);
        Length low = Length.ofMm(lip.min().get(out));
        Length high = Length.ofMm(lip.max().get(out));
        Length from = side.sign() > 0 ? high.minus(gap) : low.minus(covers);
        Length to = side.sign() > 0 ? high.plus(covers) : low.plus(gap);
        return new Box(
                lip.min().with(out, from.mm()).with(along, Length.ofMm(lip.min().get(along)).minus(FAR).mm()),
                lip.max().with(out, to.mm()).with(along, Length.ofMm(lip.max().get(along)).plus(FAR).mm()));
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> lids = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> sides = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<Work.GaugeSetting> settings = Stream.of("deep", "gap")
                .flatMap(name -> statement.stream()
                        .flatMap(made -> made.figure(name).stream())
                        .map(figure -> new Work.GaugeSetting(name, figure.measure().value())))
                .distinct()
                .toList();
        return List.of(new Work(
                Work.Stage.AFTER_MEASURING,
                "Gauge the lip of " + String.join(", ", lids) + " from the opening as it was measured, its gaps taken"
                        + " off, and cut the steps round it: across the grain first, then along it",
                lids,
                sides,
                "fine saw and rebate plane, gauge",
                settings,
                "the face that lies on the rims",
                "the lid drops in by its own weight either way round",
                "Clamp the work; keep both hands behind the edge."));
    }
}
