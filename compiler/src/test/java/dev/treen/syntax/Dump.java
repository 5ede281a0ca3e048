package dev.treen.syntax;

import dev.treen.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The tree as text, for tests: what was read and how it hangs together, without places. */
final class Dump {
    private Dump() {
    }

    static String of(List<Statement> statements) {
        return statements.stream().map(Dump::of).collect(Collectors.joining("\n"));
    }

    static String of(Statement statement) {
        return switch (statement) {
            case Statement.Project s -> "project" + text(s.title()) + body(s.body());
            case Statement.Use s -> "use" + text(s.path()) + s.alias().map(a -> " as " + of(a)).orElse("");
            case Statement.Let s -> doc(s.doc()) + "let " + of(s.name()) + " = " + of(s.value());
            case Statement.Board s -> doc(s.doc()) + (s.sheet() ? "sheet " : "board ") + of(s.name()) + body(s.body());
            case Statement.Part s -> doc(s.doc()) + "part " + of(s.name())
                    + s.index().map(i -> "[" + of(i) + "]").orElse("")
                    + s.like().map(l -> " like " + of(l)).orElse("") + body(s.body());
            case Statement.Joint s -> "joint " + of(s.kind()) + (s.pairs().isEmpty() ? "" : " ")
                    + s.pairs().stream()
                            .map(p -> of(p.left()) + (p.into() ? " into " : " to ") + of(p.right()))
                            .collect(Collectors.joining(", "))
                    + s.alias().map(a -> " as " + of(a)).orElse("") + body(s.body());
            case Statement.Require s -> "require " + of(s.condition()) + because(s.because());
            case Statement.Accept s -> "accept " + of(s.code()) + " on " + exprs(s.on()) + because(s.because());
            case Statement.Measured s -> "measured " + of(s.what()) + " " + of(s.value());
            case Statement.Holds s -> "holds " + of(s.what()) + body(s.body());
            case Statement.Pattern s -> doc(s.doc()) + "pattern " + of(s.name()) + body(s.body());
            case Statement.Param s -> doc(s.doc()) + "param " + of(s.name()) + " : " + s.type().name()
                    + s.type().choices().stream().map(c -> " " + of(c)).collect(Collectors.joining(","))
                    + s.standard().map(e -> " = " + of(e)).orElse("") + body(s.body());
            case Statement.Repeat s -> "repeat " + of(s.variable()) + " in " + of(s.over()) + body(s.body());
            case Statement.When s -> "when " + of(s.condition()) + body(s.body())
                    + s.otherwise().map(b -> " else" + body(Optional.of(b))).orElse("");
            case Statement.Property s -> doc(s.doc()) + of(s.name())
                    + s.values().stream().map(v -> " " + of(v)).collect(Collectors.joining(","))
                    + body(s.body());
            case Statement.Broken s -> "broken" + body(s.body());
        };
    }

    static String of(Value value) {
        return of(value.expr())
                + value.tails().stream()
                        .map(t -> " ~" + of(t.word()) + t.argument().map(a -> "(" + of(a) + ")").orElse(""))
                        .collect(Collectors.joining());
    }

    static String of(Expr expr) {
        return switch (expr) {
            case Expr.Figure e -> amount(e.amount()) + e.unit().map(Unit::spelling).orElse("");
            case Expr.SlopeFigure e -> amount(e.rise()) + ":" + amount(e.run());
            case Expr.Text e -> '"' + e.value() + '"';
            case Expr.Truth e -> Boolean.toString(e.value());
            case Expr.Word e -> e.name();
            case Expr.Member e -> of(e.of()) + "." + of(e.name());
            case Expr.Element e -> of(e.of()) + "[" + of(e.index()) + "]";
            case Expr.Prefix e -> "(" + e.operator().sign() + " " + of(e.operand()) + ")";
            case Expr.Infix e -> "(" + of(e.left()) + " " + e.operator().sign() + " " + of(e.right()) + ")";
            case Expr.Sizes e -> "(" + e.measures().stream().map(Dump::of).collect(Collectors.joining(" x ")) + ")";
            case Expr.Between e -> "(" + of(e.low()) + " .. " + of(e.high()) + ")";
            case Expr.Choice e -> "(when " + of(e.condition()) + " then " + of(e.yes()) + " else " + of(e.no()) + ")";
            case Expr.Call e -> of(e.function()) + "(" + exprs(e.arguments()) + ")";
            case Expr.Missing _ -> "?";
        };
    }

    private static String of(Name name) {
        return name.text().isEmpty() ? "?" : name.text();
    }

    private static String exprs(List<Expr> exprs) {
        return exprs.stream().map(Dump::of).collect(Collectors.joining(", "));
    }

    private static String amount(BigFraction amount) {
        return amount.toString().replace(" ", "");
    }

    private static String text(Optional<Expr.Text> text) {
        return text.map(t -> " " + of(t)).orElse(" ?");
    }

    private static String because(Optional<Expr.Text> text) {
        return text.map(t -> " because " + of(t)).orElse("");
    }

    private static String doc(String doc) {
        return doc.isEmpty() ? "" : "<" + doc.replace("\n", "|") + "> ";
    }

    private static String body(Optional<Block> body) {
        return body.map(b -> b.statements().isEmpty() ? " {}" : " {\n" + of(b.statements()).indent(2) + "}")
                .orElse("");
    }
}
