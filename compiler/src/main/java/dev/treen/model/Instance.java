package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/** A thing made by a pattern, for those who ask after evaluation. */
public final class Instance {
    private final InstanceEntry entry;

    Instance(InstanceEntry entry) {
        this.entry = entry;
    }

    /** Its dotted name. */
    public String path() {
        return entry.path();
    }

    /** The name of its pattern. */
    public String pattern() {
        return entry.pattern().name();
    }

    /** Its name, where it is used. */
    public Span usedAt() {
        return entry.nameAt();
    }

    /** Its whole statement. */
    public Span statement() {
        return entry.statement().span();
    }

    /** Its documentation, or its pattern's. */
    public String doc() {
        String own = entry.statement().doc();
        return own.isEmpty() ? entry.pattern().statement().doc() : own;
    }

    /** Whether {@code span} lies in the text of its pattern. */
    public boolean inPattern(Span span) {
        return entry.pattern().holds(span);
    }

    /**
     * {@code finding} as it is said to whoever uses the patterns: where it lies in the text of one, it moves to the use. Of
     * several uses it is the one that the finding is about.
     */
    public static Finding atUse(Finding finding, List<Instance> instances) {
        if (instances.stream().noneMatch(i -> i.inPattern(finding.at()))) {
            return finding;
        }
        Optional<Instance> about = instances.stream()
                .filter(i -> i.inPattern(finding.at()))
                .filter(i -> finding.subjects().stream().anyMatch(s -> s.startsWith(i.path() + ".")))
                .reduce((outer, inner) -> inner.path().length() > outer.path().length() ? inner : outer);
        return about.or(() -> instances.stream()
                .filter(i -> i.inPattern(finding.at()))
                .findFirst())
                .map(i -> i.entry.atUse(finding))
                .orElse(finding);
    }
}
