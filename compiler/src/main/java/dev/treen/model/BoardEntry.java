package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;

/** A board of the project before it is asked for. */
final class BoardEntry implements Scope.Entry {
    private final String path;
    private final Span nameAt;
    private final Optional<Board> board;

    BoardEntry(String path, Span nameAt, Optional<Board> board) {
        this.path = path;
        this.nameAt = nameAt;
        this.board = board;
    }

    String path() {
        return path;
    }

    @Override
    public Span nameAt() {
        return nameAt;
    }

    Optional<Board> board() {
        return board;
    }

    Derived measure(int which) {
        return board.map(b -> which == 0 ? b.length() : which == 1 ? b.width() : b.thickness())
                .map(m -> new Derived(Measure.datum(m.value()), m.how()))
                .orElseGet(() -> Expressions.unknown(nameAt));
    }
}
