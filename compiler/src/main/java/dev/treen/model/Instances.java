package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes things by pattern. */
final class Instances {
    /** How deep patterns may stand in one another. */
    static final int DEEPEST = 20;

    /** How many things one project may make by pattern. */
    static final int MOST = 5_000;

    private final Session session;
    private final Reader reader;
    private final Parameters parameters;
    private final Declarations declarations;

    Instances(Session session, Reader reader, Parameters parameters, Declarations declarations) {
        this.session = session;
        this.reader = reader;
        this.parameters = parameters;
        this.declarations = declarations;
    }

    /** Enters the instance that {@code statement} names; its inside is declared later. */
    void enter(Statement.Property statement, PatternEntry pattern, Scope scope, Sequence sequence) {
        Optional<Expr> named = statement.values().stream()
                .findFirst()
                .map(Value::expr)
                .filter(e -> !(e instanceof Expr.Missing));
        if (statement.values().size() != 1 || named.isEmpty()) {
            unnamed(statement, pattern);
            return;
        }
        switch (named.get()) {
            case Expr.Word word -> one(statement, pattern, scope, sequence, word, Optional.empty());
            case Expr.Element(Span span, Expr.Word word, Expr index) ->
                one(statement, pattern, scope, sequence, word, Optional.of(index));
            default -> unnamed(statement, pattern);
        }
    }

    private void unnamed(Statement.Property statement, PatternEntry pattern) {
        session.add(Finding.of(
                ModelFindings.MISSING_PROPERTY,
                Reader.valueSpan(statement),
                "A name is wanted after `" + pattern.name() + "`")
                .found("Write it as `" + pattern.schema().example() + "`.")
                .related(pattern.nameAt(), "the pattern")
                .build());
    }

    private void one(
            Statement.Property statement,
            PatternEntry pattern,
            Scope scope,
            Sequence sequence,
            Expr.Word name,
            Optional<Expr> index) {
        int depth = 1 + scope.instance().map(InstanceEntry::depth).orElse(0);
        if (depth > DEEPEST || session.instances.size() >= MOST) {
            tooMany(statement, pattern, depth);
            return;
        }
        Optional<Integer> number = index.flatMap(i -> declarations.number(i, scope));
        if (index.isPresent() && number.isEmpty()) {
            return;
        }
        String local = name.name() + number.map(n -> "[" + n + "]").orElse("");
        InstanceEntry instance = new InstanceEntry(
                scope.prefix() + local,
                name.span(),
                statement,
                pattern,
                scope,
                overrules(statement, pattern, scope, name.name()),
                given(statement, pattern, scope, name.name()),
                sequence,
                this);
        boolean entered = number.isPresent()
                ? declarations.enterElement(scope, name.span(), name.name(), number.get(), instance)
                : declarations.enter(scope, name.span(), name.name(), instance);
        if (entered) {
            session.instances.put(instance.path(), instance);
            session.used(new Usage(
                    statement.name().span(),
                    pattern.nameAt(),
                    Expressions.thing(pattern.name(), Datum.Thing.Kind.PATTERN, pattern.nameAt())));
            session.declared(new Symbol(
                    instance.path(), pattern.name(), name.span(), statement.span(), statement.doc()));
        }
    }

    private void tooMany(Statement.Property statement, PatternEntry pattern, int depth) {
        session.add(Finding.of(
                ModelFindings.TOO_MANY,
                statement.name().span(),
                depth > DEEPEST
                        ? "Patterns stand more than " + DEEPEST + " deep in one another"
                        : "More than " + MOST + " things are made by pattern")
                .found(depth > DEEPEST ? "`" + pattern.name() + "` is used inside itself, or nearly so." : "")
                .related(pattern.nameAt(), "the pattern")
                .build());
    }

    /** What the block of an instance changes inside, with what the thing around it changes of it. */
    private static Overrules overrules(
            Statement.Property statement, PatternEntry pattern, Scope scope, String name) {
        List<Overrules.Over<Statement>> all = new ArrayList<>(scope.instance()
                .map(outer -> outer.overrules().instance(name))
                .orElse(List.of()));
        statement.body().ifPresent(body -> all.addAll(Overrules.written(body, scope)));
        return Overrules.in(all, pattern.schema());
    }

    /** What an instance says of itself; behind it the defaults of the thing that it stands in. */
    private Properties given(Statement.Property statement, PatternEntry pattern, Scope scope, String name) {
        Optional<Properties> defaults = scope.instance().map(outer -> outer.given().only(Schemas.PART_DEFAULTS));
        Properties own = Properties.read(
                session, pattern.schema(), statement.body().map(b -> settings(b, pattern)), scope, defaults);
        List<Overrules.Over<Statement>> beyond = scope.instance()
                .map(outer -> outer.overrules().instance(name))
                .orElse(List.of());
        if (beyond.isEmpty()) {
            return own;
        }
        // Said in one block round the instance, so in one scope.
        Scope written = beyond.getFirst().scope();
        List<Statement> said = beyond.stream().map(Overrules.Over::statement).toList();
        Block block = settings(new Block(statement.span(), said), pattern);
        return session.within(
                written.instance(),
                () -> Properties.read(session, pattern.schema(), Optional.of(block), written, Optional.of(own)));
    }

    private static Block settings(Block block, PatternEntry pattern) {
        return new Block(
                block.span(),
                block.statements().stream()
                        .filter(s -> !Overrules.isOverrule(s, pattern.schema()))
                        .toList());
    }

    /** Declares the inside of {@code instance}. */
    void declare(InstanceEntry instance) {
        session.within(Optional.of(instance), () -> {
            parameters.enter(instance);
            instance.given().one("run").ifPresent(given -> instance.sequence()
                    .add(new Sequence.ToRun(given.property(), instance.declaring())));
            List<Statement> body = instance.pattern().body().stream()
                    .filter(s -> !(s instanceof Statement.Param))
                    .toList();
            declarations.declare(body, instance.declaring(), instance.sequence());
        });
    }

    /** Where {@code instance} stands in the project. */
    Pose pose(InstanceEntry instance) {
        Pose outer = instance.outer().map(this::pose).orElse(Pose.PLAIN);
        Optional<Properties> place = session.within(
                instance.use().instance(), () -> instance.given().inner(session, "place", Schemas.INSTANCE_PLACE));
        if (place.isEmpty()) {
            return outer;
        }
        return session.within(instance.use().instance(), () -> {
            List<Length> at = place.get()
                    .one("at")
                    .flatMap(g -> reader.point(g, 3))
                    .orElse(Pose.PLAIN.at());
            Direction facing = place.get()
                    .one("facing")
                    .flatMap(g -> reader.word(g, Direction.words()))
                    .flatMap(Direction::named)
                    .orElse(Direction.FRONT);
            return Pose.facing(facing, at).in(outer);
        });
    }

    /** Asks every value inside {@code instance} for itself, so that no fault stays hidden. */
    void finish(InstanceEntry instance) {
        Scope inside = instance.inside();
        List<Cell> cells = new ArrayList<>();
        Map<String, Scope.Entry> all = new LinkedHashMap<>(inside.choices());
        inside.entries().forEach((name, entry) -> all.put("." + name, entry));
        for (Scope.Entry entry : all.values()) {
            switch (entry) {
                case Scope.Constant constant -> cells.add(constant.cell());
                case Scope.Parameter parameter -> {
                    cells.add(parameter.cell());
                    cells.addAll(parameter.options().values());
                }
                case PartEntry p -> {
                }
                case BoardEntry b -> {
                }
                case Scope.Array a -> {
                }
                case Scope.Other o -> {
                }
                case PatternEntry p -> {
                }
                case InstanceEntry i -> {
                }
                case Scope.Preset p -> {
                }
            }
        }
        cells.forEach(Cell::value);
    }
}
