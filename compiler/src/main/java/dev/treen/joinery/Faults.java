package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import java.util.Optional;

/** What joints of several kinds have to say alike. */
final class Faults {
    private Faults() {
    }

    /** A joint of no size: it cuts nothing. */
    static Optional<Effect> ofNoSize(Joint joint, String what, Measure size) {
        if (size.value().signum() > 0) {
            return Optional.empty();
        }
        return Optional.of(Effect.only(Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                size.at(),
                "The " + joint.kind() + " between `" + joint.left().name() + "` and `" + joint.right().name()
                        + "` is not " + what + " at all")
                .because("It would cut nothing, and hold nothing.")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .build()));
    }
}
