package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code species bog_oak { … }}: woods that the project describes itself. */
final class SpeciesReader {
    /** More than this for each 1 % no wood moves, and none shrinks so far in all. */
    private static final double MOST_MOVEMENT = 0.01;

    private static final double MOST_SHRINKAGE = 20;

    private final Session session;
    private final Reader reader;

    SpeciesReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    /** Whether a statement of the file declares a wood; then it is known from here on. */
    boolean declares(Statement.Property statement, Scope scope) {
        if (!statement.name().text().equals("species") || statement.body().isEmpty()
                || statement.values().size() != 1
                || !(statement.values().getFirst().expr() instanceof Expr.Word name)) {
            return false;
        }
        Properties inside = Properties.read(session, Schemas.WOOD, statement.body(), scope, Optional.empty());
        DeclaredSpecies before = session.woods.get(name.name());
        if (before != null) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME, name.span(), "There are two species `" + name.name() + "`")
                    .related(before.nameAt(), "the first; this one counts")
                    .build());
            return true;
        }
        session.declared(
                new Symbol(name.name(), "species", name.span(), statement.span(), statement.doc()));
        read(name, inside).ifPresent(wood -> session.woods.put(wood.name(), wood));
        return true;
    }

    private Optional<DeclaredSpecies> read(Expr.Word name, Properties inside) {
        Optional<Properties.Given> movement = inside.one("movement");
        Optional<Properties.Given> shrinkage = inside.one("shrinkage");
        if (movement.isPresent() == shrinkage.isPresent()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY,
                    name.span(),
                    "The species `" + name.name() + "` wants either `movement` or `shrinkage`")
                    .found("Write `shrinkage 7.1%, 3.7%`, the whole from green to ovendry along the rings and across"
                            + " them, or `movement 0.00248, 0.00126` for each 1 % of moisture.")
                    .about(name.name())
                    .build());
            return Optional.empty();
        }
        Optional<List<Double>> pair = movement.isPresent()
                ? pair(movement.get(), MOST_MOVEMENT, 1)
                : pair(shrinkage.orElseThrow(), MOST_SHRINKAGE, 100);
        DeclaredSpecies.Kind kind = movement.isPresent()
                ? DeclaredSpecies.Kind.MOVEMENT
                : DeclaredSpecies.Kind.SHRINKAGE;
        return pair.map(p -> new DeclaredSpecies(
                name.name(),
                name.span(),
                p.getFirst(),
                p.getLast(),
                kind,
                figure(inside, "gravity", 1.5),
                figure(inside, "stiffness", 40)));
    }

    /** Two figures above zero, the greater along the rings. */
    private Optional<List<Double>> pair(Properties.Given given, double most, double times) {
        List<Value> values = given.property().values();
        Span at = Reader.valueSpan(given.property());
        if (values.size() != 2) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    at,
                    "`" + given.property().name().text() + "` wants " + Shape.Plain.PAIR.phrase())
                    .build());
            return Optional.empty();
        }
        List<Double> pair = new ArrayList<>();
        for (Value value : values) {
            OptionalDouble read = reader.number(given, value.expr(), most / times);
            if (read.isPresent()) {
                pair.add(read.getAsDouble() * times);
            }
        }
        return pair.size() == 2 ? Optional.of(pair) : Optional.empty();
    }

    private OptionalDouble figure(Properties inside, String name, double most) {
        Optional<Properties.Given> given = inside.one(name);
        return given.isEmpty() || given.get().property().values().size() != 1
                ? OptionalDouble.empty()
                : reader.number(given.get(), given.get().property().values().getFirst().expr(), most);
    }
}
