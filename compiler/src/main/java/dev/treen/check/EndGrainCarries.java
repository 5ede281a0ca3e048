package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import java.util.List;

/**
 * A shelf that hangs by its glued end grain alone (rules of the trade J-g and S-01): an end-grain butt has at best a quarter
 * of the strength of the wood, with special care (Wood Handbook ch. 10).
 */
final class EndGrainCarries implements Check {
    static final FindingKind CARRIES = FindingKind.warning("end-grain-carries", "A load hangs by glued end grain");

    @Override
    public List<FindingKind> kinds() {
        return List.of(CARRIES);
    }

    @Override
    public List<Finding> run(Joined joined) {
        return Spans.of(joined).stream()
                .filter(span -> span.ends().stream().allMatch(EndGrainCarries::bareButt))
                .map(EndGrainCarries::finding)
                .toList();
    }

    /** A butt without anything said of how it is fastened. */
    private static boolean bareButt(MadeJoint made) {
        return made.joint().kind().equals("butt")
                && made.joint().settings().keySet().stream().allMatch(name -> name.equals("through"));
    }

    private static Finding finding(Spans.Span span) {
        String name = span.part().part().name();
        MadeJoint first = span.ends().getFirst();
        Finding.Builder finding = Finding
                .of(CARRIES, first.joint().at(), "`" + name + "` hangs by its glued ends alone")
                .label("end grain against a face")
                .found("Both its ends are butted, and nothing else carries it.")
                .because("Glue hardly holds on end grain: a quarter of the wood's strength at best (Wood Handbook"
                        + " ch. 10). Where people lean or stand on it, the local code and licensed practice decide.")
                .about(name);
        span.ends().stream().skip(1).forEach(made -> finding.related(made.joint().at(), "the other end"));
        span.ends().forEach(made -> finding.about(made.joint().name()));
        return finding
                .remedy(Remedy.choice("let its ends in: `joint housing " + name + " into …`"))
                .remedy(Remedy.choice("screw or dowel it through, or lay it on cleats"))
                .build();
    }
}
