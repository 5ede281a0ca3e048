package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import dev.treen.wood.Mitres;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A mitre opens when its members change their width (rules of the trade M-15 and M-16, derived: {@code √2·w·ε}; limits
 * are common practice without a source), and does not lie at half the corner when they differ (J-02).
 */
final class MitreOpens implements Check {
    static final FindingKind OPENS = FindingKind.warning("mitre-opens", "A mitre opens with the seasons");
    static final FindingKind UNEQUAL = FindingKind.warning("mitre-unequal",
            "The two sides of a mitre are not equally thick");

    @Override
    public List<FindingKind> kinds() {
        return List.of(OPENS, UNEQUAL);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (MadeJoint made : joined.joints()) {
            if (made.mitred()) {
                Meeting meeting = made.meeting();
                Optional<Member> left = member(meeting, meeting.left(), meeting.endOfLeft());
                Optional<Member> right = member(meeting, meeting.right(), meeting.endOfRight());
                if (left.isPresent() && right.isPresent()) {
                    opening(made, left.get(), right.get(), joined).ifPresent(findings::add);
                    unequal(made, left.get(), right.get(), settings).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    /** One side of a mitre: how wide it is across the cut, and which of its measures that is. */
    private record Member(Meeting.Placed part, int measure, Length width) {}

    private static Optional<Member> member(Meeting meeting, Meeting.Placed part, Optional<Side> end) {
        return end.flatMap(side -> meeting.edge().map(edge -> {
            Axis across = Meeting.third(side.axis(), edge.along());
            return new Member(part, part.measure(across), part.along(across).value());
        }));
    }

    private record Opened(Member member, Mitres.Opened how, Nature nature) {}

    private static Optional<Finding> opening(MadeJoint made, Member left, Member right, Joined joined) {
        return Stream.of(left, right)
                .flatMap(member -> opened(member, joined).stream())
                .max(Comparator.comparingDouble(opened -> opened.how().gapMm()))
                .filter(worst -> worst.how().verdict().grade() != Verdict.Grade.FINE)
                .map(worst -> finding(made, worst, joined.project().settings()));
    }

    private static Optional<Opened> opened(Member member, Joined joined) {
        Nature nature = joined.nature(member.part().part());
        if (nature.still() || member.measure() == 0) {
            return Optional.empty();
        }
        Mitres.Opened how = Mitres.worst(
                member.width().toDoubleMm(),
                nature.coefficient(member.measure()),
                nature.seasons(),
                Figures.standard());
        return Optional.of(new Opened(member, how, nature));
    }

    private static Finding finding(MadeJoint made, Opened worst, Settings settings) {
        String left = made.joint().left().name();
        String right = made.joint().right().name();
        boolean error = worst.how().verdict().grade() == Verdict.Grade.ERROR && !made.reinforced();
        boolean inside = worst.how().open() == Mitres.End.HEEL;
        Nature nature = worst.nature();
        return Finding.of(
                OPENS,
                made.joint().at(),
                "The mitre of `" + left + "` and `" + right + "` will open at the " + (inside ? "inside" : "outside"))
                .severity(error ? Severity.ERROR : Severity.WARNING)
                .found("By " + Amounts.fine(worst.how().gapMm(), settings) + ", when a side "
                        + Amounts.text(worst.member().width(), settings) + " wide goes from "
                        + Amounts.moisture(worst.how().change().fromPercent()) + " to "
                        + Amounts.moisture(worst.how().change().toPercent()) + " moisture"
                        + Silences.phrase(nature) + ".")
                .because("Both sides change their width and not their length, so the angle of the cut changes ("
                        + nature.wood() + ", " + nature.across().citation().source() + "). From 0.3 mm it shows, from"
                        + " 1 mm it needs more than glue (common practice, no source).")
                .related(worst.member().part().part().nameAt(), "this one opens it most")
                .about(left)
                .about(right)
                .about(made.joint().name())
                .number("gap", worst.how().gapMm())
                .remedy(Remedy.choice("make the sides no wider than " + Amounts.fine(widest(worst), settings)
                        + ", or of quartered wood"))
                .remedy(Remedy.choice("take a joint that hides it: a bridle or a halving with a mitred face"))
                .build();
    }

    /** The widest member that stays shut in every season. */
    private static double widest(Opened worst) {
        return Mitres.widestMemberMm(
                Figures.standard().value("mitre-opens.warning"),
                worst.nature().coefficient(worst.member().measure()),
                worst.nature().seasons(),
                Figures.standard());
    }

    /** The thinner one made as thick as the other: nothing that is fitted to it gets smaller. */
    private static Remedy same(Member left, Member right, Settings settings) {
        boolean first = left.width().compareTo(right.width()) < 0;
        Member thinner = first ? left : right;
        String figure = Amounts.written(first ? right.width() : left.width(), settings);
        return Remedy.choice(
                "make `" + thinner.part().part().name() + "` " + figure + " there too",
                new Edit(thinner.part().part().measure(thinner.measure()).at(), figure));
    }

    private static Optional<Finding> unequal(MadeJoint made, Member left, Member right, Settings settings) {
        if (left.width().equals(right.width())) {
            return Optional.empty();
        }
        String one = made.joint().left().name();
        String other = made.joint().right().name();
        return Optional.of(Finding.of(
                UNEQUAL, made.joint().at(), "`" + one + "` and `" + other + "` are not equally thick at their mitre")
                .found("`" + one + "` has " + Amounts.text(left.width(), settings) + " and `" + other + "` "
                        + Amounts.text(right.width(), settings) + ".")
                .because("The cut then does not lie at 45°: each side needs its own angle, and they are hard to match.")
                .related(left.part().part().nameAt(), "this one")
                .related(right.part().part().nameAt(), "and this one")
                .about(one)
                .about(other)
                .about(made.joint().name())
                .remedy(same(left, right, settings))
                .build());
    }
}
