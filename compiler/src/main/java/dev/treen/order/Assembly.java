package dev.treen.order;

import dev.treen.joinery.Joined;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.model.Joint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Parts that glue makes one thing: a carcase, a door, the base of a table.
 *
 * @param called what it is called in a sentence
 * @param parts what is glued, in the order of the project
 * @param joints its glued joints
 * @param enclosed loose parts that it closes in, such as a panel
 */
record Assembly(String called, List<String> parts, List<MadeJoint> joints, List<String> enclosed) {
    private static final int FEW = 3;

    /** Keeps its own copies. */
    Assembly {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        enclosed = List.copyOf(enclosed);
    }

    /** Its parts and what it closes in. */
    List<String> all() {
        List<String> all = new ArrayList<>(parts);
        all.addAll(enclosed);
        return all;
    }

    /** Whether its parts close a ring, so that it has diagonals. */
    boolean ring() {
        Set<Set<String>> pairs = new LinkedHashSet<>();
        joints.forEach(made -> pairs.add(Set.of(made.joint().left().name(), made.joint().right().name())));
        return pairs.size() >= parts.size();
    }

    /** The glue work of each joint statement of {@code joined}, by the statement's number. */
    static Map<Integer, List<Work>> glue(Joined joined) {
        Map<Integer, List<Work>> glue = new HashMap<>();
        for (MadeJoint made : joined.joints()) {
            made.works().stream()
                    .filter(work -> work.stage() == Work.Stage.GLUE)
                    .forEach(work -> glue.computeIfAbsent(made.joint().statement(), s -> new ArrayList<>()).add(work));
        }
        return glue;
    }

    /** All assemblies of a project. */
    static List<Assembly> among(Joined joined) {
        Map<String, String> roots = new HashMap<>();
        Map<Integer, List<Work>> glue = glue(joined);
        List<MadeJoint> glued = joined.joints().stream()
                .filter(made -> glue.containsKey(made.joint().statement()) && !made.foreign())
                .filter(made -> !made.joint().left().is(made.joint().right()))
                .toList();
        glued.forEach(made -> roots.put(root(roots, made.joint().left().name()),
                root(roots, made.joint().right().name())));
        Map<String, List<String>> groups = new LinkedHashMap<>();
        Set<String> jointed = new LinkedHashSet<>();
        glued.forEach(made -> {
            jointed.add(made.joint().left().name());
            jointed.add(made.joint().right().name());
        });
        // What is laid in when all else is finished is no part of what it is laid into.
        List<String> names = joined.parts().stream()
                .filter(part -> !part.part().foreign())
                .map(Workshop::name)
                .toList();
        names.stream()
                .filter(jointed::contains)
                .forEach(name -> groups.computeIfAbsent(root(roots, name), r -> new ArrayList<>()).add(name));
        List<Assembly> assemblies = new ArrayList<>();
        groups.forEach((root, parts) -> {
            List<MadeJoint> own = glued.stream().filter(m -> parts.contains(m.joint().left().name())).toList();
            List<String> enclosed = enclosed(joined, parts, jointed);
            List<String> all = new ArrayList<>(parts);
            all.addAll(enclosed);
            assemblies.add(new Assembly(called(all, names), parts, own, enclosed));
        });
        return assemblies;
    }

    private static String root(Map<String, String> roots, String name) {
        String at = name;
        while (!roots.getOrDefault(at, at).equals(at)) {
            at = roots.getOrDefault(at, at);
        }
        return at;
    }

    private static List<String> enclosed(Joined joined, List<String> parts, Set<String> jointed) {
        Set<String> enclosed = new LinkedHashSet<>();
        Set<Integer> hung = new HashSet<>();
        joined.joints().stream()
                .filter(made -> made.works().stream().anyMatch(work -> work.stage() == Work.Stage.WHEN_SET
                        || (made.foreign() && work.stage() == Work.Stage.FIT)))
                .forEach(made -> hung.add(made.joint().statement()));
        for (MadeJoint made : joined.joints()) {
            Joint joint = made.joint();
            // A door or lid lies on or in what is glued, or is hung on it, when the glue is hard.
            boolean closedIn = joint.into() && !made.holdsFast() && !Loose.in(joint)
                    && !hung.contains(joint.statement()) && joint.word("slide").isEmpty();
            if (closedIn && parts.contains(joint.right().name()) && !jointed.contains(joint.left().name())) {
                enclosed.add(joint.left().name());
            }
        }
        return List.copyOf(enclosed);
    }

    /** The name that its parts share, or the piece where all parts do; of what shares it too, that it is without that. */
    private static String called(List<String> parts, List<String> all) {
        String shared = shared(parts);
        String name = shared.equals(shared(all)) ? "the piece" : "`" + shared + "`";
        List<String> inside = all.stream()
                .filter(other -> !parts.contains(other))
                .filter(other -> shared.isEmpty() || other.startsWith(shared + "."))
                .toList();
        if (inside.isEmpty()) {
            return name;
        }
        String without = inside.size() == 1 ? inside.getFirst() : shared(inside);
        if (!without.equals(shared)) {
            return name + " without `" + without + "`";
        }
        return inside.size() <= FEW ? name + " without " + Names.quoted(inside) : Names.quoted(parts);
    }

    /** The longest dotted path that all {@code names} begin with. */
    private static String shared(List<String> names) {
        String shared = names.getFirst();
        for (String name : names) {
            while (!shared.isEmpty() && !name.startsWith(shared + ".")) {
                shared = shared.substring(0, Math.max(0, shared.lastIndexOf('.')));
            }
        }
        return shared;
    }
}
