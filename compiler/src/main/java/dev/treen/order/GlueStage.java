package dev.treen.order;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Joint;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Axis;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is glued in one go.
 *
 * @param parts what gets glue
 * @param joints its joints
 * @param moves how they come together with what is closed in, where the solids show it
 * @param dry a part that is put on without glue, to hold the rest; empty where there is none
 */
record GlueStage(Set<String> parts, List<MadeJoint> joints, List<AssemblyOrder.Move> moves, Optional<String> dry) {
    /** Yellow glue stays open five to ten minutes, and a joint takes about one (rules of the trade O-03). */
    static final int JOINTS_IN_TIME = 8;

    private static final int MOST_SOLIDS = 40;
    private static final int QUESTIONS = 2_000;

    /** Keeps its own copies. */
    GlueStage {
        joints = List.copyOf(joints);
        moves = List.copyOf(moves);
    }

    /**
     * The stages of {@code assembly}, each after those before it that share a part: groups that have to move as one are
     * glued first, with others joined in the same direction (Noyes, Handwork in Wood, ch. V and VIII: ends first, then the
     * whole); what has more joints than glue gives time for is glued to all but its last part, then to that.
     */
    static List<GlueStage> of(Assembly assembly, Joined joined) {
        List<AssemblyOrder.Move> moves = moves(assembly, joined);
        List<GlueStage> stages = new ArrayList<>();
        List<MadeJoint> left = new ArrayList<>(assembly.joints());
        for (Set<String> group : groups(assembly, moves)) {
            List<MadeJoint> own = left.stream().filter(made -> within(made, group)).toList();
            if (!own.isEmpty()) {
                left.removeAll(own);
                stages.add(new GlueStage(ends(own), own, inside(moves, group, stages), Optional.empty()));
            }
        }
        stages.addAll(last(assembly, left, moves.stream()
                .filter(move -> stages.stream().noneMatch(stage -> stage.moves().contains(move)))
                .toList()));
        return stages;
    }

    private static List<GlueStage> last(Assembly assembly, List<MadeJoint> left, List<AssemblyOrder.Move> moves) {
        if (left.size() > JOINTS_IN_TIME && !moves.isEmpty() && moves.getLast().parts().size() == 1) {
            String end = moves.getLast().parts().iterator().next();
            List<MadeJoint> without = left.stream().filter(made -> !touches(made, end)).toList();
            List<MadeJoint> with = left.stream().filter(made -> touches(made, end)).toList();
            if (!without.isEmpty() && !with.isEmpty()) {
                return List.of(
                        new GlueStage(ends(without), without, moves, Optional.of(end)),
                        new GlueStage(ends(with), with, List.of(), Optional.empty()));
            }
        }
        return left.isEmpty()
                ? List.of()
                : List.of(new GlueStage(new LinkedHashSet<>(assembly.parts()), left, moves, Optional.empty()));
    }

    private static List<AssemblyOrder.Move> moves(Assembly assembly, Joined joined) {
        List<Placed> solids = assembly.all().stream()
                .flatMap(name -> joined.part(name).stream())
                .flatMap(part -> placed(part).stream())
                .toList();
        if (solids.size() < assembly.all().size() || solids.size() > MOST_SOLIDS) {
            return List.of();
        }
        // Along the joints first: a shelf could slide into its housing from behind, but its side is pushed on.
        List<Vec3> along = new ArrayList<>();
        for (Axis axis : axes(assembly)) {
            along.add(Side.of(axis, -1).unit());
            along.add(Side.of(axis, 1).unit());
        }
        List<Vec3> all = List.of(Side.BOTTOM.unit(), Side.BACK.unit(), Side.LEFT.unit(), Side.RIGHT.unit(),
                Side.FRONT.unit(), Side.TOP.unit());
        for (List<Vec3> ways : List.of(along, all)) {
            if (!ways.isEmpty()
                    && AssemblyOrder.of(solids, ways, QUESTIONS) instanceof AssemblyOrder.Possible(var moves)) {
                return moves;
            }
        }
        return List.of();
    }

    /** The axes along which parts enter each other; none where some do not. */
    private static Set<Axis> axes(Assembly assembly) {
        Set<Axis> axes = EnumSet.noneOf(Axis.class);
        for (MadeJoint made : assembly.joints()) {
            if (made.meeting().face().isEmpty()) {
                return Set.of();
            }
            axes.add(made.meeting().face().get().axis());
        }
        return axes;
    }

    private static Optional<Placed> placed(FinishedPart part) {
        return part.solid().filter(solid -> !solid.isEmpty()).map(solid -> new Placed(Workshop.name(part), solid));
    }

    /** Groups to be glued before the whole. */
    private static List<Set<String>> groups(Assembly assembly, List<AssemblyOrder.Move> moves) {
        List<Set<String>> groups = new ArrayList<>();
        Set<Axis> along = new HashSet<>();
        for (AssemblyOrder.Move move : moves) {
            List<MadeJoint> own = assembly.joints().stream().filter(made -> within(made, move.parts())).toList();
            if (!own.isEmpty() && own.size() < assembly.joints().size()) {
                groups.add(move.parts());
                own.forEach(made -> made.meeting().face().ifPresent(face -> along.add(face.axis())));
            }
        }
        if (moves.isEmpty()) {
            shorter(assembly).ifPresent(along::add);
        }
        if (along.size() == 1) {
            List<MadeJoint> same = assembly.joints().stream()
                    .filter(made -> made.meeting().face().map(face -> along.contains(face.axis())).orElse(false))
                    .toList();
            connected(same).stream()
                    .filter(group -> groups.stream().noneMatch(known -> known.stream().anyMatch(group::contains)))
                    .filter(group -> group.size() < assembly.parts().size())
                    .forEach(groups::add);
        }
        return groups;
    }

    /**
     * Where the solids show no order: of two directions in which parts enter each other, that of the shorter parts, if it
     * leaves several groups. The ends of a table go together first (Noyes, ch. VIII).
     */
    private static Optional<Axis> shorter(Assembly assembly) {
        Map<Axis, Double> lengths = new EnumMap<>(Axis.class);
        Map<Axis, List<MadeJoint>> along = new EnumMap<>(Axis.class);
        for (MadeJoint made : assembly.joints()) {
            if (!made.joint().into() || made.meeting().face().isEmpty()) {
                return Optional.empty();
            }
            Axis axis = made.meeting().face().get().axis();
            lengths.merge(axis, made.joint().left().length().value().toDoubleMm(), Math::max);
            along.computeIfAbsent(axis, a -> new ArrayList<>()).add(made);
        }
        return lengths.size() != 2
                ? Optional.empty()
                : lengths.entrySet().stream()
                        .min(Map.Entry.comparingByValue())
                        .map(Map.Entry::getKey)
                        .filter(axis -> connected(along.getOrDefault(axis, List.of())).size() > 1);
    }

    private static List<Set<String>> connected(List<MadeJoint> joints) {
        List<Set<String>> groups = new ArrayList<>();
        for (MadeJoint made : joints) {
            Set<String> joined = new LinkedHashSet<>(ends(List.of(made)));
            for (Set<String> group : List.copyOf(groups)) {
                if (group.stream().anyMatch(joined::contains)) {
                    joined.addAll(group);
                    groups.remove(group);
                }
            }
            groups.add(joined);
        }
        return groups;
    }

    /** The moves of {@code group} that no earlier stage has made. */
    private static List<AssemblyOrder.Move> inside(
            List<AssemblyOrder.Move> moves, Set<String> group, List<GlueStage> earlier) {
        return moves.stream()
                .filter(move -> group.containsAll(move.parts()) && group.containsAll(move.onto()))
                .filter(move -> earlier.stream().noneMatch(stage -> stage.moves().contains(move)))
                .toList();
    }

    private static Set<String> ends(Collection<MadeJoint> joints) {
        Set<String> parts = new LinkedHashSet<>();
        for (MadeJoint made : joints) {
            parts.add(made.joint().left().name());
            parts.add(made.joint().right().name());
        }
        return parts;
    }

    private static boolean within(MadeJoint made, Set<String> group) {
        Joint joint = made.joint();
        return group.contains(joint.left().name()) && group.contains(joint.right().name());
    }

    private static boolean touches(MadeJoint made, String part) {
        return made.joint().left().name().equals(part) || made.joint().right().name().equals(part);
    }
}
