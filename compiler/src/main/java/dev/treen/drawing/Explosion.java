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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far each part is drawn from its place, so that every joint stands open: the moves by which the parts go together, told
 * backwards, each until what moves is clear of what stays.
 */
final class Explosion {
    private static final BigFraction GAP = BigFraction.of(1, 8);

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

    /** For each part the way from its place; {@code parts} must not be empty, nor any of them. */
    static Map<String, Vec3> of(List<Placed> parts) {
        Explosion explosion = new Explosion(parts);
        switch (AssemblyOrder.of(parts)) {
            case AssemblyOrder.Possible(List<AssemblyOrder.Move> moves) -> moves.forEach(explosion::open);
            case AssemblyOrder.Blocked(var groups, List<AssemblyOrder.Move> moves) -> {
                groups.forEach(explosion::outward);
                moves.forEach(explosion::open);
            }
            case AssemblyOrder.Unknown unknown -> explosion.outward(explosion.boxes.keySet());
        }
        return explosion.shifts;
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
        return of(parts);
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

    /** Takes what a move brought together apart again, back along its way. */
    private void open(AssemblyOrder.Move move) {
        Side back = side(move.to().negate());
        Box moving = around(move.parts());
        Box staying = around(move.onto());
        BigFraction need = need(back, moving, staying);
        Vec3 way = back.unit().times(need.add(gap));
        move.parts().forEach(name -> shifts.merge(name, way, Vec3::plus));
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
