package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Optional;

/** A part of the project before its sizes are asked for. */
final class PartEntry implements Scope.Entry {
    private final Session session;
    private final Reader reader;
    private final Statement.Part statement;
    private final String path;
    private final Properties properties;
    private final List<Cell> measures;

    PartEntry(Session session, Reader reader, Statement.Part statement, String path, Properties properties) {
        this.session = session;
        this.reader = reader;
        this.statement = statement;
        this.path = path;
        this.properties = properties;
        this.measures = dev.treen.quantity.Size.NAMES.stream().map(this::cell).toList();
    }

    private Cell cell(String name) {
        Span at = properties.one(name).map(g -> g.property().span()).orElse(statement.name().span());
        return new Cell(session, path + "." + name, at, () -> properties.one(name)
                .flatMap(given -> reader.size(path + "." + name, given))
                .map(m -> new Derived(Measure.datum(m.value()), m.how()))
                .orElseGet(() -> missing(name)));
    }

    private Derived missing(String name) {
        if (properties.one(name).isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY,
                    statement.name().span(),
                    "The part `" + path + "` has no `" + name + "`")
                    .related(
                            statement.body().map(b -> b.span().endPoint()).orElse(statement.span().endPoint()),
                            "`" + name + "` goes in these braces")
                    .about(path)
                    .build());
        }
        return Expressions.unknown(statement.name().span());
    }

    String path() {
        return path;
    }

    Statement.Part statement() {
        return statement;
    }

    Properties properties() {
        return properties;
    }

    @Override
    public Span nameAt() {
        return statement.name().span();
    }

    Derived measure(int which) {
        return measures.get(which).value();
    }

    /** The measure with its place, where it is known. */
    Optional<Measure> known(int which) {
        Derived derived = measure(which);
        Span at = properties
                .one(dev.treen.quantity.Size.NAMES.get(which))
                .map(g -> Reader.valueSpan(g.property()))
                .orElse(nameAt());
        return Arithmetic.length(derived.value()).map(l -> new Measure(l, at, derived.how()));
    }

    boolean overall(int which) {
        return properties
                .one(dev.treen.quantity.Size.NAMES.get(which))
                .map(g -> g.property().values().stream()
                        .flatMap(v -> v.tails().stream())
                        .anyMatch(t -> t.word().text().equals("overall")))
                .orElse(false);
    }
}
