package dev.treen.joinery;

import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two boards edge to edge, the grain of both one way: staves of a panel, boards of a back.
 *
 * @param touch the surface on which they meet
 * @param grain the axis of both lengths
 */
record Edges(Meeting meeting, BoxContact.FaceToFace touch, Axis grain) {

    static Optional<Edges> of(Meeting meeting) {
        Axis grain = Axes.of(meeting.left().placing().length().axis());
        return meeting.contact() instanceof BoxContact.FaceToFace touch
                && meeting.left().measure(touch.side().axis()) == 1
                && meeting.right().measure(touch.side().axis()) == 1
                && meeting.right().placing().length().axis() == Axes.number(grain)
                        ? Optional.of(new Edges(meeting, touch, grain))
                        : Optional.empty();
    }

    /** The side of the left board that meets the right one. */
    Side face() {
        return touch.side();
    }

    /** The axis of the thickness of both. */
    Axis thin() {
        return Meeting.third(face().axis(), grain);
    }

    /** How thick the wood is that both have in common. */
    BigFraction wood() {
        return touch.max().get(thin()).subtract(touch.min().get(thin()));
    }

    /**
     * A slab in the middle of the common thickness, from end to end of the longest part, between two places that are told
     * by how far they lie in the right board; less than zero is in the left one.
     */
    Box slab(BigFraction thick, BigFraction from, BigFraction to) {
        BigFraction low = touch.min().get(thin()).add(wood().subtract(thick).divide(2));
        return band(low, low.add(thick), from, to);
    }

    /** What lies beside such a slab, on one side of it, out through the board. */
    Box beside(int sign, BigFraction thick, BigFraction from, BigFraction to) {
        Box slab = slab(thick, from, to);
        BigFraction far = Groove.FAR.multiply(sign);
        return sign > 0
                ? band(slab.max().get(thin()), far, from, to)
                : band(far, slab.min().get(thin()), from, to);
    }

    private Box band(BigFraction low, BigFraction high, BigFraction from, BigFraction to) {
        BigFraction at = touch.min().get(face().axis());
        BigFraction one = at.add(from.multiply(face().sign()));
        BigFraction two = at.add(to.multiply(face().sign()));
        Box across = TenonSizes.between(
                meeting.left().box().join(meeting.right().box()), grain, Groove.FAR.negate(), Groove.FAR);
        Box thinned = TenonSizes.between(across, thin(), low, high);
        return face().sign() > 0
                ? TenonSizes.between(thinned, face().axis(), one, two)
                : TenonSizes.between(thinned, face().axis(), two, one);
    }
}
