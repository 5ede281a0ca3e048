package dev.treen.syntax;

import java.util.ArrayList;
import java.util.List;

/** The numbers of a text that stand without a unit, in the order of the text. */
public final class BareFigures {
    private BareFigures() {
    }

    /** All of them, those in blocks too. */
    public static List<Expr.Figure> of(SyntaxTree tree) {
        List<Expr.Figure> found = new ArrayList<>();
        new NodeWalk(node -> {
            if (node instanceof Expr.Figure figure && figure.unit().isEmpty()) {
                found.add(figure);
            }
        }).all(tree.statements());
        return found;
    }
}
