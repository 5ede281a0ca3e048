package dev.treen.model;

import dev.treen.finding.Finding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What working out one statement at the top of a file gave beside its value, and which names it asked for. */
final class Notes {
    final List<Finding> findings;
    final List<Usage> usages;
    final List<Symbol> symbols;
    final List<Measure> bareNumbers;
    private final Set<String> asked = new HashSet<>();
    private boolean beyond;

    Notes() {
        this(new ArrayList<>(0), new ArrayList<>(), new ArrayList<>(1), new ArrayList<>());
    }

    /** Notes that go into these lists. */
    Notes(List<Finding> findings, List<Usage> usages, List<Symbol> symbols, List<Measure> bareNumbers) {
        this.findings = findings;
        this.usages = usages;
        this.symbols = symbols;
        this.bareNumbers = bareNumbers;
    }

    /** A name of the file was asked for. */
    void asks(String name) {
        asked.add(name);
    }

    /** A name was asked for of which it is not known what it rests on. */
    void asksBeyond() {
        beyond = true;
    }

    /** Forgets what was asked for. */
    void forget() {
        asked.clear();
        beyond = false;
    }

    /** Whether what was worked out stays the same while none of {@link #asked} changes. */
    boolean mayStay() {
        return !beyond && findings.isEmpty();
    }

    /** The names of the file that were asked for. */
    Set<String> asked() {
        return asked;
    }
}
