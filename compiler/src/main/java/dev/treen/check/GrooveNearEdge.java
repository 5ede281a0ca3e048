package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Wood between a groove and the edge of its part (rules of the trade J-c: as much as the groove is wide, and 5 mm; common
 * practice, no source). The strip beside a groove is all that holds a base up.
 */
final class GrooveNearEdge implements Check {
    static final FindingKind NEAR_EDGE = FindingKind.warning("edge-too-near", "A groove runs too near to an edge");

    @Override
    public List<FindingKind> kinds() {
        return List.of(NEAR_EDGE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        Length least = Length.nearest(
                Figures.standard().value("edge-too-near.warning"), Length.ofMm(1).dividedBy(100));
        Set<Told> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                judge(made, least, settings, told, findings);
            }
        }
        return findings;
    }

    /** The walls of one panel are told once where they fall short alike. */
    private record Told(String panel, int statement, Length up) {}

    private static void judge(
            MadeJoint made, Length least, Settings settings, Set<Told> told, List<Finding> findings) {
        Length up = Panels.figure(made, "up").value();
        // In the edge of a board the groove is a third (J-06, Fairham): as much stays on each side as it is wide.
        boolean inEdge = made.meeting().face().filter(side -> made.meeting().right().measure(side.axis()) == 1)
                .isPresent();
        Length wide = Panels.figure(made, "wide").value();
        Length needed = inEdge ? wide : wide.max(least);
        // A lid that slides out passes over the edge of the low end: there is no wood to break there.
        boolean open = up.signum() <= 0 && made.joint().word("slide").isPresent();
        String panel = made.joint().left().name();
        if (up.compareTo(needed) >= 0 || open || !told.add(new Told(panel, made.joint().statement(), up))) {
            return;
        }
        Meeting meeting = made.meeting();
        findings.add(Finding.of(
                NEAR_EDGE,
                made.joint().at(),
                "The groove for `" + panel + "` runs too near to the edge of `" + made.joint().right().name() + "`")
                .found(Amounts.text(up.max(Length.ZERO), settings) + " of wood is left beside it; "
                        + Amounts.text(needed, settings) + " is wanted.")
                .because("The strip beside a groove holds the panel and breaks off when it is short: as much as the"
                        + " groove is wide, and 5 mm (common practice, no source).")
                .related(meeting.left().placing().span(), "`" + panel + "` lies here")
                .related(meeting.right().placing().span(), "`" + made.joint().right().name() + "` lies here")
                .about(panel)
                .about(made.joint().right().name())
                .about(made.joint().name())
                .number("left", up.toDoubleMm())
                .number("needed", needed.toDoubleMm())
                .remedy(Remedy.choice("move the panel by " + Amounts.text(needed.minus(up), settings)
                        + " away from the edge"))
                .build());
    }
}
