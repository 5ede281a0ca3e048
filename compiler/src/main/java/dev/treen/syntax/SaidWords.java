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
        all(List.of(statement), new NodeWalk(node -> {
            if (node instanceof Expr.Word word) {
                found.add(word);
            }
        }));
        return found;
    }

    private static void all(List<Statement> statements, NodeWalk walk) {
        for (Statement statement : statements) {
            walk.statement(statement);
            statement.body().ifPresent(block -> all(block.statements(), walk));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(block -> all(block.statements(), walk));
            }
        }
    }
}
