package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Figure;
import dev.treen.joinery.Joined;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The shoulder of a tongue must not strike the frame at the wettest (rules of the trade M-07, derived). */
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
        for (Panels.Held panel : Panels.of(joined)) {
            Optional<Figure> gap = panel.first().figure("shoulder_gap");
            if (gap.isPresent() && gap.get().measure().value().toDoubleMm() < panel.swellingMm()) {
                String name = panel.part().part().name();
                findings.add(Finding.of(
                        SHOULDER_TIGHT,
                        gap.get().measure().at(),
                        "The shoulder of `" + name + "` will strike its frame in damp air")
                        .found("It stands back by "
                                + PanelTight.mm(gap.get().measure().value().toDoubleMm()) + "; the panel grows "
                                + PanelTight.mm(panel.swellingMm()) + " a side.")
                        .because("The shoulder pushes as hard as the tongue would.")
                        .about(name)
                        .remedy(Remedy.choice("write `shoulder_gap auto`"))
                        .build());
            }
        }
        return findings;
    }
}
