package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.joinery.Joined;
import java.util.List;

/** One rule of the bench. To add one, write a class and name it in {@link Checks}. */
interface Check {
    /** The kinds of finding that it raises. */
    List<FindingKind> kinds();

    /** What it has to say of a project. */
    List<Finding> run(Joined joined);
}
