package dev.treen.plan;

import dev.treen.cutting.Cutting;
import dev.treen.finding.Finding;
import dev.treen.joinery.Joined;
import dev.treen.model.Settings;
import dev.treen.order.BuildOrder;
import dev.treen.quantity.LengthFormat;
import java.util.List;

/** All that Treen worked out for a project, as one value; every writer reads this and nothing else. */
public record Plan(Joined joined, Cutting cutting, BuildOrder order, List<Finding> findings) {
    /** Keeps its own copy. */
    public Plan {
        findings = List.copyOf(findings);
    }

    /** What holds for the whole project. */
    public Settings settings() {
        return joined.project().settings();
    }

    /** The project's title. */
    public String title() {
        return settings().title();
    }

    /** How the project wants lengths written. */
    public LengthFormat format() {
        return settings().format();
    }
}
