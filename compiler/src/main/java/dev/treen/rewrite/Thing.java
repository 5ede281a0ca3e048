package dev.treen.rewrite;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Placing;
import dev.treen.model.Project;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Parts with all joints between them.
 *
 * @param parts as they are called among each other, in the order of the project
 * @param joints those whose two parts are both among them
 */
record Thing(Map<String, Part> parts, List<Joint> joints) {
    /** What one part is joined to another by. */
    record Tie(String left, String right, String kind, boolean into) {}

    /** What joints tie to {@code part}, with it. */
    static Thing around(Project project, Part part) {
        Map<String, List<Joint>> of = new LinkedHashMap<>();
        for (Joint joint : project.joints()) {
            of.computeIfAbsent(joint.left().name(), name -> new ArrayList<>()).add(joint);
            of.computeIfAbsent(joint.right().name(), name -> new ArrayList<>()).add(joint);
        }
        Set<String> found = new LinkedHashSet<>(List.of(part.name()));
        Deque<String> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            for (Joint joint : of.getOrDefault(open.remove(), List.of())) {
                for (String name : List.of(joint.left().name(), joint.right().name())) {
                    if (found.add(name)) {
                        open.add(name);
                    }
                }
            }
        }
        return among(project, found, "");
    }

    /** All parts of a project. */
    static Thing of(Project project) {
        return among(project, project.parts().stream().map(Part::name).collect(Collectors.toSet()), "");
    }

    /** What a thing made by pattern holds, without its own name before the names. */
    static Thing madeAs(Project project, String instance) {
        Set<String> names = new LinkedHashSet<>();
        String prefix = instance + ".";
        project.parts().stream().map(Part::name).filter(name -> name.startsWith(prefix)).forEach(names::add);
        return among(project, names, prefix);
    }

    private static Thing among(Project project, Set<String> names, String prefix) {
        Map<String, Part> parts = new LinkedHashMap<>();
        project.parts().stream()
                .filter(part -> names.contains(part.name()))
                .forEach(part -> parts.put(part.name().substring(prefix.length()), part));
        return new Thing(parts, project.joints().stream()
                .filter(joint -> names.contains(joint.left().name()) && names.contains(joint.right().name()))
                .toList());
    }

    /** How the parts of a joint are called here. */
    Tie tie(Joint joint) {
        return new Tie(called(joint.left()), called(joint.right()), joint.kind(), joint.into());
    }

    String called(Part part) {
        return parts.entrySet().stream()
                .filter(each -> each.getValue().is(part))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** Its joints by what they tie; of two that tie the same only the first. */
    Map<Tie, Joint> byTie() {
        Map<Tie, Joint> ties = new LinkedHashMap<>();
        joints.forEach(joint -> ties.putIfAbsent(tie(joint), joint));
        return ties;
    }

    /** The kinds of its joints, each as often as there is one, in order: alike for things that may be the same. */
    List<String> kinds() {
        return joints.stream().map(joint -> joint.kind() + joint.into()).sorted().toList();
    }

    /** Length, width and thickness of a part, then where its lowest corner lies as it is written. */
    static List<BigFraction> sizes(Part part) {
        List<BigFraction> sizes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            sizes.add(part.measure(i).value().mm());
        }
        List<BigFraction> at = part.placing()
                .map(placing -> placing.at().stream().map(each -> each.mm()).toList())
                .orElse(List.of(BigFraction.ZERO, BigFraction.ZERO, BigFraction.ZERO));
        sizes.addAll(at);
        return sizes;
    }

    /** How a part lies, without where. */
    static String lies(Part part) {
        return part.placing()
                .map((Placing placing) -> placing.length() + " " + placing.width() + " " + placing.corner())
                .orElse("nowhere");
    }

    /** The lengths that are given for a joint, by property. */
    static Map<String, BigFraction> lengths(Joint joint) {
        Map<String, BigFraction> lengths = new LinkedHashMap<>();
        joint.settings().keySet().stream().sorted().forEach(property -> joint.length(property)
                .map(Measure::value)
                .ifPresent(length -> lengths.put(property, length.mm())));
        return lengths;
    }
}
