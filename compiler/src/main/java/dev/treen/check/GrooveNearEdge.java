package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Wood between a groove and the edge (rules of the trade J-c: as wide as the groove, and 4 mm; common practice). */
final class GrooveNearEdge implements Check {
    static final FindingKind NEAR_EDGE = FindingKind.warning("edge-too-near", "A groove runs too near to an edge");

    private static final Length LEAST = Length.ofMm(4);

    @Override
    public List<FindingKind> kinds() {
        return List.of(NEAR_EDGE);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        LengthFormat format = joined.project().settings().format();
        for (MadeJoint made : joined.joints()) {
            if (!made.joint().kind().equals(Groove.KIND)) {
                continue;
            }
            Measure up = Panels.figure(made, "up");
            Length needed = Panels.figure(made, "wide").value().max(LEAST);
            // A lid that slides out passes over the edge of the low end: there is no wood to break there.
            boolean open = up.value().signum() <= 0 && made.joint().word("slide").isPresent();
            if (up.value().compareTo(needed) < 0 && !open) {
                findings.add(Finding.of(
                        NEAR_EDGE,
                        made.joint().at(),
                        "The groove for `" + made.joint().left().name() + "` runs too near to the edge of `"
                                + made.joint().right().name() + "`")
                        .found(format.text(up.value()) + " of wood is left beside it; " + format.text(needed)
                                + " is wanted.")
                        .because("The strip beside a groove is short of strength: as wide as the groove, and 4 mm, is"
                                + " common practice without a source.")
                        .related(made.joint().left().placing().orElseThrow().span(), "the panel lies here")
                        .about(made.joint().left().name())
                        .remedy(Remedy.choice("move the panel by "
                                + format.text(needed.minus(up.value())) + " away from the edge"))
                        .build());
            }
        }
        return findings;
    }
}
