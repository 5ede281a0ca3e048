package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Part;
import dev.treen.model.Project;
import java.util.List;
import java.util.Optional;

/**
 * A project with its joints made.
 *
 * @param natures how the wood of its parts moves
 * @param subassemblies what joints tie together, each part in one of them; none where this is one itself
 */
public record Joined(Project project, List<FinishedPart> parts, List<MadeJoint> joints, List<Finding> findings,
        Natures natures, List<Subassembly> subassemblies) {
    /** Keeps its own copies. */
    public Joined {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        findings = List.copyOf(findings);
        subassemblies = List.copyOf(subassemblies);
    }

    /** The parts that are made: all but those that are bought ready. */
    public List<FinishedPart> made() {
        return parts.stream().filter(part -> part.part().bought().isEmpty()).toList();
    }

    /** How a part's wood moves. */
    public Nature nature(Part part) {
        return natures.of(part);
    }

    /** The finished part called {@code name}. */
    public Optional<FinishedPart> part(String name) {
        return parts.stream().filter(p -> p.part().name().equals(name)).findFirst();
    }
}
