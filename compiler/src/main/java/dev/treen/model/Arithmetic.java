package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Dimension;
import dev.treen.quantity.Length;
import dev.treen.quantity.Outcome;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Operator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sums of values. A bare number is read as what the other side is: a length beside a length, a count beside a count;
 * beside another bare number it stays bare.
 */
final class Arithmetic {
    /** What can be called. */
    static final List<String> FUNCTIONS = List.of("min", "max", "abs", "round", "round_up", "round_down");

    /** More digits than this above or below the line of a fraction are not reckoned with. */
    static final int MOST_DIGITS = 1_000;

    private static final int MOST_BITS = (int) Math.ceil(MOST_DIGITS * Math.log(10) / Math.log(2));

    private final Session session;

    Arithmetic(Session session) {
        this.session = session;
    }

    /** What a value is, for the middle of a sentence. */
    static String phrase(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> quantity.dimension() == Dimension.NUMBER
                    ? "a count"
                    : quantity.dimension().phrase();
            case Datum.Bare b -> "a bare number";
            case Datum.Sizes s -> "a size";
            case Datum.Between b -> "a range";
            case Datum.Several s -> "a list";
            case Datum.Text t -> "text";
            case Datum.Truth t -> "a condition";
            case Datum.Word w -> "a word";
            case Datum.Thing(String path, Datum.Thing.Kind kind) -> switch (kind) {
                case PART -> "the part `" + path + "`";
                case BOARD -> "the board `" + path + "`";
                case SPECIES -> "any board of `" + path + "`";
                case INSTANCE -> "`" + path + "`";
                case ARRAY -> "a row of parts";
                case FILE -> "the file `" + path + "`";
                case PATTERN -> "the pattern `" + path + "`";
                case PARAMETER -> "the parameter `" + path + "`";
                case PRESET -> "`" + path + "`";
            };
            case Datum.Unknown u -> "not known";
        };
    }

    /** The value as a length: a bare number takes its unit. */
    static Optional<Length> length(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> quantity.asLength();
            case Datum.Bare(BigFraction amount, Unit unit) -> unit.of(amount).asLength();
            default -> Optional.empty();
        };
    }

    /** The value as a pure number. */
    static Optional<BigFraction> number(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> quantity.asNumber();
            case Datum.Bare(BigFraction amount, Unit unit) -> Optional.of(amount);
            default -> Optional.empty();
        };
    }

    /** The value as a whole number. */
    Optional<Integer> whole(Datum value) {
        return number(value).flatMap(n -> {
            var whole = Quantity.number(n).asWhole();
            return whole.isPresent() ? Optional.of(whole.getAsInt()) : Optional.empty();
        });
    }

    Derived infix(Expr.Infix infix, Derived left, Derived right) {
        if (left.value() instanceof Datum.Unknown || right.value() instanceof Datum.Unknown) {
            return Expressions.unknown(infix.span());
        }
        Optional<Datum> value = reckon(infix.operator(), left.value(), right.value());
        if (value.isEmpty()) {
            refuse(infix, left.value(), right.value());
            return Expressions.unknown(infix.span());
        }
        if (tooLong(value.get())) {
            session.add(Finding.of(
                    ModelFindings.TOO_MANY,
                    infix.span(),
                    "`" + infix.span().text() + "` has more digits than Treen reckons with: over " + MOST_DIGITS)
                    .because("No rule has such a mark; a number multiplied by itself again and again has.")
                    .build());
            return Expressions.unknown(infix.span());
        }
        return new Derived(
                value.get(),
                new Derivation(
                        "",
                        value.get(),
                        new Derivation.Combined(sign(infix.operator()), left.how(), right.how()),
                        Optional.of(infix.span())));
    }

    private static boolean tooLong(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> tooLong(quantity.amount());
            case Datum.Bare(BigFraction amount, Unit unit) -> tooLong(amount);
            default -> false;
        };
    }

    private static boolean tooLong(BigFraction number) {
        return number.getNumerator().bitLength() > MOST_BITS || number.getDenominator().bitLength() > MOST_BITS;
    }

    private static String sign(Operator operator) {
        return switch (operator) {
            case TIMES -> "×";
            case OVER -> "÷";
            case MINUS -> "−";
            default -> operator.sign();
        };
    }

    private void refuse(Expr.Infix infix, Datum left, Datum right) {
        boolean byZero = infix.operator() == Operator.OVER
                && number(right).filter(BigFraction.ZERO::equals).isPresent();
        String what = byZero
                ? "`" + infix.span().text() + "` divides by zero"
                : "`" + infix.left().span().text() + "` and `" + infix.right().span().text()
                        + "` cannot be reckoned together with `" + infix.operator().sign() + "`";
        session.add(Finding.of(ModelFindings.DO_NOT_ADD_UP, infix.span(), what)
                .found("The left is " + phrase(left) + ", the right is " + phrase(right) + ".")
                .because(byZero ? "" : "A length can be added to a length, and multiplied by a count.")
                .build());
    }

    private Optional<Datum> reckon(Operator operator, Datum left, Datum right) {
        return switch (operator) {
            case PLUS -> sum(left, right, BigFraction::add, Quantity::plus);
            case MINUS -> sum(left, right, BigFraction::subtract, Quantity::minus);
            case TIMES -> product(left, right);
            case OVER -> quotient(left, right);
            case LESS, AT_MOST, MORE, AT_LEAST -> compare(left, right).map(c -> new Datum.Truth(holds(operator, c)));
            case EQUAL -> same(left, right).map(Datum.Truth::new);
            case UNEQUAL -> same(left, right).map(same -> new Datum.Truth(!same));
            case AND, OR -> left instanceof Datum.Truth(boolean a) && right instanceof Datum.Truth(boolean b)
                    ? Optional.of(new Datum.Truth(operator == Operator.AND ? a && b : a || b))
                    : Optional.empty();
            case NOT -> Optional.empty();
        };
    }

    private static boolean holds(Operator operator, int comparison) {
        return switch (operator) {
            case LESS -> comparison < 0;
            case AT_MOST -> comparison <= 0;
            case MORE -> comparison > 0;
            default -> comparison >= 0;
        };
    }

    /** Two quantities or lengths done together. */
    private interface Together {
        Outcome<Quantity> apply(Quantity left, Quantity right);
    }

    private static Optional<Datum> sum(
            Datum left, Datum right, BinaryOperator<BigFraction> bare, Together together) {
        if (left instanceof Datum.Bare(BigFraction a, Unit ua) && right instanceof Datum.Bare(BigFraction b, Unit ub)
                && ua == ub) {
            return Optional.of(new Datum.Bare(bare.apply(a, b), ua));
        }
        return both(left, right).flatMap(q -> together.apply(q.left(), q.right()).found()).map(Datum.Exactly::new);
    }

    private record Both(Quantity left, Quantity right) {}

    /** Both as quantities, a bare one read as what the other is. */
    private static Optional<Both> both(Datum left, Datum right) {
        return switch (left) {
            case Datum.Exactly(Quantity a) -> switch (right) {
                case Datum.Exactly(Quantity b) -> Optional.of(new Both(a, b));
                case Datum.Bare bare -> beside(bare, a).map(b -> new Both(a, b));
                default -> Optional.empty();
            };
            case Datum.Bare bare -> switch (right) {
                case Datum.Exactly(Quantity b) -> beside(bare, b).map(a -> new Both(a, b));
                case Datum.Bare other -> Optional.of(
                        new Both(bare.unit().of(bare.amount()), other.unit().of(other.amount())));
                default -> Optional.empty();
            };
            default -> Optional.empty();
        };
    }

    private static Optional<Quantity> beside(Datum.Bare bare, Quantity other) {
        return switch (other.dimension()) {
            case LENGTH -> Optional.of(bare.unit().of(bare.amount()));
            case NUMBER -> Optional.of(Quantity.number(bare.amount()));
            default -> Optional.empty();
        };
    }

    private static Optional<Datum> product(Datum left, Datum right) {
        if (left instanceof Datum.Bare(BigFraction a, Unit unit)) {
            Optional<BigFraction> factor = number(right);
            if (factor.isPresent()) {
                return Optional.of(new Datum.Bare(a.multiply(factor.get()), unit));
            }
        }
        if (right instanceof Datum.Bare(BigFraction b, Unit unit)) {
            Optional<BigFraction> factor = number(left);
            if (factor.isPresent()) {
                return Optional.of(new Datum.Bare(b.multiply(factor.get()), unit));
            }
        }
        return asNumbers(left, right).flatMap(q -> q.left().times(q.right()).found()).map(Datum.Exactly::new);
    }

    private static Optional<Both> asNumbers(Datum left, Datum right) {
        Optional<Quantity> a = quantityOrNumber(left);
        Optional<Quantity> b = quantityOrNumber(right);
        return a.isPresent() && b.isPresent() ? Optional.of(new Both(a.get(), b.get())) : Optional.empty();
    }

    private static Optional<Quantity> quantityOrNumber(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> Optional.of(quantity);
            case Datum.Bare(BigFraction amount, Unit unit) -> Optional.of(Quantity.number(amount));
            default -> Optional.empty();
        };
    }

    private static Optional<Datum> quotient(Datum left, Datum right) {
        if (left instanceof Datum.Bare(BigFraction a, Unit unit)) {
            Optional<BigFraction> divisor = number(right);
            if (divisor.isPresent()) {
                return divisor.get().signum() == 0
                        ? Optional.empty()
                        : Optional.of(new Datum.Bare(a.divide(divisor.get()), unit));
            }
            return both(left, right).flatMap(q -> q.left().dividedBy(q.right()).found()).map(Datum.Exactly::new);
        }
        return asNumbers(left, right).flatMap(q -> q.left().dividedBy(q.right()).found()).map(Datum.Exactly::new);
    }

    private static Optional<Integer> compare(Datum left, Datum right) {
        return both(left, right).flatMap(q -> q.left().compareWith(q.right()).found());
    }

    private static Optional<Boolean> same(Datum left, Datum right) {
        if (left instanceof Datum.Word || left instanceof Datum.Text || left instanceof Datum.Truth) {
            return Optional.of(left.equals(right));
        }
        return compare(left, right).map(c -> c == 0);
    }

    Derived prefix(Expr.Prefix prefix, Derived operand) {
        Optional<Datum> value = switch (operand.value()) {
            case Datum.Unknown u -> Optional.of(Datum.UNKNOWN);
            case Datum.Bare(BigFraction amount, Unit unit) -> prefix.operator() == Operator.MINUS
                    ? Optional.of(new Datum.Bare(amount.negate(), unit))
                    : Optional.empty();
            case Datum.Exactly(Quantity quantity) -> prefix.operator() == Operator.MINUS
                    ? quantity.negate().found().map(Datum.Exactly::new)
                    : Optional.empty();
            case Datum.Truth(boolean truth) -> prefix.operator() == Operator.NOT
                    ? Optional.of(new Datum.Truth(!truth))
                    : Optional.empty();
            default -> Optional.empty();
        };
        if (value.isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.DO_NOT_ADD_UP,
                    prefix.span(),
                    "`" + prefix.operator().sign() + "` does not go before " + phrase(operand.value()))
                    .build());
            return Expressions.unknown(prefix.span());
        }
        // Minus a number is zero minus it, so that the derivation reads as a sum.
        Derivation zero = Derivation.written("", new Datum.Bare(BigFraction.ZERO, Unit.MM), prefix.span());
        return new Derived(
                value.get(),
                new Derivation(
                        "",
                        value.get(),
                        new Derivation.Combined("−", zero, operand.how()),
                        Optional.of(prefix.span())));
    }

    Derived call(Expr.Call call, List<Derived> arguments) {
        if (arguments.isEmpty() || arguments.stream().anyMatch(a -> a.value() instanceof Datum.Unknown)) {
            if (arguments.isEmpty()) {
                wrongCall(call, "It takes at least one value.");
            }
            return Expressions.unknown(call.span());
        }
        Optional<Datum> value = switch (call.function().text()) {
            case "min" -> furthest(arguments, -1);
            case "max" -> furthest(arguments, 1);
            case "abs" -> quantityOf(arguments.getFirst().value())
                    .flatMap(q -> q.abs().found())
                    .map(Datum.Exactly::new);
            case "round" -> stepped(arguments, Quantity::roundTo);
            case "round_up" -> stepped(arguments, Quantity::roundUpTo);
            default -> stepped(arguments, Quantity::roundDownTo);
        };
        if (value.isEmpty()) {
            wrongCall(call,
                    "`min` and `max` take values of one kind; `round` takes a value and a step of the same kind.");
            return Expressions.unknown(call.span());
        }
        List<Derivation> inputs = arguments.stream().map(Derived::how).toList();
        return new Derived(
                value.get(),
                new Derivation(
                        "",
                        value.get(),
                        new Derivation.Rule(call.span().text(), "as written", inputs),
                        Optional.of(call.span())));
    }

    private void wrongCall(Expr.Call call, String takes) {
        Span at = call.span();
        session.add(Finding.of(
                ModelFindings.DO_NOT_ADD_UP,
                at,
                "`" + call.function().text() + "` cannot take these values")
                .found(takes)
                .build());
    }

    private static Optional<Quantity> quantityOf(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> Optional.of(quantity);
            case Datum.Bare(BigFraction amount, Unit unit) -> Optional.of(unit.of(amount));
            default -> Optional.empty();
        };
    }

    private static Optional<Datum> furthest(List<Derived> arguments, int way) {
        Datum best = arguments.getFirst().value();
        for (Derived each : arguments) {
            Optional<Integer> comparison = compare(each.value(), best);
            if (comparison.isEmpty()) {
                return Optional.empty();
            }
            if (Integer.signum(comparison.get()) == way) {
                best = each.value();
            }
        }
        return Optional.of(best);
    }

    private static Optional<Datum> stepped(List<Derived> arguments, Together round) {
        if (arguments.size() != 2) {
            return Optional.empty();
        }
        return both(arguments.get(0).value(), arguments.get(1).value())
                .flatMap(q -> round.apply(q.left(), q.right()).found())
                .map(Datum.Exactly::new);
    }
}
