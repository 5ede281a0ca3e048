package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.joinery.Joined;
import java.util.List;

/**
 * One rule that is seen on finished bodies, whatever joints made them. It is asked only where nothing else is wrong: with
 * a joint that could not be made the bodies are not those that are meant.
 */
interface BodyCheck {
    /** The kinds of finding that it raises. */
    List<FindingKind> kinds();

    /** What it has to say of a project whose bodies stand as {@code standing} has them. */
    List<Finding> run(Joined joined, Standing standing);
}
