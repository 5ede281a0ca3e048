package dev.treen.syntax;

import java.util.ArrayList;
import java.util.List;

/** The words that statements say where a value may stand: names of values and things, and words of the language. */
public final class SaidWords {
    private SaidWords() {
    }

    /** Those of {@code statement} with all that stands in its blocks, in the order of the text. */
    public static List<Expr.Word> of(Statement statement) {
        List<Expr.Word> found = new ArrayList<>();
        new NodeWalk(node -> {
            if (node instanceof Expr.Word word) {
                found.add(word);
            }
        }).all(List.of(statement));
        return found;
    }
}
