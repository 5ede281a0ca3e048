package dev.treen.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;

/**
 * A text as tokens.
 *
 * @param all every token and comment, in order
 * @param read the ones that a statement is made of, with the new lines that may end it
 */
record Scanned(List<CommonToken> all, List<CommonToken> read) {
    /** Where in {@code all} a token of the text stands. */
    int placeOf(CommonToken token) {
        int low = 0;
        int high = all.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (all.get(middle).getStartIndex() < token.getStartIndex()) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
