package dev.treen.syntax;

import dev.treen.finding.Edit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Writes a file in the one style of Treen: two blanks a level, one statement a line, values in a column. A block on one
 * line stays on one line. Only blanks, line ends and semicolons change, and what cannot be read stays as it is.
 */
public final class Formatter {
    /** Some editors of Windows put it at the start of a file; it stays where it is. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private Formatter() {
    }

    /** The text of the file in the one style. */
    public static String format(SyntaxTree tree) {
        StringBuilder text = new StringBuilder(tree.file().text());
        for (Edit edit : edits(tree).reversed()) {
            text.replace(edit.at().start(), edit.at().end(), edit.text());
        }
        return text.toString();
    }

    /** The same as few small edits, in order: each one changes the blanks between two tokens. */
    public static List<Edit> edits(SyntaxTree tree) {
        SourceFile before = tree.file();
        if (tree.tokens().isEmpty() && !before.text().isBlank()) {
            return List.of();
        }
        SourceFile after = new SourceFile(before.name(), new FormatWriter(tree).write());
        List<Span> old = kept(before, tree.tokens());
        SyntaxTree again = Parser.parse(after);
        List<Span> written = kept(after, again.tokens());
        if (!sameTexts(old, written) || !shape(tree, old).equals(shape(again, written))) {
            // Better no change than a change of meaning.
            return List.of();
        }
        List<Edit> edits = new ArrayList<>();
        for (int i = 0; i <= old.size(); i++) {
            Span was = gap(before, old, i);
            String is = gap(after, written, i).text();
            if (!was.text().equals(is)) {
                edits.add(new Edit(was, is));
            }
        }
        return List.copyOf(edits);
    }

    /** What must stay: every token and comment but new lines and semicolons, comments without blanks at their end. */
    private static List<Span> kept(SourceFile file, List<Token> tokens) {
        List<Span> kept = new ArrayList<>();
        for (Token token : tokens) {
            String text = file.text().substring(token.start(), token.end());
            if (token.kind() != Token.Kind.NEW_LINE && !text.equals(";")) {
                kept.add(file.span(token.start(), token.start() + text.stripTrailing().length()));
            }
        }
        return kept;
    }

    private static boolean sameTexts(List<Span> one, List<Span> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).text().equals(other.get(i).text())) {
                return false;
            }
        }
        return true;
    }

    /** Which statement begins and ends at which token, and how deep it is. */
    private static List<String> shape(SyntaxTree tree, List<Span> tokens) {
        int[] starts = tokens.stream().mapToInt(Span::start).toArray();
        List<String> shape = new ArrayList<>();
        shape(tree.statements(), 0, starts, shape);
        return shape;
    }

    private static void shape(List<Statement> statements, int depth, int[] starts, List<String> into) {
        for (Statement statement : statements) {
            int first = Arrays.binarySearch(starts, statement.span().start());
            int last = Arrays.binarySearch(starts, statement.span().end());
            into.add(depth + statement.getClass().getSimpleName() + first + " " + (last < 0 ? ~last : last));
            statement.body().ifPresent(block -> shape(block.statements(), depth + 1, starts, into));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(block -> shape(block.statements(), depth + 1, starts, into));
            }
        }
    }

    /** What stands before token {@code i}, or behind the last one. */
    private static Span gap(SourceFile file, List<Span> tokens, int i) {
        int start = i == 0 ? (file.text().startsWith(BYTE_ORDER_MARK) ? 1 : 0) : tokens.get(i - 1).end();
        int end = i == tokens.size() ? file.text().length() : tokens.get(i).start();
        return file.span(start, end);
    }
}
