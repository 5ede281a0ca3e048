package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How something besides boards is sold.
 *
 * @param price what it costs, where somebody said so
 * @param pack how much is in a bottle, a can or a packet, in millilitres or pieces; then whole ones are bought
 * @param weighs what a litre weighs, in kilograms
 */
public record Selling(Optional<Sum> price, OptionalDouble pack, OptionalDouble weighs) {
    private static final double ML_IN_LITRE = 1000;
    /** Shields the count of packs from what a double loses: a packet of 100 holds 100. */
    private static final double HAIR = 1e-9;

    /** Not known. */
    public static final Selling UNKNOWN = new Selling(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * What one {@code per} costs.
     *
     * @param amount of money
     * @param at where it is written
     */
    public record Sum(double amount, Per per, Span at) {}

    /** By what it is sold. */
    public enum Per {
        /** A piece; where there is a pack, the whole of it. */
        EACH("each", "each"),
        /** A litre. */
        LITRE("litre", "a litre"),
        /** A kilogram. */
        KILOGRAM("kilogram", "a kilogram");

        private final String word;
        private final String phrase;

        Per(String word, String phrase) {
            this.word = word;
            this.phrase = phrase;
        }

        /** How the language writes it. */
        public String word() {
            return word;
        }

        /** How a sentence says it. */
        public String phrase() {
            return phrase;
        }
    }

    /** How much is bought for {@code amount}: in whole packs, where there are any. */
    public double bought(double amount) {
        return pack.isPresent() ? packs(amount) * pack.getAsDouble() : amount;
    }

    /** How many packs hold {@code amount}; the amount itself where it is not sold in packs. */
    public double packs(double amount) {
        return pack.isPresent() ? Math.ceil(amount / pack.getAsDouble() - HAIR) : amount;
    }

    /** What {@code amount} costs, in millilitres or pieces; none where that is not known. */
    public OptionalDouble cost(double amount) {
        if (price.isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = price.get().amount();
        return switch (price.get().per()) {
            case EACH -> OptionalDouble.of(packs(amount) * sum);
            case LITRE -> OptionalDouble.of(bought(amount) / ML_IN_LITRE * sum);
            case KILOGRAM -> weighs.isPresent()
                    ? OptionalDouble.of(bought(amount) / ML_IN_LITRE * weighs.getAsDouble() * sum)
                    : OptionalDouble.empty();
        };
    }
}
