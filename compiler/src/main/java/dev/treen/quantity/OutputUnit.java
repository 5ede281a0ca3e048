package dev.treen.quantity;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Units in which areas and volumes are written. No project writes them behind a number: they are for lists and orders. */
@SuppressWarnings("ImmutableEnumChecker") // fractions and List.of never change; only their types do not say so
public enum OutputUnit {
    /** Square metre. */
    SQUARE_METRE("m²", Dimension.AREA, BigFraction.of(1_000_000L)),
    /** Square foot, the surface foot by which thin stuff is sold. */
    SQUARE_FOOT("ft²", Dimension.AREA, power(Length.FOOT, 2)),
    /** Litre. */
    LITRE("L", Dimension.VOLUME, BigFraction.of(1_000_000L)),
    /** Cubic metre. */
    CUBIC_METRE("m³", Dimension.VOLUME, BigFraction.of(1_000_000_000L)),
    /** Cubic foot. */
    CUBIC_FOOT("ft³", Dimension.VOLUME, power(Length.FOOT, 3)),
    /** Board foot: 144 cubic inches. */
    BOARD_FOOT("board ft", Dimension.VOLUME, power(Length.INCH, 3).multiply(144)),
    /**
     * Hoppus foot, for round logs: the square of a quarter of the girth takes the place of the true section, so one
     * is 4/π cubic feet of wood. Here π is 355/113, which is right to one part in ten million.
     */
    HOPPUS_FOOT("Hoppus ft", Dimension.VOLUME, power(Length.FOOT, 3).multiply(BigFraction.of(4L * 113, 355)));

    private final String symbol;
    private final Dimension dimension;
    private final BigFraction factor;

    OutputUnit(String symbol, Dimension dimension, BigFraction factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
    }

    /** How the unit is written behind a figure. */
    public String symbol() {
        return symbol;
    }

    /** What the unit measures: an area or a volume. */
    public Dimension dimension() {
        return dimension;
    }

    /** How many of this unit a quantity is; nothing if it measures something else. */
    public Optional<BigFraction> in(Quantity quantity) {
        return quantity.as(dimension).map(amount -> Exact.canonical(amount.divide(factor)));
    }

    /** So many of this unit. */
    public Quantity of(BigFraction number) {
        return new Quantity(number.multiply(factor), dimension);
    }

    /** The quantity in this unit, e.g. {@code 1.44 board ft}; nothing if it measures something else. */
    public Optional<String> text(Quantity quantity, int decimals) {
        return in(quantity).map(number -> DecimalText.write(number, decimals) + " " + symbol);
    }

    private static BigFraction power(Length length, int exponent) {
        return length.mm().pow(exponent);
    }
}
