package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.quantity.Dimension;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the air of rooms: of the project, and {@code climate kitchen { … }} outside it. */
final class RoomReader {
    private static final int MONTHS = 12;

    private final Session session;
    private final Reader reader;

    RoomReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
    }

    /** Whether a statement of the file declares a room; then its air is known from here on. */
    boolean declares(Statement.Property statement, Scope scope) {
        if (!statement.name().text().equals("climate") || statement.body().isEmpty()) {
            return false;
        }
        Optional<Expr.Word> name = statement.values().size() == 1
                && statement.values().getFirst().expr() instanceof Expr.Word word
                        ? Optional.of(word)
                        : Optional.empty();
        if (name.isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY, statement.name().span(),
                    "A `climate` outside `project` has no name")
                    .found("Write `climate kitchen { … }`, and `room kitchen` in the parts that live there.")
                    .build());
            return true;
        }
        Properties inside = Properties.read(session, Schemas.CLIMATE, statement.body(), scope, Optional.empty());
        RoomClimate before = session.rooms.get(name.get().name());
        if (before != null) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME, name.get().span(), "There are two rooms `" + name.get().name() + "`")
                    .related(before.humidityAt(), "the air of the first; this one counts")
                    .build());
            return true;
        }
        session.declared(new Symbol(
                name.get().name(), "climate", name.get().span(), statement.span(), statement.doc()));
        air(name.get().name(), inside).ifPresent(room -> session.rooms.put(room.name(), room));
        return true;
    }

    /** The air in the project block: a block of its own, or the name of a room. */
    Optional<RoomClimate> ofProject(Properties properties) {
        Optional<Properties.Given> given = properties.one("climate");
        if (given.isPresent() && given.get().property().body().isEmpty()
                && !given.get().property().values().isEmpty()) {
            return named(given.get());
        }
        return properties.inner(session, "climate", Schemas.CLIMATE).flatMap(inside -> air("", inside));
    }

    /** The room that a property names. */
    Optional<RoomClimate> named(Properties.Given given) {
        Optional<Expr.Word> name = reader.anyWord(given, Shape.Plain.ROOM.phrase());
        Optional<RoomClimate> room = name.map(word -> session.rooms.get(word.name()));
        name.ifPresent(word -> room.ifPresent(air -> session.used(new Usage(
                word.span(),
                air.humidityAt(),
                Expressions.thing(word.name(), Datum.Thing.Kind.PRESET, air.humidityAt())))));
        if (name.isPresent() && room.isEmpty()) {
            unknown(name.get().span(), name.get().name());
        }
        return room;
    }

    private void unknown(Span at, String name) {
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_NAME, at, "No `climate` of this project is called `" + name + "`")
                .found(session.rooms.isEmpty()
                        ? "Declare it as `climate " + name + " { humidity 35%..65%; temperature 18degC..24degC }`."
                        : "There are " + NearWords.quoted(List.copyOf(session.rooms.keySet())) + ".");
        NearWords.remedies(name, at, session.rooms.keySet()).forEach(finding::remedy);
        session.add(finding.build());
    }

    private Optional<RoomClimate> air(String name, Properties inside) {
        Optional<Year> humidity = year(inside, "humidity", Dimension.NUMBER, 0, 100, "%");
        // The equation is for air, not for steam; what it is printed for is checked with the wood.
        Optional<Year> temperature = year(inside, "temperature", Dimension.TEMPERATURE, -60, 100, "degC");
        if (humidity.isEmpty() || temperature.isEmpty()) {
            return Optional.empty();
        }
        Year damp = humidity.get();
        Year warm = temperature.get();
        boolean monthly = damp.monthly() || warm.monthly();
        if (monthly && !(damp.everyMonth() && warm.everyMonth())) {
            Year other = damp.monthly() ? warm : damp;
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND, other.at(), "A table of months wants a figure for every month here too")
                    .found("Write one value for the whole year, or twelve, January first.")
                    .related(damp.monthly() ? damp.at() : warm.at(), "this one goes by months")
                    .build());
            return Optional.empty();
        }
        List<RoomClimate.Month> months = new ArrayList<>();
        for (int month = 0; monthly && month < MONTHS; month++) {
            months.add(new RoomClimate.Month(damp.in(month), warm.in(month)));
        }
        return Optional.of(new RoomClimate(
                name, damp.low(), damp.high(), warm.low(), warm.high(), months, damp.at(), warm.at()));
    }

    /** A figure through the year: twelve values, the two ends of a range, or one value. */
    private record Year(List<Double> values, Span at) {
        boolean monthly() {
            return values.size() == MONTHS;
        }

        boolean everyMonth() {
            return monthly() || low() == high();
        }

        double in(int month) {
            return monthly() ? values.get(month) : values.getFirst();
        }

        double low() {
            return values.stream().mapToDouble(v -> v).min().orElseThrow();
        }

        double high() {
            return values.stream().mapToDouble(v -> v).max().orElseThrow();
        }
    }

    private Optional<Year> year(
            Properties inside, String name, Dimension dimension, double low, double high, String unit) {
        Optional<Properties.Given> given = inside.one(name);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        List<Value> values = given.get().property().values();
        if (values.size() <= 1) {
            return reader.range(given.get(), dimension, low, high, unit)
                    .map(r -> new Year(List.of(r.low(), r.high()), r.at()));
        }
        Span at = Reader.valueSpan(given.get().property());
        if (values.size() != MONTHS) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, at, "`" + name + "` wants a range or twelve months")
                    .found("Found " + values.size() + " values; a table goes from January to December.")
                    .build());
            return Optional.empty();
        }
        List<Double> months = new ArrayList<>();
        for (Value value : values) {
            OptionalDouble read = reader.natural(given.get(), value.expr(), dimension, low, high, unit);
            if (read.isEmpty()) {
                return Optional.empty();
            }
            months.add(read.getAsDouble());
        }
        return Optional.of(new Year(List.copyOf(months), at));
    }
}
