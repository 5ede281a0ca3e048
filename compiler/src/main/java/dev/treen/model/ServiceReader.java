package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Dimension;
import dev.treen.quantity.Quantity;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Value;
import java.util.List;
import java.util.Optional;

/** Reads what a part has to stand: its room, its load, its finish. */
final class ServiceReader {
    /** The uses that a load is known for. */

    private final Session session;
    private final Reader reader;
    private final RoomReader rooms;

    ServiceReader(Session session, Reader reader, RoomReader rooms) {
        this.session = session;
        this.reader = reader;
        this.rooms = rooms;
    }

    Service read(Properties properties) {
        Optional<RoomClimate> room = properties.one("room").flatMap(rooms::named);
        Optional<Service.Carried> carries = properties.one("carries").flatMap(this::carries);
        Optional<Service.Finish> finish = properties.one("finish").flatMap(given -> reader
                .word(given, Schemas.FINISHES)
                .map(word -> new Service.Finish(word, Reader.valueSpan(given.property()))));
        return room.isEmpty() && carries.isEmpty() && finish.isEmpty()
                ? Service.USUAL
                : new Service(room, carries, finish);
    }

    private Optional<Service.Carried> carries(Properties.Given given) {
        List<Value> values = given.property().values();
        Span at = Reader.valueSpan(given.property());
        if (values.size() != 1) {
            return wrong(at, values.isEmpty() ? "nothing" : "a list");
        }
        Value value = values.getFirst();
        if (value.expr() instanceof Expr.Word) {
            return reader.word(given, Service.USES).map(use -> new Service.Carried.For(use, at));
        }
        Datum datum = reader.value(value.expr(), given.scope());
        if (datum instanceof Datum.Exactly(Quantity quantity) && quantity.dimension() == Dimension.MASS
                && quantity.amount().signum() >= 0) {
            boolean middle = value.tails().stream().anyMatch(tail -> tail.word().text().equals("at"));
            return Optional.of(new Service.Carried.Mass(quantity.amount().doubleValue() / 1000, middle, at));
        }
        return datum instanceof Datum.Unknown ? Optional.empty() : wrong(at, Arithmetic.phrase(datum));
    }

    private Optional<Service.Carried> wrong(Span at, String found) {
        session.add(Finding.of(ModelFindings.WRONG_KIND, at, "`carries` wants " + Shape.Plain.LOAD.phrase())
                .found("Found " + found + ".")
                .build());
        return Optional.empty();
    }
}
