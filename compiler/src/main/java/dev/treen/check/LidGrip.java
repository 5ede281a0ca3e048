package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Hinge;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A hinged lid that fingers find no hold on (rules of the trade S-07: it stands out 3 mm, or has a notch; common practice, no
 * source).
 */
final class LidGrip implements Check {
    static final FindingKind HARD_TO_LIFT = FindingKind.warning("lid-hard-to-lift", "A lid has nothing to lift it by");

    @Override
    public List<FindingKind> kinds() {
        return List.of(HARD_TO_LIFT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            boolean hinge = made.joint().kind().equals(Hinge.KIND);
            boolean flush = made.joint().word("grip").filter(grip -> !grip.equals("overhang")).isEmpty();
            boolean lid = made.meeting().face().filter(side -> side == Side.BOTTOM).isPresent();
            if (hinge && flush && lid && told.add(made.joint().left().name())) {
                judged(made, joined).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> judged(MadeJoint made, Joined joined) {
        String name = made.joint().left().name();
        Optional<Box> lid = box(joined, name);
        Optional<Side> free = Hinge.free(made.meeting());
        Length wanted = Length.nearest(Figures.standard().value("lid.overhang"), Length.ofMm(1));
        return lid.flatMap(box -> free.flatMap(side -> out(name, box, side, joined)
                .filter(out -> out.compareTo(wanted) < 0)
                .map(out -> finding(made, out, wanted, joined.project().settings()))));
    }

    private static Optional<Box> box(Joined joined, String name) {
        return joined.part(name).flatMap(FinishedPart::bare).flatMap(solid -> solid.bounds());
    }

    /** How far the lid stands out over what it lies on, on its free side. */
    private static Optional<Length> out(String name, Box lid, Side free, Joined joined) {
        Length farthest = null;
        for (FinishedPart part : joined.parts()) {
            Optional<Box> under = part.part().name().equals(name) ? Optional.empty() : box(joined, part.part().name());
            if (under.filter(box -> beneath(box, lid)).isPresent()) {
                Length edge = Length.ofMm(under.get().coordinate(free)).times(free.sign());
                farthest = farthest == null ? edge : farthest.max(edge);
            }
        }
        return Optional.ofNullable(farthest)
                .map(edge -> Length.ofMm(lid.coordinate(free)).times(free.sign()).minus(edge));
    }

    private static boolean beneath(Box box, Box lid) {
        boolean touches = Length.ofMm(box.max().z()).compareTo(Length.ofMm(lid.min().z())) >= 0
                && Length.ofMm(box.min().z()).compareTo(Length.ofMm(lid.min().z())) < 0;
        return touches && Length.ofMm(box.gap(lid, Axis.X)).signum() < 0
                && Length.ofMm(box.gap(lid, Axis.Y)).signum() < 0;
    }

    private static Finding finding(MadeJoint made, Length out, Length wanted, Settings settings) {
        String name = made.joint().left().name();
        return Finding.of(HARD_TO_LIFT, made.joint().left().nameAt(), "`" + name + "` has nothing to lift it by")
                .found(out.signum() <= 0
                        ? "It does not stand out where it opens."
                        : "Where it opens it stands out " + Amounts.text(out, settings) + "; "
                                + Amounts.text(wanted, settings) + " are wanted.")
                .because("Fingers slip off a flush edge (common practice, no source).")
                .related(made.joint().at(), "it turns here")
                .about(name)
                .about(made.joint().name())
                .remedy(Remedy.choice("let it stand out, or write `grip notch` or `grip knob` at its hinge"))
                .build();
    }
}
