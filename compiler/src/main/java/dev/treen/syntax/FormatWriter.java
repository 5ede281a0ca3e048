package dev.treen.syntax;

import dev.treen.source.SourceFile;
import dev.treen.syntax.FormatFacts.Column;
import dev.treen.syntax.FormatFacts.Head;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes the tokens of a file once more, with the blanks and line ends of the one style. */
final class FormatWriter {
    private static final int STEP = 2;

    private final SourceFile file;
    private final List<Token> tokens;
    private final FormatFacts facts;
    private final List<FormatLine> lines = new ArrayList<>();
    private final Deque<Level> levels = new ArrayDeque<>();
    private FormatLine line = new FormatLine(0, 0);
    private Optional<Token> last = Optional.empty();
    private Optional<Head> head = Optional.empty();
    private int newLines;
    private int sections;
    private boolean afterOpening = true;

    /** A block that is being written, or the file. */
    private static final class Level {
        final boolean oneLine;
        final int depth;
        int section;
        boolean begun;

        Level(boolean oneLine, int depth, int section) {
            this.oneLine = oneLine;
            this.depth = depth;
            this.section = section;
        }
    }

    FormatWriter(SyntaxTree tree) {
        this.file = tree.file();
        this.tokens = tree.tokens();
        this.facts = new FormatFacts(tree);
        levels.push(new Level(false, 0, 0));
    }

    String write() {
        for (int i = 0; i < tokens.size();) {
            i = take(i);
        }
        endLine();
        FormatColumns columns = new FormatColumns(lines);
        columns.align();
        Map<Integer, Integer> comments = columns.commentColumns();
        String lineEnd = file.text().contains("\r\n") ? "\r\n" : "\n";
        StringBuilder text = new StringBuilder();
        for (FormatLine each : lines) {
            text.append(each.blankBefore ? lineEnd : "");
            text.append(each.written(comments.getOrDefault(each.section, 0))).append(lineEnd);
        }
        return text.toString();
    }

    private int take(int i) {
        Token token = tokens.get(i);
        if (token.kind() != Token.Kind.NEW_LINE && facts.isFrozen(file.lineOf(token.start()))) {
            return copyFrozen(i);
        }
        switch (token.kind()) {
            case NEW_LINE -> newLine(token);
            case COMMENT, DOC_COMMENT -> comment(i);
            case BRACKET -> {
                switch (textOf(token)) {
                    case "{" -> openBlock(token);
                    case "}" -> closeBlock(token);
                    default -> put(token);
                }
            }
            case WORD, NAME, RESERVED, NUMBER, UNIT, TEXT, STRAY, MARK -> {
                Optional<Head> starting = facts.headAt(token.start());
                if (starting.isPresent()) {
                    return startHead(i, starting.get());
                }
                if (textOf(token).equals("else") && !isInHead(token)) {
                    putElse(token);
                } else if (!textOf(token).equals(";")) {
                    put(token);
                }
            }
        }
        return i + 1;
    }

    /** Inside brackets the author's line ends stay; elsewhere the style decides. */
    private void newLine(Token token) {
        newLines++;
        if (isInHead(token) && newLines == 1) {
            line.column = Column.NONE;
            FormatLine next = new FormatLine(indent() + 2 * STEP, line.section);
            endLine();
            line = next;
        }
    }

    private int startHead(int i, Head starting) {
        Level level = levels.element();
        if (level.oneLine) {
            line.text.append(level.begun ? "; " : " ");
            last = Optional.empty();
        } else if (line.isEmpty() || line.hasCode || !line.comment.isEmpty()) {
            beginLine();
        }
        level.begun = true;
        line.column = level.oneLine ? line.column : starting.column();
        head = Optional.of(starting);
        if (starting.broken()) {
            return copyHead(i, starting.end());
        }
        put(tokens.get(i));
        return i + 1;
    }

    /** A head that does not read is copied, blanks and all. */
    private int copyHead(int i, int end) {
        int next = i + 1;
        while (next < tokens.size() && tokens.get(next).end() <= end) {
            next++;
        }
        Token lastOfHead = tokens.get(next - 1);
        line.text.append(last.isPresent() ? " " : "").append(file.text(), tokens.get(i).start(), lastOfHead.end());
        line.hasCode = true;
        last = Optional.of(lastOfHead);
        newLines = 0;
        return next;
    }

    private void put(Token token) {
        if (!line.comment.isEmpty() && (newLines > 0 || line.comment.toString().startsWith("//"))) {
            beginLine();
        } else if (!line.comment.isEmpty()) {
            line.text.append(line.text.isEmpty() ? "" : " ").append(line.comment).append(' ');
            line.comment.setLength(0);
            last = Optional.empty();
        }
        line.text.append(last.map(before -> between(before, token)).orElse("")).append(textOf(token));
        line.hasCode = true;
        last = Optional.of(token);
        newLines = 0;
        if (line.column != Column.NONE && line.stop < 0 && head.filter(h -> h.stop() == token.end()).isPresent()) {
            line.stop = line.text.length();
        }
    }

    private void putElse(Token token) {
        boolean behindBrace = last.filter(t -> textOf(t).equals("}")).isPresent() && line.comment.isEmpty();
        if (!behindBrace && !levels.element().oneLine) {
            beginLine();
        }
        put(token);
    }

    private void comment(int i) {
        Token token = tokens.get(i);
        String text = textOf(token).stripTrailing();
        if (isInHead(token) || (levels.element().oneLine && newLines == 0)) {
            line.text.append(line.text.isEmpty() ? "" : " ").append(text);
            last = Optional.of(token);
        } else if (newLines > 0 || line.isEmpty()) {
            beginLine();
            boolean alone = i + 1 == tokens.size() || tokens.get(i + 1).kind() == Token.Kind.NEW_LINE;
            (alone ? line.comment : line.text).append(text);
            last = alone ? Optional.empty() : Optional.of(token);
        } else {
            line.comment.append(line.comment.isEmpty() ? "" : " ").append(text);
        }
        newLines = 0;
    }

    private void openBlock(Token token) {
        Level outer = levels.element();
        boolean oneLine = facts.blockAt(token.start()).filter(this::standsOnOneLine).isPresent();
        if (facts.headAt(token.start()).isPresent()) {
            if (!outer.oneLine) {
                beginLine();
            } else if (outer.begun) {
                line.text.append(';');
            }
            outer.begun = true;
            head = Optional.empty();
        } else if (line.comment.isEmpty()) {
            newLines = 0;
        }
        if (!outer.oneLine) {
            line.column = oneLine || line.column == Column.PARAM ? line.column : Column.NONE;
            line.brace = line.column == Column.VALUE && line.text.length() > line.stop ? line.text.length() : -1;
        }
        put(token);
        levels.push(new Level(oneLine, oneLine ? outer.depth : outer.depth + 1, oneLine ? outer.section : ++sections));
        head = Optional.empty();
        afterOpening = !oneLine;
    }

    private boolean standsOnOneLine(Block block) {
        boolean empty = true;
        boolean broken = false;
        int start = facts.indexAt(block.span().start()) + 1;
        for (int k = start; k < tokens.size() && tokens.get(k).end() < block.span().end(); k++) {
            boolean lineEnd = tokens.get(k).kind() == Token.Kind.NEW_LINE;
            empty &= lineEnd;
            broken |= lineEnd || textOf(tokens.get(k)).contains("\n");
        }
        return empty || !broken;
    }

    private void closeBlock(Token token) {
        if (levels.size() == 1) {
            put(token);
            return;
        }
        Level level = levels.pop();
        if (!level.oneLine) {
            afterOpening = true;
            beginLine();
            afterOpening = false;
            line.text.append('}');
        } else {
            line.text.append(last.filter(t -> textOf(t).equals("{")).isPresent() ? "}" : " }");
        }
        line.hasCode = true;
        last = Optional.of(token);
        head = Optional.empty();
        newLines = 0;
    }

    /** Copies the lines of something whose braces are in doubt. */
    private int copyFrozen(int i) {
        boolean whole = line.isEmpty() || newLines > 0;
        beginLine();
        int end = file.lineOf(tokens.get(i).start());
        int from = whole ? file.lineStart(end) : tokens.get(i).start();
        while (end + 1 < file.lineCount() && facts.isFrozen(end + 1)) {
            end++;
        }
        int stop = file.lineStart(end) + file.lineText(end).length();
        int next = i;
        while (next < tokens.size() && tokens.get(next).start() < stop) {
            next++;
        }
        line.text.append(file.text().substring(from, stop).stripTrailing());
        line.verbatim = true;
        endLine();
        newLines = 0;
        return next;
    }

    /** Ends the line that is being written, if there is anything in it, and begins the next. */
    private void beginLine() {
        endLine();
        line.blankBefore = newLines > 1 && !afterOpening;
        if (line.blankBefore) {
            levels.element().section = ++sections;
            FormatLine blank = new FormatLine(indent(), sections);
            blank.blankBefore = true;
            line = blank;
        }
        afterOpening = false;
    }

    private void endLine() {
        if (!line.isEmpty()) {
            lines.add(line);
        }
        line = new FormatLine(indent(), levels.element().section);
        last = Optional.empty();
    }

    private boolean isInHead(Token token) {
        return head.filter(h -> token.start() < h.end()).isPresent();
    }

    private int indent() {
        return STEP * levels.element().depth;
    }

    private String textOf(Token token) {
        return file.text().substring(token.start(), token.end());
    }

    /** The blank between two tokens of a line, if there is one. */
    private String between(Token left, Token right) {
        String before = textOf(left);
        String after = textOf(right);
        boolean glued = right.kind() == Token.Kind.UNIT
                || FormatFacts.GLUED_AFTER.contains(before)
                || FormatFacts.GLUED_BEFORE.contains(after)
                || (after.equals("(") && facts.isCall(left.start()))
                || (before.equals("-") && facts.isSign(left.start()))
                || facts.isGlued(left.start(), right.start());
        return glued ? "" : " ";
    }
}
