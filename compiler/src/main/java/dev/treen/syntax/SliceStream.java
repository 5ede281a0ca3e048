package dev.treen.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;

/** The tokens of one head, as the generated parser reads them. Each token's index is its place in the head. */
final class SliceStream implements TokenStream {
    private final List<CommonToken> tokens;
    private final CommonToken end;
    private int at;

    SliceStream(List<CommonToken> tokens) {
        this.tokens = tokens;
        for (int i = 0; i < tokens.size(); i++) {
            tokens.get(i).setTokenIndex(i);
        }
        this.end = new CommonToken(Token.EOF, "");
        int offset = tokens.isEmpty() ? 0 : tokens.getLast().getStopIndex() + 1;
        end.setStartIndex(offset);
        end.setStopIndex(offset - 1);
        end.setTokenIndex(tokens.size());
    }

    @Override
    public Token LT(int k) {
        int index = k > 0 ? at + k - 1 : at + k;
        return get(Math.max(0, index));
    }

    @Override
    public Token get(int index) {
        return index < tokens.size() ? tokens.get(index) : end;
    }

    @Override
    public int LA(int k) {
        return LT(k).getType();
    }

    @Override
    public void consume() {
        at++;
    }

    @Override
    public int mark() {
        return -1;
    }

    @Override
    public void release(int marker) {
        // Every token stays at hand: nothing to release.
    }

    @Override
    public int index() {
        return at;
    }

    @Override
    public void seek(int index) {
        at = index;
    }

    @Override
    public int size() {
        return tokens.size();
    }

    @Override
    public String getSourceName() {
        return "a line";
    }

    @Override
    public TokenSource getTokenSource() {
        throw new UnsupportedOperationException("the tokens come from a list");
    }

    @Override
    public String getText(Interval interval) {
        StringBuilder text = new StringBuilder();
        for (int i = interval.a; i <= Math.min(interval.b, tokens.size() - 1); i++) {
            text.append(tokens.get(i).getText()).append(' ');
        }
        return text.toString();
    }

    @Override
    public String getText() {
        return getText(Interval.of(0, tokens.size() - 1));
    }

    @Override
    public String getText(RuleContext context) {
        return getText(context.getSourceInterval());
    }

    @Override
    public String getText(Token start, Token stop) {
        return getText(Interval.of(start.getTokenIndex(), stop.getTokenIndex()));
    }
}
