package dev.treen.drawing;

import dev.treen.quantity.Exact;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.Collection;
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
        BigFraction need = back.sign() > 0
                ? staying.max().get(back.axis()).subtract(moving.min().get(back.axis()))
                : moving.max().get(back.axis()).subtract(staying.min().get(back.axis()));
        Vec3 way = back.unit().times(need.add(gap));
        move.parts().forEach(name -> shifts.merge(name, way, Vec3::plus));
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
