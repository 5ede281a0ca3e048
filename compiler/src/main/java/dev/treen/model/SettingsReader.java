package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.List;
import java.util.Optional;

/** Reads the project block, and the allowances of boards and parts that overrule it. */
final class SettingsReader {
    private final Session session;
    private final Reader reader;
    private final Expressions expressions;

    private final RoomReader rooms;
    private final SpeciesReader woods;
    private final WareReader wares;

    SettingsReader(Session session, Reader reader, Expressions expressions) {
        this.session = session;
        this.reader = reader;
        this.expressions = expressions;
        rooms = new RoomReader(session, reader);
        woods = new SpeciesReader(session, reader);
        wares = new WareReader(session, reader);
    }

    RoomReader rooms() {
        return rooms;
    }

    /** Reads a statement that declares a room, a wood or hardware, if it does. */
    boolean declares(Statement.Property statement, Scope scope) {
        return rooms.declares(statement, scope) || woods.declares(statement, scope)
                || wares.declares(statement, scope);
    }

    /** What a bare number means in {@code tree}; what is wrong with it is said when the block is read. */
    Unit units(SyntaxTree tree) {
        return project(tree, false)
                .flatMap(Statement.Project::body)
                .stream()
                .flatMap(body -> body.statements().stream())
                .filter(s -> s instanceof Statement.Property property && property.name().text().equals("units"))
                .map(s -> Reader.unitOf(Reader.valueSpan((Statement.Property) s).text()))
                .findFirst()
                .orElse(Unit.MM);
    }

    private Optional<Statement.Project> project(SyntaxTree tree, boolean report) {
        Optional<Statement.Project> block = Optional.empty();
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Project project) {
                if (block.isPresent() && report) {
                    session.add(Finding.of(ModelFindings.GIVEN_TWICE, project.span(), "There are two `project` blocks")
                            .related(block.get().span(), "the first; this one counts")
                            .build());
                }
                block = block.or(() -> Optional.of(project));
            }
        }
        return block;
    }

    /** The settings of {@code tree}, whose names are those of {@code scope}. */
    Settings read(SyntaxTree tree, Scope scope) {
        SourceFile file = tree.file();
        Optional<Statement.Project> block = project(tree, true);
        Properties properties = Properties.read(
                session, Schemas.PROJECT, block.flatMap(Statement.Project::body), scope, Optional.empty());
        String units = properties
                .one("units")
                .flatMap(g -> reader.word(g, List.of("mm", "cm", "in")))
                .orElse("mm");
        boolean hand = properties
                .one("tools")
                .flatMap(g -> reader.word(g, List.of("hand", "machine")))
                .map(w -> w.equals("hand"))
                .orElse(true);
        Span at = block.map(Statement::span).orElse(tree.beginning());
        Optional<Saw> saw = saw(properties);
        Allowances usual = StandardAllowances.of(hand, at);
        Allowances standard = saw.map(s -> new Allowances(
                s.kerf(), usual.shooting(), usual.planing(), usual.resaw(), usual.endWaste())).orElse(usual);
        return new Settings(
                block.flatMap(Statement.Project::title).map(Expr.Text::value).orElse(plainName(file.name())),
                Reader.unitOf(units),
                units.equals("in") ? LengthFormat.inches() : LengthFormat.millimetres(),
                rooms.ofProject(properties),
                hand,
                allowances(properties, standard),
                tolerances(properties),
                saw,
                new LayoutReader(session, reader).read(properties),
                currency(properties),
                ware(properties, "glue", Schemas.GLUE),
                ware(properties, "finish", Schemas.FINISH),
                at);
    }

    /** The glue or finish of the project: a block of its own, the name of one, or both. */
    private Optional<Ware> ware(Properties properties, String kind, BlockSchema schema) {
        Optional<Properties.Given> given = properties.one(kind);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Span at = given.get().property().name().span();
        Optional<Scope.Preset> preset = preset(given.get(), kind);
        Optional<Properties> base = preset.map(p -> Properties.read(
                session, schema, p.statement().body(), p.scope(), Optional.empty()));
        Optional<Properties> block = given.get().property().body().map(body -> Properties.read(
                session, schema, Optional.of(body), given.get().scope(), base));
        Optional<Properties> said = block.or(() -> base);
        said.filter(each -> schema.property("kind").isPresent() && each.one("kind").isEmpty())
                .ifPresent(each -> session.add(Finding.of(
                        ModelFindings.MISSING_PROPERTY, at, "This `" + kind + "` does not say its `kind`")
                        .found("Write it as `" + schema.example() + "`.")
                        .build()));
        return said.map(each -> wares.liquid(preset.map(p -> p.nameAt().text()).orElse(""), at, each));
    }

    private String currency(Properties properties) {
        Optional<Properties.Given> given = properties.one("currency");
        if (given.isEmpty() || given.get().property().values().isEmpty()) {
            return "";
        }
        Expr expr = given.get().property().values().getFirst().expr();
        if (expr instanceof Expr.Text text) {
            return text.value().strip();
        }
        if (!(expr instanceof Expr.Missing)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(),
                    "`currency` wants " + Shape.Plain.TEXT.phrase())
                    .found("Write it as `currency \"EUR\"`.")
                    .build());
        }
        return "";
    }

    private Optional<Saw> saw(Properties properties) {
        return properties.one("saw")
                .flatMap(given -> preset(given, "saw"))
                .flatMap(preset -> {
                    Properties block = Properties.read(
                            session, Schemas.SAW, preset.statement().body(), preset.scope(), Optional.empty());
                    if (block.one("kerf").isEmpty()) {
                        session.add(Finding.of(
                                ModelFindings.MISSING_PROPERTY, preset.nameAt(), "This saw does not say its `kerf`")
                                .found("Write it as `" + Schemas.SAW.example() + "`.")
                                .build());
                    }
                    Optional<Measure> depth = block.one("depth").flatMap(g -> reader.size("depth", g));
                    return block.one("kerf")
                            .flatMap(g -> reader.allowance("kerf", g))
                            .map(kerf -> new Saw(preset.nameAt().text(), kerf, depth, preset.nameAt()));
                });
    }

    /** The preset of {@code kind} that a property names. */
    private Optional<Scope.Preset> preset(Properties.Given given, String kind) {
        if (given.property().values().isEmpty()) {
            return Optional.empty();
        }
        Expr expr = given.property().values().getFirst().expr();
        if (expr instanceof Expr.Missing) {
            return Optional.empty();
        }
        Derived found = expressions.evaluate(expr, given.scope());
        if (found.value() instanceof Datum.Unknown) {
            return Optional.empty();
        }
        if (expressions.entry(expr, given.scope()).orElse(null) instanceof Scope.Preset preset
                && preset.kind().equals(kind)) {
            return Optional.of(preset);
        }
        session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "`" + kind + "` wants the name of one")
                .found("`" + Reader.cut(expr.span().text()) + "` is " + Arithmetic.phrase(found.value())
                        + "; one is declared with `" + kind + " NAME { … }`.")
                .build());
        return Optional.empty();
    }

    private static String plainName(String path) {
        String name = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
        return name.endsWith(".treen") ? name.substring(0, name.length() - ".treen".length()) : name;
    }

    /** How exactly the project, or a part that has a word of its own, is made. */
    Tolerances tolerances(Properties properties) {
        return properties.inner(session, "tolerance", Schemas.TOLERANCE)
                .map(given -> new Tolerances(
                        given.one("class").flatMap(g -> reader.word(g, Schemas.CLASSES)),
                        tolerance(given, "length"),
                        tolerance(given, "width"),
                        tolerance(given, "thickness"),
                        tolerance(given, "depth"),
                        tolerance(given, "measured")))
                .orElse(Tolerances.NONE);
    }

    private Optional<Measure> tolerance(Properties given, String name) {
        return given.one(name).flatMap(g -> reader.allowance(name, g));
    }

    Allowances allowances(Properties properties, Allowances standard) {
        Allowances base = properties.one("allow")
                .flatMap(given -> preset(given, "allow"))
                .map(preset -> over(
                        Properties.read(
                                session, Schemas.ALLOW, preset.statement().body(), preset.scope(), Optional.empty()),
                        standard))
                .orElse(standard);
        return properties.inner(session, "allow", Schemas.ALLOW).map(block -> over(block, base)).orElse(base);
    }

    private Allowances over(Properties given, Allowances standard) {
        return new Allowances(
                allowance(given, "kerf", standard.kerf()),
                allowance(given, "shooting", standard.shooting()),
                allowance(given, "planing", standard.planing()),
                allowance(given, "resaw", standard.resaw()),
                allowance(given, "end_waste", standard.endWaste()));
    }

    private Measure allowance(Properties given, String name, Measure standard) {
        return given.one(name).flatMap(g -> reader.allowance(name, g)).orElse(standard);
    }
}
