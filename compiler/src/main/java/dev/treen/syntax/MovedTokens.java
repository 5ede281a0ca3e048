package dev.treen.syntax;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.RandomAccess;
import java.util.stream.IntStream;

/** The tokens of several pieces of a text, one after the other, each where its piece lies. */
final class MovedTokens extends AbstractList<Token> implements RandomAccess {
    private final List<List<Token>> pieces;
    private final int[] starts;
    private final int[] firsts;

    MovedTokens(List<List<Token>> pieces, int[] starts) {
        this.pieces = pieces;
        this.starts = starts;
        this.firsts = new int[pieces.size() + 1];
        for (int i = 0; i < pieces.size(); i++) {
            firsts[i + 1] = firsts[i] + pieces.get(i).size();
        }
    }

    @Override
    public Token get(int index) {
        if (index < 0 || index >= size()) {
            throw new IndexOutOfBoundsException(index);
        }
        int found = Arrays.binarySearch(firsts, index);
        int piece = found >= 0 ? found : -found - 2;
        while (firsts[piece + 1] <= index) {
            piece++;
        }
        Token token = pieces.get(piece).get(index - firsts[piece]);
        return moved(token, starts[piece]);
    }

    private static Token moved(Token token, int start) {
        return new Token(token.kind(), start + token.start(), start + token.end());
    }

    @Override
    public Iterator<Token> iterator() {
        return IntStream.range(0, pieces.size()).boxed()
                .flatMap(piece -> pieces.get(piece).stream().map(token -> moved(token, starts[piece])))
                .iterator();
    }

    @Override
    public int size() {
        return firsts[pieces.size()];
    }
}
