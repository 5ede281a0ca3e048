package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.wood.CrossGrain;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A part fixed along two lines across its grain to parts that cannot give: a top on its rails, a base nailed under four
 * walls, solid boards on the back of a case (rules of the trade M-09, M-20 and M-25, derived; 0.3 mm between the lines is
 * common practice without a source). What is fast over its whole width is the matter of {@link CrossGrainGlue}.
 */
final class TwoFixedLines implements Check {
    static final FindingKind FIXED = FindingKind.error("two-fixed-lines", "A part is fixed twice across its grain");

    /** A joint over more of the width than this is no line. */
    private static final double LINE = 0.6;

    @Override
    public List<FindingKind> kinds() {
        return List.of(FIXED);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        Placement placement = Placement.of(joined);
        List<Finding> findings = new ArrayList<>();
        for (Meeting.Placed part : placement.parts()) {
            List<Line> lines = lines(part, placement);
            if (lines.size() > 1 && !part.part().still()) {
                widest(part, lines, placement).flatMap(pair -> judged(part, pair, settings)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** A joint that holds the part along its grain, and where across it. */
    private record Line(MadeJoint made, Meeting.Placed other, double at) {}

    private record Pair(Line one, Line two) {
        double apart() {
            return Math.abs(one.at - two.at);
        }
    }

    private static List<Line> lines(Meeting.Placed part, Placement placement) {
        Axis across = Placement.axis(part, 1);
        List<Line> lines = new ArrayList<>();
        for (MadeJoint made : placement.joints(part.part().name())) {
            Meeting.Placed other = Placement.other(made, part.part().name());
            if ((made.holdsFast() || glued(made)) && other.measure(across) != 0) {
                OptionalDouble at = at(made.meeting(), across, part.along(across).value());
                if (at.isPresent()) {
                    lines.add(new Line(made, other, at.getAsDouble()));
                }
            }
        }
        return lines;
    }

    /** A panel is glued into the groove on the side that it is held by. */
    private static boolean glued(MadeJoint made) {
        return Groove.heldAt(made.joint()).isPresent() && made.meeting().face().equals(Groove.heldAt(made.joint()));
    }

    private static OptionalDouble at(Meeting meeting, Axis across, Length width) {
        return switch (meeting.contact()) {
            case BoxContact.FaceToFace(var side, var min, var max) -> {
                double low = min.get(across).doubleValue();
                double high = max.get(across).doubleValue();
                yield side.axis() != across && high - low > LINE * width.toDoubleMm()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of((low + high) / 2);
            }
            case BoxContact.Edge edge -> edge.along() == across
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(edge.from().get(across).doubleValue());
            case BoxContact.Corner corner -> OptionalDouble.empty();
            case BoxContact.Apart apart -> OptionalDouble.empty();
            case BoxContact.Overlapping shared -> OptionalDouble.empty();
        };
    }

    /** The two lines farthest apart whose other parts cannot come nearer to each other. */
    private static Optional<Pair> widest(Meeting.Placed part, List<Line> lines, Placement placement) {
        double fine = Figures.standard().value("cross-grain-glue.width.warning");
        Optional<Pair> widest = Optional.empty();
        for (Line one : lines) {
            for (Line two : lines) {
                Pair pair = new Pair(one, two);
                boolean wider = one.at < two.at && pair.apart() > Math.max(
                        fine, widest.map(Pair::apart).orElse(0.0));
                if (wider && apartFirmly(part, one.other, two.other, placement)) {
                    widest = Optional.of(pair);
                }
            }
        }
        return widest;
    }

    /** Whether a way from one to the other, past the part itself, goes over a piece that lies along its own grain. */
    private static boolean apartFirmly(
            Meeting.Placed part, Meeting.Placed from, Meeting.Placed to, Placement placement) {
        Axis across = Placement.axis(part, 1);
        record Step(Meeting.Placed at, boolean firm) {}
        Set<String> seen = new HashSet<>();
        Deque<Step> open = new ArrayDeque<>();
        open.add(new Step(from, from.measure(across) == 0));
        while (!open.isEmpty()) {
            Step step = open.poll();
            if (step.at.part().is(to.part()) && (step.firm || from.part().is(to.part()))) {
                return true;
            }
            if (!seen.add(step.at.part().name() + step.firm)) {
                continue;
            }
            for (MadeJoint made : placement.joints(step.at.part().name())) {
                Meeting.Placed next = Placement.other(made, step.at.part().name());
                if (made.holdsFast() && !next.part().is(part.part())) {
                    open.add(new Step(next, step.firm || next.measure(across) == 0));
                }
            }
        }
        return false;
    }

    private static Optional<Finding> judged(Meeting.Placed part, Pair pair, Settings settings) {
        Nature nature = Nature.of(part.part(), settings);
        CrossGrain.Fixed fixed = CrossGrain.fixedTwice(
                pair.apart(), nature.across(), nature.seasons(), Figures.standard());
        return nature.still() || fixed.verdict().grade() == Verdict.Grade.FINE
                ? Optional.empty()
                : Optional.of(finding(part, pair, fixed, nature, settings));
    }

    private static Finding finding(
            Meeting.Placed part, Pair pair, CrossGrain.Fixed fixed, Nature nature, Settings settings) {
        String name = part.part().name();
        double slot = fixed.movementMm() + fixed.slotEaseMm();
        return Finding.of(
                FIXED,
                pair.two.made.joint().at(),
                "`" + name + "` is fixed twice across its grain, and will split or push its frame apart")
                .label("the second line")
                .found("It is fast to `" + pair.one.other.part().name() + "` and to `" + pair.two.other.part().name()
                        + "`, "
                        + Amounts.fine(pair.apart(), settings) + " apart; it moves " + Amounts.fine(
                                fixed.movementMm(), settings)
                        + " between them, and 0.3 mm is the most that joints give.")
                .because("`" + name + "` is " + nature.wood() + " and goes from "
                        + Amounts.moisture(nature.seasons().driest()) + " to "
                        + Amounts.moisture(nature.seasons().wettest()) + " moisture" + Silences.phrase(nature) + ".")
                .related(pair.one.made.joint().at(), "the first line")
                .related(part.placing().span(), "`" + name + "` lies here")
                .about(name)
                .about(pair.one.made.joint().name())
                .about(pair.two.made.joint().name())
                .number("apart", pair.apart())
                .number("movement", fixed.movementMm())
                .number("slot", slot)
                .remedy(Remedy.choice("let it lie in grooves: `joint groove " + name + " into …`"))
                .remedy(Remedy.choice("fix it along one line, and elsewhere by buttons or by screws in slots "
                        + Amounts.fine(slot, settings) + " longer than their shanks"))
                .build();
    }
}
