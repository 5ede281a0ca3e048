package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.List;
import java.util.Optional;

/** Reads the project block, and the allowances of boards and parts that overrule it. */
final class SettingsReader {
    private final Session session;
    private final Reader reader;

    private final RoomReader rooms;
    private final SpeciesReader woods;

    SettingsReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
        rooms = new RoomReader(session, reader);
        woods = new SpeciesReader(session, reader);
    }

    RoomReader rooms() {
        return rooms;
    }

    /** Whether a statement declares a room or a wood, which is read with the settings. */
    static boolean isDeclaration(Statement.Property statement) {
        return statement.body().isPresent()
                && (statement.name().text().equals("climate") || statement.name().text().equals("species"));
    }

    private void declarations(SyntaxTree tree, Scope scope) {
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Property property && !rooms.declares(property, scope)) {
                woods.declares(property, scope);
            }
        }
    }

    Settings read(SyntaxTree tree) {
        SourceFile file = tree.file();
        Optional<Statement.Project> block = Optional.empty();
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Project project) {
                if (block.isPresent()) {
                    session.add(Finding.of(ModelFindings.GIVEN_TWICE, project.span(), "There are two `project` blocks")
                            .related(block.get().span(), "the first; this one counts")
                            .build());
                    continue;
                }
                block = Optional.of(project);
            }
        }
        Scope scope = new Scope(null, Unit.MM);
        Optional<Block> body = block.flatMap(Statement.Project::body);
        String units = Properties.read(session, Schemas.PROJECT, body, scope, Optional.empty())
                .one("units")
                .flatMap(g -> reader.word(g, List.of("mm", "cm", "in")))
                .orElse("mm");
        Scope inUnits = new Scope(null, Reader.unitOf(units));
        declarations(tree, inUnits);
        // Read a second time, now that it is known what a bare number means; the first reading has reported all faults.
        Properties properties = Properties.read(new Session(), Schemas.PROJECT, body, inUnits, Optional.empty());
        boolean hand = properties
                .one("tools")
                .flatMap(g -> reader.word(g, List.of("hand", "machine")))
                .map(w -> w.equals("hand"))
                .orElse(true);
        Span at = block.map(Statement::span).orElse(new Span(file, 0, 0));
        Allowances standard = StandardAllowances.of(hand, at);
        return new Settings(
                block.flatMap(Statement.Project::title).map(Expr.Text::value).orElse(plainName(file.name())),
                Reader.unitOf(units),
                units.equals("in") ? LengthFormat.inches() : LengthFormat.millimetres(),
                rooms.ofProject(properties),
                hand,
                allowances(properties, standard),
                tolerances(properties),
                at);
    }

    private static String plainName(String path) {
        String name = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
        return name.endsWith(".treen") ? name.substring(0, name.length() - ".treen".length()) : name;
    }

    private Tolerances tolerances(Properties properties) {
        return properties.inner(session, "tolerance", Schemas.TOLERANCE)
                .map(given -> new Tolerances(
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
        Optional<Properties> block = properties.inner(session, "allow", Schemas.ALLOW);
        if (block.isEmpty()) {
            return standard;
        }
        Properties given = block.get();
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
