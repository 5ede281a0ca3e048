package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a groove, housing or rebate leaves of the wood behind it (rules of the trade J-a, J-b: not over a third of the
 * thickness, never over half, at least 3 mm left; common practice, no source). A groove between a third and a half is
 * let pass where 5 mm stay: small boxes are made so, and a maker who writes 4 mm in a 9 mm wall means it.
 */
final class GrooveDepth implements Check {
    static final FindingKind TOO_DEEP = FindingKind.warning("groove-too-deep",
            "A groove, housing or rebate leaves too little wood behind it");

    private static final Length LEAST = Length.ofMm(3);
    private static final Length SOUND = Length.ofMm(5);

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_DEEP);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        LengthFormat format = joined.project().settings().format();
        for (MadeJoint made : joined.joints()) {
            made.figure("deep")
                    .flatMap(f -> judged(made, f.measure(), format))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> judged(MadeJoint made, Measure deep, LengthFormat format) {
        Joint joint = made.joint();
        Length wall = joint.right().thickness().value();
        Length left = wall.minus(deep.value());
        boolean rebate = joint.kind().equals("rebate");
        boolean error = left.compareTo(LEAST) < 0
                || (!rebate && deep.value().times(2).compareTo(wall) > 0);
        boolean warning = !rebate && deep.value().times(3).compareTo(wall) > 0 && left.compareTo(SOUND) < 0;
        if (!error && !warning) {
            return Optional.empty();
        }
        Length better = wall.dividedBy(3).roundDownTo(Length.ofMm(1).dividedBy(2));
        Finding.Builder finding = Finding.of(
                TOO_DEEP,
                deep.at(),
                "The " + joint.kind() + " for `" + joint.left().name() + "` leaves too little of `"
                        + joint.right().name() + "`")
                .severity(error ? Severity.ERROR : Severity.WARNING)
                .found(format.text(deep.value()) + " deep in " + format.text(wall) + ": "
                        + format.text(left.max(Length.ZERO)) + " is left behind it"
                        + (left.signum() <= 0 ? ", it cuts right through." : "."))
                .because("A third of the thickness is usual, half the most, and 3 mm has to stay (common practice, no"
                        + " source); thinner than that it breaks when the piece is lifted or clamped.")
                .related(joint.right().thickness().at(), "`" + joint.right().name() + "` is this thick")
                .about(joint.right().name())
                .about(joint.name())
                .number("deep", deep.value().toDoubleMm())
                .number("left", left.toDoubleMm());
        Optional<Setting> given = joint.given("deep");
        if (given.isPresent() && wall.minus(better).compareTo(LEAST) >= 0) {
            String text = format.figure(better);
            finding.remedy(Remedy.choice(
                    "make it " + text + " deep", new Edit(given.get().valueAt(), text)));
        }
        return Optional.of(finding.remedy(Remedy.choice("make `" + joint.right().name() + "` thicker"))
                .build());
    }
}
