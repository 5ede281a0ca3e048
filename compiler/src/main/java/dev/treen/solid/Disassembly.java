package dev.treen.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes an assembly apart, one group at a time.
 *
 * <p>For each direction "i cannot leave while j stays" is a relation between parts. A group can leave together in that
 * direction exactly when it holds with every part all those that keep it from leaving; the smallest such group around
 * each part is its closure under the relation. Taking parts away never makes another part harder to remove, so no choice
 * has to be undone, and if no part has a closure smaller than the whole, none can leave.
 */
final class Disassembly {
    private final List<Placed> parts;
    private final List<Vec3> ways;
    private final int bound;
    private final List<BitSet[]> blockers = new ArrayList<>();
    private final List<Vec3> known = new ArrayList<>();
    private int questions;

    /** A group that leaves and the arrow it leaves along. */
    private record Exit(BitSet group, Vec3 way) {}

    Disassembly(List<Placed> parts, List<Vec3> ways, int bound) {
        this.parts = List.copyOf(parts);
        // A part leaves the opposite way to the one it comes in by.
        this.ways = ways.stream().map(Vec3::negate).toList();
        this.bound = bound;
    }

    AssemblyOrder order() {
        if (!relate()) {
            return new AssemblyOrder.Unknown(questions);
        }
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
        return Sets.ordered(group.stream().mapToObj(i -> parts.get(i).name()).toList());
    }

    /** The smallest group that can leave, the last parts and the first directions preferred; all of it if none can. */
    private Exit exit(BitSet group) {
        Exit best = new Exit(group, Vec3.ZERO);
        int least = group.cardinality();
        for (int part = group.length() - 1; part >= 0; part = part == 0 ? -1 : group.previousSetBit(part - 1)) {
            for (int w = 0; w < ways.size() && least > 1; w++) {
                BitSet closure = closure(part, group, blockers.get(w), least);
                if (closure.cardinality() < least) {
                    least = closure.cardinality();
                    best = new Exit(closure, ways.get(w));
                }
            }
        }
        return best;
    }

    /** The part with all that must leave with it; may stop early once it is no smaller than {@code enough}. */
    private static BitSet closure(int part, BitSet group, BitSet[] blocked, int enough) {
        BitSet closure = new BitSet();
        closure.set(part);
        Deque<Integer> open = new ArrayDeque<>(List.of(part));
        int size = 1;
        while (!open.isEmpty() && size < enough) {
            BitSet next = (BitSet) blocked[open.pop()].clone();
            next.and(group);
            next.andNot(closure);
            closure.or(next);
            size += next.cardinality();
            next.stream().forEach(open::push);
        }
        return closure;
    }

    /** Works out who blocks whom in every direction; false when the bound is reached. */
    private boolean relate() {
        Map<Vec3, BitSet[]> byWay = new HashMap<>();
        for (Vec3 way : ways) {
            Vec3 line = Line3.through(Vec3.ZERO, way).way();
            if (!byWay.containsKey(line)) {
                byWay.put(line, fresh());
                byWay.put(line.negate(), fresh());
                known.add(line);
            }
        }
        for (Vec3 line : known) {
            BitSet[] forwards = byWay.getOrDefault(line, fresh());
            BitSet[] backwards = byWay.getOrDefault(line.negate(), fresh());
            if (!relate(line, forwards, backwards)) {
                return false;
            }
        }
        ways.forEach(way -> blockers.add(byWay.getOrDefault(way.primitive(), fresh())));
        return true;
    }

    private boolean relate(Vec3 line, BitSet[] forwards, BitSet[] backwards) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                if (++questions > bound) {
                    return false;
                }
                for (Intervals.Stretch s : Motion.meetings(parts.get(i).solid(), parts.get(j).solid(), line)) {
                    // Moving i by t is moving j by -t, so one stretch answers for both parts and both ways.
                    if (s.high().signum() > 0) {
                        forwards[i].set(j);
                        backwards[j].set(i);
                    }
                    if (s.low().signum() < 0) {
                        backwards[i].set(j);
                        forwards[j].set(i);
                    }
                }
            }
        }
        return true;
    }

    private BitSet[] fresh() {
        BitSet[] sets = new BitSet[parts.size()];
        for (int i = 0; i < sets.length; i++) {
            sets[i] = new BitSet();
        }
        return sets;
    }
}
