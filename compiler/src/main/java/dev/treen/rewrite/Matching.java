package dev.treen.rewrite;

import dev.treen.model.Joint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which part of one thing is which of another: parts that lie the same way and are tied to each other by the same joints.
 * Names only say what is tried first.
 */
final class Matching {
    private static final int MOST = 24;
    private static final int MOST_STEPS = 20_000;

    private final Thing one;
    private final Thing other;
    private final List<String> names;
    private final Map<String, String> roles = new HashMap<>();
    private final Map<String, String> otherRoles = new HashMap<>();
    private final Map<List<String>, List<String>> ties;
    private final Map<List<String>, List<String>> otherTies;
    private final List<Map<String, String>> found = new ArrayList<>();
    private int steps;

    private Matching(Thing one, Thing other) {
        this.one = one;
        this.other = other;
        names = List.copyOf(one.parts().keySet());
        ties = ties(one, roles);
        otherTies = ties(other, otherRoles);
    }

    /** For each way that they match, the names of {@code one} with those of {@code other}; not more than a few. */
    static List<Map<String, String>> of(Thing one, Thing other) {
        if (one.parts().size() != other.parts().size() || !one.kinds().equals(other.kinds())) {
            return List.of();
        }
        Matching matching = new Matching(one, other);
        matching.next(new LinkedHashMap<>(), new HashSet<>());
        return matching.found;
    }

    /** What ties each two parts; the part that each is by its place among the joints goes to {@code roles}. */
    private static Map<List<String>, List<String>> ties(Thing thing, Map<String, String> roles) {
        Map<String, String> called = new HashMap<>();
        thing.parts().forEach((name, part) -> called.put(part.name(), name));
        Map<List<String>, List<String>> ties = new HashMap<>();
        Map<String, List<String>> ends = new HashMap<>();
        for (Joint joint : thing.joints()) {
            String left = called.get(joint.left().name());
            String right = called.get(joint.right().name());
            String kind = joint.kind() + joint.into();
            ties.computeIfAbsent(List.of(left, right), pair -> new ArrayList<>()).add(kind);
            ends.computeIfAbsent(left, name -> new ArrayList<>()).add("left " + kind);
            ends.computeIfAbsent(right, name -> new ArrayList<>()).add("right " + kind);
        }
        thing.parts().forEach((name, part) -> roles.put(name, Thing.lies(part)
                + ends.getOrDefault(name, List.of()).stream().sorted().toList()));
        return ties;
    }

    private void next(Map<String, String> matched, Set<String> taken) {
        steps++;
        if (found.size() >= MOST || steps > MOST_STEPS) {
            return;
        }
        if (matched.size() == names.size()) {
            found.add(Map.copyOf(matched));
            return;
        }
        String name = names.get(matched.size());
        for (String candidate : candidates(name)) {
            if (taken.contains(candidate) || !fits(name, candidate, matched)) {
                continue;
            }
            matched.put(name, candidate);
            taken.add(candidate);
            next(matched, taken);
            matched.remove(name);
            taken.remove(candidate);
        }
    }

    private List<String> candidates(String name) {
        List<String> candidates = new ArrayList<>();
        for (String each : other.parts().keySet()) {
            if (roles.get(name) != null && roles.get(name).equals(otherRoles.get(each))) {
                if (each.equals(name)) {
                    candidates.addFirst(each);
                } else {
                    candidates.add(each);
                }
            }
        }
        return candidates;
    }

    private boolean fits(String name, String candidate, Map<String, String> matched) {
        return matched.entrySet().stream().allMatch(each -> same(name, each.getKey(), candidate, each.getValue())
                && same(each.getKey(), name, each.getValue(), candidate))
                && one.parts().containsKey(name);
    }

    private boolean same(String left, String right, String otherLeft, String otherRight) {
        return ties.getOrDefault(List.of(left, right), List.of())
                .equals(otherTies.getOrDefault(List.of(otherLeft, otherRight), List.of()));
    }
}
