package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.QuantityText;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Something that must hold, {@code require lid.gap >= 0.3mm because "…"}. It is read with the rest of the file, for its
 * names, and judged when the joints are made and the facts are known.
 */
public final class Requirement {
    private final Statement.Require statement;
    private final Scope scope;
    private final Session session;

    Requirement(Statement.Require statement, Scope scope, Session session) {
        this.statement = statement;
        this.scope = scope;
        this.session = session;
    }

    /** Reads it for its names: what is wrong with them whatever the facts are is said with the rest of the file. */
    void read() {
        session.within(
                scope.instance(), () -> new Expressions(session, Later.FACTS).evaluate(statement.condition(), scope));
    }

    /** The condition in the file. */
    public Span at() {
        return statement.condition().span();
    }

    /** The reason that the project gives. */
    public Optional<String> because() {
        return statement.because().map(Expr.Text::value);
    }

    /** Nothing when it holds; else what is to be said of it, but for what was said when it was read. */
    public List<Finding> judge(FactSource facts, LengthFormat format) {
        Session own = session.beside();
        Expressions expressions = new Expressions(own, facts);
        Derived derived = own.within(
                scope.instance(), () -> expressions.evaluate(statement.condition(), scope));
        Set<Finding> said = new HashSet<>(session.findings);
        List<Finding> found = new ArrayList<>(own.findings);
        found.removeIf(said::contains);
        switch (derived.value()) {
            case Datum.Unknown unknown -> {
            }
            case Datum.Truth(boolean holds) -> {
                if (!holds) {
                    found.add(notMet(derived.how(), format));
                }
            }
            default -> found.add(Finding.of(ModelFindings.WRONG_KIND, at(), "`require` wants a condition")
                    .found("Found " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return found;
    }

    private Finding notMet(Derivation how, LengthFormat format) {
        Finding.Builder finding = Finding.of(
                ModelFindings.NOT_MET, at(), "It does not hold that `" + at().text() + "`")
                .because(because().map(Requirement::sentence).orElse(""));
        if (how.formula() instanceof Derivation.Combined(String sign, Derivation left, Derivation right)) {
            Optional<Quantity> one = quantity(left.value());
            Optional<Quantity> other = quantity(right.value());
            if (one.isPresent() && other.isPresent()) {
                finding.found("On the left of `" + sign + "` is " + text(one.get(), format) + ", on the right "
                        + text(other.get(), format) + ".");
                finding.number("left", one.get().amount().doubleValue());
                finding.number("right", other.get().amount().doubleValue());
                source(left).or(() -> source(right)).ifPresent(finding::because);
            }
        }
        subjects(statement.condition(), finding);
        return finding.build();
    }

    private static String sentence(String reason) {
        String trimmed = reason.strip();
        return trimmed.isEmpty() || trimmed.endsWith(".") ? trimmed : trimmed + ".";
    }

    /** What a fact rests on, with the reason of the project before it. */
    private Optional<String> source(Derivation derivation) {
        return derivation.formula() instanceof Derivation.Rule(String text, String source, var inputs)
                && derivation.at().isEmpty()
                        ? Optional.of((because().map(b -> sentence(b) + " ").orElse("") + "`" + derivation.label()
                                + "` is " + text + " (" + source + ")."))
                        : Optional.empty();
    }

    /** Tells sums apart that the project's own rounding would show alike. */
    private static String text(Quantity quantity, LengthFormat format) {
        return QuantityText.write(
                quantity, format instanceof LengthFormat.Metric ? new LengthFormat.Metric(2) : format);
    }

    private static Optional<Quantity> quantity(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> Optional.of(quantity);
            case Datum.Bare bare -> Optional.of(bare.unit().of(bare.amount()));
            default -> Optional.empty();
        };
    }

    private void subjects(Expr expr, Finding.Builder finding) {
        switch (expr) {
            case Expr.Member member -> new Expressions(session).entry(member.of(), scope)
                    .filter(PartEntry.class::isInstance)
                    .ifPresent(part -> finding.about(((PartEntry) part).path()));
            case Expr.Infix infix -> {
                subjects(infix.left(), finding);
                subjects(infix.right(), finding);
            }
            case Expr.Prefix prefix -> subjects(prefix.operand(), finding);
            case Expr.Call call -> call.arguments().forEach(each -> subjects(each, finding));
            case Expr.Figure f -> {
            }
            case Expr.SlopeFigure s -> {
            }
            case Expr.Text t -> {
            }
            case Expr.Truth t -> {
            }
            case Expr.Word w -> {
            }
            case Expr.Element e -> {
            }
            case Expr.Sizes s -> {
            }
            case Expr.Between b -> {
            }
            case Expr.Choice c -> {
            }
            case Expr.Missing m -> {
            }
        }
    }

    /** Facts that are not known yet: asking for one is no fault, and its value is unknown. */
    private enum Later implements FactSource {
        FACTS;

        @Override
        public Optional<Derived> fact(String path, String name) {
            Derivation how = new Derivation(name, Datum.UNKNOWN, new Derivation.Standard(""), Optional.empty());
            return Optional.of(new Derived(Datum.UNKNOWN, how));
        }

        @Override
        public List<String> names(String path) {
            return List.of();
        }
    }
}
