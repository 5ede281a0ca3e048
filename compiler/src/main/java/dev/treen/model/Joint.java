package dev.treen.model;

import dev.treen.quantity.Dimension;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Slope;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two parts that a joint brings together.
 *
 * @param kind mitre, groove, …
 * @param kindAt where the kind is written
 * @param name what the joint is called in findings: its alias, or {@code groove base into front}
 * @param statement number of the joint statement; pairs of one statement share settings
 * @param left the part that enters, or the first of two equals
 * @param right the part that receives, or the second
 * @param into whether {@code left} enters {@code right}
 * @param settings the properties given, by name
 * @param at the pair in the file
 * @param blockAt where a further property can be put: just inside the braces, or an empty span after the head
 * @param hasBlock whether the statement has braces
 */
public record Joint(
        String kind,
        Span kindAt,
        String name,
        int statement,
        Part left,
        Part right,
        boolean into,
        Map<String, Setting> settings,
        Span at,
        Span blockAt,
        boolean hasBlock) {
    /** Keeps its own copy. */
    public Joint {
        settings = Map.copyOf(settings);
    }

    /** The same with another number of its statement. */
    public Joint numbered(int other) {
        return other == statement ? this : new Joint(
                kind, kindAt, name, other, left, right, into, settings, at, blockAt, hasBlock);
    }

    /** Whether {@code other} says the same of parts of the same names, whatever the number of its statement. */
    public boolean saysTheSameAs(Joint other) {
        return kind.equals(other.kind)
                && name.equals(other.name)
                && left.is(other.left)
                && right.is(other.right)
                && into == other.into
                && hasBlock == other.hasBlock
                && at.equals(other.at)
                && kindAt.equals(other.kindAt)
                && blockAt.equals(other.blockAt)
                && settings.equals(other.settings);
    }

    /** The setting called {@code property}, unless it is absent or left to Treen. */
    public Optional<Setting> given(String property) {
        return Optional.ofNullable(settings.get(property)).filter(s -> !s.auto());
    }

    /** The length that the project gives for {@code property}. */
    public Optional<Measure> length(String property) {
        return given(property)
                .flatMap(s -> s.value() instanceof Datum.Exactly(var quantity)
                        ? quantity.asLength().map(l -> new Measure(l, s.valueAt(), s.how()))
                        : Optional.<Measure>empty());
    }

    /** The plain number or count that the project gives for {@code property}. */
    public Optional<BigFraction> number(String property) {
        return given(property).map(Setting::value).flatMap(Joint::numberOf);
    }

    private static Optional<BigFraction> numberOf(Datum value) {
        if (value instanceof Datum.Bare(BigFraction amount, Unit unit)) {
            return Optional.of(amount);
        }
        return value instanceof Datum.Exactly(Quantity quantity) ? quantity.asNumber() : Optional.empty();
    }

    /** The slope that the project gives for {@code property}, by its run; an angle by its tangent. */
    public Optional<Slope> slope(String property) {
        return given(property)
                .flatMap(s -> s.value() instanceof Datum.Exactly(Quantity quantity)
                        ? quantity.asAngle().map(Slope::near)
                        : Optional.<Slope>empty());
    }

    /** The weight in kilograms that the project gives for {@code property}. */
    public OptionalDouble kilograms(String property) {
        return given(property)
                .flatMap(s -> s.value() instanceof Datum.Exactly(Quantity quantity)
                        ? quantity.as(Dimension.MASS)
                        : Optional.<BigFraction>empty())
                .map(grams -> OptionalDouble.of(grams.doubleValue() / 1000))
                .orElseGet(OptionalDouble::empty);
    }

    /** The word that the project gives for {@code property}. */
    public Optional<String> word(String property) {
        return given(property)
                .flatMap(s -> s.value() instanceof Datum.Word(String w) ? Optional.of(w) : Optional.empty());
    }

}
