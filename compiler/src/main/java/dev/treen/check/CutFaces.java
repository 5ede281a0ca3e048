package dev.treen.check;

import dev.treen.joinery.Edge;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Ties;
import dev.treen.solid.Origin;
import dev.treen.solid.Solid;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whose the cut faces of finished bodies are: only which two parts a cut joins is asked. Of the kinds of joint one counts:
 * what is glued edge to edge is one board.
 */
final class CutFaces {
    private final Map<String, MadeJoint> byName = new HashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Ties boards = new Ties();
    private final Set<Set<String>> joined;

    CutFaces(Joined joined) {
        for (MadeJoint made : joined.joints()) {
            byName.putIfAbsent(made.joint().name(), made);
            numbers.putIfAbsent(made.joint().name(), numbers.size());
        }
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Edge.KIND)) {
                boards.tie(made.joint().left().name(), made.joint().right().name());
            }
        }
        this.joined = joined.joints().stream().map(this::pair).collect(Collectors.toSet());
    }

    private Set<String> pair(MadeJoint made) {
        return Stream.of(made.joint().left().name(), made.joint().right().name())
                .map(boards::leader)
                .collect(Collectors.toSet());
    }

    /** The joint that cut a face; nothing for the faces of the stock. */
    Optional<MadeJoint> joint(Origin origin) {
        return origin.isStock() ? Optional.empty() : Optional.ofNullable(byName.get(origin.name()));
    }

    /** The joint of a name that a face has told. */
    MadeJoint named(String name) {
        return Objects.requireNonNull(byName.get(name));
    }

    /** Which joint of the project it is, in the order of the text. */
    int number(String name) {
        return Objects.requireNonNull(numbers.get(name));
    }

    /** The other part of a joint. */
    static String mate(MadeJoint made, String part) {
        String left = made.joint().left().name();
        return left.equals(part) ? made.joint().right().name() : left;
    }

    /** Whether two parts are joined to each other, or are one; staves glued to each other count as one. */
    boolean together(String one, String other) {
        String first = boards.leader(one);
        String second = boards.leader(other);
        return first.equals(second) || joined.contains(Set.of(first, second));
    }

    /** The body without the holes of screws, nails and pegs, which have rules of their own. */
    static Optional<Solid> bare(FinishedPart part) {
        return part.bare().filter(solid -> !solid.isEmpty());
    }

    /** A joint in the words of the bench: "the groove for `base`". */
    static String named(MadeJoint made, String part) {
        return "the " + made.joint().kind().replace('_', ' ') + (made.joint().into() ? " for `" : " with `")
                + mate(made, part) + "`";
    }

    /** The parts and the joints that a finding is about. */
    static List<String> subjects(String part, List<MadeJoint> joints) {
        return Stream.concat(
                Stream.of(part),
                joints.stream().flatMap(made -> Stream.of(mate(made, part), made.joint().name())))
                .distinct()
                .toList();
    }
}
