package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.BoxContact;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a groove, a housing or a rebate leaves of the wood behind it. A groove takes a third of the thickness, never over
 * half, and 3 mm stay (rules of the trade J-a, common practice, no source); between a third and a half it is let pass
 * where 5 mm stay, since small boxes are made so. A housing takes a quarter to a third (J-b, Port Townsend School of
 * Woodworking), a rebated corner up to two thirds (J-03, common practice, no source).
 */
final class GrooveDepth implements Check {
    static final FindingKind GROOVE = FindingKind.warning("groove-too-deep",
            "A groove leaves too little wood behind it");
    static final FindingKind HOUSING = FindingKind.warning("housing-too-deep",
            "A housing leaves too little wood behind it");
    static final FindingKind REBATE = FindingKind.warning("rebate-too-deep",
            "A rebate leaves too little wood behind it");

    private static final double SAME = 1e-9;

    @Override
    public List<FindingKind> kinds() {
        return List.of(GROOVE, HOUSING, REBATE);
    }

    /** The limits of one kind of joint, as shares of the thickness. */
    private record Limits(FindingKind kind, double warning, double error, String usual) {
        static Optional<Limits> of(String joint) {
            Figures figures = Figures.standard();
            return switch (joint) {
                case "groove" -> Optional.of(new Limits(
                        GROOVE,
                        figures.value("groove-too-deep.warning.share"),
                        figures.value("groove-too-deep.error.share"),
                        "A third of the thickness is usual, half the most (common practice, no source)"));
                case "housing", "sliding_dovetail" -> Optional.of(new Limits(
                        HOUSING,
                        figures.value("housing-too-deep.warning.share"),
                        figures.value("housing-too-deep.error.share"),
                        "A quarter of the thickness is usual, a third the most ("
                                + figures.get("housing-too-deep.warning.share").citation().source() + ")"));
                case "rebate" -> Optional.of(new Limits(
                        REBATE,
                        figures.value("rebate-too-deep.warning.share"),
                        1,
                        "Up to two thirds of the thickness is usual (common practice, no source)"));
                default -> Optional.empty();
            };
        }
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        Set<Told> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            Limits.of(made.joint().kind())
                    .flatMap(limits -> judged(made, limits, settings, told))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** Parts of one thickness, cut alike by one statement, are told once. */
    private record Told(Span at, Length wall, int statement) {}

    private static Optional<Finding> judged(MadeJoint made, Limits limits, Settings settings, Set<Told> told) {
        Measure deep = Panels.figure(made, "deep");
        Measure wall = wall(made);
        Length left = wall.value().minus(deep.value());
        double share = deep.value().toDoubleMm() / wall.value().toDoubleMm();
        boolean error = left.toDoubleMm() < Figures.standard().value("groove-too-deep.error.left") - SAME
                || share > limits.error() + SAME;
        boolean sound = limits.kind().equals(GROOVE)
                && left.toDoubleMm() >= Figures.standard().value("groove-too-deep.sound") - SAME;
        boolean warning = share > limits.warning() + SAME && !sound;
        boolean first = (error || warning) && told.add(new Told(deep.at(), wall.value(), made.joint().statement()));
        return first ? Optional.of(finding(made, limits, deep, wall, error, settings)) : Optional.empty();
    }

    private static Measure wall(MadeJoint made) {
        Meeting meeting = made.meeting();
        return switch (meeting.contact()) {
            case BoxContact.FaceToFace face -> meeting.right().along(face.side().axis());
            case BoxContact.Edge edge -> meeting.right().part().thickness();
            case BoxContact.Corner corner -> meeting.right().part().thickness();
            case BoxContact.Apart apart -> meeting.right().part().thickness();
            case BoxContact.Overlapping shared -> meeting.right().part().thickness();
        };
    }

    private static Finding finding(
            MadeJoint made, Limits limits, Measure deep, Measure wall, boolean error, Settings settings) {
        Joint joint = made.joint();
        Length left = wall.value().minus(deep.value());
        Finding.Builder finding = Finding.of(
                limits.kind(),
                deep.at(),
                "The " + joint.kind().replace('_', ' ') + " for `" + joint.left().name() + "` leaves too little of `"
                        + joint.right().name() + "`")
                .severity(error ? Severity.ERROR : Severity.WARNING)
                .label("this deep")
                .found(Amounts.text(deep.value(), settings) + " deep in " + Amounts.text(wall.value(), settings)
                        + ": " + (left.signum() <= 0
                                ? "it cuts right through."
                                : Amounts.text(left, settings) + " is left behind it."))
                .because(limits.usual() + ", and "
                        + Amounts.limit("groove-too-deep.error.left", settings)
                        + " has to stay (common practice, no source); thinner than that it"
                        + " breaks when the piece is lifted or clamped.")
                .related(wall.at(), "`" + joint.right().name() + "` is this thick")
                .about(joint.right().name())
                .about(joint.name())
                .number("deep", deep.value().toDoubleMm())
                .number("thickness", wall.value().toDoubleMm())
                .number("left", left.toDoubleMm());
        Length better = Length.nearest(wall.value().toDoubleMm() * limits.warning(), Length.ofMm(1).dividedBy(1000))
                .roundDownTo(Amounts.step(settings));
        Optional<Setting> given = joint.given("deep");
        boolean helps = wall.value().minus(better).compareTo(Length.ofMm(3)) >= 0 && better.signum() > 0;
        if (given.isPresent() && helps) {
            String text = Amounts.written(better, settings);
            finding.remedy(Remedy.choice("make it " + Amounts.text(better, settings) + " deep",
                    new Edit(given.get().valueAt(), text)));
        }
        return finding.remedy(Remedy.choice("make `" + joint.right().name() + "` thicker"))
                .build();
    }
}
