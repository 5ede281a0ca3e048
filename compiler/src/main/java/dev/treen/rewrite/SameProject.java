package dev.treen.rewrite;

import dev.treen.finding.Finding;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.plan.Compilation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether two texts make the same, but for the names of some parts: the same parts in the same places with the same sizes,
 * seen, finished and rough; the same joints with the same figures; the same findings.
 */
final class SameProject {
    private final Map<String, String> names;

    /** Where each part of the first project has, in the second, the name that {@code names} gives it, or its own. */
    SameProject(Map<String, String> names) {
        this.names = names;
    }

    boolean as(Compilation before, Compilation after) {
        return after.evaluation().project().parts().size() == before.evaluation().project().parts().size()
                && parts(after, Map.of()).equals(parts(before, names))
                && joints(after, Map.of()).equals(joints(before, names))
                && rest(after).equals(rest(before))
                && findings(after, Map.of()).equals(findings(before, names));
    }

    private static Map<String, List<String>> parts(Compilation compilation, Map<String, String> names) {
        Map<String, List<String>> parts = new TreeMap<>();
        for (FinishedPart finished : compilation.joined().parts()) {
            Part part = finished.part();
            parts.put(names.getOrDefault(part.name(), part.name()), new WrittenSizes().ofAll(List.of(
                    part.seen(), part.assembled(), part.overall(), part.source(),
                    part.bought().isPresent(), part.bought().flatMap(Board::species), part.rings(),
                    part.placing(), part.takes(), part.turns(), part.service(), part.allow(), part.tolerances(),
                    part.glueUp(),
                    finished.length(), finished.width(), finished.thickness(),
                    finished.roughLength(), finished.roughWidth(), finished.roughThickness())));
        }
        return parts;
    }

    private static List<String> joints(Compilation compilation, Map<String, String> names) {
        List<String> joints = new ArrayList<>();
        for (MadeJoint made : compilation.joined().joints()) {
            String left = made.joint().left().name();
            String right = made.joint().right().name();
            joints.add(made.joint().kind() + " " + names.getOrDefault(left, left) + " " + made.joint().into() + " "
                    + names.getOrDefault(right, right) + " " + new WrittenSizes().ofAll(List.of(
                            made.figures().stream().map(each -> List.of(each.name(), each.measure())).toList(),
                            made.fasteners().isPresent(), made.hardware().size(), made.pieces().size())));
        }
        joints.sort(null);
        return joints;
    }

    private static List<String> rest(Compilation compilation) {
        var project = compilation.evaluation().project();
        List<String> rest = new ArrayList<>(new WrittenSizes().ofAll(List.of(project.settings(), project.boards())));
        rest.add(project.requirements().size() + " " + project.acceptances().size() + " " + project.runs().size() + " "
                + project.holdings().size() + " " + project.measurements().size());
        return rest;
    }

    /** What is said, by code and by the parts that it is about: sentences say their names, and joints have others. */
    private static List<String> findings(Compilation compilation, Map<String, String> names) {
        List<String> said = new ArrayList<>();
        List<String> parts = compilation.evaluation().project().parts().stream().map(Part::name).toList();
        for (Finding each : compilation.checked().findings()) {
            said.add(each.code() + " " + each.severity() + " " + new TreeMap<>(each.numbers()) + " "
                    + each.subjects().stream()
                            .filter(parts::contains)
                            .map(name -> names.getOrDefault(name, name))
                            .sorted()
                            .toList());
        }
        said.sort(null);
        return said;
    }
}
