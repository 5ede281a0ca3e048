package dev.treen.check;

import dev.treen.finding.FindingKind;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JoineryFindings;
import dev.treen.joinery.MadeJoint;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The parts of a project as bodies, each where it stands when all is put together: what the checks from solids look at. */
final class Standing {
    private static final Set<FindingKind> UNMADE = Set.of(JoineryFindings.DO_NOT_MEET, JoineryFindings.OVERLAP,
            JoineryFindings.MEETS_WRONGLY, JoineryFindings.DOES_NOT_FIT, JoineryFindings.NOTHING_SEEN);

    private final Map<String, FinishedPart> parts = new LinkedHashMap<>();
    private final List<Placed> placed = new ArrayList<>();
    private final Map<String, Solid> solids = new LinkedHashMap<>();
    private final Set<String> unmade = new HashSet<>();

    private Standing(Joined joined) {
        for (FinishedPart part : joined.parts()) {
            String name = part.part().name();
            part.solid().filter(solid -> !solid.isEmpty()).ifPresent(solid -> {
                parts.put(name, part);
                placed.add(new Placed(name, solid));
                solids.put(name, solid);
            });
        }
        joined.findings().stream().filter(f -> UNMADE.contains(f.kind())).forEach(f -> unmade.addAll(f.subjects()));
    }

    /** The parts of {@code joined} that have a place and a body. */
    static Standing of(Joined joined) {
        return new Standing(joined);
    }

    /** All of them, in the order of the project. */
    List<Placed> all() {
        return placed;
    }

    /** The body of a part, where it has one. */
    Optional<Solid> solid(String name) {
        return Optional.ofNullable(solids.get(name));
    }

    /** The part of a name that has a body. */
    FinishedPart part(String name) {
        return Optional.ofNullable(parts.get(name)).orElseThrow();
    }

    /** Whether a joint of this part could not be made as it is written, which was told: its shape means little then. */
    boolean unsettled(String name) {
        return unmade.contains(name);
    }

    /** The sides of a box in words: across, deep, high. */
    static String sides(Box box, LengthFormat format) {
        List<String> sides = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            sides.add(format.text(Length.ofMm(box.extent(axis))));
        }
        return String.join(" by ", sides);
    }

    /** A point as {@code place} writes it. */
    static String point(Vec3 at, LengthFormat format) {
        List<String> sides = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            BigFraction value = at.get(axis);
            sides.add(format.text(Length.ofMm(value)));
        }
        return String.join(", ", sides);
    }

    /** The parts in groups that the given joints tie together, each in the order of the project; single parts are left out. */
    List<List<Placed>> joinedGroups(List<MadeJoint> joints) {
        Map<String, String> leaders = new HashMap<>();
        for (MadeJoint made : joints) {
            leaders.put(leader(made.joint().left().name(), leaders), leader(made.joint().right().name(), leaders));
        }
        Map<String, List<Placed>> groups = new LinkedHashMap<>();
        for (Placed part : placed) {
            groups.computeIfAbsent(leader(part.name(), leaders), l -> new ArrayList<>()).add(part);
        }
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }

    private static String leader(String part, Map<String, String> leaders) {
        String at = part;
        String next = leaders.getOrDefault(at, at);
        while (!next.equals(at)) {
            at = next;
            next = leaders.getOrDefault(at, at);
        }
        return at;
    }

    /** The axis by number: across 0, deep 1, high 2. */
    static Axis axis(int number) {
        return switch (number) {
            case 0 -> Axis.X;
            case 1 -> Axis.Y;
            default -> Axis.Z;
        };
    }
}
