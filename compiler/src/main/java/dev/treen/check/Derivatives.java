package dev.treen.check;

import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.quantity.Exact;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The exact derivative of a number by one of those that it came from: forward differentiation along its derivation, in
 * rationals, so that nothing is lost however deep it is. Where a rule rounds, or nature speaks, the number is taken not
 * to follow.
 */
final class Derivatives {
    private final Predicate<Derivation> variable;
    private final IdentityHashMap<Derivation, Dual> known = new IdentityHashMap<>();

    private Derivatives(Predicate<Derivation> variable) {
        this.variable = variable;
    }

    /** A value and its derivative. */
    record Dual(BigFraction value, BigFraction slope) {
        static Dual constant(BigFraction value) {
            return new Dual(value, BigFraction.ZERO);
        }
    }

    /** How much {@code of} changes for each unit that the numbers which {@code variable} picks change together. */
    static BigFraction of(Derivation of, Predicate<Derivation> variable) {
        return new Derivatives(variable).dual(of).map(Dual::slope).orElse(BigFraction.ZERO);
    }

    private Optional<Dual> dual(Derivation derivation) {
        Dual before = known.get(derivation);
        if (before != null) {
            return Optional.of(before);
        }
        Optional<Dual> found = variable.test(derivation)
                ? number(derivation.value()).map(value -> new Dual(value, BigFraction.ONE))
                : formula(derivation);
        found.ifPresent(dual -> known.put(derivation, dual));
        return found;
    }

    private Optional<Dual> formula(Derivation derivation) {
        return switch (derivation.formula()) {
            case Derivation.Written written -> constant(derivation);
            case Derivation.Standard standard -> constant(derivation);
            // Several numbers side by side are none; each of them is followed where it is used.
            case Derivation.Listed several -> Optional.empty();
            case Derivation.Same(Derivation of) -> dual(of).or(() -> constant(derivation));
            case Derivation.Combined(String sign, Derivation left, Derivation right) ->
                dual(left).flatMap(l -> dual(right).flatMap(r -> combined(sign, l, r)))
                        .or(() -> constant(derivation));
            case Derivation.Rule(String text, String source, List<Derivation> inputs) ->
                chosen(derivation, text, inputs)
                        .or(() -> constant(derivation));
        };
    }

    private static Optional<Dual> combined(String sign, Dual l, Dual r) {
        return switch (sign) {
            case "+" -> Optional.of(new Dual(l.value.add(r.value), l.slope.add(r.slope)));
            case "−", "-" -> Optional.of(new Dual(l.value.subtract(r.value), l.slope.subtract(r.slope)));
            case "×" -> Optional.of(new Dual(
                    l.value.multiply(r.value), l.slope.multiply(r.value).add(l.value.multiply(r.slope))));
            case "÷" -> r.value.signum() == 0
                    ? Optional.empty()
                    : Optional.of(new Dual(
                            l.value.divide(r.value),
                            l.slope.multiply(r.value)
                                    .subtract(l.value.multiply(r.slope))
                                    .divide(r.value.multiply(r.value))));
            default -> Optional.empty();
        };
    }

    /** The least or the greatest of several follows the one that it is; a value without its sign follows it. */
    private Optional<Dual> chosen(Derivation derivation, String text, List<Derivation> inputs) {
        Optional<BigFraction> value = number(derivation.value());
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (text.startsWith("min(") || text.startsWith("max(")) {
            return inputs.stream()
                    .flatMap(input -> dual(input).stream())
                    .filter(dual -> Exact.compare(dual.value, value.get()) == 0)
                    .findFirst();
        }
        if (text.startsWith("abs(") && inputs.size() == 1) {
            return dual(inputs.getFirst())
                    .map(dual -> dual.value.signum() < 0
                            ? new Dual(dual.value.negate(), dual.slope.negate())
                            : dual);
        }
        return Optional.empty();
    }

    private static Optional<Dual> constant(Derivation derivation) {
        return number(derivation.value()).map(Dual::constant);
    }

    private static Optional<BigFraction> number(Datum value) {
        return switch (value) {
            case Datum.Exactly(var quantity) -> Optional.of(quantity.amount());
            // Beside a count a bare number is a count, beside a length it is one in its unit; both are told by the sum.
            case Datum.Bare(BigFraction amount, var unit) -> Optional.of(amount);
            default -> Optional.empty();
        };
    }
}
