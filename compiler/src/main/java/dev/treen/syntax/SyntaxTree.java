package dev.treen.syntax;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.List;

/**
 * What a file says, whole or with holes: parsing never fails. Statements that could be read are all here; what could not
 * is in {@code findings}.
 *
 * @param beginning the empty span before everything else
 */
public record SyntaxTree(SourceFile file, Span beginning, List<Statement> statements, List<Token> tokens,
        List<Finding> findings) {

    /** The first token that ends behind {@code offset}, as its number; that of the end where there is none. */
    public int tokenBehind(int offset) {
        int low = 0;
        int high = tokens.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (tokens.get(middle).end() <= offset) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
