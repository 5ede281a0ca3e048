package dev.treen.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Takes an assembly apart, one group at a time.
 *
 * <p>For each direction "i cannot leave while j stays" is a relation between parts. A group can leave together in that
 * direction exactly when it holds with every part all those that keep it from leaving; the smallest such group around
 * each part is its closure under the relation. Taking parts away never makes another part harder to remove, so no choice
 * has to be undone, and if no part has a closure smaller than the whole, none can leave.
 *
 * <p>Two things keep this near linear in furniture. A closure is followed only until it is no smaller than one that is known
 * already, question by question. And it is remembered as far as it was followed: while none of its parts has left, those
 * parts still cannot stay behind.
 */
final class Disassembly {
    private final List<Placed> parts;
    private final int bound;
    private final List<Heading> headings = new ArrayList<>();
    private final NameSet.Names names;
    private int questions;

    /** A group that leaves and the arrow it leaves along. */
    private record Exit(BitSet group, Vec3 way) {}

    Disassembly(List<Placed> parts, List<Vec3> ways, int bound) {
        this.parts = List.copyOf(parts);
        this.bound = bound;
        names = NameSet.Names.of(this.parts.stream().map(Placed::name).toList());
        Map<Vec3, Relation> byLine = new HashMap<>();
        for (Vec3 way : ways) {
            // A part leaves the opposite way to the one it comes in by.
            Vec3 out = way.negate();
            Vec3 line = Line3.through(Vec3.ZERO, out).way();
            Relation relation = byLine.computeIfAbsent(line, Relation::new);
            headings.add(new Heading(out, relation, out.primitive().equals(line)));
        }
    }

    AssemblyOrder order() {
        List<AssemblyOrder.Move> backwards = new ArrayList<>();
        List<Set<String>> stuck = new ArrayList<>();
        Deque<BitSet> left = new ArrayDeque<>();
        BitSet all = new BitSet();
        all.set(0, parts.size());
        left.push(all);
        while (!left.isEmpty()) {
            BitSet group = left.pop();
            if (group.cardinality() < 2) {
                continue;
            }
            Exit exit = exit(group);
            if (exhausted()) {
                return new AssemblyOrder.Unknown(bound);
            }
            if (exit.group().equals(group)) {
                stuck.add(names(group));
                continue;
            }
            BitSet rest = (BitSet) group.clone();
            rest.andNot(exit.group());
            backwards.add(new AssemblyOrder.Move(names(exit.group()), exit.way().negate(), names(rest)));
            left.push(exit.group());
            left.push(rest);
        }
        List<AssemblyOrder.Move> moves = backwards.reversed();
        return stuck.isEmpty() ? new AssemblyOrder.Possible(moves) : new AssemblyOrder.Blocked(stuck, moves);
    }

    private Set<String> names(BitSet group) {
        return names.at(group);
    }

    /** The smallest group that can leave, the last parts and the first directions preferred; all of it if none can. */
    private Exit exit(BitSet group) {
        Exit best = new Exit(group, Vec3.ZERO);
        int least = group.cardinality();
        for (int part = group.length() - 1; part >= 0
                && least > 1; part = part == 0 ? -1 : group.previousSetBit(part - 1)) {
            for (int w = 0; w < headings.size() && least > 1; w++) {
                Closure closure = headings.get(w).closure(part, group);
                if (closure.grow(group, least) && closure.size() < least) {
                    least = closure.size();
                    best = new Exit(closure.parts(), headings.get(w).way());
                }
                if (exhausted()) {
                    return best;
                }
            }
        }
        return best;
    }

    /** Parts of a group that must leave together, as far as they have been followed from one of them. */
    private final class Closure {
        private final Heading heading;
        private final BitSet parts = new BitSet();
        private final Deque<Integer> open = new ArrayDeque<>();
        private int size = 1;

        Closure(int part, Heading heading) {
            this.heading = heading;
            parts.set(part);
            open.push(part);
        }

        BitSet parts() {
            return parts;
        }

        int size() {
            return size;
        }

        boolean within(BitSet group) {
            BitSet beyond = (BitSet) parts.clone();
            beyond.andNot(group);
            return beyond.isEmpty();
        }

        /** Follows them on within a group; whether these are all, found without reaching {@code enough} parts. */
        boolean grow(BitSet group, int enough) {
            while (!open.isEmpty()) {
                int part = open.peek();
                BitSet others = heading.relation().near(part).map(near -> (BitSet) near.clone())
                        .orElseGet(() -> (BitSet) group.clone());
                others.and(group);
                others.andNot(parts);
                for (int other = others.nextSetBit(0); other >= 0; other = others.nextSetBit(other + 1)) {
                    if (size >= enough || exhausted()) {
                        return false;
                    }
                    if (heading.blocked(part, other)) {
                        parts.set(other);
                        open.addLast(other);
                        size++;
                    }
                }
                open.pop();
            }
            return true;
        }
    }

    private boolean exhausted() {
        return questions > bound;
    }

    /** An arrow, and the relation along its line. */
    private final class Heading {
        private final Vec3 way;
        private final Relation relation;
        private final boolean forwards;
        private final @Nullable Closure[] closures = new Closure[parts.size()];

        Heading(Vec3 way, Relation relation, boolean forwards) {
            this.way = way;
            this.relation = relation;
            this.forwards = forwards;
        }

        Vec3 way() {
            return way;
        }

        Relation relation() {
            return relation;
        }

        /** Whether one part cannot leave while another stays. */
        boolean blocked(int part, int other) {
            return relation.blocked(part, other, forwards);
        }

        /** What is known of the parts that must leave with one, begun anew where some of them have left the group. */
        Closure closure(int part, BitSet group) {
            Closure known = closures[part];
            if (known == null || !known.within(group)) {
                known = new Closure(part, this);
                closures[part] = known;
            }
            return known;
        }
    }

    /**
     * Who keeps whom from moving along one line, as far as it has been asked. Along an axis only parts whose extents across
     * it meet can be in each other's way; a tree finds these, and nobody asks about the others.
     */
    private final class Relation {
        private final Lane lane;
        private final Optional<BoxTree> across;
        private final @Nullable BitSet[] near = new BitSet[parts.size()];
        private final BitSet[] forwards = fresh();
        private final BitSet[] backwards = fresh();
        private final BitSet[] asked = fresh();

        Relation(Vec3 line) {
            lane = new Lane(line);
            across = axis(line).map(along -> new BoxTree(
                    parts.stream().map(part -> part.solid().span().endless(along)).toList()));
        }

        private static Optional<Axis> axis(Vec3 line) {
            return Plane.through(Vec3.ZERO, line).side().map(Side::axis);
        }

        /** The parts that may be in the way of one, or it in theirs; nothing where the line is no axis. */
        Optional<BitSet> near(int part) {
            return across.map(tree -> {
                BitSet known = near[part];
                if (known == null) {
                    known = new BitSet();
                    tree.near(tree.span(part), known::set);
                    near[part] = known;
                }
                return known;
            });
        }

        boolean blocked(int part, int other, boolean forward) {
            if (!asked[part].get(other)) {
                ask(part, other);
            }
            return (forward ? forwards : backwards)[part].get(other);
        }

        private void ask(int i, int j) {
            questions++;
            asked[i].set(j);
            asked[j].set(i);
            // Moving i by t is moving j by -t, so one question answers for both parts.
            if (lane.blocked(parts.get(i).solid(), parts.get(j).solid(), true)) {
                forwards[i].set(j);
                backwards[j].set(i);
            }
            if (lane.blocked(parts.get(i).solid(), parts.get(j).solid(), false)) {
                backwards[i].set(j);
                forwards[j].set(i);
            }
        }

        private BitSet[] fresh() {
            BitSet[] sets = new BitSet[parts.size()];
            for (int i = 0; i < sets.length; i++) {
                sets[i] = new BitSet();
            }
            return sets;
        }
    }
}
