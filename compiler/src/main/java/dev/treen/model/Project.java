package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.LengthFormat;
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
        List<GrainRun> runs,
        List<Holding> holdings,
        List<Instance> instances,
        List<Measurement> measurements,
        List<Ware> hardware,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public Project {
        boards = List.copyOf(boards);
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        requirements = List.copyOf(requirements);
        acceptances = List.copyOf(acceptances);
        runs = List.copyOf(runs);
        holdings = List.copyOf(holdings);
        instances = List.copyOf(instances);
        measurements = List.copyOf(measurements);
        hardware = List.copyOf(hardware);
        findings = List.copyOf(findings);
    }

    /** The same with what was measured, and with other findings. */
    Project with(List<Measurement> measured, List<Finding> said) {
        return new Project(
                file, settings, boards, parts, joints, requirements, acceptances, runs, holdings, instances, measured,
                hardware, said);
    }

    /** These parts and joints of it alone, with its settings and without its text. */
    public Project only(List<Part> someParts, List<Joint> someJoints) {
        return new Project(
                new SourceFile(file.name(), ""), settings, List.of(), someParts, someJoints, List.of(), List.of(),
                List.of(), List.of(), List.of(),
                List.of(), hardware, List.of());
    }

    /** The same project with its lengths shown another way. */
    public Project shownIn(LengthFormat other) {
        return new Project(
                file, settings.shownIn(other), boards, parts, joints, requirements, acceptances, runs, holdings,
                instances, measurements, hardware, findings);
    }
}
