package dev.treen.solid;

import java.util.List;
import java.util.Set;

/**
 * Whether placed parts can be brought together by straight moves, and in which order.
 *
 * <p>Found by taking the assembly apart: parts or groups that can leave in a straight line are removed until single parts
 * are left, and the moves are then told backwards. A move comes from far away, so an order that needs a short move and
 * then a turn to another direction is not found.
 */
public sealed interface AssemblyOrder {

    /**
     * One move towards the finished assembly.
     *
     * @param parts the parts that move, already together
     * @param to the arrow they move along until they are in place
     * @param onto the parts that they join, already together
     */
    record Move(Set<String> parts, Vec3 to, Set<String> onto) {
        /** Takes its own copies. */
        public Move {
            parts = Sets.ordered(parts);
            onto = Sets.ordered(onto);
        }
    }

    /**
     * All parts go together.
     *
     * @param moves the moves in order; empty for fewer than two parts
     */
    record Possible(List<Move> moves) implements AssemblyOrder {
        /** Takes its own copy. */
        public Possible {
            moves = List.copyOf(moves);
        }
    }

    /**
     * Some parts hold each other, whichever of the given directions is tried.
     *
     * @param groups the groups of parts of which none, and no part of them, can leave the rest of its group
     * @param moves the moves that bring these groups and the other parts together, each group taken as one
     */
    record Blocked(List<Set<String>> groups, List<Move> moves) implements AssemblyOrder {
        /** Takes its own copies. */
        public Blocked {
            groups = groups.stream().map(Sets::ordered).toList();
            moves = List.copyOf(moves);
        }
    }

    /**
     * The search reached its bound and says nothing about the assembly.
     *
     * @param questions how many pairs of parts were looked at
     */
    record Unknown(int questions) implements AssemblyOrder {}

    /** The bound used by {@link #of(List)}: enough for some hundreds of parts. */
    int USUAL_BOUND = 500_000;

    /** The order for moves along the axes, tried from above first, within the usual bound. */
    static AssemblyOrder of(List<Placed> parts) {
        List<Vec3> ways = List.of(Side.BOTTOM.unit(), Side.BACK.unit(), Side.LEFT.unit(), Side.RIGHT.unit(),
                Side.FRONT.unit(), Side.TOP.unit());
        return of(parts, ways, USUAL_BOUND);
    }

    /**
     * The order for moves along the given arrows.
     *
     * @param parts the parts, by names of their own, where they stand when finished
     * @param ways the arrows a part may move along into its place, the preferred first
     * @param bound how many pairs of parts may be looked at
     */
    static AssemblyOrder of(List<Placed> parts, List<Vec3> ways, int bound) {
        return new Disassembly(parts, ways, bound).order();
    }
}
