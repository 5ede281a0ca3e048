package dev.treen.syntax;

import dev.treen.grammar.TreenLexer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;

/** What round and square brackets do to lines. */
final class Brackets {
    private Brackets() {
    }

    /**
     * Leaves out the new lines inside brackets. A bracket counts only if it is closed before the next brace or
     * semicolon: one that is still being typed must not swallow the lines below it.
     */
    static Scanned joinLines(Scanned scanned) {
        List<CommonToken> tokens = scanned.read();
        BitSet dropped = insideBrackets(tokens);
        if (dropped.isEmpty()) {
            return scanned;
        }
        List<CommonToken> kept = new ArrayList<>(tokens.size());
        for (int i = 0; i < tokens.size(); i++) {
            if (!dropped.get(i)) {
                kept.add(tokens.get(i));
            }
        }
        return new Scanned(scanned.all(), kept);
    }

    /**
     * What the brackets of a piece of a text may do to its neighbours.
     *
     * @param leftOpen whether one is open at the end
     * @param closedFirst whether one closes, before any brace or semicolon, that none before it opens
     */
    record Ends(boolean leftOpen, boolean closedFirst) {}

    static Ends ends(List<CommonToken> tokens) {
        int open = 0;
        boolean first = true;
        boolean closedFirst = false;
        for (CommonToken token : tokens) {
            switch (token.getType()) {
                case TreenLexer.LBRACE, TreenLexer.RBRACE, TreenLexer.SEMI -> {
                    open = 0;
                    first = false;
                }
                case TreenLexer.LPAREN, TreenLexer.LBRACK -> open++;
                case TreenLexer.RPAREN, TreenLexer.RBRACK -> {
                    closedFirst |= first && open == 0;
                    open = Math.max(0, open - 1);
                }
                default -> {
                    // No other token opens or closes anything.
                }
            }
        }
        return new Ends(open > 0, closedFirst);
    }

    private static BitSet insideBrackets(List<CommonToken> tokens) {
        int[] steps = new int[tokens.size() + 1];
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < tokens.size(); i++) {
            switch (tokens.get(i).getType()) {
                case TreenLexer.LBRACE, TreenLexer.RBRACE, TreenLexer.SEMI -> open.clear();
                case TreenLexer.LPAREN, TreenLexer.LBRACK -> open.push(i);
                case TreenLexer.RPAREN, TreenLexer.RBRACK -> {
                    int opening = tokens.get(i).getType() == TreenLexer.RPAREN ? TreenLexer.LPAREN : TreenLexer.LBRACK;
                    if (!open.isEmpty() && tokens.get(open.peek()).getType() == opening) {
                        steps[open.pop()]++;
                        steps[i]--;
                    }
                }
                default -> {
                    // No other token opens or closes anything.
                }
            }
        }
        BitSet dropped = new BitSet();
        int depth = 0;
        for (int i = 0; i < tokens.size(); i++) {
            depth += steps[i];
            dropped.set(i, depth > 0 && tokens.get(i).getType() == TreenLexer.NEW_LINE);
        }
        return dropped;
    }
}
