package dev.treen.joinery;

import dev.treen.finding.Finding;
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
    /** The figure for how deep the mortise is, from the face that it is cut into. */
    static final String MORTISE = "mortise";

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
                            new Shape.OneOf(List.of("stopped", "through", "stub", "loose")),
                            "stopped",
                            "`stopped` ends in the wood, `through` shows its end on the other side, `stub` is as short as a"
                                    + " groove is deep and fills it, `loose` is a piece by itself, in mortises in both parts."),
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the groove in which it stands; else the usual chisel nearest to a third of the left part's thickness, a fifth"
                                    + " for a twin",
                            "How thick the tenon is, and how wide the mortise."),
                    PropertySchema.optional(
                            "long",
                            new Shape.LengthOrAuto(),
                            "two thirds of what it enters; all of it, `through`; the groove or a third of the thickness, `stub`; no more"
                                    + " than five times its thickness, `loose`",
                            "How far the tenon reaches in, from the shoulder."),
                    PropertySchema.optional(
                            "shoulder",
                            new Shape.LengthOrAuto(),
                            "3 mm or a quarter of the width, or the groove on that edge; at the end of the right part a third of the width,"
                                    + " in a grooved frame half",
                            "How far the tenon stays from each edge of the left part."),
                    PropertySchema.optional(
                            "haunch",
                            new Shape.LengthOrAuto(),
                            "as long as the groove is deep, else as the tenon is thick",
                            "At the end of the right part, how far the short piece reaches that fills the space beside the"
                                    + " tenon and keeps the rail from twisting; 0 for none."),
                    PropertySchema.optional(
                            "split",
                            new Shape.OneOf(List.of("auto", "none")),
                            "auto",
                            "`auto` makes two tenons of one that is wider than six times its thickness."),
                    PropertySchema.optional(
                            "twin",
                            new Shape.OneOf(List.of("auto", "two", "none")),
                            "auto",
                            "`auto` sets two tenons side by side in wood of 45 mm and more; `two` always."),
                    PropertySchema.optional(
                            "wedges",
                            new Shape.OneOf(List.of("none", "two")),
                            "none",
                            "`two` spreads the end of a through tenon in a mortise that is longer on the outside."),
                    PropertySchema.optional(
                            "flare",
                            new Shape.LengthOrAuto(),
                            "a sixteenth of the tenon's length",
                            "How much longer a wedged mortise is on the outside, at each end."),
                    PropertySchema.optional(
                            "peg",
                            new Shape.LengthOrAuto(),
                            "none; with `auto` three quarters of the tenon's thickness",
                            "How thick the peg is that is driven through both parts."),
                    PropertySchema.optional(
                            "offset",
                            new Shape.LengthOrAuto(),
                            "a sixth of the peg",
                            "How much nearer to the shoulder the hole in the tenon lies, so that the peg draws the joint"
                                    + " shut; 0 for a peg that only holds."),
                    PropertySchema.optional(
                            "peg_from",
                            new Shape.LengthOrAuto(),
                            "two pegs, or the middle of a short tenon",
                            "From the shoulder to the middle of the peg.")));

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
        TenonSizes sizes = TenonRules.of(meeting, end.get(), surroundings);
        LengthFormat format = surroundings.settings().format();
        Optional<TenonPeg> peg = TenonPeg.of(meeting, sizes, surroundings);
        Optional<TenonWedges> wedges = TenonWedges.of(meeting, sizes, surroundings);
        Optional<Finding> impossible = TenonFaults.impossible(meeting, sizes, format)
                .or(() -> wedges.flatMap(w -> w.impossible(meeting, sizes, format)));
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        List<Figure> figures = new ArrayList<>(figures(meeting, sizes));
        List<Cut> cuts = new ArrayList<>(sizes.loose() ? LooseTenon.cuts(meeting, sizes) : cuts(meeting, sizes));
        List<Finding> findings = new ArrayList<>(TenonFaults.proportions(meeting, sizes, format));
        peg.ifPresent(p -> {
            figures.addAll(p.figures(meeting.joint()));
            cuts.addAll(p.cuts(meeting, sizes));
            p.fault(meeting, sizes, format).ifPresent(findings::add);
        });
        wedges.ifPresent(w -> {
            figures.addAll(w.figures(meeting.joint()));
            cuts.addAll(w.cuts(meeting, sizes));
            w.fault(meeting, sizes, format).ifPresent(findings::add);
        });
        String rail = meeting.left().part().name();
        if (!sizes.loose()) {
            MeetingTenons.of(meeting, sizes, surroundings).ifPresent(meets -> {
                figures.add(new Figure(MeetingTenons.MITRED, meets.measure(), true));
                cuts.addAll(meets.cuts());
            });
        }
        List<Addition> additions = sizes.loose()
                ? List.of()
                : List.of(new Addition(
                        rail, end.get(), Mitre.named(sizes.reach(), "tenon in " + meeting.right().part().name())));
        List<LoosePiece> pieces = new ArrayList<>();
        if (sizes.loose()) {
            pieces.addAll(LooseTenon.pieces(meeting, sizes));
        }
        peg.ifPresent(p -> pieces.add(p.piece(meeting, sizes)));
        wedges.ifPresent(w -> pieces.add(w.piece(meeting, sizes)));
        return Effect.of(additions, figures, cuts).saying(findings).taking(pieces);
    }

    private static List<Figure> figures(Meeting meeting, TenonSizes sizes) {
        Joint joint = meeting.joint();
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("thick", sizes.thick(), joint.given("thick").isEmpty()));
        figures.add(new Figure("long", sizes.reach(), joint.given("long").isEmpty()));
        figures.add(new Figure("shoulder", sizes.low(), joint.given("shoulder").isEmpty()));
        if (!sizes.haunches(meeting).isEmpty()) {
            figures.add(new Figure("haunch", sizes.haunch(), joint.given("haunch").isEmpty()));
        }
        if (sizes.loose()) {
            figures.add(LooseTenon.piece(sizes));
        }
        if (!sizes.fills()) {
            Length more = sizes.loose() ? LooseTenon.behind() : behind(meeting, sizes);
            figures.add(new Figure(
                    MORTISE,
                    Ruled.of(MORTISE, sizes.reach().value().plus(more),
                            "deeper than the tenon is long, so that glue and chips have room",
                            "common practice, no source",
                            sizes.reach()),
                    true));
        }
        Measure width = meeting.left().along(sizes.across());
        Length glued = width.value().minus(sizes.low().value()).minus(sizes.high().value());
        figures.add(new Figure(
                GLUED,
                Ruled.of(GLUED, glued, "the width less the shoulders", "", width),
                true));
        return figures;
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
            cuts.add(new Cut.Hollow(stile, sizes.fills() ? tenon : deeper(tenon, meeting, sizes), meeting.origin()));
        }
        sizes.haunches(meeting).forEach(haunch -> cuts.add(new Cut.Hollow(stile, haunch, meeting.origin())));
        return cuts;
    }

    /** The mortise: deeper than its tenon is long, as far as there is wood. */
    private static Box deeper(Box tenon, Meeting meeting, TenonSizes sizes) {
        Axis axis = sizes.end().axis();
        Length more = behind(meeting, sizes);
        return sizes.end().sign() > 0
                ? TenonSizes.between(tenon, axis, tenon.min().get(axis), tenon.max().get(axis).add(more.mm()))
                : TenonSizes.between(tenon, axis, tenon.min().get(axis).subtract(more.mm()), tenon.max().get(axis));
    }

    /** What a mortise is deeper than its tenon is long: nothing where it would come near the other side. */
    private static Length behind(Meeting meeting, TenonSizes sizes) {
        Length wood = meeting.right().along(sizes.end().axis()).value().minus(sizes.reach().value());
        return wood.compareTo(BEHIND.times(2)) < 0 ? Length.ZERO : BEHIND;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        return TenonWorks.of(statement);
    }
}
