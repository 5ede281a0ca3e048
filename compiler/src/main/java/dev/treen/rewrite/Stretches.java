package dev.treen.rewrite;

import dev.treen.finding.Edit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The stretches of a text that some of its statements fill, each with the comments that belong to it: those on its own lines
 * and those that stand right above it.
 */
final class Stretches {
    private final SyntaxTree tree;
    private final SourceFile file;
    private final String text;
    private final List<Span> found = new ArrayList<>();

    private Stretches(SyntaxTree tree) {
        this.tree = tree;
        this.file = tree.file();
        this.text = file.text();
    }

    /** Where {@code some} of the statements at the top stand, in the order of the text. */
    static List<Span> of(SyntaxTree tree, Set<Statement> some) {
        Stretches stretches = new Stretches(tree);
        List<Statement> all = tree.statements();
        int begin = 0;
        while (begin < all.size()) {
            int end = begin + 1;
            while (end < all.size() && stretches.line(all.get(end)) <= stretches.lastLine(all.get(end - 1))) {
                end++;
            }
            stretches.add(all.subList(begin, end), some);
            begin = end;
        }
        return stretches.found;
    }

    private int line(Statement statement) {
        return file.lineOf(statement.span().start());
    }

    private int lastLine(Statement statement) {
        return file.lineOf(statement.span().end());
    }

    /** Statements that share lines: whole lines where all of them are wanted, else each by itself. */
    private void add(List<Statement> together, Set<Statement> some) {
        if (some.containsAll(together)) {
            int first = firstOfComments(line(together.getFirst()));
            found.add(file.span(file.lineStart(first), behind(lastLine(together.getLast()))));
            return;
        }
        for (Statement statement : together) {
            if (some.contains(statement)) {
                int end = statement.span().end();
                while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == ';')) {
                    end++;
                }
                found.add(file.span(statement.span().start(), end));
            }
        }
    }

    /** The first line of the comments that stand right above {@code line}; those at the head of the file are the file's. */
    private int firstOfComments(int line) {
        int first = line;
        while (first > 0) {
            int above = first - 1;
            int comment = commentThatFills(above);
            if (comment <= 0) {
                break;
            }
            first = comment;
        }
        return first;
    }

    /** The line on which a comment begins that ends {@code line} and has its lines for itself; less than 0 for none. */
    private int commentThatFills(int line) {
        int end = file.lineStart(line) + file.lineText(line).stripTrailing().length();
        int at = tree.tokenBehind(end - 1);
        if (at >= tree.tokens().size()) {
            return -1;
        }
        Token token = tree.tokens().get(at);
        boolean comment = token.kind() == Token.Kind.COMMENT || token.kind() == Token.Kind.DOC_COMMENT;
        int begins = file.lineOf(token.start());
        boolean alone = text.substring(file.lineStart(begins), token.start()).isBlank();
        return comment && alone && token.end() >= end ? begins : -1;
    }

    /** Behind {@code line}, and behind a comment that begins on it. */
    private int behind(int line) {
        int last = line;
        int end = file.lineStart(last) + file.lineText(last).length();
        int at = tree.tokenBehind(end - 1);
        if (at < tree.tokens().size() && tree.tokens().get(at).start() < end) {
            last = Math.max(last, file.lineOf(tree.tokens().get(at).end() - 1));
        }
        return last + 1 < file.lineCount() ? file.lineStart(last + 1) : text.length();
    }

    /**
     * The edits that take {@code stretches} out, with the blank lines that would be left over, and put {@code line} in the
     * place of the one that {@code at} lies in.
     */
    static List<Edit> without(SourceFile file, List<Span> stretches, String line, int at) {
        String lineEnd = file.text().contains("\r\n") ? "\r\n" : "\n";
        List<Edit> edits = new ArrayList<>();
        for (Span stretch : joined(file, stretches, at)) {
            boolean whole = stretch.end() == file.lineStart(file.lineOf(stretch.end()))
                    || stretch.end() == file.text().length();
            edits.add(stretch.start() <= at && at < stretch.end()
                    ? new Edit(stretch, line + (whole ? lineEnd : "; "))
                    : new Edit(withBlankLines(file, stretch), ""));
        }
        return edits;
    }

    /** With those in one between which nothing stands; the one that {@code at} lies in begins anew. */
    private static List<Span> joined(SourceFile file, List<Span> stretches, int at) {
        List<Span> joined = new ArrayList<>();
        for (Span stretch : stretches) {
            boolean next = !joined.isEmpty()
                    && file.text().substring(joined.getLast().end(), stretch.start()).isBlank()
                    && !(stretch.start() <= at && at < stretch.end());
            if (next) {
                joined.set(joined.size() - 1, joined.getLast().to(stretch));
            } else {
                joined.add(stretch);
            }
        }
        return joined;
    }

    private static Span withBlankLines(SourceFile file, Span stretch) {
        int line = file.lineOf(stretch.start());
        boolean whole = file.lineStart(line) == stretch.start();
        boolean blankAbove = line == 0 || file.lineText(line - 1).isBlank();
        int end = stretch.end();
        int next = file.lineOf(end);
        while (whole && blankAbove && end == file.lineStart(next) && next + 1 < file.lineCount()
                && file.lineText(next).isBlank()) {
            next++;
            end = file.lineStart(next);
        }
        return file.span(stretch.start(), end);
    }
}
