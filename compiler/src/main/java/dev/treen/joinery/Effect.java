package dev.treen.joinery;

import dev.treen.finding.Finding;
import java.util.List;

/** What one joint does: to sizes, to shapes, and what it has to say. */
public record Effect(List<Addition> additions, List<Figure> figures, List<Cut> cuts, List<Finding> findings) {
    /** Keeps its own copies. */
    public Effect {
        additions = List.copyOf(additions);
        figures = List.copyOf(figures);
        cuts = List.copyOf(cuts);
        findings = List.copyOf(findings);
    }

    /** Nothing but something to say. */
    static Effect only(Finding finding) {
        return new Effect(List.of(), List.of(), List.of(), List.of(finding));
    }

    /** Sizes and shapes. */
    static Effect of(List<Addition> additions, List<Figure> figures, List<Cut> cuts) {
        return new Effect(additions, figures, cuts, List.of());
    }
}
