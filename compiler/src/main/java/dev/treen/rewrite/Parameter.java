package dev.treen.rewrite;

import dev.treen.quantity.Dimension;
import dev.treen.quantity.Unit;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A parameter of a pattern, or one that goes with a choice.
 *
 * @param key its name, and before it, with a dot, that of the choice that it goes with
 * @param type length, size, count, board, …, or {@code one of}
 * @param words what it may be, where it is one of a few
 * @param standard its measures in millimetres where it is not given: none where that is not written in figures
 * @param word what it is where it is not given, where that is a word: {@code auto}, say
 * @param required whether it has to be given
 */
record Parameter(
        String key, String type, List<String> words, List<BigFraction> standard, String word, boolean required) {
    private static final String CHOICE = "one of";

    /** Those of {@code pattern}, in whose file a bare number is in {@code unit}. */
    static List<Parameter> of(Statement.Pattern pattern, Unit unit) {
        List<Parameter> all = new ArrayList<>();
        for (Statement.Param param : params(pattern.body())) {
            all.add(of(param, "", unit));
            params(param.body()).forEach(inner -> all.add(of(inner, param.name().text() + ".", unit)));
        }
        return all;
    }

    private static List<Statement.Param> params(Optional<Block> body) {
        return body.stream()
                .flatMap(block -> block.statements().stream())
                .filter(Statement.Param.class::isInstance)
                .map(Statement.Param.class::cast)
                .toList();
    }

    private static Parameter of(Statement.Param param, String before, Unit unit) {
        List<String> words = param.type().choices().stream().map(Name::text).toList();
        String word = param.standard()
                .map(expr -> expr instanceof Expr.Word(var _, String name) ? name : "")
                .orElse("");
        return new Parameter(
                before + param.name().text(),
                words.isEmpty() ? param.type().name() : CHOICE,
                words,
                param.standard().map(expr -> measures(expr, unit)).orElse(List.of()),
                word,
                param.standard().isEmpty());
    }

    private static List<BigFraction> measures(Expr expr, Unit unit) {
        List<Expr> each = expr instanceof Expr.Sizes sizes ? sizes.measures() : List.of(expr);
        List<BigFraction> measures = each.stream()
                .map(one -> one instanceof Expr.Figure figure
                        ? figure.unit().orElse(unit).of(figure.amount()).as(Dimension.LENGTH)
                        : Optional.<BigFraction>empty())
                .flatMap(Optional::stream)
                .toList();
        return measures.size() == each.size() ? measures : List.of();
    }

    boolean isChoice() {
        return type.equals(CHOICE);
    }

    /** Whether it is left to Treen where it is not given. */
    boolean auto() {
        return word.equals("auto");
    }

    boolean isInner() {
        return key.contains(".");
    }

    /** Its name alone. */
    String name() {
        return key.substring(key.indexOf('.') + 1);
    }

    /** Whether it is a length or a size, which can be solved for. */
    boolean isMeasured() {
        return type.equals("length") || type.equals("size");
    }

    /** What it begins with: its standard, or {@code each} for all its measures. */
    List<BigFraction> beginning(BigFraction each) {
        int count = type.equals("length") ? 1 : auto() ? 2 : 3;
        return standard.isEmpty() ? Collections.nCopies(count, each) : standard;
    }
}
