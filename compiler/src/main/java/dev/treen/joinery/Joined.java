package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Project;
import java.util.List;
import java.util.Optional;

/** A project with its joints made. */
public record Joined(Project project, List<FinishedPart> parts, List<MadeJoint> joints, List<Finding> findings) {
    /** Keeps its own copies. */
    public Joined {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        findings = List.copyOf(findings);
    }

    /** The finished part called {@code name}. */
    public Optional<FinishedPart> part(String name) {
        return parts.stream().filter(p -> p.part().name().equals(name)).findFirst();
    }
}
