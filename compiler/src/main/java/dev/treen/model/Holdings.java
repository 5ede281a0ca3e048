package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code holds} statements: what goes into which room. */
final class Holdings {
    /** Free on every side, so that a thing goes in at all: common practice, no source. */
    private static final Length ROOM = Length.ofMm(1);

    private final Session session;
    private final Expressions expressions;
    private final Reader reader;

    Holdings(Session session, Expressions expressions, Reader reader) {
        this.session = session;
        this.expressions = expressions;
        this.reader = reader;
    }

    Optional<Holding> read(Sequence.ToHold pending) {
        return session.within(
                pending.scope().instance(), () -> read(pending.statement(), pending.scope()));
    }

    private Optional<Holding> read(Statement.Holds statement, Scope scope) {
        Optional<Room> inside = inside(statement.what(), scope);
        List<Holding.Content> contents = new ArrayList<>();
        Length room = ROOM;
        for (Statement each : statement.body().map(Block::statements).orElse(List.of())) {
            switch (each) {
                case Statement.Property property -> {
                    Properties.Given given = new Properties.Given(property, scope);
                    switch (property.name().text()) {
                        case "count" -> count(given, contents);
                        case "room" -> room = reader.allowance("room", given).map(Measure::value).orElse(room);
                        default -> content(given).ifPresent(contents::add);
                    }
                }
                case Statement.Broken broken -> {
                }
                default -> session.add(Finding.of(
                        ModelFindings.DOES_NOT_BELONG, each.head(), "This does not belong in `holds`")
                        .found("It holds lines as `tin 150 x 70 x 60`, each perhaps with a `count` after it.")
                        .build());
            }
        }
        if (statement.body().isPresent() && contents.isEmpty() && statement.body().get().statements().isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY, statement.what().span(), "It is not said what goes in")
                    .found("Write it as `tin 150 x 70 x 60; count 1`.")
                    .build());
        }
        if (inside.isEmpty() || contents.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Holding(
                statement.what().span().text(),
                inside.get().measures(),
                inside.get().at(),
                contents,
                room,
                statement.what().span()));
    }

    private record Room(List<Length> measures, Span at) {}

    /** The size that is named, or the {@code inside} of the thing that is. */
    private Optional<Room> inside(Expr what, Scope scope) {
        Derived named = expressions.evaluate(what, scope);
        if (named.value() instanceof Datum.Unknown) {
            return Optional.empty();
        }
        Derived size = named;
        if (expressions.entry(what, scope).orElse(null) instanceof InstanceEntry instance) {
            Optional<Derived> room = instance.inside().own("inside").flatMap(Scope.Entry::held).map(Cell::value);
            if (room.isEmpty()) {
                session.add(Finding.of(
                        ModelFindings.WRONG_KIND, what.span(),
                        "`" + instance.path() + "` has no `inside` to hold things")
                        .found("The pattern `" + instance.pattern().name() + "` gives no size of that name.")
                        .related(instance.pattern().nameAt(), "its pattern")
                        .build());
                return Optional.empty();
            }
            size = room.get();
        }
        if (size.value() instanceof Datum.Sizes(List<Datum> measures) && measures.size() == 3) {
            List<Length> lengths = measures.stream()
                    .flatMap(m -> Arithmetic.length(m).stream())
                    .toList();
            if (lengths.size() == 3) {
                return Optional.of(new Room(lengths, size.how().at().orElse(what.span())));
            }
        }
        if (!(size.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    what.span(),
                    "`holds` wants a thing with an inside, or a size of three measures")
                    .found("`" + Reader.cut(what.span().text()) + "` is " + Arithmetic.phrase(size.value()) + ".")
                    .build());
        }
        return Optional.empty();
    }

    private Optional<Holding.Content> content(Properties.Given given) {
        Span at = Reader.valueSpan(given.property());
        return reader.sizes(given, 3)
                .map(s -> new Holding.Content(
                        given.property().name().text(), s.get(0).value(), s.get(1).value(), s.get(2).value(), 1, at));
    }

    /** A count is about the line before it. */
    private void count(Properties.Given given, List<Holding.Content> contents) {
        Optional<Integer> count = reader.single(given, Shape.Plain.COUNT.phrase())
                .map(expr -> expressions.evaluate(expr, given.scope()).value())
                .flatMap(expressions.arithmetic()::whole)
                .filter(n -> n > 0 && n <= 1000);
        if (count.isEmpty() || contents.isEmpty()) {
            session.add(Finding.of(
                    count.isEmpty() ? ModelFindings.OUT_OF_RANGE : ModelFindings.WRONG_KIND,
                    Reader.valueSpan(given.property()),
                    count.isEmpty()
                            ? "`count` wants a whole number from 1 to 1000"
                            : "`count` follows the thing that it counts")
                    .build());
            return;
        }
        Holding.Content last = contents.removeLast();
        contents.add(new Holding.Content(
                last.name(), last.length(), last.width(), last.height(), count.get(), last.at()));
    }
}
