package dev.treen.order;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What must come before what, each with its reason (rules of the trade O-01, O-02 and O-07; Noyes, Handwork in Wood,
 * chapters IV, V, VIII and IX; Fairham, Woodwork Joints).
 */
final class Rules {
    private final List<Operation> operations;
    private final Map<String, Set<String>> parts;
    private final List<Precedence> precedences = new ArrayList<>();
    private final Set<List<Integer>> told = new HashSet<>();

    private Rules(List<Operation> operations, Map<String, Set<String>> parts) {
        this.operations = operations;
        this.parts = parts;
    }

    /**
     * The precedences among {@code operations}.
     *
     * @param parts the parts that come from each board
     * @param scribed ids of operations of which the second is marked from the first
     */
    static List<Precedence> among(List<Operation> operations, Map<String, Set<String>> parts, List<int[]> scribed) {
        Rules rules = new Rules(operations, parts);
        scribed.forEach(pair -> rules.add(pair[0], pair[1], "one is marked from the other, never from a drawing"));
        rules.alongEachPart();
        rules.marked();
        rules.gates();
        return List.copyOf(rules.precedences);
    }

    private void add(int before, int after, String because) {
        if (before != after && told.add(List.of(before, after))) {
            precedences.add(new Precedence(before, after, because));
        }
    }

    private static List<String> touched(Operation operation, Map<String, Set<String>> parts) {
        List<String> all = new ArrayList<>(operation.parts());
        operation.parts().forEach(name -> all.addAll(parts.getOrDefault(name, Set.of())));
        return all;
    }

    /** Each part goes through the phases; an operation follows those of the phase before that touch the same part. */
    private void alongEachPart() {
        Map<String, EnumMap<Phase, List<Operation>>> lives = new HashMap<>();
        for (Operation each : operations) {
            for (String name : touched(each, parts)) {
                lives.computeIfAbsent(name, n -> new EnumMap<>(Phase.class))
                        .computeIfAbsent(each.phase(), p -> new ArrayList<>())
                        .add(each);
            }
        }
        for (EnumMap<Phase, List<Operation>> life : lives.values()) {
            List<Operation> before = List.of();
            for (List<Operation> phase : life.values()) {
                for (Operation after : phase) {
                    before.forEach(b -> add(b.id(), after.id(), reason(b.phase(), after.phase())));
                }
                before = phase;
            }
        }
    }

    /** What a part is marked or fitted from must be made so far. */
    private void marked() {
        for (Operation each : operations) {
            for (Operation other : operations) {
                boolean source = other.phase().compareTo(each.phase()) < 0
                        && other.parts().stream().anyMatch(each.with()::contains);
                if (source) {
                    add(other.id(), each.id(), "it is marked and fitted from the other part as made");
                }
            }
        }
    }

    /** What concerns the whole piece: nothing passes the dry fit, the measuring or the glue. */
    private void gates() {
        for (Phase gate : List.of(Phase.TRY, Phase.MEASURE, Phase.INSIDE, Phase.REHEARSE, Phase.ENCLOSE, Phase.GLUE,
                Phase.SQUARE)) {
            for (Operation at : operations) {
                if (at.phase() != gate) {
                    continue;
                }
                for (Operation other : operations) {
                    int way = other.phase().compareTo(gate);
                    boolean comes = way < 0 && touches(other, at);
                    if (comes) {
                        add(other.id(), at.id(), reason(other.phase(), gate));
                    }
                    if (way > 0 && (gate != Phase.MEASURE || touches(at, other))) {
                        add(at.id(), other.id(), reason(gate, other.phase()));
                    }
                }
            }
        }
    }

    /** Measuring waits for the dry fit though it is about other parts; the rest is about parts in common. */
    private boolean touches(Operation before, Operation gate) {
        return before.phase() == Phase.TRY
                || touched(before, parts).stream().anyMatch(gate.parts()::contains);
    }

    private static String reason(Phase before, Phase after) {
        return switch (after) {
            case REST -> "";
            case FLATTEN, RESAW -> before == Phase.REST
                    ? "wood that has not come to rest moves again after it is planed flat"
                    : "the saw follows a true face";
            case SAW -> before == Phase.RESAW
                    ? "leaves lie in stick until their moisture is even"
                    : "wood that has not come to rest moves again after it is sawn";
            case TRUE -> "small pieces lose less in planing flat than a whole board";
            case SIZE -> "gauge and fence want a true face and edge";
            case ALONG -> "depth and distance are set from faces that are done";
            case APART -> "what runs along the grain is done at one setting, and a long strip is safer to hold";
            case LENGTH -> before == Phase.ALONG
                    ? "a groove that runs through the piece ends cleanly in the joint"
                    : "the ends are the last to be squared, so that splinters fall in the waste";
            case JOINTS -> before == Phase.ALONG
                    ? "a groove is ploughed through before the end is cut, and ends cleanly in the joint"
                    : "joints are marked from ends that are square";
            case TRY -> "joints must be cut before they can be tried";
            case MEASURE -> "an opening is measured on what stands, dry";
            case FITTED -> before.compareTo(Phase.TRY) < 0
                    ? "it is planed to thickness first, then fitted"
                    : "it is made to the opening as measured, not as planned";
            case INSIDE -> before == Phase.TRY
                    ? "joints are tried before surfaces are finished"
                    : "a part is finished when its shape is";
            case REHEARSE -> "inside faces and panels cannot be reached once it is glued";
            case ENCLOSE -> "it cannot be got in once the glue has set";
            case GLUE -> before == Phase.ENCLOSE
                    ? "what the walls close in must lie in its place"
                    : "glue gives no time to look for a clamp";
            case SQUARE -> "only while the glue is wet can it still be pushed square";
            case KEYED -> "a key is sawn in across a corner that holds by itself";
            case CLEAN -> "the glue must be hard, or the joints open again";
            case FIT -> "a moving part is fitted to the piece as it came out of the clamps";
            case FINISH -> "finish comes when no tool will touch the surface again";
        };
    }
}
