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
            TreenLexer.HOLE,
            TreenLexer.LPAREN,
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
        boolean value = isValue(types);
        boolean name = types.contains(TreenLexer.HOLE) && !value;
        if (value) {
            words.add("a value");
        }
        if (name) {
            words.add("a name");
        }
        for (int type : types) {
            String word = switch (type) {
                case TreenLexer.HOLE, TreenLexer.LPAREN, TreenLexer.NAME -> "";
                case TreenLexer.NUMBER -> value || name ? "" : "a figure";
                case TreenLexer.TEXT -> value ? "" : "text in quotes";
                case TreenLexer.X -> types.contains(TreenLexer.HOLE) ? "" : "an operator";
                case Token.EOF -> "the end of the line";
                case TreenLexer.ASSIGN, TreenLexer.COLON, TreenLexer.COMMA, TreenLexer.RPAREN, TreenLexer.RBRACK ->
                    written(type);
                // Any other word could be a name as well where a name can stand.
                default -> types.contains(TreenLexer.NAME) ? "" : written(type);
            };
            if (!word.isEmpty() && words.size() < MOST) {
                words.add(word);
            }
        }
        return joined(words);
    }

    /** Whether a value could stand there, not a name alone. */
    static boolean isValue(Set<Integer> types) {
        return types.contains(TreenLexer.HOLE) && types.contains(TreenLexer.LPAREN);
    }

    /** A word or mark of the language as it is written. */
    static String written(int type) {
        return "`" + TreenLexer.VOCABULARY.getLiteralName(type).replace("'", "") + "`";
    }

    private static String joined(List<String> words) {
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.getLast();
    }
}
