package dev.treen.model;

import dev.treen.syntax.Expr;
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

    private static Optional<String> word(Properties.Given given) {
        return given.property().values().size() == 1
                && given.property().values().getFirst().expr() instanceof Expr.Word word
                        ? Optional.of(word.name())
                        : Optional.empty();
    }

    BoardEntry entry(Statement.Board statement, String path, Scope scope) {
        Properties properties = Properties.read(
                session, statement.sheet() ? Schemas.SHEET : Schemas.BOARD, statement.body(), scope, Optional.empty());
        return new BoardEntry(
                session,
                path,
                statement.name().span(),
                properties.one("species").flatMap(Boards::word),
                () -> session.within(
                        scope.instance(),
                        () -> new BoardReader(session, reader, settings, standard).read(statement, path, properties)));
    }
}
