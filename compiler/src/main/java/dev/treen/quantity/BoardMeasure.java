package dev.treen.quantity;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** How wood is counted when it is bought and sold. All results are exact unless their comment says otherwise. */
public final class BoardMeasure {
    private BoardMeasure() {
    }

    /** Board feet of wood in a piece: length × width × thickness, 144 cubic inches to the foot. */
    public static BigFraction boardFeet(Size size) {
        return inUnit(OutputUnit.BOARD_FOOT, size.volume());
    }

    /** Board feet as hardwood is sold: a thickness under one inch counts as one inch. */
    public static BigFraction boardFeetSold(Size size) {
        return boardFeet(size.withThickness(size.thickness().max(Length.INCH)));
    }

    /** Square feet of one face, by which stuff thinner than an inch is otherwise sold. */
    public static BigFraction surfaceFeet(Size size) {
        return inUnit(OutputUnit.SQUARE_FOOT, size.faceArea());
    }

    /** Cubic metres of wood in a piece. */
    public static BigFraction cubicMetres(Size size) {
        return inUnit(OutputUnit.CUBIC_METRE, size.volume());
    }

    /** To the nearest foot, a half up: how a tally is written down. */
    public static BigInteger tally(BigFraction boardFeet) {
        return Exact.nearest(boardFeet);
    }

    /** Hoppus feet in a log: the square of a quarter of its girth, by its length. The girth is measured half-way. */
    public static BigFraction hoppusFeet(Length girth, Length length) {
        BigFraction quarter = girth.dividedBy(4).ratioTo(Length.FOOT);
        return Exact.canonical(quarter.multiply(quarter).multiply(length.ratioTo(Length.FOOT)));
    }

    /**
     * How long a piece of this section a volume makes.
     *
     * @return nothing if {@code volume} is not a volume or the section has no area
     */
    public static Optional<Length> runningLength(Quantity volume, Length width, Length thickness) {
        BigFraction section = width.mm().multiply(thickness.mm());
        return section.signum() <= 0
                ? Optional.empty()
                : volume.as(Dimension.VOLUME).map(amount -> Length.ofMm(amount.divide(section)));
    }

    private static BigFraction inUnit(OutputUnit unit, Quantity quantity) {
        return unit.in(quantity).orElseThrow();
    }
}
