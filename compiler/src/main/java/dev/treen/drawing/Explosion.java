package dev.treen.drawing;

import dev.treen.quantity.Exact;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Motion;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far each part is drawn from its place, so that every joint stands open: the moves by which the parts go together, told
 * backwards, each until what moves is clear of what lies in its way. Where a part can leave in several ways, that is taken
 * which keeps the picture small and open.
 */
final class Explosion {
    private static final BigFraction GAP = BigFraction.of(1, 8);

    /** So many pairs of parts are asked whether one is in the way of the other. */
    private static final int MOST_QUESTIONS = 4_000;

    private final Map<String, Box> boxes = new LinkedHashMap<>();
    private final Map<String, Vec3> shifts = new LinkedHashMap<>();
    private final BigFraction gap;

    private Explosion(List<Placed> parts) {
        Box whole = parts.stream().map(p -> p.solid().bounds().orElseThrow()).reduce(Box::join).orElseThrow();
        BigFraction most = BigFraction.ZERO;
        for (Axis axis : Axis.values()) {
            most = Exact.compare(whole.extent(axis), most) > 0 ? whole.extent(axis) : most;
        }
        gap = most.multiply(GAP);
        parts.forEach(part -> {
            boxes.put(part.name(), part.solid().bounds().orElseThrow());
            shifts.put(part.name(), Vec3.ZERO);
        });
    }

    /**
     * The parts out of their joints.
     *
     * @param shifts for each part the way from its place
     * @param ways the ways along which the parts go together: each from where a part is drawn to where it belongs on those
     *     that it joins, as they are drawn
     */
    record Open(Map<String, Vec3> shifts, List<Back> ways) {}

    /** A part and the way back into its joint. */
    record Back(String part, Vec3 by) {}

    /** The parts out of their joints; {@code parts} must not be empty, nor any of them. */
    static Open of(List<Placed> parts) {
        Explosion explosion = new Explosion(parts);
        return switch (AssemblyOrder.of(parts)) {
            case AssemblyOrder.Possible(List<AssemblyOrder.Move> moves) -> explosion.open(parts, moves);
            case AssemblyOrder.Blocked(var groups, List<AssemblyOrder.Move> moves) -> {
                groups.forEach(explosion::outward);
                yield explosion.open(parts, moves);
            }
            case AssemblyOrder.Unknown unknown -> {
                explosion.outward(explosion.boxes.keySet());
                yield explosion.open(parts, List.of());
            }
        };
    }

    private Open open(List<Placed> parts, List<AssemblyOrder.Move> moves) {
        List<String> names = List.copyOf(boxes.keySet());
        Map<String, Integer> numbers = new HashMap<>();
        names.forEach(name -> numbers.put(name, numbers.size()));
        Map<String, Solid> solids = new HashMap<>();
        parts.forEach(part -> solids.put(part.name(), part.solid()));
        List<Unfolding.Move> open = new ArrayList<>(moves.size());
        int questions = 0;
        for (AssemblyOrder.Move move : moves) {
            questions += move.parts().size() * move.onto().size();
            open.add(new Unfolding.Move(numbers(move.parts(), numbers), numbers(move.onto(), numbers),
                    free(move, solids, questions < MOST_QUESTIONS)));
        }
        Box[] rooms = names.stream().map(this::box).toArray(Box[]::new);
        Vec3[] before = names.stream().map(name -> shifts.getOrDefault(name, Vec3.ZERO)).toArray(Vec3[]::new);
        List<Vec3> found = new Unfolding(rooms, before, open, (int) Math.ceil(gap.doubleValue())).find();
        List<Back> ways = new ArrayList<>(moves.size());
        for (int i = 0; i < moves.size(); i++) {
            AssemblyOrder.Move move = moves.get(i);
            Vec3 shift = found.get(i);
            move.parts().forEach(name -> shifts.merge(name, shift, Vec3::plus));
            ways.add(new Back(touching(move), shift.negate()));
        }
        return new Open(shifts, ways);
    }

    private static List<Integer> numbers(Collection<String> names, Map<String, Integer> numbers) {
        return names.stream().map(name -> Optional.ofNullable(numbers.get(name)).orElseThrow()).toList();
    }

    /** Where the parts of a move can leave: the way of the move itself, then, where there is time to look, all others. */
    private static List<Side> free(AssemblyOrder.Move move, Map<String, Solid> solids, boolean look) {
        Side sure = side(move.to().negate());
        List<Side> ways = new ArrayList<>(List.of(sure));
        if (look) {
            List<Solid> staying = move.onto().stream().map(name -> Optional.ofNullable(solids.get(name)).orElseThrow())
                    .toList();
            for (Side way : Side.values()) {
                boolean clear = way != sure && move.parts().stream()
                        .map(name -> Optional.ofNullable(solids.get(name)).orElseThrow())
                        .allMatch(solid -> Motion.free(solid, staying, way.unit()).isEmpty());
                if (clear) {
                    ways.add(way);
                }
            }
        }
        return ways;
    }

    /** The part of a move that lies against what it joins. */
    private String touching(AssemblyOrder.Move move) {
        return move.parts().stream()
                .filter(name -> move.onto().stream().anyMatch(other -> touch(box(name), box(other))))
                .findFirst()
                .orElse(move.parts().iterator().next());
    }

    private static boolean touch(Box one, Box other) {
        for (Axis axis : Axis.values()) {
            if (Exact.compare(one.min().get(axis), other.max().get(axis)) > 0
                    || Exact.compare(other.min().get(axis), one.max().get(axis)) > 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * The same with the first part alone drawn out of the others, which stay together.
     *
     * @param ways where it had best go: the shortest way of them; any other straight way is taken where none of these is free, and
     *     where none is free at all, all parts go as {@link #of} has them
     */
    static Map<String, Vec3> ofFirst(List<Placed> parts, List<Side> ways) {
        Explosion explosion = new Explosion(parts);
        Placed first = parts.getFirst();
        List<String> rest = parts.stream().skip(1).map(Placed::name).toList();
        List<Solid> obstacles = parts.stream().skip(1).map(Placed::solid).toList();
        Box own = explosion.around(List.of(first.name()));
        Box others = explosion.around(rest);
        List<Side> all = new ArrayList<>(ways);
        all.sort(Comparator.comparing(way -> need(way, own, others), Exact::compare));
        all.addAll(List.of(Side.TOP, Side.FRONT, Side.RIGHT, Side.LEFT, Side.BACK, Side.BOTTOM));
        for (Side way : all) {
            BigFraction far = need(way, own, others);
            if (Motion.canMove(first.solid(), obstacles, way, far)) {
                explosion.shifts.put(first.name(), way.unit().times(far.add(explosion.gap)));
                return explosion.shifts;
            }
        }
        return of(parts).shifts();
    }

    private Box around(Collection<String> names) {
        return names.stream().map(this::now).reduce(Box::join).orElseThrow();
    }

    private Box box(String name) {
        return Optional.ofNullable(boxes.get(name)).orElseThrow();
    }

    private Box now(String name) {
        return box(name).translate(shifts.getOrDefault(name, Vec3.ZERO));
    }

    /** How far a box goes until it is clear of another. */
    private static BigFraction need(Side way, Box moving, Box staying) {
        BigFraction need = way.sign() > 0
                ? staying.max().get(way.axis()).subtract(moving.min().get(way.axis()))
                : moving.max().get(way.axis()).subtract(staying.min().get(way.axis()));
        return need.signum() < 0 ? BigFraction.ZERO : need;
    }

    /** Away from the middle, for parts that hold each other. */
    private void outward(Collection<String> names) {
        Vec3 middle = around(names).centre();
        for (String name : names) {
            Vec3 out = box(name).centre().minus(middle);
            Side side = side(out);
            if (out.get(side.axis()).signum() != 0) {
                shifts.merge(name, side.unit().times(out.get(side.axis()).abs().add(gap)), Vec3::plus);
            }
        }
    }

    /** The axis along which an arrow points most. */
    private static Side side(Vec3 arrow) {
        Axis best = Axis.X;
        for (Axis axis : Axis.values()) {
            if (Exact.compare(arrow.get(axis).abs(), arrow.get(best).abs()) > 0) {
                best = axis;
            }
        }
        return Side.of(best, arrow.get(best).signum() < 0 ? -1 : 1);
    }
}
