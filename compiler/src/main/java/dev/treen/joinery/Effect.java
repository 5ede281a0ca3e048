package dev.treen.joinery;

import dev.treen.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What one joint does: to sizes, to shapes, and what it has to say.
 *
 * @param isMade whether the joint can be made at all
 * @param fasteners its screws or nails, where it is made with any
 */
public record Effect(
        List<Addition> additions,
        List<Figure> figures,
        List<Cut> cuts,
        List<Finding> findings,
        boolean isMade,
        Optional<Fasteners> fasteners) {
    /** Keeps its own copies. */
    public Effect {
        additions = List.copyOf(additions);
        figures = List.copyOf(figures);
        cuts = List.copyOf(cuts);
        findings = List.copyOf(findings);
    }

    /** Nothing but something to say. */
    static Effect only(Finding finding) {
        return new Effect(List.of(), List.of(), List.of(), List.of(finding), false, Optional.empty());
    }

    /** Sizes and shapes. */
    static Effect of(List<Addition> additions, List<Figure> figures, List<Cut> cuts) {
        return new Effect(additions, figures, cuts, List.of(), true, Optional.empty());
    }

    /** The same with something to say. */
    Effect saying(List<Finding> more) {
        return new Effect(additions, figures, cuts, more, isMade, fasteners);
    }

    /** The same with screws or nails. */
    Effect with(Fasteners held) {
        return new Effect(additions, figures, cuts, findings, isMade, Optional.of(held));
    }
}
