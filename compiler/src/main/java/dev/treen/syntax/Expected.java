package dev.treen.syntax;

import dev.treen.grammar.TreenLexer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.Token;

/** What could stand at a place, in a maker's words. */
final class Expected {
    /** The types of token that a message may speak of. */
    static final List<Integer> ASKED = List.of(
            TreenLexer.NUMBER,
            TreenLexer.NAME,
            TreenLexer.TEXT,
            TreenLexer.ASSIGN,
            TreenLexer.COLON,
            TreenLexer.TO,
            TreenLexer.INTO,
            TreenLexer.IN,
            TreenLexer.THEN,
            TreenLexer.ELSE,
            TreenLexer.RPAREN,
            TreenLexer.RBRACK,
            TreenLexer.LIKE,
            TreenLexer.AS,
            TreenLexer.ON,
            TreenLexer.BECAUSE,
            TreenLexer.COMMA,
            TreenLexer.X);
    private static final int MOST = 5;

    private Expected() {
    }

    /** The types as one phrase: {@code a value}, {@code `=` or `:`}; empty for none. */
    static String phrase(Set<Integer> types) {
        List<String> words = new ArrayList<>();
        boolean value = types.contains(TreenLexer.NUMBER) && types.contains(TreenLexer.NAME);
        boolean afterValue = types.contains(TreenLexer.X) && !value;
        if (value) {
            words.add("a value");
        }
        for (int type : types) {
            String word = switch (type) {
                case TreenLexer.NUMBER -> value ? "" : "a figure";
                case TreenLexer.NAME -> value || afterValue ? "" : "a name";
                case TreenLexer.TEXT -> value ? "" : "text in quotes";
                case TreenLexer.X -> afterValue && !types.contains(TreenLexer.COMMA) ? "an operator" : "";
                case TreenLexer.LIKE, TreenLexer.AS, TreenLexer.ON, TreenLexer.BECAUSE, TreenLexer.TO, TreenLexer.INTO,
                        TreenLexer.IN ->
                    value || (types.contains(TreenLexer.NAME) && !afterValue) ? "" : written(type);
                case Token.EOF -> "the end of the line";
                default -> written(type);
            };
            if (!word.isEmpty() && words.size() < MOST) {
                words.add(word);
            }
        }
        return joined(words);
    }

    private static String written(int type) {
        return "`" + TreenLexer.VOCABULARY.getLiteralName(type).replace("'", "") + "`";
    }

    private static String joined(List<String> words) {
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.getLast();
    }
}
