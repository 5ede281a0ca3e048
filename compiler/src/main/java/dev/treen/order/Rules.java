package dev.treen.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

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
     * @param known what those who made the operations know
     */
    static List<Precedence> among(List<Operation> operations, Map<String, Set<String>> parts, List<Precedence> known) {
        Rules rules = new Rules(operations, parts);
        known.forEach(each -> rules.add(each.before(), each.after(), each.because()));
        rules.alongEachPart();
        rules.marked();
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

    /**
     * Each part goes through the phases; an operation follows those of the band before that touch the same part. Within
     * a band only those who made the operations know.
     */
    private void alongEachPart() {
        Map<String, TreeMap<Phase, List<Operation>>> lives = new LinkedHashMap<>();
        for (Operation each : operations) {
            for (String name : touched(each, parts)) {
                List<Operation> band = lives.computeIfAbsent(name, n -> new TreeMap<>())
                        .computeIfAbsent(each.phase().band(), p -> new ArrayList<>());
                if (!band.contains(each)) {
                    band.add(each);
                }
            }
        }
        for (TreeMap<Phase, List<Operation>> life : lives.values()) {
            List<Operation> before = List.of();
            for (List<Operation> band : life.values()) {
                for (Operation after : band) {
                    before.forEach(b -> add(b.id(), after.id(), reason(b.phase(), after.phase())));
                }
                before = band;
            }
        }
    }

    /** What a part is marked or fitted from must be made so far. */
    private void marked() {
        Map<String, List<Operation>> byPart = new HashMap<>();
        operations.forEach(each -> each.parts()
                .forEach(name -> byPart.computeIfAbsent(name, n -> new ArrayList<>()).add(each)));
        for (Operation each : operations) {
            for (String name : each.with()) {
                for (Operation other : byPart.getOrDefault(name, List.of())) {
                    if (other.phase().band().compareTo(each.phase().band()) < 0) {
                        add(other.id(), each.id(), withReason(each.phase()));
                    }
                }
            }
        }
    }

    private static String withReason(Phase after) {
        return switch (after) {
            case MEASURE -> "an opening is measured on what stands, dry";
            case OPENING -> "the opening is what came out of the clamps, and clean";
            case GLUE -> "what the glue-up closes in must be ready, and finished";
            case MOUNT -> "it goes on when both are finished";
            default -> "it is marked and fitted from the other part as made";
        };
    }

    private static String reason(Phase before, Phase after) {
        return switch (after) {
            case REST -> "";
            case RIP -> "wood that has not come to rest moves again after it is sawn";
            case FLATTEN, RESAW -> before == Phase.RIP
                    ? "narrow pieces are less hollow, and lose less to the plane"
                    : before == Phase.REST
                            ? "wood that has not come to rest moves again after it is planed flat"
                            : "the saw follows a true face";
            case MARK -> before == Phase.RESAW
                    ? "leaves lie in stick until their moisture is even"
                    : "wood that has not come to rest moves again after it is sawn";
            case SAW -> "a saw follows a line";
            case LEAVES -> "a piece cut to its size is less to saw through than a whole board";
            case STAVES -> before == Phase.LEAVES
                    ? "leaves lie in stick until their moisture is even"
                    : "staves are glued while they are still a little large";
            case TRUE -> before == Phase.STAVES
                    ? "the glue must be hard, and what stands proud is planed off with the whole"
                    : before == Phase.LEAVES
                            ? "leaves lie in stick until their moisture is even"
                            : "small pieces lose less in planing flat than a whole board";
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
            case MEASURE -> "it is measured when its thickness is known";
            case FITTED -> before.compareTo(Phase.TRY) < 0
                    ? "it is planed to thickness first, then fitted"
                    : "it is made to the opening as measured, not as planned";
            case INSIDE -> before == Phase.TRY
                    ? "joints are tried before surfaces are finished"
                    : "a part is finished when its shape is";
            case REHEARSE -> "what lies inside cannot be reached once it is glued";
            case GLUE -> "glue gives no time to look for a clamp";
            case SQUARE -> "only while the glue is wet can it still be pushed square";
            case KEYED -> "a key is sawn in across a corner that holds by itself";
            case CLEAN -> "the glue must be hard, or the joints open again";
            case FREED -> "a closed box is held, planed and cleaned as one piece, so that lid and box stay flush";
            case OPENING -> "what moves is made last, to what is there";
            case FIT -> before == Phase.OPENING
                    ? "it is made to the opening as measured, not as planned"
                    : "a moving part is fitted to the piece as it came out of the clamps";
            case FINISH -> "finish comes when no tool will touch the surface again";
            case MOUNT -> "hardware and fixings go on when the finish is dry";
            case CURE -> "the last coat is on, and what was taken off to be finished is back";
        };
    }
}
