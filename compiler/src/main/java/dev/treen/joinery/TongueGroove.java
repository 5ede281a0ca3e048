package dev.treen.joinery;

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
import dev.treen.wood.Boards;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Boards side by side, a tongue on the edge of one in a groove of the next (rules of the trade J-06, M-20). */
public final class TongueGroove implements JointKind {
    /** The word of the language. */
    public static final String KIND = "tongue_groove";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "A tongue along the edge of the left board lies in a groove along the right one. The boards are not glued:"
                    + " each joint has room for what a board grows, and the tongue covers when it shrinks. Write the boards"
                    + " edge to edge; the room is taken from the left one.",
            "joint tongue_groove one into two, two into three { deep 6 }",
            List.of(
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the usual iron nearest to a third of the boards' thickness",
                            "How thick the tongue is, and how wide the groove."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "half the thickness",
                            "How deep the groove is."),
                    PropertySchema.optional(
                            "gap",
                            new Shape.LengthOrAuto(),
                            "what the left board grows in the wettest season, and 0.2 mm",
                            "Room between the boards, and as much before the tongue; 0 for boards that are glued.")));

    /** What stays beside the groove, at the least: common practice, no source. */
    private static final Length LEAST_CHEEK = Length.ofMm(2);

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Edges> found = Edges.of(meeting);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "Tongue and groove wants two boards edge to edge, the grain of both the same way."));
        }
        Edges edges = found.get();
        Joint joint = meeting.joint();
        Measure wood = meeting.left().along(edges.thin());
        Measure thick = joint.length("thick").orElseGet(() -> TenonRules.third(wood, surroundings));
        Measure deep = joint.length("deep").orElseGet(() -> half(wood, surroundings));
        Optional<Effect> nothing = Faults.ofNoSize(joint, "thick", thick)
                .or(() -> Faults.ofNoSize(joint, "deep", deep));
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Measure gap = joint.length("gap").orElseGet(() -> gap(meeting, surroundings));
        Optional<Finding> impossible = impossible(edges, thick, deep, gap, surroundings.settings().format());
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        Length tongue = deep.value().minus(gap.value());
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("thick", thick, joint.given("thick").isEmpty()),
                new Figure("deep", deep, joint.given("deep").isEmpty()),
                new Figure("gap", gap, joint.given("gap").isEmpty())));
        Measure adds = new Measure(
                tongue,
                deep.at(),
                Derivation.combined(
                        "tongue in " + joint.right().name(),
                        Measure.datum(tongue),
                        "−",
                        deep.how().named("groove"),
                        gap.how().named("gap")));
        figures.add(new Figure("tongue", tongue(adds, gap), true));
        return Effect.of(
                List.of(new Addition(meeting.left().part().name(), edges.face(), adds)),
                figures,
                cuts(edges, thick.value(), deep.value(), gap.value()))
                .saying(weak(edges, thick, surroundings.settings().format()).stream().toList());
    }

    private static Measure tongue(Measure adds, Measure gap) {
        Length value = adds.value().plus(gap.value());
        return new Measure(
                value, adds.at(), Derivation.combined("tongue", Measure.datum(value), "+", adds.how(), gap.how()));
    }

    private static Measure half(Measure wood, Surroundings surroundings) {
        return Ruled.onMark("deep", wood.value().dividedBy(2), "half the thickness, on a mark of the rule",
                "Fairham, Woodwork Joints, The Tongued and Grooved Joint", wood, surroundings);
    }

    private static Measure gap(Meeting meeting, Surroundings surroundings) {
        Nature nature = surroundings.nature(meeting.left().part());
        Measure width = meeting.left().part().width();
        Figures figures = Figures.standard();
        double needed = nature.still()
                ? figures.value("back-buckles.clear")
                : Boards.back(width.value().toDoubleMm(), nature.across(), nature.seasons(), figures).gapMm();
        Length finest = Length.ofMm(1).dividedBy(100);
        Length value = Length.nearest(needed, finest.dividedBy(1000)).roundUpTo(finest);
        return Ruled.of("gap", value, nature.still()
                ? "a manufactured sheet hardly moves"
                : "what a board grows, and "
                        + surroundings.settings().format()
                                .text(Length.nearest(figures.value("back-buckles.clear"), finest))
                        + "; " + nature.wood(),
                nature.still() ? "common practice, no source" : nature.across().citation().source(), width);
    }

    /** The groove in the right board; shoulders on the left one, drawn back by the gap. */
    private static List<Cut> cuts(Edges edges, Length thick, Length deep, Length gap) {
        Meeting meeting = edges.meeting();
        String left = meeting.left().part().name();
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Hollow(
                meeting.right().part().name(),
                edges.slab(thick.mm(), BigFraction.ZERO, deep.mm()),
                meeting.origin()));
        for (int sign : new int[]{-1, 1}) {
            cuts.add(new Cut.Hollow(
                    left, edges.beside(sign, thick.mm(), gap.mm().negate(), deep.mm()), meeting.origin()));
        }
        return cuts;
    }

    private static Optional<Finding> impossible(
            Edges edges, Measure thick, Measure deep, Measure gap, LengthFormat format) {
        Joint joint = edges.meeting().joint();
        Length wood = Length.ofMm(edges.wood());
        Length width = edges.meeting().right().along(edges.face().axis()).value();
        if (thick.value().compareTo(wood) >= 0) {
            return Optional
                    .of(Faults
                            .said(joint, JoineryFindings.DOES_NOT_FIT, thick.at(),
                                    "The tongue of `" + joint.left().name() + "` is as thick as the board")
                            .found("It is " + format.text(thick.value()) + " thick of " + format.text(wood) + ".")
                            .remedy(Faults.setting(joint, "thick", "auto", "take about a third: `thick auto`"))
                            .build());
        }
        if (deep.value().compareTo(width) >= 0) {
            return Optional.of(Faults
                    .said(joint, JoineryFindings.DOES_NOT_FIT, deep.at(),
                            "The groove cuts `" + joint.right().name() + "` in two")
                    .found("It is " + format.text(deep.value()) + " deep in " + format.text(width) + ".")
                    .remedy(Faults.setting(joint, "deep", "auto", "take half the thickness: `deep auto`"))
                    .build());
        }
        if (gap.value().compareTo(deep.value()) >= 0 || gap.value().signum() < 0) {
            return Optional.of(Faults
                    .said(joint, JoineryFindings.DOES_NOT_FIT, gap.at(),
                            "The gap leaves `" + joint.left().name() + "` no tongue in its groove")
                    .found("It is " + format.text(gap.value()) + " in a groove " + format.text(deep.value())
                            + " deep.")
                    .remedy(joint.given("gap").isPresent()
                            ? Faults.setting(joint, "gap", "auto", "leave it to Treen: `gap auto`")
                            : Remedy.choice("take narrower boards, which move less, or a deeper groove"))
                    .build());
        }
        return Optional.empty();
    }

    /** Cheeks beside the groove too thin to hold. */
    private static Optional<Finding> weak(Edges edges, Measure thick, LengthFormat format) {
        Joint joint = edges.meeting().joint();
        Length wood = Length.ofMm(edges.wood());
        Length cheek = wood.minus(thick.value()).dividedBy(2);
        if (thick.value().times(2).compareTo(wood) <= 0 && cheek.compareTo(LEAST_CHEEK) >= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                JoineryFindings.TENON_PROPORTIONS,
                thick.at(),
                "The groove in `" + joint.right().name() + "` leaves thin cheeks")
                .found("Beside " + format.text(thick.value()) + " of groove stays " + format.text(cheek)
                        + " on each side.")
                .because("A third for the tongue is usual (Fairham, Woodwork Joints); a cheek under 2 mm breaks out"
                        + " (common practice, no source).")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .remedy(joint.given("thick").isPresent()
                        ? Faults.setting(joint, "thick", "auto", "take about a third: `thick auto`")
                        : Remedy.choice("take thicker boards, or lap them with a `rebate`"))
                .build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> grooved = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<String> tongued = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        boolean glued = Work.figure(statement, "gap").isZero();
        Work.GaugeSetting thick = new Work.GaugeSetting("iron", Work.figure(statement, "thick"));
        return List.of(
                new Work(
                        Work.Stage.ALONG_STRIP,
                        "Plough the grooves along the edges, all at one setting",
                        grooved,
                        List.of(),
                        "plough plane, or a cutter against a fence",
                        List.of(thick, new Work.GaugeSetting("depth", Work.figure(statement, "deep"))),
                        "the face side of every board",
                        "the groove runs evenly from end to end",
                        "Clamp the work; keep the other hand behind the iron."),
                new Work(
                        Work.Stage.ALONG_STRIP,
                        "Plane the tongues to the grooves, and ease their back edge so that the face closes",
                        tongued,
                        grooved,
                        "tonguing plane, or a rebate plane with a fence",
                        List.of(thick, new Work.GaugeSetting("tongue", Work.figure(statement, "tongue"))),
                        "the face side, with the fence as it was for the grooves",
                        "the faces lie flush, and the tongue slides in by hand",
                        "Clamp the work; keep the other hand behind the iron."),
                glued
                        ? new Work(
                                Work.Stage.GLUE,
                                "Glue the tongued edges and clamp them from both faces by turns",
                                Rebate.names(statement),
                                List.of(),
                                "clamps and cauls",
                                List.of(),
                                "",
                                "flat, with a little glue all along",
                                "Read the glue's label.")
                        : new Work(
                                Work.Stage.FIT,
                                "Put the boards together dry, each fixed along one line only",
                                Rebate.names(statement),
                                List.of(),
                                "thin strips to set the gap",
                                List.of(new Work.GaugeSetting("gap", Work.figure(statement, "gap"))),
                                "",
                                "the gap is even from end to end",
                                "Never glue them to each other: they have to move."));
    }
}
