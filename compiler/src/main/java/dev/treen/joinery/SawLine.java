package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The line at which a lid is cut free of a box that was glued up closed: what the saw takes and what is planed off both
 * rims goes from the walls, a slice right round.
 *
 * @param meeting the panel that goes with the lid, and one of the walls
 * @param towards the side on which the lid lies, seen from the line
 * @param tall how high the walls of the lid are in the end
 * @param kerf what the saw takes
 * @param dress what is planed off each of both rims
 */
record SawLine(Meeting meeting, Side towards, Measure tall, Measure kerf, Measure dress) {
    static final String TALL = "tall";
    static final String KERF = "kerf";
    static final String DRESS = "dress";

    /** The line of a panel and a wall along which its edge lies; nothing where they meet otherwise. */
    static Optional<SawLine> of(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) == 2) {
            return Optional.empty();
        }
        Axis up = Axes.of(meeting.left().placing().thickness().axis());
        boolean above = GrooveSizes.above(meeting).compareTo(GrooveSizes.below(meeting)) <= 0;
        Joint joint = meeting.joint();
        Measure high = meeting.right().along(up);
        Measure tall = joint.length(TALL).orElseGet(() -> Ruled.onMark(
                TALL, high.value().dividedBy(4), "a quarter of the height, on a mark of the rule", Ruled.PRACTICE,
                high, surroundings));
        Measure kerf = joint.length(KERF).orElseGet(() -> meeting.right().part().allow().kerf());
        Measure dress = joint.length(DRESS).orElseGet(() -> usualDress(high));
        return Optional.of(new SawLine(meeting, Side.of(up, above ? 1 : -1), tall, kerf, dress));
    }

    private static Measure usualDress(Measure high) {
        Length value = Length.nearest(Figures.standard().value("lid.dress"), Length.ofMm(1).dividedBy(10));
        return Ruled.at(high.at(), DRESS, value, "what leaves no mark of the saw", Ruled.PRACTICE, List.of());
    }

    /** The axis across the line. */
    Axis axis() {
        return towards.axis();
    }

    /** What is lost of the walls' height: the kerf, and the planing of both rims. */
    Length lost() {
        return kerf.value().plus(dress.value().times(2));
    }

    /** The coordinate of the walls' edge on the lid's side. */
    Length edge() {
        return Length.ofMm(meeting.right().box().coordinate(towards));
    }

    private Length ofLid() {
        return edge().minus(tall.value().times(towards.sign()));
    }

    private Length ofBox() {
        return ofLid().minus(lost().times(towards.sign()));
    }

    /** Where the slice begins. */
    Length low() {
        return ofLid().min(ofBox());
    }

    /** Where the slice ends. */
    Length high() {
        return ofLid().max(ofBox());
    }

    /** What goes from the walls. */
    BoxCorner.Heights slice() {
        return new BoxCorner.Heights(low(), high());
    }

    /** How high the walls of the box are in the end. */
    Length box() {
        return meeting.right().along(axis()).value().minus(tall.value()).minus(lost());
    }

    /** The slice as wide as anything. */
    Box sawn() {
        BigFraction far = Groove.FAR;
        Box all = new Box(Vec3.of(far.negate(), far.negate(), far.negate()), Vec3.of(far, far, far));
        return TenonSizes.between(all, axis(), low().mm(), high().mm());
    }

    /** What a wall has on the lid's side of the slice, or on the other one. */
    Box half(Box wall, boolean ofLid) {
        boolean upper = ofLid == (towards.sign() > 0);
        return upper
                ? TenonSizes.between(wall, axis(), high().mm(), wall.max().get(axis()))
                : TenonSizes.between(wall, axis(), wall.min().get(axis()), low().mm());
    }

    /** Whether there is wood on both sides of it. */
    boolean within() {
        return tall.value().signum() > 0 && kerf.value().signum() > 0 && dress.value().signum() >= 0
                && box().signum() > 0;
    }
}
