package dev.treen.drawing;

import dev.treen.quantity.Length;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which levels of a part follow from its others and a slope: nobody marks those out. Of the four figures of the two ends of
 * a slanted edge one always follows. Kept is the end that lies on more faces of the block that the part is cut from, where
 * marking begins; of the other end's figures goes the one that fewer edges lie on.
 */
final class Derived {
    private final Laid part;
    private final Map<Level, Integer> edgesOn = new HashMap<>();
    private final Set<Level> dropped = new HashSet<>();
    private final Map<Level, Set<Vec3>> ends = new HashMap<>();

    private Derived(Laid part) {
        this.part = part;
    }

    static Set<Level> levels(Laid part) {
        return new Derived(part).find();
    }

    private Set<Level> find() {
        List<SurfaceEdge> slanted = new ArrayList<>();
        for (SurfaceEdge edge : part.edges()) {
            if (edge.isSmooth()) {
                continue;
            }
            List<Measured> running = running(edge);
            if (running.size() == 2) {
                slanted.add(edge);
            }
            for (Measured measured : Measured.values()) {
                if (!running.contains(measured)) {
                    edgesOn.merge(level(measured, edge.from()), 1, Integer::sum);
                }
            }
        }
        slanted.forEach(edge -> drop(edge, running(edge)));
        for (SurfaceEdge edge : part.edges()) {
            keepOthers(edge);
        }
        return dropped;
    }

    /** A level on which an edge lies that has nothing to do with the slope is marked out all the same. */
    private void keepOthers(SurfaceEdge edge) {
        List<Measured> running = running(edge);
        for (Measured measured : Measured.values()) {
            Level level = level(measured, edge.from());
            if (!running.contains(measured) && dropped.contains(level)) {
                Set<Vec3> known = ends.getOrDefault(level, Set.of());
                boolean rim = onSlope(edge, measured) && !known.isEmpty();
                if (!rim && !known.contains(edge.from()) && !known.contains(edge.to())) {
                    dropped.remove(level);
                }
            }
        }
    }

    /** Whether an edge is the rim of a face that leans away from the level it lies on: of a mitre between two grooves, say. */
    private boolean onSlope(SurfaceEdge edge, Measured measured) {
        return edge.rims().stream().anyMatch(rim -> part.leans(rim.plane(), measured));
    }

    private void drop(SurfaceEdge edge, List<Measured> running) {
        int from = extremes(edge.from(), running);
        int to = extremes(edge.to(), running);
        Vec3 follows = from >= to ? edge.to() : edge.from();
        Level one = level(running.getFirst(), follows);
        Level other = level(running.getLast(), follows);
        Level goes = extreme(one) != extreme(other)
                ? (extreme(one) ? other : one)
                : edgesOn.getOrDefault(one, 0) <= edgesOn.getOrDefault(other, 0) ? one : other;
        if (!extreme(goes)) {
            dropped.add(goes);
            ends.computeIfAbsent(goes, l -> new HashSet<>()).add(follows);
        }
    }

    private int extremes(Vec3 point, List<Measured> running) {
        return (int) running.stream().filter(m -> extreme(level(m, point))).count();
    }

    private boolean extreme(Level level) {
        return level.at().isZero() || level.at().equals(part.all(level.along()));
    }

    private Level level(Measured measured, Vec3 point) {
        return new Level(measured, part.measure(measured, point));
    }

    private List<Measured> running(SurfaceEdge edge) {
        List<Measured> running = new ArrayList<>(3);
        for (Measured measured : Measured.values()) {
            Length from = part.measure(measured, edge.from());
            if (!from.equals(part.measure(measured, edge.to()))) {
                running.add(measured);
            }
        }
        return running;
    }
}
