package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the formatter must know of a tree, by offset in the text. */
final class FormatFacts {
    /** Where these are found, the indentation of the whole file says what belongs where. */
    private static final Set<FindingKind> IN_DOUBT = Set.of(
            SyntaxFindings.BRACE_NOT_OPENED,
            SyntaxFindings.STRAY_BRACE,
            SyntaxFindings.NESTED_TOO_DEEP,
            SyntaxFindings.MORE_FINDINGS);

    /** Marks that nothing separates from what follows. */
    static final Set<String> GLUED_AFTER = Set.of("(", "[", ".", "..");
    /** Marks that nothing separates from what is before. */
    static final Set<String> GLUED_BEFORE = Set.of(")", "]", "[", ".", "..", ",");

    /** How lines line up with their neighbours. */
    enum Column {
        /** Not at all. */
        NONE,
        /** By the value after a property's name. */
        VALUE,
        /** By the mark after what a `let` names. */
        LET,
        /** By what follows the kind of a joint. */
        JOINT,
        /** By the colon after a parameter's name. */
        PARAM
    }

    /**
     * A head.
     *
     * @param end where it ends
     * @param column how its line lines up
     * @param stop the offset behind its name, where its line may be stretched
     * @param broken whether it must stay as it is
     */
    record Head(int end, Column column, int stop, boolean broken) {}

    private final SyntaxTree tree;
    private final Map<Integer, Head> heads = new HashMap<>();
    private final Map<Integer, Block> blocks = new HashMap<>();
    private final BitSet signs = new BitSet();
    private final BitSet calls = new BitSet();
    private final BitSet glued = new BitSet();
    private final BitSet frozenLines = new BitSet();

    FormatFacts(SyntaxTree tree) {
        this.tree = tree;
        walk(tree.statements());
        freeze();
    }

    /** The head that begins at {@code offset}. */
    Optional<Head> headAt(int offset) {
        return Optional.ofNullable(heads.get(offset));
    }

    /** The block whose opening brace stands at {@code offset}. */
    Optional<Block> blockAt(int offset) {
        return Optional.ofNullable(blocks.get(offset));
    }

    /** Whether the minus at {@code offset} is a sign and not a subtraction. */
    boolean isSign(int offset) {
        return signs.get(offset);
    }

    /** Whether the name at {@code offset} is that of a function. */
    boolean isCall(int offset) {
        return calls.get(offset);
    }

    /** Whether the tokens at the two offsets belong to one slope or one code. */
    boolean isGlued(int left, int right) {
        return glued.get(left) && glued.get(right);
    }

    /** Whether a line belongs to something whose braces are in doubt. */
    boolean isFrozen(int line) {
        return frozenLines.get(line);
    }

    private void walk(List<Statement> statements) {
        for (Statement statement : statements) {
            Optional<Block> otherwise = statement instanceof Statement.When when ? when.otherwise()
                    : Optional.<Block>empty();
            int end = statement.body()
                    .map(b -> endBefore(b.span().start(), statement.span().start()))
                    .orElse(statement.span().end());
            heads.put(statement.span().start(), head(statement, end));
            statement.body().ifPresent(this::walk);
            otherwise.ifPresent(this::walk);
            new NodeWalk(this::note).statement(statement);
        }
    }

    /** Where the last token before {@code offset} ends that is neither a comment nor a new line. */
    private int endBefore(int offset, int least) {
        List<Token> tokens = tree.tokens();
        int i = indexAt(offset) - 1;
        while (i >= 0 && tokens.get(i).start() >= least && isBetween(tokens.get(i))) {
            i--;
        }
        return i < 0 ? least : Math.max(least, tokens.get(i).end());
    }

    private static boolean isBetween(Token token) {
        return switch (token.kind()) {
            case NEW_LINE, COMMENT, DOC_COMMENT -> true;
            case WORD, NAME, RESERVED, NUMBER, UNIT, TEXT, MARK, BRACKET, STRAY -> false;
        };
    }

    /** The index of the first token that does not begin before {@code offset}. */
    int indexAt(int offset) {
        int low = 0;
        int high = tree.tokens().size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (tree.tokens().get(middle).start() < offset) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void walk(Block block) {
        blocks.put(block.span().start(), block);
        walk(block.statements());
    }

    private Head head(Statement statement, int end) {
        boolean broken = statement instanceof Statement.Broken
                || tree.findings().stream().anyMatch(f -> touches(f.at(), statement.span().start(), end));
        return switch (statement) {
            case Statement.Property s when !broken -> new Head(end, Column.VALUE, s.name().span().end(), false);
            case Statement.Let s when !broken -> new Head(end, Column.LET, s.name().span().end(), false);
            case Statement.Joint s when !broken -> new Head(end, Column.JOINT, s.kind().span().end(), false);
            case Statement.Param s when !broken -> new Head(end, Column.PARAM, s.name().span().end(), false);
            case Statement _ -> new Head(end, Column.NONE, end, broken);
        };
    }

    private static boolean touches(Span span, int start, int end) {
        return span.start() <= end && span.end() >= start;
    }

    private void note(Node node) {
        switch (node) {
            case Expr.Prefix e when e.operator() == Operator.MINUS -> signs.set(e.span().start());
            case Expr.Figure e -> {
                if (e.amount().signum() < 0) {
                    signs.set(e.span().start());
                }
            }
            case Expr.Call e -> calls.set(e.function().span().start());
            case Expr.SlopeFigure e -> glued.set(e.span().start(), e.span().end());
            case Statement.Accept s -> glued.set(s.code().span().start(), s.code().span().end());
            case Node _ -> {
                // Nothing else changes what stands between tokens.
            }
        }
    }

    /** Statements at the top whose braces are in doubt stay as they are, or even the whole file. */
    private void freeze() {
        for (Finding finding : tree.findings()) {
            if (IN_DOUBT.contains(finding.kind())) {
                frozenLines.set(0, tree.file().lineCount());
            } else if (finding.kind().equals(SyntaxFindings.BRACE_NOT_CLOSED)) {
                freezeAround(finding.at());
            }
        }
        for (Block block : blocks.values()) {
            if (headAt(block.span().start()).isPresent()) {
                // Without a name before it, only its column keeps it apart from the line above.
                freezeAround(block.span());
            }
        }
    }

    private void freezeAround(Span place) {
        SourceFile file = tree.file();
        frozenLines.set(file.lineOf(place.start()), file.lineOf(place.end()) + 1);
        for (Statement statement : tree.statements()) {
            Span span = statement.span();
            if (touches(place, span.start(), span.end())) {
                frozenLines.set(file.lineOf(span.start()), file.lineOf(span.end()) + 1);
            }
        }
    }
}
