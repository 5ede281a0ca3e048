package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Fasteners;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.MortiseTenon;
import dev.treen.joinery.Nature;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.wood.CrossGrain;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A part held rigidly across its grain by one that lies along it tears the joint or splits (rules of the trade M-12:
 * glued widths to 75 mm, Fairham, Woodwork Joints; the other limits are common practice without a source). Panels in
 * grooves are not held; a mitre's two parts move alike; halvings and bridles up to 75 mm are let pass.
 */
final class CrossGrainGlue implements Check {
    static final FindingKind CROSS_GRAIN = FindingKind.warning("cross-grain-glue",
            "A joint holds a part across its grain");

    /** Corners whose parts share the whole corner and move alike. */
    private static final Set<String> MOVE_ALIKE = Set.of("mitre", "spline", "dovetail", "finger");

    @Override
    public List<FindingKind> kinds() {
        return List.of(CROSS_GRAIN);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (MadeJoint made : joined.joints()) {
            if (made.holdsFast()) {
                for (Held held : held(made)) {
                    judged(made, held, settings).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    /**
     * A stretch over which one part would move and the other would not.
     *
     * @param measure which measure of the moving part
     * @param over how long the joint is that way
     */
    private record Held(Meeting.Placed moving, Meeting.Placed still, int measure, Length over) {}

    private static List<Held> held(MadeJoint made) {
        Meeting meeting = made.meeting();
        Optional<Length> glued = made.fasteners().map(Fasteners::over)
                .or(() -> made.figure(MortiseTenon.GLUED).map(figure -> figure.measure().value()));
        List<Held> held = new ArrayList<>();
        if (made.laps()) {
            lapped(meeting, held);
            return held;
        }
        switch (meeting.contact()) {
            case BoxContact.FaceToFace(var side, var min, var max) -> {
                for (Axis axis : Axis.values()) {
                    if (axis != side.axis()) {
                        Length touching = Length.ofMm(max.get(axis).subtract(min.get(axis)));
                        Length over = glued.map(touching::min).orElse(touching);
                        across(meeting, axis, over).ifPresent(held::add);
                    }
                }
            }
            case BoxContact.Edge edge -> {
                Length corner = Length.ofMm(edge.to().get(edge.along()).subtract(edge.from().get(edge.along())));
                across(meeting, edge.along(), glued.map(corner::min).orElse(corner)).ifPresent(held::add);
                if (glued.isEmpty() && !MOVE_ALIKE.contains(meeting.joint().kind())) {
                    // One of the two runs past: the other's end lies along it, as wide as that end is.
                    meeting.endOfLeft().ifPresent(side -> across(
                            meeting, side.axis(), meeting.right().along(side.axis()).value())
                            .ifPresent(held::add));
                }
            }
            case BoxContact.Corner corner -> {
            }
            case BoxContact.Apart apart -> {
            }
            case BoxContact.Overlapping shared -> {
            }
        }
        return held;
    }

    /** Cheek lies on cheek: each part holds the other over its own width. */
    private static void lapped(Meeting meeting, List<Held> held) {
        double exempt = Figures.standard().value("cross-grain-glue.width.warning");
        Axis ofLeft = Placement.axis(meeting.left(), 0);
        Axis ofRight = Placement.axis(meeting.right(), 0);
        List.of(ofLeft, ofRight).forEach(axis -> across(
                meeting, axis, (axis == ofLeft ? meeting.right() : meeting.left()).along(axis).value())
                .filter(each -> each.over().toDoubleMm() > exempt)
                .ifPresent(held::add));
    }

    private static Optional<Held> across(Meeting meeting, Axis axis, Length over) {
        int left = meeting.left().measure(axis);
        int right = meeting.right().measure(axis);
        if (left == 0 && right != 0) {
            return Optional.of(new Held(meeting.right(), meeting.left(), right, over));
        }
        return left != 0 && right == 0
                ? Optional.of(new Held(meeting.left(), meeting.right(), left, over))
                : Optional.empty();
    }

    private static Optional<Finding> judged(MadeJoint made, Held held, Settings settings) {
        Nature nature = Nature.of(held.moving().part(), settings);
        if (nature.still()) {
            return Optional.empty();
        }
        CrossGrain.Glued glued = CrossGrain.glued(
                held.over().toDoubleMm(),
                nature.coefficient(held.measure()),
                nature.seasons(),
                Figures.standard());
        return glued.verdict().grade() == Verdict.Grade.FINE
                ? Optional.empty()
                : Optional.of(finding(made, held, glued, nature, settings));
    }

    /** As much as may be fixed rigidly, by the width and by the movement. */
    private static double widest(Held held, Nature nature) {
        Figures figures = Figures.standard();
        return Math.min(
                figures.value("cross-grain-glue.width.warning"),
                CrossGrain.widestGluedMm(
                        figures.value("cross-grain-glue.mismatch.warning"),
                        nature.coefficient(held.measure()),
                        nature.seasons()));
    }

    private static Finding finding(
            MadeJoint made, Held held, CrossGrain.Glued glued, Nature nature, Settings settings) {
        String moving = held.moving().part().name();
        String still = held.still().part().name();
        boolean error = glued.verdict().grade() == Verdict.Grade.ERROR;
        Finding.Builder finding = Finding.of(
                CROSS_GRAIN,
                made.joint().at(),
                "`" + still + "` holds `" + moving + "` across its grain, and will "
                        + (error ? "split it or tear off" : "strain it"))
                .severity(error ? Severity.ERROR : Severity.WARNING)
                .found("They are joined over " + Amounts.text(held.over(), settings) + ", where `" + moving
                        + "` would move by " + Amounts.fine(glued.mismatchMm(), settings) + " and `" + still
                        + "` lies along its grain and would not.")
                .because("`" + moving + "` is " + nature.wood() + " and goes from "
                        + Amounts.moisture(nature.seasons().driest()) + " to "
                        + Amounts.moisture(nature.seasons().wettest()) + " moisture" + Silences.phrase(nature)
                        + ". A rigid joint across the grain is good for about "
                        + Amounts.limit("cross-grain-glue.width.warning", settings) + " (Fairham, Woodwork Joints) or "
                        + Amounts.limit("cross-grain-glue.mismatch.warning", settings) + " of movement; over "
                        + Amounts.limit("cross-grain-glue.width.error", settings) + " or "
                        + Amounts.limit("cross-grain-glue.mismatch.error", settings)
                        + " it fails (common practice, no source).")
                .related(held.moving().placing().span(), "`" + moving + "` lies here")
                .related(held.still().placing().span(), "`" + still + "` lies here")
                .about(moving)
                .about(still)
                .about(made.joint().name())
                .number("over", held.over().toDoubleMm())
                .number("mismatch", glued.mismatchMm());
        advice(made, Amounts.atMost(widest(held, nature), settings))
                .forEach(each -> finding.remedy(Remedy.choice(each)));
        return finding.build();
    }

    /** A rail's end always lies across its stile: there only the glue and the width can be chosen. */
    private static List<String> advice(MadeJoint made, String widest) {
        return made.figure(MortiseTenon.GLUED).isPresent()
                ? List.of(
                        "glue only the middle of the joint, no more than " + widest
                                + ", and leave the rest dry with a little room beside it",
                        "make what is glued narrower, or the rail")
                : List.of(
                        "fix it over no more than " + widest + " at its middle, and screw the rest through slots",
                        "turn the grain of one of them, so that both move alike");
    }
}
