package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Board;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A panel that swells more than its grooves leave room for pushes the frame apart (rules of the trade M-05: what is left
 * at the wettest is {@code gap − P·C·ΔM/2} a side; an error below zero, a warning below 0.3 mm, which is common practice
 * without a source).
 */
final class PanelTight implements Check {
    static final FindingKind PANEL_TIGHT = FindingKind.error("panel-tight",
            "A panel swells more than its grooves leave room for");

    private static final double CLEAR = 0.3;
    private static final double FOR_MAKING = 0.5;

    @Override
    public List<FindingKind> kinds() {
        return List.of(PANEL_TIGHT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (Panels.Held panel : Panels.of(joined)) {
            double left = panel.gapMm() - panel.swellingMm();
            if (left < CLEAR && panel.nature().swelling() > 0) {
                findings.add(finding(panel, left, settings));
            }
        }
        return findings;
    }

    private static Finding finding(Panels.Held panel, double left, Settings settings) {
        LengthFormat format = settings.format();
        String name = panel.part().part().name();
        Measure gap = Panels.figure(panel.first(), "gap");
        // The panel that a wider gap leaves is narrower, so what is computed for this one is enough.
        double needed = panel.swellingMm() + FOR_MAKING;
        boolean inches = settings.units() == Unit.IN;
        Length step = inches ? Length.ofInches(1, 64) : Length.ofMm(1).dividedBy(100);
        Length enough = Length.nearest(needed, Length.ofMm(1).dividedBy(100_000)).roundUpTo(step);
        boolean bursts = left < 0;
        Finding.Builder finding = Finding.of(
                PANEL_TIGHT,
                gap.at(),
                bursts
                        ? "`" + name + "` will push its frame apart in damp air"
                        : "`" + name + "` has hardly any room left in damp air")
                .severity(bursts ? Severity.ERROR : Severity.WARNING)
                .label("room on each side")
                .found("The gap is " + mm(panel.gapMm()) + " a side; `" + name + "` grows "
                        + mm(panel.swellingMm() * 2) + ", which is " + mm(panel.swellingMm()) + " a side: "
                        + (bursts ? mm(-left) + " too much." : "only " + mm(left) + " is left of it."))
                .because("It is " + panel.nature().wood() + ", " + format.text(panel.part().width().value())
                        + " wide, made at "
                        + DecimalText.write(panel.nature().seasons().bench(), 1) + " % moisture, and comes to "
                        + DecimalText.write(panel.nature().seasons().wettest(), 1)
                        + " % in the dampest season of its room; wood pushes harder than any glue holds.")
                .about(name)
                .about(panel.first().joint().name())
                .number("gap", panel.gapMm())
                .number("swelling", panel.swellingMm())
                .number("left", left)
                .number("needed", enough.toDoubleMm());
        related(panel, settings, finding);
        finding.remedy(remedy(panel, enough, format, inches));
        return finding.build();
    }

    private static void related(Panels.Held panel, Settings settings, Finding.Builder finding) {
        Optional<Board> board = panel.part().part().from();
        board.ifPresent(b -> finding.related(b.nameAt(), "the board it is made of"));
        settings.climate().ifPresent(c -> finding.related(c.humidityAt(), "the air that it has to stand"));
    }

    private static Remedy remedy(Panels.Held panel, Length enough, LengthFormat format, boolean inches) {
        String figure = inches
                ? format.figure(enough).replace(" heavy", "").replace(" light", "")
                : DecimalText.write(enough.mm(), 2);
        List<Edit> edits = new ArrayList<>();
        Set<Span> done = new LinkedHashSet<>();
        for (MadeJoint made : List.of(panel.first(), panel.second())) {
            made.joint()
                    .given("gap")
                    .filter(s -> done.add(s.valueAt()))
                    .ifPresent(s -> edits.add(new Edit(s.valueAt(), figure)));
        }
        String text = "set the gap to " + figure + " on each side";
        return edits.isEmpty() ? Remedy.choice(text) : Remedy.safe(text, edits.toArray(Edit[]::new));
    }

    /** Two decimals: the verdict rests on hundredths. */
    static String mm(double value) {
        return DecimalText.write(value, 2) + " mm";
    }
}
