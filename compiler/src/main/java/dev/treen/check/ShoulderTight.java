package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The shoulder of a tongue must not strike the frame at the wettest (rules of the trade M-07, derived: an error where it
 * strikes, a warning below 0.3 mm, which is common practice without a source).
 */
final class ShoulderTight implements Check {
    static final FindingKind SHOULDER_TIGHT = FindingKind.error("shoulder-tight",
            "A panel's shoulder strikes its frame in damp air");

    @Override
    public List<FindingKind> kinds() {
        return List.of(SHOULDER_TIGHT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        double clear = Figures.standard().value("shoulder-tight.warning");
        for (Panels.Held panel : Panels.of(joined)) {
            Optional<MadeJoint> narrowest = panel.moving().stream()
                    .filter(made -> made.figure("shoulder_gap").isPresent())
                    .min(Comparator.comparing(made -> Panels.figure(made, "shoulder_gap").value()));
            narrowest.map(made -> Panels.figure(made, "shoulder_gap"))
                    .filter(gap -> gap.value().toDoubleMm() - panel.swellingMm() < clear - PanelTight.SAME)
                    .ifPresent(gap -> findings.add(finding(panel, narrowest.get(), gap, clear, settings)));
        }
        return findings;
    }

    private static Finding finding(
            Panels.Held panel, MadeJoint made, Measure gap, double clear, Settings settings) {
        String name = panel.part().part().name();
        double left = gap.value().toDoubleMm() - panel.swellingMm();
        boolean strikes = left < -PanelTight.SAME;
        Length enough = Length.nearest(panel.swellingMm() + clear, Length.ofMm(1).dividedBy(100_000))
                .roundUpTo(Length.ofMm(1).dividedBy(100));
        Finding.Builder finding = Finding.of(
                SHOULDER_TIGHT,
                gap.at(),
                strikes
                        ? "The shoulder of `" + name + "` will strike its frame in damp air"
                        : "The shoulder of `" + name + "` nearly strikes its frame in damp air")
                .severity(strikes ? Severity.ERROR : Severity.WARNING)
                .label("room at the shoulder")
                .found("It stands back by " + Amounts.fine(gap.value().toDoubleMm(), settings) + "; the panel grows "
                        + Amounts.fine(panel.swellingMm(), settings) + " to this side: "
                        + (strikes
                                ? Amounts.fine(-left, settings) + " too little."
                                : "only " + Amounts.fine(left, settings) + " is left."))
                .because(PanelTight.because(panel, settings))
                .about(name)
                .about(made.joint().name())
                .number("gap", gap.value().toDoubleMm())
                .number("swelling", panel.swellingMm())
                .number("needed", enough.toDoubleMm());
        String figure = Amounts.written(enough, settings);
        made.joint()
                .given("shoulder_gap")
                .ifPresent(given -> finding.remedy(Remedy.safe(
                        "set the shoulder's gap to " + figure, new Edit(given.valueAt(), figure))));
        return finding.build();
    }
}
