package dev.treen.syntax;

import dev.treen.finding.Edit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Writes a file in the one style of Treen: two blanks a level, one statement a line, values in a column. A block on one
 * line stays on one line. Only blanks, line ends and semicolons change, and what cannot be read stays as it is.
 */
public final class Formatter {
    /** Some editors of Windows put it at the start of a file; it stays where it is. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final int ROUNDS = 5;

    private Formatter() {
    }

    /** The text of the file in the one style. */
    public static String format(SyntaxTree tree) {
        return Edit.applied(tree.file().text(), edits(tree));
    }

    /** The same as few small edits, in order: each one changes the blanks between two tokens. */
    public static List<Edit> edits(SyntaxTree tree) {
        SourceFile before = tree.file();
        if (tree.tokens().isEmpty() && !before.text().isBlank()) {
            return List.of();
        }
        List<Span> old = kept(before, tree.tokens());
        Optional<SyntaxTree> settled = settled(tree, old);
        if (settled.isEmpty()) {
            // Better no change than a change of meaning.
            return List.of();
        }
        SourceFile after = settled.get().file();
        List<Span> written = kept(after, settled.get().tokens());
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

    /**
     * The file as written, and written again until nothing changes: beside a line that cannot be read, what is copied and
     * what is put into columns may become clear only then. None if it would say something else, or finds no rest.
     */
    private static Optional<SyntaxTree> settled(SyntaxTree tree, List<Span> old) {
        List<String> shape = shape(tree, old);
        SyntaxTree now = tree;
        for (int i = 0; i < ROUNDS; i++) {
            String text = new FormatWriter(now).write();
            if (text.equals(now.file().text())) {
                return Optional.of(now);
            }
            now = Parser.parse(new SourceFile(tree.file().name(), text));
            List<Span> written = kept(now.file(), now.tokens());
            if (!sameTexts(old, written) || !shape.equals(shape(now, written))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
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

    /** Which statement begins and ends at which token, how deep it is, and what cannot be read. */
    private static List<String> shape(SyntaxTree tree, List<Span> tokens) {
        int[] starts = tokens.stream().mapToInt(Span::start).toArray();
        List<String> shape = new ArrayList<>();
        shape(tree.statements(), 0, starts, shape);
        tree.findings().forEach(finding -> shape.add(finding.kind().code() + at(starts, finding.at().start())));
        return shape;
    }

    private static void shape(List<Statement> statements, int depth, int[] starts, List<String> into) {
        for (Statement statement : statements) {
            into.add(depth + statement.getClass().getSimpleName() + at(starts, statement.span().start()) + " "
                    + at(starts, statement.span().end()));
            statement.body().ifPresent(block -> shape(block.statements(), depth + 1, starts, into));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(block -> shape(block.statements(), depth + 1, starts, into));
            }
        }
    }

    /** The first token that does not begin before {@code offset}. */
    private static int at(int[] starts, int offset) {
        int found = Arrays.binarySearch(starts, offset);
        return found < 0 ? ~found : found;
    }

    /** What stands before token {@code i}, or behind the last one. */
    private static Span gap(SourceFile file, List<Span> tokens, int i) {
        int start = i == 0 ? (file.text().startsWith(BYTE_ORDER_MARK) ? 1 : 0) : tokens.get(i - 1).end();
        int end = i == tokens.size() ? file.text().length() : tokens.get(i).start();
        return file.span(start, end);
    }
}
