package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A mortise and tenon: the end of a rail, made thinner, in a hole of its size (rules of the trade J-10). */
public final class MortiseTenon implements JointKind {
    /** The word of the language. */
    public static final String KIND = "mortise_tenon";

    /** The figure that says over what width a joint is glued, where that is less than its parts touch. */
    public static final String GLUED = "glued";

    /** Room for glue behind a tenon that does not come through (Port Townsend School of Woodworking, by report). */
    private static final Length BEHIND = Length.ofMm(3);

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The end of the left part, made thinner, stands in a hole of its size in the right one: the joint of frames,"
                    + " tables and chairs. Its cheeks are long grain and hold glue.",
            "joint mortise_tenon rail into stile { long 35 }",
            List.of(
                    PropertySchema.optional(
                            "kind",
                            new Shape.OneOf(List.of("stopped", "through", "stub")),
                            "stopped",
                            "`stopped` ends in the wood, `through` shows its end on the other side, `stub` is as short as a"
                                    + " groove is deep."),
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the usual chisel nearest to a third of the left part's thickness",
                            "How thick the tenon is, and how wide the mortise."),
                    PropertySchema.optional(
                            "long",
                            new Shape.LengthOrAuto(),
                            "two thirds of what it enters; all of it, `through`; a third of its thickness, `stub`",
                            "How far the tenon reaches in, from the shoulder."),
                    PropertySchema.optional(
                            "shoulder",
                            new Shape.LengthOrAuto(),
                            "3 mm or a quarter of the width; a third of it at the end of the right part",
                            "How far the tenon stays from each edge of the left part."),
                    PropertySchema.optional(
                            "haunch",
                            new Shape.LengthOrAuto(),
                            "as long as the tenon is thick",
                            "At the end of the right part, how far the short piece reaches that fills the space beside the"
                                    + " tenon and keeps the rail from twisting; 0 for none."),
                    PropertySchema.optional(
                            "split",
                            new Shape.OneOf(List.of("auto", "none")),
                            "auto",
                            "`auto` makes two tenons of one that is wider than six times its thickness.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> end = meeting.face();
        if (end.isEmpty() || meeting.left().measure(end.get().axis()) != 0) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A mortise and tenon wants the end of the left part against a side of the right one."));
        }
        TenonSizes sizes = TenonSizes.of(meeting, end.get(), surroundings);
        Optional<Finding> impossible = impossible(meeting, sizes, surroundings.settings().format());
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        String rail = meeting.left().part().name();
        List<Figure> figures = figures(meeting, sizes);
        List<Cut> cuts = cuts(meeting, sizes);
        MeetingTenons.of(meeting, sizes, surroundings).ifPresent(meets -> {
            figures.add(new Figure(MeetingTenons.MITRED, meets.measure(), true));
            cuts.addAll(meets.cuts());
        });
        return Effect.of(
                List.of(new Addition(
                        rail, end.get(), Mitre.named(sizes.reach(), "tenon in " + meeting.right().part().name()))),
                figures,
                cuts)
                .saying(TenonFaults.proportions(meeting, sizes, surroundings.settings().format()));
    }

    private static List<Figure> figures(Meeting meeting, TenonSizes sizes) {
        Joint joint = meeting.joint();
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("thick", sizes.thick(), joint.given("thick").isEmpty()));
        figures.add(new Figure("long", sizes.reach(), joint.given("long").isEmpty()));
        figures.add(new Figure("shoulder", sizes.low(), joint.given("shoulder").isEmpty()));
        if (sizes.haunch().value().signum() > 0) {
            figures.add(new Figure("haunch", sizes.haunch(), joint.given("haunch").isEmpty()));
        }
        Measure width = meeting.left().along(sizes.across());
        Length glued = width.value().minus(sizes.low().value()).minus(sizes.high().value());
        figures.add(new Figure(
                GLUED,
                new Measure(
                        glued,
                        width.at(),
                        Derivation.rule(
                                GLUED, Measure.datum(glued), "the width less the shoulders", "", List.of(width.how()))),
                true));
        return figures;
    }

    private static Optional<Finding> impossible(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Measure wood = meeting.left().along(sizes.thin());
        Measure width = meeting.left().along(sizes.across());
        Measure wall = meeting.right().along(sizes.end().axis());
        Length left = width.value().minus(sizes.low().value()).minus(sizes.high().value());
        boolean tooThick = sizes.thick().value().compareTo(wood.value()) > 0 || sizes.thick().value().signum() <= 0;
        boolean tooNarrow = left.signum() <= 0
                || left.compareTo(sizes.thick().value().times(sizes.count() - 1L)) <= 0;
        boolean tooLong = sizes.reach().value().compareTo(wall.value()) > 0 || sizes.reach().value().signum() <= 0;
        if (tooThick) {
            return Optional.of(fault(meeting.joint(), sizes.thick(), "tenon of `" + meeting.joint().left().name()
                    + "` is thicker than the wood",
                    "The wood is " + format.text(wood.value()) + " thick, the tenon "
                            + format.text(sizes.thick().value()) + "; a third of the wood is usual."));
        }
        if (tooNarrow) {
            return Optional.of(fault(meeting.joint(), sizes.low(), "shoulders leave no tenon on `"
                    + meeting.joint().left().name() + "`",
                    "It is " + format.text(width.value())
                            + " wide, and the shoulders take " + format.text(width.value().minus(left)) + "."));
        }
        if (tooLong) {
            return Optional.of(tooLong(meeting.joint(), sizes, wall, format));
        }
        return Optional.empty();
    }

    private static Finding tooLong(Joint joint, TenonSizes sizes, Measure wall, LengthFormat format) {
        Finding.Builder finding = Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                sizes.reach().at(),
                "The tenon of `" + joint.left().name() + "` is longer than `" + joint.right().name() + "` is wide")
                .found("It is " + format.text(sizes.reach().value()) + " long and goes into "
                        + format.text(wall.value())
                        + " of wood: " + format.text(sizes.reach().value().minus(wall.value())) + " too long.")
                .because("It would stand out on the other side. `kind through` makes it as long as the wood is wide.")
                .related(wall.at(), "`" + joint.right().name() + "` is so wide there")
                .about(joint.left().name())
                .about(joint.name());
        joint.given("long").ifPresent(given -> finding.remedy(
                Remedy.choice("leave the length to Treen: `long auto`", new Edit(given.valueAt(), "auto"))));
        return finding.build();
    }

    private static Finding fault(Joint joint, Measure at, String what, String found) {
        return Finding.of(JoineryFindings.DOES_NOT_FIT, at.at(), "The " + what)
                .found(found)
                .about(joint.left().name())
                .about(joint.name())
                .build();
    }

    /** Cheeks and shoulders off the rail, the mortise and the place of the haunch out of the stile. */
    private static List<Cut> cuts(Meeting meeting, TenonSizes sizes) {
        String rail = meeting.left().part().name();
        String stile = meeting.right().part().name();
        List<Box> standing = new ArrayList<>(sizes.tenons(meeting));
        standing.addAll(sizes.haunches(meeting));
        List<Cut> cuts = new ArrayList<>();
        Box slab = Rebate.step(meeting.left().box(), sizes.end(), sizes.reach().value());
        for (Box waste : Boxes.without(slab, standing)) {
            cuts.add(new Cut.Hollow(rail, waste, meeting.origin()));
        }
        for (Box tenon : sizes.tenons(meeting)) {
            cuts.add(new Cut.Hollow(stile, sizes.through() ? tenon : deeper(tenon, meeting, sizes), meeting.origin()));
        }
        sizes.haunches(meeting).forEach(haunch -> cuts.add(new Cut.Hollow(stile, haunch, meeting.origin())));
        return cuts;
    }

    /** The mortise: deeper than its tenon is long, as far as there is wood. */
    private static Box deeper(Box tenon, Meeting meeting, TenonSizes sizes) {
        Axis axis = sizes.end().axis();
        Length wood = meeting.right().along(axis).value().minus(sizes.reach().value());
        Length more = wood.compareTo(BEHIND.times(2)) < 0 ? Length.ZERO : BEHIND;
        return sizes.end().sign() > 0
                ? TenonSizes.between(tenon, axis, tenon.min().get(axis), tenon.max().get(axis).add(more.mm()))
                : TenonSizes.between(tenon, axis, tenon.min().get(axis).subtract(more.mm()), tenon.max().get(axis));
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> rails = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> stiles = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        Work.GaugeSetting thick = new Work.GaugeSetting("mortise gauge", Work.figure(statement, "thick"));
        Work.GaugeSetting reach = new Work.GaugeSetting("tenon", Work.figure(statement, "long"));
        Work mortise = new Work(
                Work.Stage.AFTER_LENGTH,
                "Chop the mortises, all marked out together",
                stiles,
                List.of(),
                "mortise gauge, mortise chisel and mallet, or a drill and chisel",
                List.of(thick, reach),
                "the face side",
                "the chisel stands square; a through mortise is cut from both sides",
                "Clamp the work low on the bench; keep the free hand behind the edge.");
        Work tenon = new Work(
                Work.Stage.AFTER_LENGTH,
                "Saw the tenons, cheeks before shoulders, to fit the mortises as cut",
                rails,
                stiles,
                "the same mortise gauge, tenon saw, shoulder plane",
                List.of(thick, reach),
                "the face side, with the gauge as it was set for the mortises",
                "the tenon goes in by hand pressure, holds its own weight, and the shoulder closes all round",
                "Pare away from the fingers.");
        Work glue = new Work(
                Work.Stage.GLUE,
                "Glue the mortise and tenon joints and clamp across the shoulders",
                Rebate.names(statement),
                List.of(),
                "clamps and blocks, glue brush",
                List.of(),
                "",
                "shoulders closed, diagonals equal, no winding",
                "Read the glue's label.");
        return List.of(mortise, tenon, glue);
    }
}
