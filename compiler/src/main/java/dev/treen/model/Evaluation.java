package dev.treen.model;

import dev.treen.quantity.LengthFormat;
import java.util.List;
import java.util.Map;

/**
 * A project with what an editor asks beside it.
 *
 * @param project the project
 * @param symbols what is declared, in the order of the file
 * @param usages where names are used, with their values
 * @param patterns what an instance of each pattern may say, by the pattern's name
 * @param bareNumbers figures without a unit that were read as lengths
 */
public record Evaluation(Project project, List<Symbol> symbols, List<Usage> usages, List<Measure> bareNumbers,
        Map<String, BlockSchema> patterns) {
    /** Keeps its own copies. */
    public Evaluation {
        symbols = List.copyOf(symbols);
        usages = List.copyOf(usages);
        bareNumbers = List.copyOf(bareNumbers);
        patterns = Map.copyOf(patterns);
    }

    /** The same project with its lengths shown another way. */
    public Evaluation shownIn(LengthFormat other) {
        return new Evaluation(project.shownIn(other), symbols, usages, bareNumbers, patterns);
    }
}
