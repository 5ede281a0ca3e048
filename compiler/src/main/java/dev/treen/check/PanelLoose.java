package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import dev.treen.wood.Panels.Hold;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A panel that dries must still be held (rules of the trade M-06, derived). Free and pushed hard to one side it covers
 * {@code P·(1 − C·ΔM) − O − d} of the other groove: an error at nothing, a warning where luck decides. In the middle, as
 * it should lie, it covers half of {@code P·(1 − C·ΔM) − O} on each side: a warning below 2 mm or a third of the groove.
 * The limits are common practice without a source; measured when pushed aside, the 2 mm would blame the small box bases
 * that the trade makes with 1.5 mm of room a side in grooves 4 mm deep, which hold for generations.
 */
final class PanelLoose implements Check {
    static final FindingKind PANEL_LOOSE = FindingKind.warning("panel-loose",
            "A dry panel leaves its groove, or nearly");

    @Override
    public List<FindingKind> kinds() {
        return List.of(PANEL_LOOSE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Figures figures = Figures.standard();
        Settings settings = joined.project().settings();
        for (Panels.Held panel : Panels.of(joined)) {
            double aside = panel.coverMm();
            double middle = panel.lyingMm();
            // No groove can be asked to cover more than the tongue reaches into it when it is made.
            double most = panel.deepMm() - Math.max(0, panel.gapMm());
            double wanted = Math.min(
                    Math.max(
                            figures.value("panel-loose.warning"),
                            figures.value("panel-loose.warning.share") * panel.deepMm()),
                    most * 2 / 3);
            if (aside < figures.value("panel-loose.aside") - PanelTight.SAME || middle < wanted - PanelTight.SAME) {
                findings.add(finding(panel, aside, middle, settings));
            }
        }
        return findings;
    }

    private static Finding finding(Panels.Held panel, double aside, double middle, Settings settings) {
        String name = panel.part().part().name();
        boolean out = aside <= PanelTight.SAME;
        Measure deep = Panels.figure(panel.tightest(), "deep");
        Finding.Builder finding = Finding.of(
                PANEL_LOOSE,
                Panels.figure(panel.tightest(), "gap").at(),
                out
                        ? "`" + name + "` can drop out of its groove in dry air"
                        : "`" + name + "` is barely held in dry air")
                .severity(out ? Severity.ERROR : Severity.WARNING)
                .label("room on each side")
                .found("Shrunk by " + Amounts.fine(panel.widthMm() - panel.dryMm(panel.widthMm()), settings)
                        + switch (panel.hold()) {
                            case FREE -> " and pushed to one side, it ";
                            case MIDDLE -> ", it ";
                            case ONE_EDGE -> " away from the edge that is glued, it ";
                        }
                        + (out
                                ? "ends " + Amounts.fine(Math.max(0, -aside), settings) + " short of"
                                : "reaches only " + Amounts.fine(aside, settings) + " into")
                        + (panel.hold() == Hold.FREE
                                ? " the groove on the other; in the middle it reaches "
                                        + Amounts.fine(Math.max(0, middle), settings) + " into both."
                                : panel.hold() == Hold.MIDDLE ? " each groove." : " its groove."))
                .because(PanelTight.because(panel, settings))
                .related(deep.at(), "the groove is this deep")
                .about(name)
                .number("aside", aside)
                .number("middle", middle);
        panel.all().forEach(made -> finding.about(made.joint().name()));
        panel.part().part().from().ifPresent(b -> finding.related(b.nameAt(), "the board: its moisture and species"));
        panel.nature().air().ifPresent(c -> finding.related(c.humidityAt(), "the air that it has to stand"));
        List<Edit> edits = new ArrayList<>();
        Set<Span> done = new LinkedHashSet<>();
        panel.all().forEach(made -> made.joint()
                .given("gap")
                .filter(given -> done.add(given.valueAt()))
                .ifPresent(given -> edits.add(new Edit(given.valueAt(), "auto"))));
        finding
                .remedy(Remedy.choice(
                        "make the gap smaller: `gap auto` leaves what the damp season needs and no more",
                        edits.toArray(Edit[]::new)))
                .remedy(Remedy.choice("make the groove deeper"));
        if (panel.hold() == Hold.FREE) {
            finding.remedy(Remedy.choice("pin the panel at the middle of both ends: `held middle`"));
        }
        return finding.build();
    }
}
