package dev.treen.model;

import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import java.util.List;

/**
 * A pattern: a thing that is written once and used many times.
 *
 * @param home the scope of the file in which it is written
 * @param schema what an instance of it may say
 */
record PatternEntry(Statement.Pattern statement, Scope home, BlockSchema schema) implements Scope.Entry {
    @Override
    public Span nameAt() {
        return statement.name().span();
    }

    String name() {
        return statement.name().text();
    }

    List<Statement> body() {
        return statement.body().map(Block::statements).orElse(List.of());
    }

    List<Statement.Param> params() {
        return paramsOf(body());
    }

    static List<Statement.Param> paramsOf(List<Statement> statements) {
        return statements.stream()
                .filter(Statement.Param.class::isInstance)
                .map(Statement.Param.class::cast)
                .toList();
    }

    /** Whether {@code span} lies in the text of this pattern. */
    boolean holds(Span span) {
        return covers(statement.span(), span);
    }

    static boolean covers(Span whole, Span span) {
        return whole.file().name().equals(span.file().name())
                && whole.start() <= span.start()
                && span.end() <= whole.end();
    }
}
