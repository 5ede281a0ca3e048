package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with a layout of fingers. */
record FingerFaults(Joint joint, FingerLayout layout, Settings settings) {
    /** Narrower than this no saw and no cutter goes between (common practice, no source). */
    private static final Length NARROWEST = Length.ofMm(3).dividedBy(2);
    /** Narrower than this a finger breaks off before it is glued (common practice, no source). */
    private static final Length LEAST = Length.ofMm(3);

    /** Why it cannot be cut, if it cannot. */
    Optional<Finding> impossible() {
        if (layout.count() < 2) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "So few fingers do not interlock")
                    .found("Write a whole number from 2 up, better an odd one, or `auto`.")
                    .remedy(Faults.setting(joint, "fingers", "auto", "let Treen choose"))
                    .build());
        }
        return finger().compareTo(NARROWEST) < 0
                ? Optional.of(fine(begun(JoineryFindings.DOES_NOT_FIT, "There is no room for so many fingers")))
                : Optional.empty();
    }

    /** What would break. */
    List<Finding> weak() {
        List<Finding> findings = new ArrayList<>();
        if (finger().compareTo(least()) < 0) {
            findings.add(fine(begun(JoineryFindings.TOO_FINE, "The fingers are too narrow for their length")));
        }
        if (layout.sliver()) {
            findings.add(sliver());
        }
        return findings;
    }

    /** A line at which a lid is cut free near the edge of a finger: what is left of it breaks off. */
    private Finding sliver() {
        String rest = settings.format().text(layout.fromEdge().orElse(Length.ZERO));
        return begun(JoineryFindings.TOO_FINE, "The lid's line leaves a sliver of a finger")
                .found("Fingers of " + settings.format().text(finger()) + " end " + rest
                        + " from the line at which the lid is cut free.")
                .because("The line falls within a finger, a quarter of it from its edges at the least; what is thinner"
                        + " breaks off under the saw (common practice, no source).")
                .remedy(Remedy.choice("move the line with its `tall`, or let Treen choose: `fingers auto`"))
                .build();
    }

    private Length finger() {
        return layout.finger();
    }

    /** A third of its length, and not under 3 mm. */
    private Length least() {
        BoxCorner corner = layout.corner();
        Length longest = corner.thicknessOfFirst().value().max(corner.thicknessOfSecond().value());
        return longest.dividedBy(3).max(LEAST);
    }

    private Finding fine(Finding.Builder finding) {
        Length wide = layout.corner().thicknessOfFirst().value().max(least());
        int better = layout.usual(wide);
        String has = settings.format().text(finger());
        String least = settings.format().text(least());
        return finding
                .found(layout.count() + " fingers on " + settings.format().text(layout.height()) + " are " + has
                        + " each; "
                        + least + " is the least that works.")
                .because(
                        "They are as long as the other part is thick: short fingers across the grain snap off in sawing or"
                                + " fitting (common practice, no source).")
                .number("has", finger().toDoubleMm())
                .number("least", least().toDoubleMm())
                .remedy(Faults.setting(joint, "fingers", Integer.toString(better), "write `fingers " + better + "`"))
                .build();
    }

    private Finding.Builder begun(FindingKind kind, String headline) {
        Span at = joint.given("fingers").or(() -> joint.given("wide")).map(s -> s.valueAt()).orElseGet(joint::at);
        return Finding.of(kind, at, headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }
}
