package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the parts of a project lie, and which joints each has. */
final class Placement {
    private final Map<String, Meeting.Placed> placed = new LinkedHashMap<>();
    private final Map<String, List<MadeJoint>> joints = new HashMap<>();

    private Placement(Joined joined) {
        for (MadeJoint made : joined.joints()) {
            for (Meeting.Placed part : List.of(made.meeting().left(), made.meeting().right())) {
                placed.putIfAbsent(part.part().name(), part);
                joints.computeIfAbsent(part.part().name(), name -> new ArrayList<>()).add(made);
            }
        }
    }

    static Placement of(Joined joined) {
        return new Placement(joined);
    }

    /** The parts that have joints, in the order of these. */
    List<Meeting.Placed> parts() {
        return List.copyOf(placed.values());
    }

    List<MadeJoint> joints(String part) {
        return joints.getOrDefault(part, List.of());
    }

    /** The other part of a joint. */
    static Meeting.Placed other(MadeJoint made, String part) {
        Meeting meeting = made.meeting();
        return meeting.left().part().name().equals(part) ? meeting.right() : meeting.left();
    }

    /** Which axis a measure of a part lies along. */
    static Axis axis(Meeting.Placed part, int measure) {
        for (Axis axis : Axis.values()) {
            if (part.measure(axis) == measure) {
                return axis;
            }
        }
        throw new IllegalStateException("a part has three measures");
    }

    /** The box round all parts together. */
    Optional<Box> bounds() {
        return placed.values().stream().map(Meeting.Placed::box).reduce(Box::join);
    }

    /** How far a box reaches along an axis, in mm. */
    static double extentMm(Box box, Axis axis) {
        return box.max().get(axis).doubleValue() - box.min().get(axis).doubleValue();
    }
}
