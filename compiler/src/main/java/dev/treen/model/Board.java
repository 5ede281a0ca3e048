package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * A board or sheet on the rack, as it was measured.
 *
 * @param name dotted name
 * @param nameAt where it is declared
 * @param sheet a manufactured panel
 * @param species as written, with underscores; empty when the project is silent
 * @param speciesAt where it is written, or the declaration
 * @param declared the species, where the project describes it itself
 * @param moisture in percent, where measured
 * @param core moisture in its middle in percent, where measured
 * @param heart how far the heart of the tree lay from its face, where read from the end grain
 * @param moistureAt where it is written, or the declaration
 * @param leaves into how many leaves it is resawn, where that is said
 * @param cup how hollow its face is across its width, where measured
 * @param rips where it is ripped before its faces are planed, from the near edge up
 * @param offcut left over from earlier work
 * @param price what it costs, where somebody said so
 */
public record Board(
        String name,
        Span nameAt,
        boolean sheet,
        Optional<String> species,
        Span speciesAt,
        Optional<DeclaredSpecies> declared,
        Measure length,
        Measure width,
        Measure thickness,
        Rings rings,
        Optional<Double> moisture,
        Span moistureAt,
        Optional<Double> core,
        Optional<Measure> heart,
        Optional<Integer> leaves,
        Optional<Measure> cup,
        List<Measure> rips,
        boolean offcut,
        Optional<Price> price,
        List<Defect> defects,
        Allowances allow) {
    /** Keeps its own copies. */
    public Board {
        rips = List.copyOf(rips);
        defects = List.copyOf(defects);
    }

}
