package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.joinery.TongueGroove;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.wood.Boards;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Solid boards side by side, each tongued into the next, as on the back of a case: each joint has to take what one board
 * grows, and still cover when all are dry (rule of the trade M-20, derived; 0.2 mm of room and 2 mm of lap are common
 * practice without a source).
 */
final class BackBuckles implements Check {
    static final FindingKind BUCKLES = FindingKind.error("back-buckles", "Boards side by side have no room to grow");

    @Override
    public List<FindingKind> kinds() {
        return List.of(BUCKLES);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        List<MadeJoint> rows = joined.joints().stream().filter(made -> tongued(made) || edgeToEdge(made)).toList();
        Set<String> entering = new HashSet<>();
        Set<String> receiving = new HashSet<>();
        rows.forEach(made -> {
            entering.add(made.joint().left().name());
            receiving.add(made.joint().right().name());
        });
        List<Finding> findings = new ArrayList<>();
        for (MadeJoint made : rows) {
            // A panel in a frame enters stiles that enter nothing; boards in a row do both.
            if (made.joint().kind().equals(TongueGroove.KIND) || receiving.contains(made.joint().left().name())
                    || entering.contains(made.joint().right().name())) {
                judge(made, settings, findings);
            }
        }
        return findings;
    }

    private static boolean edgeToEdge(MadeJoint made) {
        return made.joint().kind().equals(Groove.KIND)
                && made.meeting().face()
                        .filter(side -> made.meeting().left().measure(side.axis()) == 1
                                && made.meeting().right().measure(side.axis()) == 1)
                        .isPresent()
                && made.meeting().left().placing().length().axis() == made.meeting().right().placing().length().axis();
    }

    /** Boards that are tongued and not glued. */
    private static boolean tongued(MadeJoint made) {
        return made.joint().kind().equals(TongueGroove.KIND)
                && made.figure("gap").filter(figure -> !figure.measure().value().isZero()).isPresent();
    }

    private static void judge(MadeJoint made, Settings settings, List<Finding> findings) {
        Nature nature = Nature.of(made.joint().left(), settings);
        if (nature.still()) {
            return;
        }
        double width = made.joint().left().width().value().toDoubleMm();
        Boards.Back back = Boards.back(width, nature.across(), nature.seasons(), Figures.standard());
        for (String name : List.of("gap", "shoulder_gap")) {
            made.figure(name)
                    .filter(figure -> figure.measure().value().toDoubleMm() < back.gapMm() - PanelTight.SAME)
                    .ifPresent(figure -> findings.add(
                            tight(made, name, figure.measure(), back, nature, settings)));
        }
        double lap = Panels.figure(made, "deep").value().minus(Panels.figure(made, "gap").value()).toDoubleMm();
        if (lap < back.lapMm() - PanelTight.SAME) {
            findings.add(loose(made, lap, back, nature, settings));
        }
    }

    private static Finding tight(
            MadeJoint made, String name, Measure gap, Boards.Back back, Nature nature, Settings settings) {
        double grows = back.swelling().changeMm();
        boolean presses = gap.value().toDoubleMm() < grows - PanelTight.SAME;
        Length enough = Length.nearest(back.gapMm(), Length.ofMm(1).dividedBy(100_000))
                .roundUpTo(Length.ofMm(1).dividedBy(100));
        String figure = Amounts.written(enough, settings);
        String board = made.joint().left().name();
        Finding.Builder finding = Finding.of(
                BUCKLES, gap.at(), "`" + board + "` and `" + made.joint().right().name() + "` have "
                        + (presses ? "no" : "hardly any") + " room to grow")
                .severity(presses ? Severity.ERROR : Severity.WARNING)
                .label("room in each joint")
                .found("A board grows " + Amounts.fine(grows, settings) + "; there is "
                        + Amounts.fine(gap.value().toDoubleMm(), settings) + " in the joint.")
                .because(because(nature) + " A row of boards adds up and pushes its frame apart, or stands off.")
                .about(board)
                .about(made.joint().name())
                .number("gap", gap.value().toDoubleMm())
                .number("needed", enough.toDoubleMm());
        made.joint().given(name).ifPresent(given -> finding.remedy(Remedy.safe(
                "set it to " + figure, new Edit(given.valueAt(), figure))));
        return finding.remedy(Remedy.choice("take narrower boards: each grows less")).build();
    }

    private static Finding loose(
            MadeJoint made, double lap, Boards.Back back, Nature nature, Settings settings) {
        String board = made.joint().left().name();
        boolean out = lap <= -back.shrinking().changeMm();
        double deep = back.lapMm() + Panels.figure(made, "gap").value().toDoubleMm();
        Length enough = Length.nearest(deep, Length.ofMm(1).dividedBy(1000)).roundUpTo(Amounts.step(settings));
        String figure = Amounts.written(enough, settings);
        Finding.Builder finding = Finding.of(
                BUCKLES, Panels.figure(made, "deep").at(), "Light will show between `" + board + "` and `"
                        + made.joint().right().name() + "`")
                .severity(out ? Severity.ERROR : Severity.WARNING)
                .found("They lap " + Amounts.fine(lap, settings) + " when made; a board shrinks "
                        + Amounts.fine(-back.shrinking().changeMm(), settings) + ", and 2 mm of lap should be left.")
                .because(because(nature))
                .about(board)
                .about(made.joint().name())
                .number("lap", lap);
        made.joint().given("deep").ifPresent(given -> finding.remedy(Remedy.choice(
                "make the groove " + figure + " deep", new Edit(given.valueAt(), figure))));
        return finding.remedy(Remedy.choice("take narrower boards: each shrinks less")).build();
    }

    private static String because(Nature nature) {
        return "They are " + nature.wood() + ", made at " + Amounts.moisture(nature.seasons().bench())
                + ", and go from " + Amounts.moisture(nature.seasons().driest()) + " to "
                + Amounts.moisture(nature.seasons().wettest()) + Silences.phrase(nature) + ".";
    }
}
