package dev.treen.syntax;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.grammar.TreenLexer;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.RawStatement.RawBlock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.jspecify.annotations.Nullable;

/**
 * Splits the tokens of a file into statements and blocks by braces, semicolons and new lines alone. Where the braces of
 * the file do not balance, the indentation says where one is missing or too many.
 */
final class BlockReader {
    /** How deep blocks may stand within each other. */
    static final int DEEPEST = 128;

    /** How many statements back, or tokens ahead, the mate of a brace is looked for. */
    private static final int LOOK_AROUND = 1000;

    private final SourceFile file;
    private final List<CommonToken> tokens;
    private final FindingList findings;
    private final boolean balanced;
    private final int[] lineStarts;
    private int surplus;

    private final List<RawStatement> top = new ArrayList<>();
    private final Deque<RawBlock> open = new ArrayDeque<>();
    private @Nullable RawStatement head;

    /**
     * What the braces of a whole text come to.
     *
     * @param balanced whether each has its mate
     * @param surplus how many more close than open
     */
    record Balance(boolean balanced, int surplus) {
        /** The balance of {@code tokens}, were they all. */
        static Balance of(List<CommonToken> tokens) {
            int depth = 0;
            boolean crossed = false;
            for (CommonToken token : tokens) {
                depth += token.getType() == TreenLexer.LBRACE ? 1 : token.getType() == TreenLexer.RBRACE ? -1 : 0;
                crossed |= depth < 0;
            }
            return new Balance(depth == 0 && !crossed, Math.max(0, -depth));
        }
    }

    /** The statements, and the balance for what follows them. */
    record Split(List<RawStatement> statements, Balance rest) {}

    private BlockReader(SourceFile file, List<CommonToken> tokens, Balance balance, FindingList findings) {
        this.file = file;
        this.tokens = tokens;
        this.findings = findings;
        this.lineStarts = new int[tokens.size()];
        for (int i = 0; i < tokens.size(); i++) {
            CommonToken token = tokens.get(i);
            boolean first = i == 0
                    || tokens.get(i - 1).getType() == TreenLexer.NEW_LINE
                    || token.getLine() != tokens.get(i - 1).getLine();
            lineStarts[i] = first ? i : lineStarts[i - 1];
        }
        this.balanced = balance.balanced();
        this.surplus = balance.surplus();
    }

    /** The statements of a file, or of a piece of one that has this balance from here on. */
    static Split split(SourceFile file, List<CommonToken> tokens, Balance balance, FindingList findings) {
        BlockReader reader = new BlockReader(file, tokens, balance, findings);
        for (int i = 0; i < tokens.size();) {
            i = reader.take(i);
        }
        reader.endHead(tokens.size());
        while (!reader.open.isEmpty()) {
            reader.closeUnclosed();
        }
        return new Split(reader.top, new Balance(reader.balanced, reader.surplus));
    }

    /** Takes one token and says which one is next. */
    private int take(int i) {
        int type = tokens.get(i).getType();
        if (!balanced && head == null && type != TreenLexer.NEW_LINE && isFirstOnLine(i)) {
            closeByIndent(i, type == TreenLexer.RBRACE);
        }
        switch (type) {
            case TreenLexer.NEW_LINE -> {
                int next = pastNewLines(i);
                if (head != null && opensBlockOf(head, next)) {
                    return next;
                }
                endHead(i);
            }
            case TreenLexer.SEMI -> endHead(i);
            case TreenLexer.LBRACE -> {
                return openBlock(i);
            }
            case TreenLexer.RBRACE -> {
                endHead(i);
                closeBlock(i);
            }
            case TreenLexer.ELSE -> {
                Optional<RawStatement> when = head == null ? pendingWhen() : Optional.empty();
                int brace = pastNewLines(i + 1);
                if (when.isPresent() && brace < tokens.size() && tokens.get(brace).getType() == TreenLexer.LBRACE) {
                    RawBlock block = newBlock(when.get(), brace);
                    when.get().otherwise = block;
                    return enter(block, brace);
                }
                extendHead(i);
            }
            default -> extendHead(i);
        }
        return i + 1;
    }

    /** Whether token {@code i} is a brace on a line below its head: not further right than the head, or alone there. */
    private boolean opensBlockOf(RawStatement above, int i) {
        if (i >= tokens.size() || tokens.get(i).getType() != TreenLexer.LBRACE) {
            return false;
        }
        boolean alone = i + 1 == tokens.size() || tokens.get(i + 1).getType() == TreenLexer.NEW_LINE;
        return column(i) <= indentOf(above.from) + (alone ? 2 : 0);
    }

    private void extendHead(int i) {
        if (head == null) {
            head = new RawStatement(i);
            here().add(head);
        }
        head.to = i + 1;
    }

    private void endHead(int i) {
        if (head != null) {
            int to = Math.min(i, head.to);
            head.to = to;
        }
        head = null;
    }

    private List<RawStatement> here() {
        return open.isEmpty() ? top : open.peek().statements;
    }

    /** The `when` that an `else` here would belong to. */
    private Optional<RawStatement> pendingWhen() {
        List<RawStatement> list = here();
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(list.getLast()).filter(last -> last.body != null
                        && last.otherwise == null
                        && !last.isHeadless()
                        && tokens.get(last.from).getType() == TreenLexer.WHEN);
    }

    private int openBlock(int i) {
        RawStatement owner = head;
        if (owner == null) {
            owner = new RawStatement(i);
            here().add(owner);
        }
        RawBlock block = newBlock(owner, i);
        owner.body = block;
        head = null;
        return enter(block, i);
    }

    private RawBlock newBlock(RawStatement owner, int brace) {
        int first = owner.isHeadless() ? brace : owner.from;
        return new RawBlock(owner, indentOf(first), brace, tokens.get(brace).getStartIndex());
    }

    private int enter(RawBlock block, int brace) {
        if (open.size() < DEEPEST) {
            open.push(block);
            return brace + 1;
        }
        findings.add(Finding.of(
                SyntaxFindings.NESTED_TOO_DEEP,
                span(tokens.get(brace)),
                "blocks may stand " + DEEPEST + " deep within each other")
                .label("is deeper, and what it holds is passed over")
                .build());
        int depth = 0;
        int i = brace;
        for (; i < tokens.size(); i++) {
            int type = tokens.get(i).getType();
            depth += type == TreenLexer.LBRACE ? 1 : type == TreenLexer.RBRACE ? -1 : 0;
            if (depth == 0) {
                break;
            }
        }
        block.end = i < tokens.size() ? tokens.get(i).getStopIndex() + 1 : file.text().length();
        return Math.min(i + 1, tokens.size());
    }

    private void closeBlock(int i) {
        if (!balanced && adopts(i)) {
            return;
        }
        RawBlock block = open.peek();
        boolean sameLine = block != null && line(i) == line(block.brace);
        boolean stray = surplus > 0
                && (isFirstOnLine(i)
                        ? block != null && column(i) > block.indent
                        : !sameLine || hasLooseBraceAfter(i));
        if (block == null || stray) {
            surplus = Math.max(0, surplus - 1);
            Span at = span(tokens.get(i));
            findings.add(Finding.of(SyntaxFindings.STRAY_BRACE, at, "this `}` closes nothing")
                    .label("has no opening brace")
                    .remedy(Remedy.choice("take it out", new Edit(at, "")))
                    .build());
            return;
        }
        block.end = tokens.get(i).getStopIndex() + 1;
        open.pop();
    }

    /** Whether a `}` further on in the line closes nothing in it, so that it must be the one that closes the block here. */
    private boolean hasLooseBraceAfter(int i) {
        long depth = open.stream().takeWhile(block -> line(block.brace) == line(i)).count() - 1;
        int stop = Math.min(tokens.size(), i + LOOK_AROUND);
        for (int k = i + 1; k < stop && !isFirstOnLine(k); k++) {
            int type = tokens.get(k).getType();
            depth += type == TreenLexer.LBRACE ? 1 : type == TreenLexer.RBRACE ? -1 : 0;
            if (depth < 0) {
                return true;
            }
        }
        return false;
    }

    /** Gives the statements before a `}` that has no opening brace to the head that seems to have lost its own. */
    private boolean adopts(int i) {
        boolean first = isFirstOnLine(i);
        RawBlock outer = open.peek();
        boolean fits = outer != null
                && (first
                        ? column(i) == outer.indent || column(i) < outer.indent
                        : line(i) == line(outer.brace) || surplus == 0);
        if (fits) {
            return false;
        }
        List<RawStatement> list = here();
        int at = first ? headAtColumn(list, column(i)) : headOnLine(list, line(i));
        if (at < 0) {
            return false;
        }
        surplus = Math.max(0, surplus - 1);
        RawStatement owner = list.get(at);
        CommonToken last = tokens.get(owner.to - 1);
        Span missing = span(last).endPoint();
        RawBlock block = new RawBlock(owner, indentOf(owner.from), i, missing.start());
        List<RawStatement> inside = list.subList(at + 1, list.size());
        block.statements.addAll(inside);
        inside.clear();
        block.end = tokens.get(i).getStopIndex() + 1;
        owner.body = block;
        findings.add(Finding.of(SyntaxFindings.BRACE_NOT_OPENED, missing, "a `{` is missing before this block")
                .label("has no `{`")
                .related(span(tokens.get(i)), "closes it")
                .remedy(first
                        ? Remedy.safe("open it with `{`", new Edit(missing, " {"))
                        : Remedy.choice("open it with `{`", new Edit(missing, " {")))
                .build());
        return true;
    }

    private int headAtColumn(List<RawStatement> list, int column) {
        for (int k = list.size() - 1; k >= Math.max(0, list.size() - LOOK_AROUND); k--) {
            RawStatement statement = list.get(k);
            int its = indentOf(statement.from);
            if (its < column) {
                return -1;
            }
            if (its == column) {
                return takesBlock(statement) && k < list.size() - 1 && isBelow(statement, list.get(k + 1)) ? k : -1;
            }
        }
        return -1;
    }

    private int headOnLine(List<RawStatement> list, int line) {
        int found = -1;
        int stop = Math.max(0, list.size() - LOOK_AROUND);
        for (int k = list.size() - 1; k >= stop && line(list.get(k).from) == line; k--) {
            if (takesBlock(list.get(k))) {
                found = k;
            }
        }
        return found;
    }

    /** Whether a statement has no block yet and is of a kind that may have one. */
    private boolean takesBlock(RawStatement statement) {
        return statement.body == null
                && switch (tokens.get(statement.from).getType()) {
                    case TreenLexer.LET, TreenLexer.USE, TreenLexer.REQUIRE, TreenLexer.ACCEPT, TreenLexer.MEASURED ->
                        false;
                    default -> true;
                };
    }

    /** Whether {@code lower} begins the next line that has anything, without a blank one between. */
    private boolean isBelow(RawStatement upper, RawStatement lower) {
        int gap = line(lower.from) - line(upper.to - 1);
        return isFirstOnLine(upper.from)
                && gap >= 1
                && file.text()
                        .substring(file.lineStart(line(upper.to - 1)), file.lineStart(line(lower.from)))
                        .lines()
                        .noneMatch(String::isBlank);
    }

    /** Closes the blocks that a line so far to the left cannot be in. */
    private void closeByIndent(int i, boolean brace) {
        while (!open.isEmpty()) {
            RawBlock block = open.peek();
            boolean outside = brace ? column(i) < block.indent : column(i) <= block.indent;
            if (!outside || line(i) == line(block.brace)) {
                return;
            }
            closeUnclosed();
        }
    }

    private void closeUnclosed() {
        RawBlock block = open.pop();
        RawStatement last = block.statements.isEmpty() ? null : block.statements.getLast();
        block.end = last == null ? tokens.get(block.brace).getStopIndex() + 1 : endOf(last);
        Span at = span(tokens.get(block.brace));
        boolean oneLine = file.lineOf(at.start()) == file.lineOf(block.end);
        String closing = oneLine ? " }" : "\n" + " ".repeat(block.indent) + "}";
        findings.add(Finding.of(SyntaxFindings.BRACE_NOT_CLOSED, at, "this `{` is never closed")
                .label("is never closed")
                .related(file.span(block.end, block.end), "its `}` may belong here")
                .remedy(Remedy.choice("close it with `}`", new Edit(file.span(block.end, block.end), closing)))
                .build());
    }

    private int endOf(RawStatement statement) {
        if (statement.otherwise != null) {
            return statement.otherwise.end;
        }
        return statement.body != null ? statement.body.end : tokens.get(statement.to - 1).getStopIndex() + 1;
    }

    private int pastNewLines(int i) {
        int next = i;
        while (next < tokens.size() && tokens.get(next).getType() == TreenLexer.NEW_LINE) {
            next++;
        }
        return next;
    }

    private boolean isFirstOnLine(int i) {
        return lineStarts[i] == i;
    }

    /** The column of the first token in the line of token {@code i}. */
    private int indentOf(int i) {
        return column(lineStarts[i]);
    }

    private int line(int i) {
        return tokens.get(i).getLine();
    }

    private int column(int i) {
        return tokens.get(i).getStartIndex() - file.lineStart(line(i));
    }

    private Span span(CommonToken token) {
        return file.span(token.getStartIndex(), token.getStopIndex() + 1);
    }
}
