package dev.treen.syntax;

import dev.treen.grammar.TreenLexer;
import dev.treen.source.SourceFile;
import dev.treen.syntax.BlockReader.Balance;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of an edited text, from a line whose first word stands at its very beginning up to the next such line, with
 * all that reading it alone gives. It also says what of it could reach beyond: then the text is read as a whole.
 */
final class Piece {
    private static final Balance WHOLE = new Balance(true, 0);

    private final SourceFile source;
    private final int start;
    private final int depth;
    private final int lowest;
    private final boolean openComment;
    private final boolean bracketLeftOpen;
    private final boolean bracketClosedFirst;
    private final boolean steady;
    private Balance asked;
    private Parser.@Nullable Read read;

    /** Reads {@code text}, which begins at {@code start} of the file called {@code name}. */
    Piece(String name, String text, int start) {
        this(SourceFile.piece(name, text), start);
    }

    private Piece(SourceFile source, int start) {
        this.source = source;
        this.start = start;
        FindingList findings = new FindingList();
        Scanned scanned = TokenReader.scan(source, findings);
        int open = 0;
        int least = 0;
        for (CommonToken token : scanned.read()) {
            open += token.getType() == TreenLexer.LBRACE ? 1 : token.getType() == TreenLexer.RBRACE ? -1 : 0;
            least = Math.min(least, open);
        }
        depth = open;
        lowest = least;
        openComment = scanned.all().stream().anyMatch(token -> token.getType() == TreenLexer.OPEN_COMMENT);
        Brackets.Ends ends = Brackets.ends(scanned.read());
        bracketLeftOpen = ends.leftOpen();
        bracketClosedFirst = ends.closedFirst();
        steady = isClosed() && steady(scanned.read());
        asked = WHOLE;
        read = isClosed() ? Parser.read(source, scanned, WHOLE, findings) : null;
    }

    private Piece(Piece other, int start) {
        this.source = other.source;
        this.start = start;
        this.depth = other.depth;
        this.lowest = other.lowest;
        this.openComment = other.openComment;
        this.bracketLeftOpen = other.bracketLeftOpen;
        this.bracketClosedFirst = other.bracketClosedFirst;
        this.steady = other.steady;
        this.asked = other.asked;
        this.read = other.read;
    }

    /** The same where it lies now. */
    Piece at(int newStart) {
        return newStart == start ? this : new Piece(this, newStart);
    }

    /** What was read of it where the braces of the file have this balance from here on. */
    Parser.Read read(Balance balance) {
        Balance mine = steady ? WHOLE : balance;
        Parser.Read known = read;
        if (known == null || !mine.equals(asked)) {
            FindingList findings = new FindingList();
            // Its findings are sorted by where they lie, so it is read as the text of its own that it was.
            source.lies(source, 0);
            known = Parser.read(source, TokenReader.scan(source, findings), mine, findings);
            read = known;
            asked = mine;
        }
        return known;
    }

    /** Whether reading it takes nothing from the balance of what follows, and is the same with any. */
    boolean isSteady() {
        return steady;
    }

    /** Whether all its braces have their mates in it. */
    boolean isClosed() {
        return depth == 0 && lowest == 0;
    }

    /** How many more braces open than close. */
    int depth() {
        return depth;
    }

    /** The least that {@link #depth} comes to on the way. */
    int lowest() {
        return lowest;
    }

    /** Whether a comment begins that does not end in it. */
    boolean openComment() {
        return openComment;
    }

    /** Whether a round or square bracket is open at its end, so that lines may go on behind it. */
    boolean bracketLeftOpen() {
        return bracketLeftOpen;
    }

    /** Whether a bracket closes that one before it may have opened. */
    boolean bracketClosedFirst() {
        return bracketClosedFirst;
    }

    SourceFile source() {
        return source;
    }

    int start() {
        return start;
    }

    int end() {
        return start + source.text().length();
    }

    /** Whether the statements are split alike whatever the braces of the rest of the file come to. */
    private boolean steady(List<CommonToken> tokens) {
        List<RawStatement> balanced = BlockReader.split(source, tokens, WHOLE, new FindingList()).statements();
        for (Balance other : List.of(new Balance(false, 0), new Balance(false, 1))) {
            FindingList findings = new FindingList();
            BlockReader.Split split = BlockReader.split(source, tokens, other, findings);
            if (!findings.sorted().isEmpty() || !same(balanced, split.statements())) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(List<RawStatement> one, List<RawStatement> other) {
        Deque<List<RawStatement>> left = new ArrayDeque<>(List.of(one));
        Deque<List<RawStatement>> right = new ArrayDeque<>(List.of(other));
        while (!left.isEmpty()) {
            List<RawStatement> mine = left.pop();
            List<RawStatement> its = right.pop();
            if (mine.size() != its.size()) {
                return false;
            }
            for (int i = 0; i < mine.size(); i++) {
                if (mine.get(i).from != its.get(i).from || mine.get(i).to != its.get(i).to
                        || !same(mine.get(i).body, its.get(i).body, left, right)
                        || !same(mine.get(i).otherwise, its.get(i).otherwise, left, right)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean same(RawStatement.@Nullable RawBlock mine, RawStatement.@Nullable RawBlock its,
            Deque<List<RawStatement>> left, Deque<List<RawStatement>> right) {
        if (mine == null || its == null) {
            return mine == its;
        }
        left.push(mine.statements);
        right.push(its.statements);
        return mine.start == its.start && mine.end == its.end;
    }
}
