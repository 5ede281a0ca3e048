package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.Optional;

/** What is to be said of loose tongues: what cannot be cut, and what leaves too little wood (rules of the trade J-16). */
record SplineFaults(SplineSizes sizes, LengthFormat format) {
    /** What stays beside or behind a groove, at the least: common practice, no source. */
    private static final double LEAST_MM = 2;

    /** A groove wider than the wood, one that comes out, or one that its stops leave nothing of. */
    Optional<Finding> impossible() {
        if (sizes.thick().value().compareTo(sizes.thickness()) >= 0 || sizes.insideMm() <= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, sizes.thick(),
                    "The loose tongue is too thick for the"
                            + " wood")
                    .found(text(sizes.thick().value()) + " in " + text(sizes.thickness()) + ".")
                    .remedy(auto("thick", "take about a third: `thick auto`"))
                    .build());
        }
        if (sizes.deep().value().toDoubleMm() >= sizes.roomMm() || sizes.tongue().signum() <= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, sizes.deep(), sizes.tongue().signum() <= 0
                    ? "The grooves leave no tongue"
                    : "The grooves for the loose tongue come out on the other side")
                    .found("They are " + text(sizes.deep().value()) + " deep; there are "
                            + text(Length.nearest(sizes.roomMm(), Length.ofMm(1).dividedBy(10))) + " of wood.")
                    .remedy(auto("deep", "leave the depth to Treen: `deep auto`"))
                    .build());
        }
        boolean nothing = sizes.stop().value().toDoubleMm() * 2 >= sizes.lengthMm()
                || sizes.stop().value().signum() < 0;
        return nothing
                ? Optional.of(begun(JoineryFindings.DOES_NOT_FIT, sizes.stop(), "The stops leave no groove")
                        .found("Twice " + text(sizes.stop().value()) + " of a joint "
                                + text(Length.nearest(sizes.lengthMm(), Length.ofMm(1).dividedBy(10))) + " long.")
                        .remedy(auto("stop", "let it run through: `stop auto`"))
                        .build())
                : Optional.empty();
    }

    Optional<Finding> weak() {
        double behind = sizes.roomMm() - sizes.deep().value().toDoubleMm();
        boolean fat = sizes.thick().value().times(2).compareTo(sizes.thickness()) > 0;
        boolean deep = behind < LEAST_MM;
        if (!fat && !deep && sizes.insideMm() >= LEAST_MM) {
            return Optional.empty();
        }
        return Optional.of(begun(
                JoineryFindings.SPLINE_TOO_DEEP,
                deep ? sizes.deep() : sizes.thick(),
                "The grooves for the loose tongue leave too little wood")
                .found(deep
                        ? "Behind " + text(sizes.deep().value()) + " of groove stays "
                                + text(Length.nearest(behind, Length.ofMm(1).dividedBy(10))) + "."
                        : "A tongue of " + text(sizes.thick().value()) + " in " + text(sizes.thickness())
                                + " of wood.")
                .because("A quarter to a third of the thickness is usual, and 2 mm have to stay, or the wood breaks out"
                        + " beside the tongue (common practice, no source).")
                .remedy(auto(deep ? "deep" : "thick", "leave it to Treen"))
                .build());
    }

    private Finding.Builder begun(FindingKind kind, Measure at, String headline) {
        Joint joint = sizes.meeting().joint();
        return Finding.of(kind, at.at(), headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    private Remedy auto(String property, String text) {
        Joint joint = sizes.meeting().joint();
        return joint.given(property).isPresent()
                ? Faults.setting(joint, property, "auto", text)
                : Remedy.choice("take thicker stock, or leave the tongue out");
    }

    private String text(Length length) {
        return format.text(length);
    }
}
