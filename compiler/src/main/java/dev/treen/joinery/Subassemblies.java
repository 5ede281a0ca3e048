package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.model.Project;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes a project apart into subassemblies, has each made, and puts them together again. It remembers those of the project
 * before, which an edit leaves as they are but for one or two.
 */
public final class Subassemblies {
    private Map<String, Subassembly> before = Map.of();

    /** Remembers nothing yet. */
    public Subassemblies() {
    }

    /** The project with its joints made. */
    public synchronized Joined join(Project project) {
        Map<String, Subassembly> now = new LinkedHashMap<>();
        Map<Integer, List<MadeJoint>> statements = new HashMap<>();
        Map<String, FinishedPart> parts = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Group group : groups(project)) {
            String name = group.parts().getFirst().name();
            Subassembly known = before.get(name);
            Subassembly made = known != null && known.isOf(project.settings(), group.parts(), group.joints())
                    ? known
                    : new Subassembly(Joinery.made(project.only(group.parts(), group.joints())));
            now.put(name, made);
            made.joined().parts().forEach(part -> parts.put(part.part().name(), part));
            findings.addAll(made.joined().findings());
            renumbered(made, group.joints()).forEach(joint -> statements
                    .computeIfAbsent(joint.joint().statement(), s -> new ArrayList<>())
                    .add(joint));
        }
        before = now;
        return new Joined(
                project,
                project.parts().stream().map(part -> parts.get(part.name())).toList(),
                inOrder(project, statements),
                findings,
                new Natures(project.settings()),
                List.copyOf(now.values()));
    }

    private record Group(List<Part> parts, List<Joint> joints) {}

    /** Parts tied together by joints, those of one statement too, in the order of the project. */
    private static List<Group> groups(Project project) {
        Ties ties = new Ties();
        Map<Integer, String> ofStatements = new HashMap<>();
        for (Joint joint : project.joints()) {
            String one = joint.left().name();
            ties.tie(one, joint.right().name());
            ties.tie(ofStatements.computeIfAbsent(joint.statement(), s -> one), one);
        }
        Map<String, Group> groups = new LinkedHashMap<>();
        for (Part part : project.parts()) {
            group(part.name(), ties, groups).parts().add(part);
        }
        for (Joint joint : project.joints()) {
            group(joint.left().name(), ties, groups).joints().add(joint);
        }
        return List.copyOf(groups.values());
    }

    private static Group group(String part, Ties ties, Map<String, Group> groups) {
        return groups.computeIfAbsent(
                ties.leader(part), leader -> new Group(new ArrayList<>(), new ArrayList<>()));
    }

    /** The joints of a subassembly with the numbers that their statements have now. */
    private static List<MadeJoint> renumbered(Subassembly subassembly, List<Joint> now) {
        List<Joint> then = subassembly.joined().project().joints();
        Map<Integer, Integer> numbers = new HashMap<>();
        boolean same = true;
        for (int i = 0; i < now.size(); i++) {
            numbers.put(then.get(i).statement(), now.get(i).statement());
            same &= then.get(i).statement() == now.get(i).statement();
        }
        return same
                ? subassembly.joined().joints()
                : subassembly.joined().joints().stream()
                        .map(made -> made
                                .numbered(numbers.getOrDefault(made.joint().statement(), made.joint().statement())))
                        .toList();
    }

    /** As they are made: first those that bring parts together, then those that hold what has been brought together. */
    private static List<MadeJoint> inOrder(Project project, Map<Integer, List<MadeJoint>> statements) {
        List<MadeJoint> first = new ArrayList<>();
        List<MadeJoint> fastening = new ArrayList<>();
        Set<Integer> done = new LinkedHashSet<>();
        for (Joint joint : project.joints()) {
            if (done.add(joint.statement())) {
                boolean fastens = JointKinds.named(joint.kind()).filter(JointKind::fastens).isPresent();
                (fastens ? fastening : first).addAll(statements.getOrDefault(joint.statement(), List.of()));
            }
        }
        first.addAll(fastening);
        return first;
    }
}
