package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** A part of the project before its sizes are asked for. */
final class PartEntry implements Scope.Entry, Declared {
    private final Session session;
    private final Reader reader;
    private final Statement.Part statement;
    private final Scope scope;
    private final String local;
    private final Layers layers;
    private final List<Cell> measures;
    private final Notes notes;
    private Optional<Part> made = Optional.empty();
    private boolean asked;

    /**
     * The properties of a part.
     *
     * @param written as its own statement has them: what a part like this one takes over
     * @param said with what the instance around it changes
     * @param open whether it is like a part that is not there, so that nothing is called missing
     */
    record Layers(Properties written, Properties said, boolean open) {}

    PartEntry(Session session, Reader reader, Statement.Part statement, String local, Scope scope, Layers layers) {
        this.session = session;
        this.reader = reader;
        this.statement = statement;
        this.scope = scope;
        this.local = local;
        this.layers = layers;
        this.notes = session.notes();
        this.measures = Size.NAMES.stream().map(this::cell).toList();
    }

    private Cell cell(String name) {
        Span at = properties().one(name).map(g -> g.property().span()).orElse(statement.name().span());
        return new Cell(session, scope, local + "." + name, at, () -> properties()
                .one(name)
                .flatMap(given -> session.within(
                        given.scope().instance(), () -> reader.size(local + "." + name, given)))
                .map(m -> new Derived(Measure.datum(m.value()), m.how()))
                .orElseGet(() -> missing(name)));
    }

    private Derived missing(String name) {
        if (properties().one(name).isEmpty() && !open()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY,
                    statement.name().span(),
                    "The part `" + path() + "` has no `" + name + "`")
                    .related(
                            statement.body().map(b -> b.span().endPoint()).orElse(statement.span().endPoint()),
                            "`" + name + "` goes in these braces")
                    .about(path())
                    .build());
        }
        return Expressions.unknown(statement.name().span());
    }

    /** The part itself, made once, with its notes beside those of its sizes. */
    Optional<Part> made(Supplier<Optional<Part>> make) {
        if (!asked) {
            asked = true;
            made = session.noting(notes, make);
        }
        return made;
    }

    /** Whether it is like something that is not there, so that nothing can be called missing. */
    boolean open() {
        return layers.open();
    }

    String path() {
        return scope.prefix() + local;
    }

    Statement.Part statement() {
        return statement;
    }

    Scope scope() {
        return scope;
    }

    /** Its properties with all that is changed of them. */
    Properties properties() {
        return layers.said();
    }

    /** Its properties as its own statement has them. */
    Properties written() {
        return layers.written();
    }

    @Override
    public Span nameAt() {
        return statement.name().span();
    }

    Derived measure(int which) {
        return measures.get(which).value();
    }

    /** What the cell of a measure is called in the project. */
    String measurePath(int which) {
        return measures.get(which).path();
    }

    /** The measure with its place, where it is known. */
    Optional<Measure> known(int which) {
        Derived derived = measure(which);
        Span at = properties()
                .one(Size.NAMES.get(which))
                .map(g -> reader.placeToChange(g, derived.how()))
                .orElse(nameAt());
        return Arithmetic.length(derived.value()).map(l -> new Measure(l, at, derived.how()));
    }

    boolean overall(int which) {
        return properties()
                .one(Size.NAMES.get(which))
                .map(g -> g.property().values().stream()
                        .flatMap(v -> v.tails().stream())
                        .anyMatch(t -> t.word().text().equals("overall")))
                .orElse(false);
    }
}
