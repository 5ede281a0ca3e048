package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Round;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The holes of screws and nails as bodies. A round hole is the prism of {@link Round}: its corners lie on the circle, so
 * its volume is that of a 24-gon, 1.1 % less than the circle's; slots are two of them with a box between. The countersink
 * of a head is a cone of as many sides; a slot has none, for in it a flat head on a washer slides and a sunk one binds. Each hole runs
 * on over the whole length of its screw: it takes from each part what that has there.
 */
final class Bores {
    private Bores() {
    }

    /** Through the held part: the shank's hole or its slot, and above it the room for a head that is let in. */
    static List<Convex> held(Driven driven, Fastener fastener, Length along, Optional<Slots> slot) {
        List<Convex> bodies = new ArrayList<>();
        if (fastener.hole().signum() <= 0) {
            return bodies;
        }
        Length sink = fastener.sink().value();
        add(bodies, driven, along, slot, sink, fastener.reach().value(), fastener.hole());
        if (sink.signum() > 0) {
            add(bodies, driven, along, slot, Length.ZERO, sink, fastener.head());
        }
        if (fastener.cone().signum() > 0 && slot.isEmpty()) {
            bodies.add(Round.cone(
                    driven.place(along, sink),
                    driven.into(),
                    fastener.cone().mm(),
                    fastener.head().dividedBy(2).mm(),
                    fastener.hole().dividedBy(2).mm(),
                    driven.meeting().joint().name()));
        }
        return bodies;
    }

    /** Into the other part. */
    static List<Convex> entered(Driven driven, Fastener fastener, Length along) {
        List<Convex> bodies = new ArrayList<>();
        if (fastener.bored()) {
            add(bodies, driven, along, Optional.empty(), fastener.sink().value(), fastener.reach().value(),
                    fastener.bore().value());
        }
        return bodies;
    }

    /** The screw or nail itself in the other part, bored or not. */
    static Convex body(Driven driven, Fastener fastener, Length along) {
        Length in = fastener.point().minus(driven.through());
        return rod(driven, driven.place(along, driven.through()), in, fastener.thick().value());
    }

    /** The screw or nail itself in the held part. */
    static Convex shank(Driven driven, Fastener fastener, Length along) {
        return rod(
                driven,
                driven.place(along, fastener.sink().value()),
                driven.through().minus(fastener.sink().value()),
                fastener.thick().value());
    }

    private static void add(
            List<Convex> bodies,
            Driven driven,
            Length along,
            Optional<Slots> slot,
            Length from,
            Length length,
            Length wide) {
        Vec3 start = driven.place(along, from);
        if (slot.isEmpty()) {
            bodies.add(rod(driven, start, length, wide));
            return;
        }
        Slots room = slot.get();
        Vec3 low = start.minus(Vec3.along(room.axis(), room.low()));
        Vec3 high = start.plus(Vec3.along(room.axis(), room.high()));
        bodies.add(rod(driven, low, length, wide));
        bodies.add(rod(driven, high, length, wide));
        Vec3 half = Vec3.along(Meeting.third(driven.into().axis(), room.axis()), wide.dividedBy(2));
        Vec3 deep = Vec3.along(driven.into().axis(), length.times(driven.into().sign()));
        Vec3 a = low.minus(half);
        Vec3 b = high.plus(half).plus(deep);
        bodies.add(Convex.box(between(a, b), dev.treen.solid.Origin.cut(driven.meeting().joint().name())));
    }

    private static Box between(Vec3 a, Vec3 b) {
        Vec3 low = a;
        Vec3 high = a;
        for (var axis : dev.treen.solid.Axis.values()) {
            Length one = Length.ofMm(a.get(axis));
            Length other = Length.ofMm(b.get(axis));
            low = low.with(axis, one.min(other).mm());
            high = high.with(axis, one.max(other).mm());
        }
        return new Box(low, high);
    }

    private static Convex rod(Driven driven, Vec3 start, Length length, Length wide) {
        return Round.rod(
                start, driven.into(), length.mm(), wide.dividedBy(2).mm(), driven.meeting().joint().name());
    }
}
