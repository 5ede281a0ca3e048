package dev.treen.syntax;

import dev.treen.grammar.TreenParser;
import dev.treen.grammar.TreenParserBaseVisitor;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/** Turns one head, with the blocks that stand behind it, into a statement of the tree. */
final class HeadReader extends TreenParserBaseVisitor<Statement> {
    private final ExprReader exprs;
    private final Surroundings around;

    HeadReader(ExprReader exprs, Surroundings around) {
        this.exprs = exprs;
        this.around = around;
    }

    /**
     * What belongs to the statement besides its head.
     *
     * @param span the whole statement
     * @param valuesLost whether a part of the head had to be passed over, so that its values are not what was meant
     */
    record Surroundings(
            Span span, Optional<Block> body, Optional<Block> otherwise, String doc, boolean valuesLost) {}

    @Override
    public Statement visitLine(TreenParser.LineContext context) {
        return visit(context.head());
    }

    @Override
    public Statement visitProjectHead(TreenParser.ProjectHeadContext context) {
        return new Statement.Project(around.span(), exprs.text(context.text()), around.body());
    }

    @Override
    public Statement visitUseHead(TreenParser.UseHeadContext context) {
        return new Statement.Use(around.span(), exprs.text(context.text()), optional(context.name()));
    }

    @Override
    public Statement visitLetHead(TreenParser.LetHeadContext context) {
        return new Statement.Let(around.span(), exprs.name(context.name()), value(context.expr()), around.doc());
    }

    @Override
    public Statement visitBoardHead(TreenParser.BoardHeadContext context) {
        return new Statement.Board(
                around.span(), context.SHEET() != null, exprs.name(context.name()), around.body(), around.doc());
    }

    @Override
    public Statement visitPartHead(TreenParser.PartHeadContext context) {
        return new Statement.Part(
                around.span(),
                exprs.name(context.name()),
                Optional.ofNullable(context.expr()).map(exprs::visit),
                Optional.ofNullable(context.path()).map(exprs::visit),
                around.body(),
                around.doc());
    }

    @Override
    public Statement visitJointHead(TreenParser.JointHeadContext context) {
        List<Statement.Pair> pairs = context.pair() == null ? List.of() : pairs(context);
        return new Statement.Joint(
                around.span(), exprs.name(context.kind), pairs, optional(context.alias), around.body());
    }

    private List<Statement.Pair> pairs(TreenParser.JointHeadContext context) {
        List<Statement.Pair> pairs = new ArrayList<>();
        Expr left = exprs.visit(context.pair().path(0));
        boolean into = context.pair().INTO() != null;
        pairs.add(new Statement.Pair(exprs.span(context.pair()), left, into, exprs.visit(context.pair().path(1))));
        for (TreenParser.OthersContext other : context.others()) {
            boolean alone = other.path().size() == 1;
            left = alone ? left : exprs.visit(other.path(0));
            into = alone ? into : other.INTO() != null;
            pairs.add(new Statement.Pair(exprs.span(other), left, into, exprs.visit(other.path(alone ? 0 : 1))));
        }
        return List.copyOf(pairs);
    }

    @Override
    public Statement visitRequireHead(TreenParser.RequireHeadContext context) {
        return new Statement.Require(around.span(), value(context.expr()), exprs.text(context.text()));
    }

    @Override
    public Statement visitAcceptHead(TreenParser.AcceptHeadContext context) {
        TreenParser.CodeContext code = context.code();
        StringBuilder text = new StringBuilder();
        for (TreenParser.CodeWordContext word : code.codeWord()) {
            text.append(text.isEmpty() ? "" : "-").append(exprs.name(word).text());
        }
        List<Expr> on = context.path().stream().map(exprs::visit).toList();
        return new Statement.Accept(
                around.span(), new Name(exprs.span(code), text.toString()), on, exprs.text(context.text()));
    }

    @Override
    public Statement visitMeasuredHead(TreenParser.MeasuredHeadContext context) {
        return new Statement.Measured(around.span(), exprs.visit(context.path()), value(context.expr()));
    }

    @Override
    public Statement visitHoldsHead(TreenParser.HoldsHeadContext context) {
        return new Statement.Holds(around.span(), exprs.visit(context.path()), around.body());
    }

    @Override
    public Statement visitPatternHead(TreenParser.PatternHeadContext context) {
        return new Statement.Pattern(around.span(), exprs.name(context.name()), around.body(), around.doc());
    }

    @Override
    public Statement visitParamHead(TreenParser.ParamHeadContext context) {
        return new Statement.Param(
                around.span(),
                exprs.name(context.PARAM() == null ? context.property() : context.name()),
                type(context.type()),
                Optional.ofNullable(context.expr()).map(this::value),
                around.body(),
                around.doc());
    }

    private Statement.ParamType type(TreenParser.TypeContext context) {
        if (context.ONE() == null) {
            Name name = exprs.name(context.name(0));
            return new Statement.ParamType(name.span(), name.text(), List.of());
        }
        List<Name> choices = context.name().stream().map(exprs::name).toList();
        return new Statement.ParamType(exprs.span(context), "one of", choices);
    }

    @Override
    public Statement visitRepeatHead(TreenParser.RepeatHeadContext context) {
        return new Statement.Repeat(
                around.span(), exprs.name(context.name()), value(context.expr()), around.body());
    }

    @Override
    public Statement visitWhenHead(TreenParser.WhenHeadContext context) {
        return new Statement.When(around.span(), value(context.expr()), around.body(), around.otherwise());
    }

    @Override
    public Statement visitPropertyHead(TreenParser.PropertyHeadContext context) {
        List<TreenParser.ValueContext> values = context.value();
        Name name = exprs.name(context.property());
        if (around.valuesLost()) {
            Span place = values.isEmpty()
                    ? name.span().endPoint()
                    : exprs.span(values.getFirst().getStart(), values.getLast().getStop());
            Value lost = new Value(place, new Expr.Missing(place), List.of());
            return new Statement.Property(around.span(), name, List.of(lost), around.body(), around.doc());
        }
        return new Statement.Property(
                around.span(), name, values.stream().map(this::value).toList(), around.body(), around.doc());
    }

    private Value value(TreenParser.ValueContext context) {
        List<Value.Tail> tails = new ArrayList<>();
        for (TreenParser.TailContext tail : context.tail()) {
            Token token = tail.getStart();
            Name word = new Name(exprs.span(token, token), token.getText());
            tails.add(new Value.Tail(word, Optional.ofNullable(tail.expr()).map(exprs::visit)));
        }
        return new Value(exprs.span(context), exprs.visit(context.expr()), List.copyOf(tails));
    }

    private Expr value(TreenParser.ExprContext context) {
        return around.valuesLost() ? new Expr.Missing(exprs.span(context)) : exprs.visit(context);
    }

    private Optional<Name> optional(TreenParser.@Nullable NameContext context) {
        return Optional.ofNullable(context).map(exprs::name);
    }
}
