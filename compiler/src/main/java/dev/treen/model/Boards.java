package dev.treen.model;

import dev.treen.syntax.Statement;
import java.util.Optional;

/** The boards and sheets of a project, read once its settings are known. */
final class Boards {
    private final Session session;
    private final Reader reader;
    private final SettingsReader settings;
    private Allowances standard;

    Boards(Session session, Reader reader, SettingsReader settings, Allowances standard) {
        this.session = session;
        this.reader = reader;
        this.settings = settings;
        this.standard = standard;
    }

    /** The allowances of boards that say nothing of their own. */
    void standard(Allowances allowances) {
        standard = allowances;
    }

    BoardEntry entry(Statement.Board statement, String path, Scope scope) {
        Properties properties = Properties.read(
                session, statement.sheet() ? Schemas.SHEET : Schemas.BOARD, statement.body(), scope, Optional.empty());
        return new BoardEntry(
                session,
                path,
                statement.name().span(),
                () -> session.within(
                        scope.instance(),
                        () -> new BoardReader(session, reader, settings, standard).read(statement, path, properties)));
    }
}
