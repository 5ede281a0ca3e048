package dev.treen.joinery;

import dev.treen.model.Placing;
import dev.treen.solid.Axis;
import dev.treen.solid.Glue;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The faces on which the two finished parts of a joint touch, in mm², by the grain that meets there. Areas square to an
 * axis are exact before they become doubles.
 *
 * @param made the joint
 * @param glued whether its work says that it is glued
 * @param longGrain long grain on long grain, which holds
 * @param endGrain end grain on end grain, which hardly does
 * @param mixed all other: long grain on end grain, or grain that leans
 */
public record GlueFaces(MadeJoint made, boolean glued, double longGrain, double endGrain, double mixed) {

    /** The faces of all joints of {@code joined} whose parts have a place. */
    public static List<GlueFaces> of(Joined joined) {
        Set<Integer> glued = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (made.works().stream().anyMatch(work -> work.stage() == Work.Stage.GLUE)) {
                glued.add(made.joint().statement());
            }
        }
        Map<String, Solid> solids = new HashMap<>();
        for (FinishedPart part : joined.parts()) {
            part.solid().filter(solid -> !solid.isEmpty())
                    .ifPresent(solid -> solids.put(part.part().name(), solid));
        }
        List<GlueFaces> all = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            boolean holds = made.holdsFast() && glued.contains(made.joint().statement());
            of(made, holds, solids).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<GlueFaces> of(MadeJoint made, boolean glued, Map<String, Solid> solids) {
        Optional<Solid> left = Optional.ofNullable(solids.get(made.joint().left().name()));
        Optional<Solid> right = Optional.ofNullable(solids.get(made.joint().right().name()));
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Glue glue = Glue.between(left.get(), along(made.meeting().left().placing()), right.get(),
                along(made.meeting().right().placing()));
        double mixed = glue.faces().stream()
                .filter(face -> face.first() != face.second() || face.first() == Glue.Grain.SLANT)
                .mapToDouble(Glue.Joint::area)
                .sum();
        return Optional.of(new GlueFaces(made, glued, glue.longToLong(),
                glue.area(Glue.Grain.END, Glue.Grain.END), mixed));
    }

    private static Vec3 along(Placing placing) {
        Axis axis = Axes.of(placing.length().axis());
        return Side.of(axis, 1).unit();
    }

    /** All of them together. */
    public double total() {
        return longGrain + endGrain + mixed;
    }
}
