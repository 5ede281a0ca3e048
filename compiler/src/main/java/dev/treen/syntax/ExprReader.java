package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.grammar.TreenLexer;
import dev.treen.grammar.TreenParser;
import dev.treen.grammar.TreenParserBaseVisitor;
import dev.treen.quantity.NumberText;
import dev.treen.quantity.Outcome;
import dev.treen.quantity.Refusal;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.apache.commons.numbers.fraction.BigFraction;

/** Turns what the generated parser read into the expressions of the tree. */
final class ExprReader extends TreenParserBaseVisitor<Expr> {
    private final SourceFile file;
    private final FindingList findings;
    private final BitSet names;

    /**
     * A reader for one file.
     *
     * @param names takes the offsets of the contextual words that are names here
     */
    ExprReader(SourceFile file, FindingList findings, BitSet names) {
        this.file = file;
        this.findings = findings;
        this.names = names;
    }

    Span span(Token first, Token last) {
        return file.span(first.getStartIndex(), last.getStopIndex() + 1);
    }

    Span span(ParserRuleContext context) {
        return span(context.getStart(), context.getStop());
    }

    Name name(ParserRuleContext context) {
        Token token = context.getStart();
        names.set(token.getStartIndex());
        String text = token.getText();
        return new Name(span(token, token), Hidden.in(text) ? Hidden.without(text) : text);
    }

    /** The text in quotes, unless it is missing. */
    Optional<Expr.Text> text(TreenParser.@org.jspecify.annotations.Nullable TextContext context) {
        return context == null || context.getStart().getStopIndex() < context.getStart().getStartIndex()
                ? Optional.empty()
                : Optional.of(text(context.getStart()));
    }

    private Expr.Text text(Token token) {
        String raw = token.getText();
        int end = token.getType() == TreenLexer.TEXT ? raw.length() - 1 : raw.length();
        StringBuilder value = new StringBuilder();
        for (int i = 1; i < end; i++) {
            char c = raw.charAt(i);
            if (c == '\\' && i + 1 < end) {
                i++;
                value.append(switch (raw.charAt(i)) {
                    case 'n' -> '\n';
                    case 't' -> '\t';
                    default -> raw.charAt(i);
                });
            } else {
                value.append(c);
            }
        }
        return new Expr.Text(span(token, token), value.toString());
    }

    @Override
    public Expr visitFigureExpr(TreenParser.FigureExprContext context) {
        TreenParser.FigureContext figure = context.figure();
        Expr sum = figure(figure.amount(0),
                figure.UNIT().isEmpty() ? Optional.empty() : Optional.of(figure.UNIT(0).getSymbol()));
        for (int i = 1; i < figure.amount().size(); i++) {
            Expr next = figure(figure.amount(i), Optional.of(figure.UNIT(i).getSymbol()));
            sum = new Expr.Infix(sum.span().to(next.span()), Operator.PLUS, sum, next);
        }
        return sum;
    }

    private Expr figure(TreenParser.AmountContext context, Optional<Token> unitToken) {
        Span span = span(context.getStart(), unitToken.orElse(context.getStop()));
        Optional<Unit> unit = unitToken.flatMap(token -> unit(token.getText()));
        boolean unitMissing = unitToken.isPresent() && unit.isEmpty();
        return switch (amount(context)) {
            case Outcome.Refused<BigFraction>(Refusal why) -> {
                if (why.kind() != Refusal.Kind.TOO_LONG) {
                    findings.add(Finding.of(SyntaxFindings.UNREADABLE_NUMBER, span, why.text()).build());
                }
                yield new Expr.Missing(span);
            }
            case Outcome.Got<BigFraction>(BigFraction value) ->
                unitMissing ? new Expr.Missing(span) : new Expr.Figure(span, value, unit);
        };
    }

    /** The unit of that spelling, or the one that was surely meant; the token reader has said so. */
    private static Optional<Unit> unit(String spelling) {
        Optional<Unit> known = Unit.spelled(spelling);
        List<String> near = known.isPresent() ? List.of() : Unit.suggestions(spelling);
        return near.size() == 1 ? Unit.spelled(near.getFirst()) : known;
    }

    private static Outcome<BigFraction> amount(TreenParser.AmountContext context) {
        if (context.FRACTION() == null) {
            return number(context.NUMBER().getText());
        }
        String fraction = context.FRACTION().getText();
        int bar = fraction.indexOf('/');
        String above = fraction.substring(0, bar);
        String below = fraction.substring(bar + 1);
        return context.NUMBER() == null
                ? NumberText.fraction(above, below)
                : NumberText.mixed(context.NUMBER().getText(), above, below);
    }

    private static Outcome<BigFraction> number(String text) {
        return NumberText.decimal(text.startsWith(".") ? "0" + text : text);
    }

    @Override
    public Expr visitSlopeExpr(TreenParser.SlopeExprContext context) {
        Optional<BigFraction> rise = number(context.NUMBER(0).getText()).found();
        Optional<BigFraction> run = number(context.NUMBER(1).getText()).found();
        Span span = span(context);
        return rise.isPresent() && run.isPresent()
                ? new Expr.SlopeFigure(span, rise.get(), run.get())
                : new Expr.Missing(span);
    }

    @Override
    public Expr visitTextExpr(TreenParser.TextExprContext context) {
        Span span = span(context);
        return span.start() == span.end() ? new Expr.Missing(span) : text(context.getStart());
    }

    @Override
    public Expr visitTruthExpr(TreenParser.TruthExprContext context) {
        return new Expr.Truth(span(context), context.TRUE() != null);
    }

    @Override
    public Expr visitWordExpr(TreenParser.WordExprContext context) {
        return word(context.name());
    }

    private Expr word(TreenParser.NameContext context) {
        Name name = name(context);
        return name.text().isEmpty() ? new Expr.Missing(name.span()) : new Expr.Word(name.span(), name.text());
    }

    @Override
    public Expr visitCallExpr(TreenParser.CallExprContext context) {
        return new Expr.Call(span(context), name(context.name()), all(context.expr()));
    }

    private List<Expr> all(List<TreenParser.ExprContext> contexts) {
        return contexts.stream().map(this::visit).toList();
    }

    @Override
    public Expr visitGroupExpr(TreenParser.GroupExprContext context) {
        return visit(context.expr());
    }

    @Override
    public Expr visitMemberExpr(TreenParser.MemberExprContext context) {
        return new Expr.Member(span(context), visit(context.expr()), name(context.name()));
    }

    @Override
    public Expr visitElementExpr(TreenParser.ElementExprContext context) {
        return new Expr.Element(span(context), visit(context.expr(0)), visit(context.expr(1)));
    }

    @Override
    public Expr visitStartPath(TreenParser.StartPathContext context) {
        return word(context.name());
    }

    @Override
    public Expr visitMemberPath(TreenParser.MemberPathContext context) {
        return new Expr.Member(span(context), visit(context.path()), name(context.name()));
    }

    @Override
    public Expr visitElementPath(TreenParser.ElementPathContext context) {
        return new Expr.Element(span(context), visit(context.path()), visit(context.expr()));
    }

    /** A minus before a figure is part of it: for a temperature no other reading is true. */
    @Override
    public Expr visitMinusExpr(TreenParser.MinusExprContext context) {
        Span span = span(context);
        Expr operand = visit(context.expr());
        return operand instanceof Expr.Figure(Span _, BigFraction amount, Optional<Unit> unit)
                && context.expr() instanceof TreenParser.FigureExprContext
                        ? new Expr.Figure(span, amount.negate(), unit)
                        : new Expr.Prefix(span, Operator.MINUS, operand);
    }

    @Override
    public Expr visitNotExpr(TreenParser.NotExprContext context) {
        return new Expr.Prefix(span(context), Operator.NOT, visit(context.expr()));
    }

    @Override
    public Expr visitInfixExpr(TreenParser.InfixExprContext context) {
        return new Expr.Infix(
                span(context), operator(context.op.getType()), visit(context.expr(0)), visit(context.expr(1)));
    }

    private static Operator operator(int type) {
        return switch (type) {
            case TreenLexer.PLUS -> Operator.PLUS;
            case TreenLexer.MINUS -> Operator.MINUS;
            case TreenLexer.TIMES -> Operator.TIMES;
            case TreenLexer.OVER -> Operator.OVER;
            case TreenLexer.BELOW -> Operator.LESS;
            case TreenLexer.AT_MOST -> Operator.AT_MOST;
            case TreenLexer.ABOVE -> Operator.MORE;
            case TreenLexer.AT_LEAST -> Operator.AT_LEAST;
            case TreenLexer.EQUAL -> Operator.EQUAL;
            case TreenLexer.UNEQUAL -> Operator.UNEQUAL;
            case TreenLexer.AND -> Operator.AND;
            case TreenLexer.OR -> Operator.OR;
            default -> throw new IllegalStateException("not an operator: " + type);
        };
    }

    @Override
    public Expr visitSizesExpr(TreenParser.SizesExprContext context) {
        List<Expr> measures = new ArrayList<>();
        measures(context, measures);
        if (measures.size() > 3) {
            Span fourth = measures.get(3).span();
            findings.add(Finding.of(SyntaxFindings.UNREADABLE_LINE, fourth, "a size has two or three measures")
                    .label("is one too many")
                    .build());
        }
        return new Expr.Sizes(span(context), List.copyOf(measures.subList(0, Math.min(3, measures.size()))));
    }

    private void measures(TreenParser.SizesExprContext context, List<Expr> into) {
        if (context.expr(0) instanceof TreenParser.SizesExprContext before) {
            measures(before, into);
        } else {
            into.add(visit(context.expr(0)));
        }
        into.add(visit(context.expr(1)));
    }

    @Override
    public Expr visitBetweenExpr(TreenParser.BetweenExprContext context) {
        return new Expr.Between(span(context), visit(context.expr(0)), visit(context.expr(1)));
    }

    @Override
    public Expr visitChoiceExpr(TreenParser.ChoiceExprContext context) {
        return new Expr.Choice(
                span(context), visit(context.expr(0)), visit(context.expr(1)), visit(context.expr(2)));
    }
}
