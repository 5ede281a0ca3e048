package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A panel thinner than its groove rattles; a gap as deep as the groove leaves no tongue in it. */
final class TongueAgainstGroove implements Check {
    static final FindingKind NO_FIT = FindingKind.warning("tongue-against-groove",
            "A panel and its groove do not fit each other");

    @Override
    public List<FindingKind> kinds() {
        return List.of(NO_FIT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        Set<Told> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                thin(made, settings, told, findings);
                empty(made, settings, told, findings);
            }
        }
        return findings;
    }

    /** One statement cuts many grooves alike: one fault is told once. */
    private record Told(String panel, Span at) {}

    private static void thin(MadeJoint made, Settings settings, Set<Told> told, List<Finding> findings) {
        Measure wide = Panels.figure(made, "wide");
        Measure thickness = made.joint().left().thickness();
        String panel = made.joint().left().name();
        if (thickness.value().compareTo(wide.value()) >= 0 || !told.add(new Told(panel, wide.at()))) {
            return;
        }
        String text = Amounts.written(thickness.value(), settings);
        findings.add(Finding.of(NO_FIT, wide.at(), "`" + panel + "` is thinner than its groove")
                .label("the groove is this wide")
                .found("It is " + Amounts.text(thickness.value(), settings) + " thick in a groove of "
                        + Amounts.text(wide.value(), settings) + ": "
                        + Amounts.text(wide.value().minus(thickness.value()), settings) + " of play.")
                .because("A loose panel rattles, and light shows past it.")
                .related(thickness.at(), "the panel is this thick")
                .about(panel)
                .about(made.joint().name())
                .number("thickness", thickness.value().toDoubleMm())
                .number("wide", wide.value().toDoubleMm())
                .remedy(Remedy.choice("make the groove " + text + " wide", new Edit(wide.at(), text)))
                .build());
    }

    private static void empty(MadeJoint made, Settings settings, Set<Told> told, List<Finding> findings) {
        Measure deep = Panels.figure(made, "deep");
        Measure gap = Panels.figure(made, "gap");
        String panel = made.joint().left().name();
        if (gap.value().compareTo(deep.value()) < 0 || !told.add(new Told(panel, gap.at()))) {
            return;
        }
        findings.add(Finding.of(NO_FIT, gap.at(), "`" + panel + "` does not reach into its groove")
                .severity(Severity.ERROR)
                .label("room on each side")
                .found("The groove is " + Amounts.text(deep.value(), settings) + " deep and the gap "
                        + Amounts.text(gap.value(), settings) + ": nothing is left for a tongue.")
                .because("The panel would fall through.")
                .related(deep.at(), "the groove is this deep")
                .about(panel)
                .about(made.joint().name())
                .remedy(Remedy.choice("make the groove deeper, or the gap smaller"))
                .build());
    }
}
