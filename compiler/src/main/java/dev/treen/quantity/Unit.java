package dev.treen.quantity;

import dev.treen.spelling.Near;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The units a project may write behind a number, with exact factors. The inch and the pound are those of the
 * international yard and pound agreement (1959); degrees Fahrenheit are a scale with a zero of its own.
 */
@SuppressWarnings("ImmutableEnumChecker") // fractions and List.of never change; only their types do not say so
public enum Unit {
    /** Millimetre. */
    MM(Dimension.LENGTH, ratio(1, 1), List.of("mm"), List.of("millimetre", "millimeter", "mil")),
    /** Centimetre. */
    CM(Dimension.LENGTH, ratio(10, 1), List.of("cm"), List.of("centimetre", "centimeter")),
    /** Metre. */
    M(Dimension.LENGTH, ratio(1000, 1), List.of("m"), List.of("metre", "meter")),
    /** Inch, 25.4 mm. */
    IN(Dimension.LENGTH, ratio(127, 5), List.of("in"), List.of("inch", "inche", "\"", "″", "”")),
    /** Foot, 304.8 mm. */
    FT(Dimension.LENGTH, ratio(1524, 5), List.of("ft"), List.of("foot", "feet", "'", "′", "’")),
    /** Degree of angle. */
    DEG(Dimension.ANGLE, ratio(1, 1), List.of("deg"), List.of("degree", "°", "º")),
    /** Hundredth part. */
    PERCENT(Dimension.NUMBER, ratio(1, 100), List.of("%"), List.of("percent", "pct", "pc")),
    /** Degree Celsius. */
    DEGC(Dimension.TEMPERATURE, ratio(1, 1), List.of("degC"), List.of("c", "celsius", "°c", "centigrade")),
    /** Degree Fahrenheit. */
    DEGF(Dimension.TEMPERATURE, ratio(5, 9), List.of("degF"), List.of("f", "fahrenheit", "°f")),
    /** Gram. */
    G(Dimension.MASS, ratio(1, 1), List.of("g"), List.of("gram", "gramme", "gr")),
    /** Kilogram. */
    KG(Dimension.MASS, ratio(1000, 1), List.of("kg"), List.of("kilo", "kilogram", "kilogramme")),
    /** Pound, 453.59237 g. */
    LB(Dimension.MASS, ratio(45_359_237, 100_000), List.of("lb"), List.of("pound", "#")),
    /** Ounce, a sixteenth of a pound. */
    OZ(Dimension.MASS, ratio(45_359_237, 1_600_000), List.of("oz"), List.of("ounce")),
    /** Minute of time. */
    MIN(Dimension.DURATION, ratio(1, 1), List.of("min"), List.of("minute")),
    /** Hour. */
    H(Dimension.DURATION, ratio(60, 1), List.of("h"), List.of("hour", "hr")),
    /** Day and night, 24 hours: how glue, finish and seasoning count it, not a day's work. */
    DAY(Dimension.DURATION, ratio(1440, 1), List.of("day", "d"), List.of());

    private static final int LONGEST_GUESSED = 20;

    private final Dimension dimension;
    private final BigFraction factor;
    private final List<String> spellings;
    private final List<String> otherNames;

    Unit(Dimension dimension, BigFraction factor, List<String> spellings, List<String> otherNames) {
        this.dimension = dimension;
        this.factor = factor;
        this.spellings = spellings;
        this.otherNames = otherNames;
    }

    /** The unit of that exact spelling, or nothing. */
    public static Optional<Unit> spelled(String text) {
        return Arrays.stream(values()).filter(unit -> unit.spellings.contains(text)).findFirst();
    }

    /**
     * What the user may have meant by a unit that Treen does not know.
     *
     * @return spellings that Treen knows, the likeliest first; often none
     */
    public static List<String> suggestions(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.length() > LONGEST_GUESSED) {
            return List.of();
        }
        String singular = word.length() > 2 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
        Set<String> found = new LinkedHashSet<>();
        for (Unit unit : values()) {
            if (unit.isCalled(word) || unit.isCalled(singular)) {
                found.add(unit.spelling());
            }
        }
        if (found.isEmpty()) {
            List<String> near = Near.of(word, Arrays.stream(values())
                    .map(unit -> unit.spelling().toLowerCase(Locale.ROOT))
                    .filter(spelling -> spelling.length() > 1)
                    .toList());
            Arrays.stream(values())
                    .map(Unit::spelling)
                    .filter(spelling -> near.contains(spelling.toLowerCase(Locale.ROOT)))
                    .forEach(found::add);
        }
        return List.copyOf(found);
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The spelling that Treen writes. */
    public String spelling() {
        return spellings.getFirst();
    }

    /** Every spelling that Treen reads; upper and lower case count. */
    public List<String> spellings() {
        return spellings;
    }

    /** How many base units one of these is: for a temperature, one degree's worth, without its zero. */
    public BigFraction factor() {
        return factor;
    }

    /** So many of this unit, exact; the sign belongs to the number, as −5 degF shows. */
    public Quantity of(BigFraction number) {
        return new Quantity(number.multiply(factor).add(zero()), dimension);
    }

    /** How many of this unit a quantity is, exact; nothing if it measures something else. */
    public Optional<BigFraction> in(Quantity quantity) {
        return quantity.as(dimension).map(amount -> Exact.canonical(amount.subtract(zero()).divide(factor)));
    }

    /** Where the unit's zero lies in base units; only Fahrenheit's is elsewhere: 0 °F is −160/9 °C. */
    private BigFraction zero() {
        return this == DEGF ? ratio(-160, 9) : BigFraction.ZERO;
    }

    private boolean isCalled(String word) {
        return otherNames.contains(word)
                || spellings.stream().anyMatch(spelling -> spelling.toLowerCase(Locale.ROOT).equals(word));
    }

    private static BigFraction ratio(long numerator, long denominator) {
        return BigFraction.of(numerator, denominator);
    }
}
