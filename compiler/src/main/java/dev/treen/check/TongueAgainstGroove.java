package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Measure;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** A panel thinner than its groove rattles; a gap as deep as the groove leaves no tongue in it. */
final class TongueAgainstGroove implements Check {
    static final FindingKind TOO_THIN = FindingKind.warning("tongue-against-groove",
            "A panel and its groove do not fit each other");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_THIN);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        LengthFormat format = joined.project().settings().format();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                thin(made, format, findings);
                empty(made, format, findings);
            }
        }
        return findings;
    }

    private static void thin(MadeJoint made, LengthFormat format, List<Finding> findings) {
        Measure wide = Panels.figure(made, "wide");
        Measure thickness = made.joint().left().thickness();
        if (thickness.value().compareTo(wide.value()) < 0) {
            findings.add(Finding.of(
                    TOO_THIN,
                    wide.at(),
                    "`" + made.joint().left().name() + "` is thinner than its groove")
                    .found("It is " + format.text(thickness.value()) + " thick in a groove of "
                            + format.text(wide.value()) + ".")
                    .because("A loose panel rattles, and light shows past it.")
                    .related(thickness.at(), "this thick")
                    .about(made.joint().left().name())
                    .remedy(Remedy.choice(
                            "make the groove " + format.text(thickness.value()) + " wide",
                            new Edit(wide.at(), format.figure(thickness.value()))))
                    .build());
        }
    }

    private static void empty(MadeJoint made, LengthFormat format, List<Finding> findings) {
        Measure deep = Panels.figure(made, "deep");
        Measure gap = Panels.figure(made, "gap");
        if (gap.value().compareTo(deep.value()) >= 0) {
            findings.add(Finding.of(
                    TOO_THIN,
                    gap.at(),
                    "`" + made.joint().left().name() + "` does not reach into its groove")
                    .severity(dev.treen.finding.Severity.ERROR)
                    .found("The groove is " + format.text(deep.value()) + " deep and the gap "
                            + format.text(gap.value()) + ": nothing is left for a tongue.")
                    .because("The panel would fall through.")
                    .related(deep.at(), "this deep")
                    .about(made.joint().left().name())
                    .remedy(Remedy.choice("make the groove deeper, or the gap smaller"))
                    .build());
        }
    }
}
