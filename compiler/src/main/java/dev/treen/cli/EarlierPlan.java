package dev.treen.cli;

import dev.treen.cutting.EarlierLayout;
import dev.treen.plan.PlanReader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** The layout of the plan that was built last, which a new one moves as little as it can. */
public final class EarlierPlan {
    private EarlierPlan() {
    }

    /** What stands in the usual folder beside {@code project}; none where no plan has been built there. */
    public static EarlierLayout beside(String project) {
        try {
            return in(OutputNames.beside(Path.of(project)));
        } catch (InvalidPathException nowhere) {
            return EarlierLayout.NONE;
        }
    }

    /** What stands in {@code folder}, where Treen wrote it. */
    static EarlierLayout in(Path folder) {
        return new OutputFolder(folder).read("plan.json").map(PlanReader::layout).orElse(EarlierLayout.NONE);
    }
}
