package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Subassembly;
import dev.treen.joinery.Ties;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Neighbours;
import dev.treen.solid.Placed;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The parts of a project as bodies, each where it stands when all is put together: what the checks from solids look at. */
final class Standing {
    private final Map<String, FinishedPart> parts = new LinkedHashMap<>();
    private final List<Placed> placed = new ArrayList<>();
    private final Map<String, Solid> solids = new LinkedHashMap<>();
    private final Neighbours neighbours;

    private Standing(Joined joined, Optional<Standing> whole) {
        for (FinishedPart part : joined.parts()) {
            String name = part.part().name();
            part.solid().filter(solid -> !solid.isEmpty()).ifPresent(solid -> {
                parts.put(name, part);
                placed.add(new Placed(name, solid));
                solids.put(name, solid);
            });
        }
        neighbours = whole.map(all -> all.neighbours).orElseGet(() -> new Neighbours(placed));
    }

    /** The parts of {@code joined} that have a place and a body. */
    static Standing of(Joined joined) {
        return new Standing(joined, Optional.empty());
    }

    /** The same of a subassembly, which has all parts of {@code this} around it. */
    Standing of(Subassembly subassembly) {
        return new Standing(subassembly.joined(), Optional.of(this));
    }

    /** The parts of the whole project, in its order, whose extents share at least a point with {@code place}, or nearly. */
    List<Placed> near(Box place) {
        return neighbours.near(place);
    }

    /** All bodies that these parts can have to do with: their own and those near any of them. */
    List<Solid> within() {
        return placed.stream()
                .flatMap(part -> part(part.name()).bare().flatMap(Solid::bounds).stream())
                .reduce(Box::join)
                .map(place -> near(place).stream().map(Placed::solid).toList())
                .orElse(List.of());
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
        Ties ties = new Ties();
        joints.forEach(made -> ties.tie(made.joint().left().name(), made.joint().right().name()));
        Map<String, List<Placed>> groups = new LinkedHashMap<>();
        for (Placed part : placed) {
            groups.computeIfAbsent(ties.leader(part.name()), l -> new ArrayList<>()).add(part);
        }
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }
}
