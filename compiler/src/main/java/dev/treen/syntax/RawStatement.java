package dev.treen.syntax;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A statement before its head is read: the tokens {@code from} up to {@code to} of the file, and the blocks behind them.
 * Filled in by {@link BlockReader} alone.
 */
final class RawStatement {
    final int from;
    int to;
    @Nullable
    RawBlock body;
    @Nullable
    RawBlock otherwise;

    RawStatement(int from) {
        this.from = from;
        this.to = from;
    }

    /** Whether there is no head before the block. */
    boolean isHeadless() {
        return from == to;
    }

    /** A block: from the offset of its opening brace, or of where that should be, to the end of the closing one. */
    static final class RawBlock {
        final RawStatement owner;
        final int indent;
        final int brace;
        final int start;
        int end;
        final List<RawStatement> statements = new ArrayList<>();

        RawBlock(RawStatement owner, int indent, int brace, int start) {
            this.owner = owner;
            this.indent = indent;
            this.brace = brace;
            this.start = start;
            this.end = start;
        }
    }
}
