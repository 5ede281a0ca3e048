package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.util.List;

/**
 * A project evaluated: every size exact, every joint with its two parts. What could not be evaluated is left out and
 * stands in {@code findings}.
 */
public record Project(
        SourceFile file,
        Settings settings,
        List<Board> boards,
        List<Part> parts,
        List<Joint> joints,
        List<Requirement> requirements,
        List<Acceptance> acceptances,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public Project {
        boards = List.copyOf(boards);
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        requirements = List.copyOf(requirements);
        acceptances = List.copyOf(acceptances);
        findings = List.copyOf(findings);
    }
}
