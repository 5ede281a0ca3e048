package dev.treen.syntax;

import java.util.List;
import java.util.function.Consumer;

/** Shows every piece of statements to someone, outer pieces first. */
final class NodeWalk {
    private final Consumer<Node> visitor;

    NodeWalk(Consumer<Node> visitor) {
        this.visitor = visitor;
    }

    /** Statements with all that stands in their blocks, in the order of the text. */
    void all(List<Statement> statements) {
        for (Statement statement : statements) {
            statement(statement);
            statement.body().ifPresent(block -> all(block.statements()));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(block -> all(block.statements()));
            }
        }
    }

    /** The statement itself and the expressions of its head; blocks are left to the caller. */
    void statement(Statement statement) {
        visitor.accept(statement);
        switch (statement) {
            case Statement.Let s -> expr(s.value());
            case Statement.Part s -> {
                s.index().ifPresent(this::expr);
                s.like().ifPresent(this::expr);
            }
            case Statement.Joint s -> s.pairs().forEach(pair -> exprs(List.of(pair.left(), pair.right())));
            case Statement.Require s -> expr(s.condition());
            case Statement.Accept s -> exprs(s.on());
            case Statement.Measured s -> exprs(List.of(s.what(), s.value()));
            case Statement.Holds s -> expr(s.what());
            case Statement.Param s -> s.standard().ifPresent(this::expr);
            case Statement.Repeat s -> expr(s.over());
            case Statement.When s -> expr(s.condition());
            case Statement.Property s -> s.values().forEach(this::value);
            case Statement.Project _,Statement.Use _,Statement.Board _,Statement.Pattern _,Statement.Broken _ -> {
                // No expressions in these heads.
            }
        }
    }

    private void value(Value value) {
        expr(value.expr());
        value.tails().forEach(tail -> tail.argument().ifPresent(this::expr));
    }

    private void exprs(List<Expr> exprs) {
        exprs.forEach(this::expr);
    }

    private void expr(Expr expr) {
        visitor.accept(expr);
        switch (expr) {
            case Expr.Member e -> expr(e.of());
            case Expr.Element e -> exprs(List.of(e.of(), e.index()));
            case Expr.Prefix e -> expr(e.operand());
            case Expr.Infix e -> exprs(List.of(e.left(), e.right()));
            case Expr.Sizes e -> exprs(e.measures());
            case Expr.Between e -> exprs(List.of(e.low(), e.high()));
            case Expr.Choice e -> exprs(List.of(e.condition(), e.yes(), e.no()));
            case Expr.Call e -> exprs(e.arguments());
            case Expr.Figure _,Expr.SlopeFigure _,Expr.Text _,Expr.Truth _,Expr.Word _,Expr.Missing _ -> {
                // Nothing within.
            }
        }
    }
}
