package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The parts that lie level and are held at both ends and nowhere else: shelves, and whatever bends like one. */
final class Spans {
    private static final int UP = 2;

    private Spans() {
    }

    /**
     * A part that bends under what lies on it.
     *
     * @param part the part
     * @param spanMm between what holds it
     * @param ends the joints at its ends
     */
    record Span(FinishedPart part, double spanMm, List<MadeJoint> ends) {}

    static List<Span> of(Joined joined) {
        Map<String, List<MadeJoint>> joints = new HashMap<>();
        for (MadeJoint made : joined.joints()) {
            joints.computeIfAbsent(made.joint().left().name(), name -> new ArrayList<>()).add(made);
            joints.computeIfAbsent(made.joint().right().name(), name -> new ArrayList<>()).add(made);
        }
        List<Span> spans = new ArrayList<>();
        for (FinishedPart part : joined.parts()) {
            boolean level = part.part().placing().filter(p -> p.thickness().axis() == UP).isPresent();
            if (level) {
                span(part, joints.getOrDefault(part.part().name(), List.of())).ifPresent(spans::add);
            }
        }
        return spans;
    }

    private static Optional<Span> span(FinishedPart part, List<MadeJoint> joints) {
        Set<Integer> held = new HashSet<>();
        List<MadeJoint> ends = new ArrayList<>();
        for (MadeJoint made : joints) {
            boolean left = made.joint().left().name().equals(part.part().name());
            Optional<Side> side = side(made.meeting(), left);
            Meeting.Placed placed = left ? made.meeting().left() : made.meeting().right();
            if (side.isPresent() && placed.measure(side.get().axis()) == 0) {
                held.add(side.get().sign());
                ends.add(made);
            } else {
                // Held along an edge or from below it does not hang between its ends alone.
                return Optional.empty();
            }
        }
        return held.size() == 2
                ? Optional.of(new Span(part, part.part().length().value().toDoubleMm(), ends))
                : Optional.empty();
    }

    /** The side by which the part meets its neighbour. */
    private static Optional<Side> side(Meeting meeting, boolean left) {
        return switch (meeting.contact()) {
            case BoxContact.FaceToFace(Side side, var min, var max) ->
                Optional.of(left ? side : side.opposite());
            case BoxContact.Edge edge -> left ? meeting.endOfLeft() : meeting.endOfRight();
            case BoxContact.Corner corner -> Optional.empty();
            case BoxContact.Apart apart -> Optional.empty();
            case BoxContact.Overlapping shared -> Optional.empty();
        };
    }
}
