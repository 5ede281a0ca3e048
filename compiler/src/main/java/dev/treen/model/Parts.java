package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import java.util.List;
import java.util.Optional;

/** Makes the parts of a project from their entries. */
final class Parts {
    private final Session session;
    private final Expressions expressions;
    private final Reader reader;
    private final SettingsReader settingsReader;
    private final Instances instances;
    private final Settings settings;

    Parts(
            Session session,
            Expressions expressions,
            Reader reader,
            SettingsReader settingsReader,
            Instances instances,
            Settings settings) {
        this.session = session;
        this.expressions = expressions;
        this.reader = reader;
        this.settingsReader = settingsReader;
        this.instances = instances;
        this.settings = settings;
    }

    Optional<Part> part(PartEntry entry) {
        return entry.made(() -> session.within(entry.scope().instance(), () -> make(entry)));
    }

    private Optional<Part> make(PartEntry entry) {
        Optional<Measure> length = entry.known(0);
        Optional<Measure> width = entry.known(1);
        Optional<Measure> thickness = entry.known(2);
        Optional<Wood> wood = entry.properties().layers("from").stream()
                .filter(given -> !leftOpen(given))
                .findFirst()
                .flatMap(this::woodOf);
        Pose pose = entry.scope().instance().map(instances::pose).orElse(Pose.PLAIN);
        Optional<Placing> placing = entry.properties()
                .inner(session, "place", Schemas.PLACE)
                .flatMap(p -> placing(p, entry))
                .map(pose::place);
        if (length.isEmpty() || width.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        Optional<AnyOf> anyOf = wood.flatMap(Wood::anyOf);
        Optional<Board> from = wood.flatMap(Wood::board)
                .or(() -> anyOf.map(any -> any.liveliest(length.get(), thickness.get())));
        Optional<Part> planned = Optional.ofNullable(session.measured.planned().get(entry.path()));
        Optional<Board> bought = new Bought(session, reader,
                new BoardReader(session, reader, settingsReader, settings.allow()))
                .read(entry, List.of(length.get(), width.get(), thickness.get()), settings.allow());
        if (bought.isPresent()) {
            from = Optional.empty();
        }
        Optional<Board> board = from;
        Rings rings = entry.properties()
                .one("rings")
                .flatMap(reader::rings)
                .or(() -> board.map(Board::rings))
                .orElse(Rings.ASSUMED);
        Allowances standard = board.map(Board::allow).orElse(settings.allow());
        Service service = new ServiceReader(session, reader, settingsReader.rooms()).read(entry.properties());
        TakesReader flaws = new TakesReader(session);
        return Optional.of(new Part(
                entry.path(),
                entry.nameAt(),
                length.get(),
                width.get(),
                thickness.get(),
                new Part.Overall(entry.overall(0), entry.overall(1), entry.overall(2)),
                from,
                bought,
                bought.isPresent() ? Optional.empty() : anyOf,
                rings,
                entry.properties()
                        .one("rings")
                        .map(given -> Reader.valueSpan(given.property()))
                        .orElse(entry.nameAt()),
                planned.map(Part::placing).orElse(placing),
                planned.map(Part::seen),
                flaws.seenOn(
                        flaws.read(entry.properties()).map(takes -> takes.turned(pose))
                                .orElse(settings.layout().takes()),
                        entry.path(), placing),
                entry.properties().one("grain").flatMap(given -> reader.word(given, Schemas.GRAIN))
                        .equals(Optional.of("any")),
                bought.isPresent() ? Optional.empty() : new GlueUpReader(session, reader).read(entry.properties()),
                bought.map(ready -> service.bare(ready.speciesAt())).orElse(service),
                settingsReader.allowances(entry.properties(), standard),
                settingsReader.tolerances(entry.properties()).within(settings.tolerances()),
                entry.statement().doc()));
    }

    /** Whether {@code from any} leaves it to what is behind: the thing that the part is in. */
    private boolean leftOpen(Properties.Given given) {
        if (given.property().values().size() != 1) {
            return false;
        }
        Expr expr = given.property().values().getFirst().expr();
        if (expr instanceof Expr.Word word && given.scope().find(word.name()).isEmpty()) {
            return word.name().equals("any");
        }
        boolean inPattern = given.scope().instance().isPresent();
        return inPattern
                && expressions.evaluate(expr, given.scope()).value() instanceof Datum.Word(String word)
                && word.equals("any");
    }

    /** What {@code from} names: one board, or any of a species. */
    private record Wood(Optional<Board> board, Optional<AnyOf> anyOf) {}

    private Optional<Wood> woodOf(Properties.Given given) {
        if (given.property().values().size() != 1) {
            return Optional.empty();
        }
        Expr expr = given.property().values().getFirst().expr();
        Derived derived = expressions.wood(expr, given.scope());
        if (derived.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                && kind == Datum.Thing.Kind.BOARD) {
            return Optional.ofNullable(session.boards.get(path)).flatMap(BoardEntry::board)
                    .map(board -> new Wood(Optional.of(board), Optional.empty()));
        }
        if (derived.value() instanceof Datum.Thing(String species, Datum.Thing.Kind kind)
                && kind == Datum.Thing.Kind.SPECIES) {
            List<Board> boards = session.boards.values().stream()
                    .filter(entry -> entry.species().equals(Optional.of(species)))
                    .flatMap(entry -> entry.board().stream())
                    .toList();
            return boards.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Wood(Optional.empty(), Optional.of(
                            new AnyOf(species, derived.how().at().orElse(expr.span()), boards))));
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "`from` wants " + Shape.Plain.BOARD.phrase())
                    .found("`" + Reader.cut(expr.span().text()) + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return Optional.empty();
    }

    private Optional<Placing> placing(Properties properties, PartEntry entry) {
        Optional<Direction> length = properties.one("length").flatMap(this::direction);
        Optional<Direction> width = properties.one("width").flatMap(this::direction);
        Optional<List<Length>> at = properties.one("at").flatMap(g -> reader.point(g, 3));
        Span span = entry.properties()
                .one("place")
                .map(g -> g.property().span())
                .orElse(entry.nameAt());
        for (PropertySchema needed : Schemas.PLACE.properties()) {
            if (properties.one(needed.name()).isEmpty() && !entry.open()) {
                session.add(Finding.of(
                        ModelFindings.MISSING_PROPERTY,
                        span,
                        "The place of `" + entry.path() + "` has no `" + needed.name() + "`")
                        .about(entry.path())
                        .build());
            }
        }
        if (length.isEmpty() || width.isEmpty() || at.isEmpty()) {
            return Optional.empty();
        }
        if (length.get().axis() == width.get().axis()) {
            session.add(Finding.of(
                    ModelFindings.OUT_OF_RANGE,
                    span,
                    "Length and width of `" + entry.path() + "` lie along the same line")
                    .about(entry.path())
                    .build());
            return Optional.empty();
        }
        Direction third = Direction.of(3 - length.get().axis() - width.get().axis(), 1);
        return Optional.of(
                new Placing(length.get(), width.get(), third, at.get(), Placing.Corner.LOWEST, span,
                        coordinates(properties)));
    }

    private static List<Span> coordinates(Properties properties) {
        return properties.one("at")
                .map(given -> given.property().values().stream().map(value -> value.expr().span()).toList())
                .filter(spans -> spans.size() == 3)
                .orElse(List.of());
    }

    private Optional<Direction> direction(Properties.Given given) {
        return reader.word(given, Direction.words()).flatMap(Direction::named);
    }
}
