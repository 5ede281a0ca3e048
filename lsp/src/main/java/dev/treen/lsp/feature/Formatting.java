package dev.treen.lsp.feature;

import dev.treen.finding.Edit;
import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Formatter;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/**
 * The one style, by edits as small as they can be, so that cursors, folds and marks stay where they are: of the whole
 * file, of some of its lines, or of what has just been typed.
 */
public final class Formatting {
    /** What makes {@link #typed} look: the end of a block, and the end of a line. */
    public static final List<String> TRIGGERS = List.of("}", "\n");

    private static final int STEP = 2;

    /** Makes the formatting, which has no options: there is one style. */
    public Formatting() {
    }

    /** What is to be changed in the whole file. */
    public List<TextEdit> whole(Document document) {
        return between(document, 0, document.file().text().length());
    }

    /** What is to be changed in the lines that {@code ranges} touch. */
    public List<TextEdit> lines(Document document, List<Range> ranges) {
        List<TextEdit> edits = new ArrayList<>();
        for (Range range : ranges) {
            Positions.Span asked = document.positions().span(range);
            edits.addAll(lines(document, document.file().lineOf(asked.start()), document.file().lineOf(asked.end())));
        }
        return edits.stream().distinct().toList();
    }

    /** What is to be changed now that {@code typed} stands before {@code at}. */
    public List<TextEdit> typed(Document document, String typed, Position at) {
        SourceFile file = document.file();
        int offset = document.positions().offset(at);
        int line = file.lineOf(offset);
        return switch (typed) {
            case "}" -> lines(document, openingLine(document, offset), line);
            case "\n" -> {
                List<TextEdit> edits = new ArrayList<>();
                if (line > 0) {
                    edits.addAll(lines(document, line - 1, line - 1));
                }
                indent(document, line).ifPresent(edits::add);
                yield edits;
            }
            default -> List.of();
        };
    }

    private static List<TextEdit> lines(Document document, int first, int last) {
        int start = document.file().lineStart(first);
        return between(document, start, document.file().lineStart(last) + document.file().lineText(last).length());
    }

    private static List<TextEdit> between(Document document, int start, int end) {
        List<TextEdit> edits = new ArrayList<>();
        for (Edit edit : Formatter.edits(document.analysis().tree())) {
            String was = edit.at().text();
            String is = edit.text();
            int same = commonStart(was, is);
            int rest = commonStart(reversed(was.substring(same)), reversed(is.substring(same)));
            int from = edit.at().start() + same;
            int to = edit.at().end() - rest;
            if (start <= from && to <= end) {
                edits.add(new TextEdit(
                        document.positions().range(from, to), is.substring(same, is.length() - rest)));
            }
        }
        return edits;
    }

    /** A carriage return and its line feed are never parted. */
    private static int commonStart(String one, String other) {
        int least = Math.min(one.length(), other.length());
        int same = 0;
        while (same < least && one.charAt(same) == other.charAt(same) && one.charAt(same) != '\r') {
            same++;
        }
        return same;
    }

    private static String reversed(String text) {
        return new StringBuilder(text).reverse().toString();
    }

    /** The line of the brace that the one before {@code offset} closes. */
    private static int openingLine(Document document, int offset) {
        int depth = 0;
        for (Token token : document.analysis().tree().tokens().reversed()) {
            if (token.end() <= offset && token.kind() == Token.Kind.BRACKET) {
                char bracket = document.file().text().charAt(token.start());
                depth += bracket == '}' ? 1 : bracket == '{' ? -1 : 0;
                if (depth <= 0) {
                    return document.file().lineOf(token.start());
                }
            }
        }
        return document.file().lineOf(offset);
    }

    /** The blanks at the start of a new line, from the blocks round it; within brackets and comments they stay. */
    private static Optional<TextEdit> indent(Document document, int line) {
        SourceFile file = document.file();
        int start = file.lineStart(line);
        int blocks = 0;
        int brackets = 0;
        for (Token token : document.analysis().tree().tokens()) {
            if (token.start() >= start) {
                break;
            }
            if (token.end() > start && token.kind() != Token.Kind.NEW_LINE) {
                return Optional.empty();
            }
            if (token.kind() == Token.Kind.BRACKET) {
                switch (file.text().charAt(token.start())) {
                    case '{' -> blocks++;
                    case '}' -> blocks = Math.max(0, blocks - 1);
                    case '(', '[' -> brackets++;
                    default -> brackets = Math.max(0, brackets - 1);
                }
            }
        }
        if (brackets > 0) {
            return Optional.empty();
        }
        String text = file.lineText(line);
        String rest = text.stripLeading();
        String blanks = " ".repeat(STEP * Math.max(0, rest.startsWith("}") ? blocks - 1 : blocks));
        int old = text.length() - rest.length();
        return text.substring(0, old).equals(blanks)
                ? Optional.empty()
                : Optional.of(new TextEdit(document.positions().range(start, start + old), blanks));
    }
}
