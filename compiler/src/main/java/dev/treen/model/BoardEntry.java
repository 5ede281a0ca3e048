package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;
import java.util.function.Supplier;

/** A board of the project, read when it is asked for: by then the allowances of the project are known. */
final class BoardEntry implements Scope.Entry, Declared {
    private final String path;
    private final Span nameAt;
    private final Optional<String> species;
    private final Session session;
    private final Notes notes;
    private final Supplier<Optional<Board>> read;
    private Optional<Board> board = Optional.empty();
    private boolean asked;

    BoardEntry(Session session, String path, Span nameAt, Optional<String> species, Supplier<Optional<Board>> read) {
        this.session = session;
        this.notes = session.notes();
        this.path = path;
        this.nameAt = nameAt;
        this.species = species;
        this.read = read;
    }

    String path() {
        return path;
    }

    /** As it is written; known before the board is read. */
    Optional<String> species() {
        return species;
    }

    @Override
    public Span nameAt() {
        return nameAt;
    }

    Optional<Board> board() {
        if (!asked) {
            asked = true;
            board = session.noting(notes, read);
        }
        return board;
    }

    Derived measure(int which) {
        return board().map(b -> which == 0 ? b.length() : which == 1 ? b.width() : b.thickness())
                .map(m -> new Derived(Measure.datum(m.value()), m.how()))
                .orElseGet(() -> Expressions.unknown(nameAt));
    }
}
