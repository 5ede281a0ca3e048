package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.model.Measure;
import dev.treen.quantity.DecimalText;
import java.util.ArrayList;
import java.util.List;

/**
 * A panel that dries and is pushed to one side must still be in the groove on the other (rules of the trade M-06:
 * {@code P·(1 − C·ΔM) − O − d}; an error at zero or less, a warning below 0.5 mm or an eighth of the depth: the rule of
 * the bench for a small base, 1.5 mm a side in grooves of 4, is left in peace; common practice without a source).
 */
final class PanelLoose implements Check {
    static final FindingKind PANEL_LOOSE = FindingKind.warning("panel-loose",
            "A dry panel leaves its groove, or nearly");

    private static final double ENOUGH = 0.5;

    @Override
    public List<FindingKind> kinds() {
        return List.of(PANEL_LOOSE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        for (Panels.Held panel : Panels.of(joined)) {
            double dry = panel.widthMm() * (1 - panel.nature().shrinking());
            double covered = dry - panel.openingMm() - panel.deepMm();
            double wanted = Math.min(ENOUGH, panel.deepMm() / 8);
            if (covered < wanted) {
                findings.add(finding(panel, covered, dry));
            }
        }
        return findings;
    }

    private static Finding finding(Panels.Held panel, double covered, double dry) {
        String name = panel.part().part().name();
        Measure deep = Panels.figure(panel.first(), "deep");
        boolean out = covered <= 0;
        return Finding.of(
                PANEL_LOOSE,
                Panels.figure(panel.first(), "gap").at(),
                out
                        ? "`" + name + "` can drop out of its groove in dry air"
                        : "`" + name + "` is barely held in dry air")
                .severity(out ? Severity.ERROR : Severity.WARNING)
                .found("Shrunk to " + PanelTight.mm(dry) + " and pushed to one side it is "
                        + (out ? PanelTight.mm(-covered) + " short of" : "held by " + PanelTight.mm(covered) + " in")
                        + " the groove on the other.")
                .because("It is made at " + DecimalText.write(panel.nature().seasons().bench(), 1)
                        + " % moisture and comes to "
                        + DecimalText.write(panel.nature().seasons().driest(), 1)
                        + " % in the driest season of its room; then light shows, or it rattles out.")
                .related(deep.at(), "the groove is this deep")
                .about(name)
                .number("held", covered)
                .remedy(Remedy.choice("make the gap smaller, or the groove deeper"))
                .remedy(Remedy.choice("pin the panel at the middle of both ends, so that it stays centred"))
                .build();
    }
}
