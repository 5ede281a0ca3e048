package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the screws or nails of a joint stand: in one row along the middle of the surface over which the parts meet (rules
 * of the trade J-18 and J-19).
 *
 * @param end from each end of that surface to the outermost
 * @param every from one to the next; zero where there is one only
 * @param at coordinates along the row, rising
 */
record Spots(Measure end, Measure every, List<Length> at) {
    /** More than this in a row is a slip of the pen. */
    static final int MOST = 200;

    /** Keeps its own copy. */
    Spots {
        at = List.copyOf(at);
    }

    static Spots of(Driven driven, Fastener fastener, Surroundings surroundings) {
        Joint joint = driven.meeting().joint();
        Length row = driven.span(driven.row());
        Measure end = joint.length("end").orElseGet(() -> end(driven, fastener, row, surroundings));
        Length usable = row.minus(end.value().times(2));
        Measure wish = joint.length("every").filter(m -> m.value().signum() > 0)
                .orElseGet(() -> usual(fastener, joint, surroundings));
        boolean odd = joint.kind().equals(Batten.KIND);
        int count = joint.number("count").map(n -> n.intValue()).orElseGet(() -> count(usable, wish, fastener, odd));
        Length from = Length.ofMm(driven.low().get(driven.row()));
        List<Length> at = new ArrayList<>();
        if (count == 1) {
            at.add(from.plus(row.dividedBy(2)));
        }
        for (int i = 0; count > 1 && i < count; i++) {
            at.add(from.plus(end.value()).plus(usable.times(i).dividedBy(count - 1L)));
        }
        Length apart = count > 1 ? usable.dividedBy(count - 1L) : Length.ZERO;
        Measure every = Ruled.of("every", apart, count + " shared out evenly, no farther apart than wished", "", wish);
        return new Spots(end, every, at);
    }

    private static int count(Length usable, Measure wish, Fastener fastener, boolean odd) {
        if (usable.compareTo(fastener.thick().value().times(6)) < 0) {
            return 1;
        }
        double gaps = Math.ceil(usable.mm().divide(wish.value().mm()).doubleValue());
        int count = (int) Math.min(MOST, Math.max(2, 1 + gaps));
        // The one in the middle of a batten holds.
        return odd && count % 2 == 0 ? count + 1 : count;
    }

    /** Far enough from the ends and edges of both parts, and from the end of the surface where they meet. */
    private static Measure end(Driven driven, Fastener fastener, Length row, Surroundings surroundings) {
        Axis axis = driven.row();
        Length value = fastener.thick().value().times(2);
        for (int sign : new int[]{-1, 1}) {
            Side side = Side.of(axis, sign);
            Length here = Length.ofMm(sign < 0 ? driven.low().get(axis) : driven.high().get(axis));
            for (boolean held : new boolean[]{true, false}) {
                var part = held ? driven.meeting().left() : driven.meeting().right();
                Length edge = Length.ofMm((held ? driven.held() : driven.entered()).coordinate(side));
                Length keeps = fastener.keeps(held, part.measure(axis), driven.through());
                value = value.max(keeps.minus(edge.minus(here).times(sign)));
            }
        }
        value = value.roundUpTo(surroundings.markOfTheRule()).min(row.dividedBy(2));
        return Ruled.at(driven.meeting().joint().at(), "end", value, fastener.screw()
                ? "7 shanks from an end and 3 from an edge, on a mark of the rule"
                : "10 times its thickness from an end, 5 where it is bored, on a mark of the rule", Ruled.PRACTICE,
                List.of(fastener.thick().how()));
    }

    private static Measure usual(Fastener fastener, Joint joint, Surroundings surroundings) {
        double mm = Figures.standard().value(fastener.screw() ? "screw.every" : "nail.every");
        Length value = surroundings.inches()
                ? Length.ofInches(Math.round(mm / 25), 1)
                : Length.ofMm(Math.round(mm));
        return Ruled.at(joint.at(), "every", value, "the usual spacing", Ruled.PRACTICE, List.of());
    }
}
