package dev.treen.joinery;

import dev.treen.finding.Finding;
import java.util.List;

/**
 * What one joint does: to sizes, to shapes, and what it has to say.
 *
 * @param isMade whether the joint can be made at all
 */
public record Effect(
        List<Addition> additions, List<Figure> figures, List<Cut> cuts, List<Finding> findings, boolean isMade) {
    /** Keeps its own copies. */
    public Effect {
        additions = List.copyOf(additions);
        figures = List.copyOf(figures);
        cuts = List.copyOf(cuts);
        findings = List.copyOf(findings);
    }

    /** Nothing but something to say. */
    static Effect only(Finding finding) {
        return new Effect(List.of(), List.of(), List.of(), List.of(finding), false);
    }

    /** Sizes and shapes. */
    static Effect of(List<Addition> additions, List<Figure> figures, List<Cut> cuts) {
        return new Effect(additions, figures, cuts, List.of(), true);
    }

    /** The same with something to say. */
    Effect saying(List<Finding> more) {
        return new Effect(additions, figures, cuts, more, isMade);
    }
}
