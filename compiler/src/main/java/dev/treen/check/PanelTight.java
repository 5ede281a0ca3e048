package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.model.Setting;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import dev.treen.wood.Panels.Hold;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A panel that swells more than its grooves leave room for pushes the frame apart (rules of the trade M-05, derived: what
 * is left at the wettest is {@code gap − P·C·ΔM/2} a side; an error below zero, a warning below 0.3 mm, which is common
 * practice without a source).
 */
final class PanelTight implements Check {
    static final FindingKind PANEL_TIGHT = FindingKind.error("panel-tight",
            "A panel swells more than its grooves leave room for");

    /** Below this two doubles are the same length. */
    static final double SAME = 1e-6;

    @Override
    public List<FindingKind> kinds() {
        return List.of(PANEL_TIGHT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        double clear = Figures.standard().value("panel-tight.warning");
        for (Panels.Held panel : Panels.of(joined)) {
            double left = panel.gapMm() - panel.swellingMm();
            boolean moves = !panel.nature().still() || panel.swellingMm() > 0;
            // Where the project states its tolerances, they are the room that making needs, and no rule of thumb.
            double wanted = panel.stated() ? Clearances.panel(panel, settings).worstMm() : clear;
            if (left < wanted - SAME && moves) {
                findings.add(finding(panel, left, settings));
            }
        }
        return findings;
    }

    private static Finding finding(Panels.Held panel, double left, Settings settings) {
        String name = panel.part().part().name();
        MadeJoint tightest = panel.tightest();
        boolean bursts = left < Figures.standard().value("panel-tight.error") - SAME;
        Length enough = enough(panel, settings);
        Finding.Builder finding = Finding.of(
                PANEL_TIGHT,
                Panels.figure(tightest, "gap").at(),
                bursts
                        ? "`" + name + "` will push its frame apart in damp air"
                        : "`" + name + "` has hardly any room left in damp air")
                .severity(bursts ? Severity.ERROR : Severity.WARNING)
                .label("room for growth on each side")
                .found("`" + name + "` grows "
                        + Amounts.fine(panel.swellingMm() / panel.share(), settings) + " over its width, "
                        + (panel.hold() == Hold.ONE_EDGE
                                ? "all of it away from the edge that is glued; there is "
                                        + Amounts.fine(panel.gapMm(), settings) + ": "
                                : Amounts.fine(panel.swellingMm(), settings) + " a side; there is "
                                        + Amounts.fine(panel.gapMm(), settings) + " a side: ")
                        + (bursts
                                ? Amounts.fine(-left, settings) + " too little."
                                : "only " + Amounts.fine(left, settings) + " is left, and making may take "
                                        + Amounts.fine(Clearances.panel(panel, settings).worstMm(), settings)
                                        + " of it."))
                .because(because(panel, settings))
                .about(name)
                .number("gap", panel.gapMm())
                .number("swelling", panel.swellingMm())
                .number("left", left)
                .number("needed", enough.toDoubleMm());
        panel.all().forEach(made -> finding.about(made.joint().name()));
        panel.part().part().from().ifPresent(b -> finding.related(b.nameAt(), "the board: its moisture and species"));
        panel.nature().air().ifPresent(c -> finding.related(c.humidityAt(), "the air that it has to stand"));
        remedies(panel, enough, settings, finding);
        return finding.build();
    }

    /** The moisture, the wood and the widths behind the verdict, and what was assumed. */
    static String because(Panels.Held panel, Settings settings) {
        Nature nature = panel.nature();
        return "It is " + (nature.still() ? "a manufactured sheet" : nature.wood()) + ", "
                + Amounts.text(panel.part().width().value(), settings) + " wide, made at "
                + Amounts.moisture(nature.seasons().bench()) + " moisture, and comes to "
                + Amounts.moisture(nature.seasons().wettest()) + " in the dampest season and "
                + Amounts.moisture(nature.seasons().driest()) + " in the driest"
                + Silences.phrase(nature) + ". Swelling wood pushes harder than glue holds ("
                + nature.across().citation().source() + ").";
    }

    /** The gap that leaves the usual room for making when wettest: half the growth of the panel it would leave. */
    private static Length enough(Panels.Held panel, Settings settings) {
        double making = panel.stated()
                ? Clearances.panel(panel, settings).worstMm()
                : Figures.standard().value("panel.making");
        double between = panel.openingMm() + panel.lowDeep().plus(panel.highDeep()).toDoubleMm();
        double room = Math.max(0, between - 2 * making);
        double strain = room > 0 ? panel.nature().swelling(1, room) / room : 0;
        // With one figure for all grooves the glued edge keeps that room behind it, and the other has to take all.
        double gap = panel.hold() == Hold.ONE_EDGE
                ? making + panel.nature().swelling(1, between / (1 + strain))
                : (between - room / (1 + strain)) / 2;
        Length exact = Length.nearest(gap, Length.ofMm(1).dividedBy(100_000));
        Length mark = exact.roundUpTo(Length.ofInches(1, 64));
        boolean sensible = settings.units() == Unit.IN
                && mark.times(3).compareTo(panel.lowDeep().min(panel.highDeep())) <= 0;
        return sensible ? mark : exact.roundUpTo(Length.ofMm(1).dividedBy(100));
    }

    private static void remedies(
            Panels.Held panel, Length enough, Settings settings, Finding.Builder finding) {
        List<Edit> edits = new ArrayList<>();
        String figure = Amounts.written(enough, settings);
        Set<Span> done = new LinkedHashSet<>();
        for (MadeJoint made : panel.all()) {
            Optional<Setting> given = made.joint().given("gap");
            given.filter(s -> done.add(s.valueAt())).ifPresent(s -> edits.add(new Edit(s.valueAt(), figure)));
        }
        double width = panel.openingMm() + panel.lowDeep().plus(panel.highDeep()).toDoubleMm()
                - 2 * enough.toDoubleMm();
        boolean holds = panel.dryMm(width) - panel.openingMm() - panel.deepMm() > 0;
        if (holds && !edits.isEmpty()) {
            finding.remedy(Remedy.safe("set the gap to " + figure, edits.toArray(Edit[]::new)));
            finding.remedy(Remedy.choice(
                    "let Treen choose it: `gap auto`",
                    edits.stream().map(e -> new Edit(e.at(), "auto")).toArray(Edit[]::new)));
        }
        finding.remedy(Remedy.choice(
                holds
                        ? "make the panel of quartered wood, which moves less"
                        : "make the grooves deeper: a panel with enough room would drop out of these when dry"));
    }
}
