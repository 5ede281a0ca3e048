package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads boards and sheets with their flaws. */
final class BoardReader {
    private static final List<String> DISCS = List.of("knot", "worm");
    private static final List<String> LINES = List.of("check", "pith");
    private static final List<String> PATCHES = List.of("wane", "sapwood", "punky");
    /** Growing trees hold up to twice their dry weight in water; what is too wet to be worked is for the checks. */
    private static final double WETTEST = 200;
    private static final double MOST_MONEY = 1e9;
    /** More leaves than this are veneer. */
    private static final int MOST_LEAVES = 6;

    private final Session session;
    private final Reader reader;
    private final SettingsReader settings;
    private final Allowances standard;

    BoardReader(Session session, Reader reader, SettingsReader settings, Allowances standard) {
        this.session = session;
        this.reader = reader;
        this.settings = settings;
        this.standard = standard;
    }

    Optional<Board> read(Statement.Board statement, String path, Properties properties) {
        Optional<List<Measure>> size = properties.one("size").flatMap(g -> reader.sizes(g, 3));
        if (properties.one("size").isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY,
                    statement.name().span(),
                    "The board `" + path + "` has no `size`")
                    .found("Write `size` with its length along the grain, its width and its thickness.")
                    .about(path)
                    .build());
        }
        Optional<Expr.Word> species = properties.one("species")
                .flatMap(g -> reader.anyWord(g, Shape.Plain.SPECIES.phrase()));
        Rings rings = properties.one("rings").flatMap(reader::rings).orElse(Rings.ASSUMED);
        Optional<Double> moisture = properties.one("moisture").flatMap(g -> reader.percent(g, WETTEST));
        List<Defect> defects = defects(properties);
        Allowances allow = settings.allowances(properties, standard);
        return size.map(s -> new Board(
                path,
                statement.name().span(),
                statement.sheet(),
                species.map(Expr.Word::name),
                species.map(Expr.Word::span).orElse(statement.name().span()),
                species.flatMap(word -> Optional.ofNullable(session.woods.get(word.name()))),
                s.get(0),
                s.get(1),
                s.get(2),
                rings,
                moisture,
                properties.one("moisture")
                        .map(given -> Reader.valueSpan(given.property()))
                        .orElse(statement.name().span()),
                properties.one("core").flatMap(g -> reader.percent(g, WETTEST)),
                properties.one("heart").flatMap(g -> reader.size("heart", g)),
                properties.one("leaves").flatMap(g -> reader.count(g, 1, MOST_LEAVES)),
                properties.one("cup").flatMap(g -> reader.allowance("cup", g)).filter(c -> c.value().signum() > 0),
                rips(properties, s, allow),
                properties.one("offcut").flatMap(g -> reader.word(g, Schemas.YES_NO)).equals(Optional.of("yes")),
                properties.one("price").flatMap(this::price),
                defects,
                allow));
    }

    /** From the near edge up, with wood on both sides of each. */
    private List<Measure> rips(Properties properties, List<Measure> size, Allowances allow) {
        List<Measure> sound = new ArrayList<>();
        List<Measure> given = properties.all("rip").stream()
                .flatMap(g -> reader.size("rip", g).stream())
                .sorted(Comparator.comparing(Measure::value))
                .toList();
        Length from = Length.ZERO;
        for (Measure rip : given) {
            Length beyond = rip.value().plus(allow.kerf().value());
            if (rip.value().compareTo(from) <= 0 || beyond.compareTo(size.get(1).value()) >= 0) {
                session.add(Finding
                        .of(ModelFindings.OUT_OF_RANGE, rip.at(), "This rip leaves nothing on one side of it")
                        .found("With its kerf it has to lie within the width of the board, and beside any other rip.")
                        .related(size.get(1).at(), "the board's width")
                        .build());
            } else {
                sound.add(rip);
                from = beyond;
            }
        }
        return sound;
    }

    private List<Defect> defects(Properties properties) {
        List<Defect> found = new ArrayList<>();
        DISCS.forEach(kind -> properties.all(kind).forEach(g -> disc(kind, g).ifPresent(found::add)));
        LINES.forEach(kind -> properties.all(kind).forEach(g -> line(kind, g).ifPresent(found::add)));
        PATCHES.forEach(kind -> properties.all(kind).forEach(g -> patch(kind, g).ifPresent(found::add)));
        return found;
    }

    private Properties inside(Properties.Given given, BlockSchema schema) {
        Properties properties = Properties.read(session, schema, given.property().body(), given.scope(),
                Optional.empty());
        for (PropertySchema each : schema.properties()) {
            if (each.needed() && properties.one(each.name()).isEmpty()) {
                Span at = given.property().name().span();
                session.add(Finding.of(
                        ModelFindings.MISSING_PROPERTY,
                        at,
                        "This `" + given.property().name().text() + "` has no `" + each.name() + "`")
                        .found("Write it as `" + schema.example() + "`.")
                        .build());
            }
        }
        return properties;
    }

    private Defect.Face face(Properties inside) {
        return inside.one("face")
                .flatMap(g -> reader.word(g, Defect.Face.words()))
                .map(word -> Defect.Face.valueOf(word.toUpperCase(Locale.ROOT)))
                .orElse(Defect.Face.BOTH);
    }

    /** What it costs, as it is sold. */
    Optional<Price> price(Properties.Given given) {
        Properties inside = inside(given, Schemas.PRICE);
        List<Price> prices = new ArrayList<>();
        boolean said = false;
        for (Price.Per per : Price.Per.values()) {
            Optional<Properties.Given> one = inside.one(per.word());
            said |= one.isPresent();
            one.filter(g -> g.property().values().size() == 1)
                    .map(g -> reader.number(g, g.property().values().getFirst().expr(), MOST_MONEY))
                    .filter(OptionalDouble::isPresent)
                    .ifPresent(n -> prices.add(new Price(n.getAsDouble(), per, given.property().span())));
        }
        if (!said || prices.size() > 1) {
            session.add(UnsaidPrice.finding(given.property(), said, Schemas.PRICE.example(),
                    Arrays.stream(Price.Per.values())
                            .map(per -> new UnsaidPrice.Way(per.word(), per.phrase()))
                            .toList()));
            return Optional.empty();
        }
        return prices.stream().findFirst();
    }

    private Optional<Defect> disc(String kind, Properties.Given given) {
        Properties inside = inside(given, Schemas.DISC);
        Optional<List<Length>> at = inside.one("at").flatMap(g -> reader.point(g, 2));
        Optional<Measure> radius = inside.one("radius").flatMap(g -> reader.size("radius", g));
        return at.flatMap(p -> radius.map(r -> new Defect.Disc(
                kind, p.get(0), p.get(1), r.value(), face(inside), given.property().span())));
    }

    private Optional<Defect> line(String kind, Properties.Given given) {
        Properties inside = inside(given, Schemas.LINE);
        Optional<List<Length>> from = inside.one("from").flatMap(g -> reader.point(g, 2));
        Optional<List<Length>> to = inside.one("to").flatMap(g -> reader.point(g, 2));
        Length width = inside.one("width")
                .flatMap(g -> reader.size("width", g))
                .map(Measure::value)
                .orElse(Length.ofMm(1));
        return from.flatMap(a -> to.map(b -> new Defect.Line(
                kind,
                a.get(0),
                a.get(1),
                b.get(0),
                b.get(1),
                width,
                face(inside),
                given.property().span())));
    }

    private Optional<Defect> patch(String kind, Properties.Given given) {
        Properties inside = inside(given, Schemas.PATCH);
        Optional<List<Length>> at = inside.one("at").flatMap(g -> reader.point(g, 2));
        Optional<List<Measure>> size = inside.one("size").flatMap(g -> reader.sizes(g, 2));
        return at.flatMap(p -> size.map(s -> new Defect.Patch(
                kind,
                p.get(0),
                p.get(1),
                s.get(0).value(),
                s.get(1).value(),
                face(inside),
                given.property().span())));
    }
}
