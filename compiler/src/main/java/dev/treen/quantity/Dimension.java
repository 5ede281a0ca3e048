package dev.treen.quantity;

import java.util.Optional;

/** What kind of thing a {@link Quantity} measures, and which kinds may be added, multiplied and divided. */
public enum Dimension {
    /** A count, a ratio or a percentage; base unit one. */
    NUMBER("a number"),
    /** Base unit the millimetre. */
    LENGTH("a length"),
    /** Base unit the square millimetre. */
    AREA("an area"),
    /** Base unit the cubic millimetre. */
    VOLUME("a volume"),
    /** Base unit the degree. */
    ANGLE("an angle"),
    /** Base unit the degree Celsius. A point on a scale: two of them can be compared but not added. */
    TEMPERATURE("a temperature"),
    /** Base unit the gram. */
    MASS("a weight"),
    /** Base unit the minute. */
    DURATION("a time"),
    /** Base unit whatever money the project counts in. */
    MONEY("an amount of money");

    private final String phrase;

    Dimension(String phrase) {
        this.phrase = phrase;
    }

    /** The kind with its article, as a message says it: "a length", "an area". */
    public String phrase() {
        return phrase;
    }

    /** The kind of a sum or a difference, or nothing if the two cannot be added. */
    public Optional<Dimension> sum(Dimension other) {
        return this == other && this != TEMPERATURE ? Optional.of(this) : Optional.empty();
    }

    /** The kind of a product, or nothing if Treen has no name for it. */
    public Optional<Dimension> product(Dimension other) {
        if (this == TEMPERATURE || other == TEMPERATURE) {
            return Optional.empty();
        }
        if (this == NUMBER) {
            return Optional.of(other);
        }
        if (other == NUMBER) {
            return Optional.of(this);
        }
        return ofPower(power() + other.power(), power() > 0 && other.power() > 0);
    }

    /** The kind of this divided by {@code divisor}, or nothing if Treen has no name for it. */
    public Optional<Dimension> quotient(Dimension divisor) {
        if (this == TEMPERATURE || divisor == TEMPERATURE) {
            return Optional.empty();
        }
        if (divisor == NUMBER) {
            return Optional.of(this);
        }
        if (this == divisor) {
            return Optional.of(NUMBER);
        }
        return ofPower(power() - divisor.power(), power() > 0 && divisor.power() > 0);
    }

    /** Which power of a length this is; zero for the kinds that lengths do not make. */
    private int power() {
        return switch (this) {
            case LENGTH -> 1;
            case AREA -> 2;
            case VOLUME -> 3;
            case NUMBER, ANGLE, TEMPERATURE, MASS, DURATION, MONEY -> 0;
        };
    }

    private static Optional<Dimension> ofPower(int power, boolean bothMadeOfLengths) {
        if (!bothMadeOfLengths) {
            return Optional.empty();
        }
        return switch (power) {
            case 1 -> Optional.of(LENGTH);
            case 2 -> Optional.of(AREA);
            case 3 -> Optional.of(VOLUME);
            default -> Optional.empty();
        };
    }
}
