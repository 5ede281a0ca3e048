package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.model.Joint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/** What is wrong with a layout of fingers. */
record FingerFaults(Joint joint, BoxCorner corner, int count, Settings settings) {
    /** Narrower than this no saw and no cutter goes between (common practice, no source). */
    private static final Length NARROWEST = Length.ofMm(3).dividedBy(2);
    /** Narrower than this a finger breaks off before it is glued (common practice, no source). */
    private static final Length LEAST = Length.ofMm(3);

    /** Why it cannot be cut, if it cannot. */
    Optional<Finding> impossible() {
        if (count < 2) {
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
        return finger().compareTo(least()) < 0
                ? List.of(fine(begun(JoineryFindings.TOO_FINE, "The fingers are too narrow for their length")))
                : List.of();
    }

    private Length finger() {
        return corner.height().dividedBy(Math.max(1, count));
    }

    /** A third of its length, and not under 3 mm. */
    private Length least() {
        Length longest = corner.thicknessOfFirst().value().max(corner.thicknessOfSecond().value());
        return longest.dividedBy(3).max(LEAST);
    }

    private Finding fine(Finding.Builder finding) {
        Length wide = corner.thicknessOfFirst().value().max(least());
        int better = Finger.odd(corner.height(), wide);
        String has = settings.format().text(finger());
        String least = settings.format().text(least());
        return finding
                .found(count + " fingers on " + settings.format().text(corner.height()) + " are " + has + " each; "
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
