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

    SettingsReader(Session session, Reader reader) {
        this.session = session;
        this.reader = reader;
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
                properties.inner(session, "climate", Schemas.CLIMATE).flatMap(this::climate),
                hand,
                allowances(properties, standard),
                at);
    }

    private static String plainName(String path) {
        String name = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
        return name.endsWith(".treen") ? name.substring(0, name.length() - ".treen".length()) : name;
    }

    private Optional<Settings.ClimateRange> climate(Properties properties) {
        // The equation of the Wood Handbook is for air, not for steam; a room stays well inside these bounds.
        Optional<Reader.Range> humidity = properties
                .one("humidity")
                .flatMap(g -> reader.range(g, dev.treen.quantity.Dimension.NUMBER, 0, 100, "%"));
        Optional<Reader.Range> temperature = properties
                .one("temperature")
                .flatMap(g -> reader.range(g, dev.treen.quantity.Dimension.TEMPERATURE, -20, 60, "degC"));
        return humidity.flatMap(h -> temperature
                .map(t -> new Settings.ClimateRange(h.low(), h.high(), t.low(), t.high(), h.at(), t.at())));
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
