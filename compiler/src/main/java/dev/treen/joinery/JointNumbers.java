package dev.treen.joinery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The numbers by which parts are kept to their mates at the bench: each two parts that a joint holds fast to one another
 * have one, in the order of the project, and it stands on the labels of both.
 */
public final class JointNumbers {
    /** Two parts that go together. */
    public record Pair(int number, String left, String right, MadeJoint first) {}

    private final List<Pair> pairs = new ArrayList<>();
    private final Map<Set<String>, Integer> numbers = new HashMap<>();

    private JointNumbers() {
    }

    /** The numbers of a project; a panel that lies loose, a lid or a drawer has none. */
    public static JointNumbers of(Joined joined) {
        JointNumbers all = new JointNumbers();
        for (MadeJoint made : joined.joints()) {
            String left = made.joint().left().name();
            String right = made.joint().right().name();
            int next = all.pairs.size() + 1;
            if (made.holdsFast() && all.numbers.putIfAbsent(Set.of(left, right), next) == null) {
                all.pairs.add(new Pair(next, left, right, made));
            }
        }
        return all;
    }

    /** All pairs, by their numbers. */
    public List<Pair> pairs() {
        return List.copyOf(pairs);
    }

    /** The number of two parts; none where no joint holds them fast to one another. */
    public Optional<Integer> of(String one, String other) {
        return one.equals(other) ? Optional.empty() : Optional.ofNullable(numbers.get(Set.of(one, other)));
    }
}
