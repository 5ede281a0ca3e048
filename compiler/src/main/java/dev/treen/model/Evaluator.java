package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.quantity.Quantity;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Name;
import dev.treen.syntax.Parser;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works out what a project means: declares its names, then asks for every value. Nothing is thrown for what a user
 * wrote; what cannot be worked out is reported once and left out.
 */
public final class Evaluator {
    /** How many parts, joints and boards one project may have. */
    public static final int MOST = 20_000;

    /** How often one repeat may go round. */
    public static final int MOST_ROUNDS = 10_000;

    private static final Span NOWHERE = new Span(new SourceFile("", ""), 0, 0);

    private final FileLoader loader;
    private final Map<String, JointSchema> jointSchemas = new LinkedHashMap<>();
    private final Session session = new Session();
    private final Expressions expressions = new Expressions(session);
    private final Reader reader = new Reader(session, expressions);
    private final SettingsReader settingsReader = new SettingsReader(session, reader);
    private final Map<String, Scope> files = new HashMap<>();
    private final List<PartEntry> parts = new ArrayList<>();
    private final List<BoardEntry> boards = new ArrayList<>();
    private final List<PendingJoint> joints = new ArrayList<>();
    private final List<Requirement> requirements = new ArrayList<>();
    private final List<Acceptance> acceptances = new ArrayList<>();
    private BoardReader boardReader = new BoardReader(session, reader, settingsReader,
            StandardAllowances.of(true, NOWHERE));

    private boolean tooMany;

    private record PendingJoint(Statement.Joint statement, Scope scope, int number) {}

    private Evaluator(FileLoader loader, List<JointSchema> kinds) {
        this.loader = loader;
        kinds.forEach(kind -> jointSchemas.put(kind.kind(), kind));
    }

    /** What {@code tree} means, with the files that {@code loader} finds and the joints of {@code kinds}. */
    public static Evaluation evaluate(SyntaxTree tree, FileLoader loader, List<JointSchema> kinds) {
        return new Evaluator(loader, kinds).run(tree);
    }

    private Evaluation run(SyntaxTree tree) {
        session.findings.addAll(tree.findings());
        Settings settings = settingsReader.read(tree);
        boardReader = new BoardReader(session, reader, settingsReader, settings.allow());
        Scope scope = new Scope(null, settings.units());
        files.put(tree.file().name(), scope);
        declare(tree.statements(), scope);
        scope.entries().values().forEach(entry -> {
            if (entry instanceof Scope.Constant constant) {
                constant.cell().value();
            }
        });
        List<Board> madeBoards = boards.stream().flatMap(b -> b.board().stream()).toList();
        Map<String, Part> made = new LinkedHashMap<>();
        for (PartEntry entry : parts) {
            part(entry, settings).ifPresent(p -> made.put(p.name(), p));
        }
        List<Joint> madeJoints = new ArrayList<>();
        for (PendingJoint pending : joints) {
            joint(pending, made, madeJoints);
        }
        requirements.forEach(Requirement::read);
        if (parts.isEmpty() && session.findings.isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.EMPTY_PROJECT,
                    new Span(tree.file(), 0, 0),
                    "There are no parts in this file, so there is nothing to make")
                    .remedy(new Remedy(
                            "write a part, as `part lid { length 160; width 80; thickness 9 }`",
                            Remedy.Grade.NEEDS_VALUE,
                            List.of()))
                    .build());
        }
        Project project = new Project(
                tree.file(),
                settings,
                madeBoards,
                List.copyOf(made.values()),
                madeJoints,
                requirements,
                acceptances,
                session.findings);
        return new Evaluation(project, session.symbols, session.usages, session.bareNumbers);
    }

    // ---- names

    private void declare(List<Statement> statements, Scope scope) {
        for (Statement statement : statements) {
            switch (statement) {
                case Statement.Project project -> {
                }
                case Statement.Use use -> use(use, scope);
                case Statement.Let let -> let(let, scope);
                case Statement.Board board -> board(board, scope);
                case Statement.Part part -> declarePart(part, scope);
                case Statement.Joint joint -> joints.add(new PendingJoint(joint, scope, joints.size()));
                case Statement.Require require -> requirements.add(new Requirement(require, scope, session));
                case Statement.Accept accept -> acceptances.add(new Acceptance(
                        accept.code().text(),
                        accept.code().span(),
                        accept.on().stream().map(e -> e.span().text()).toList(),
                        accept.because().map(Expr.Text::value),
                        accept.span()));
                case Statement.Repeat repeat -> repeat(repeat, scope);
                case Statement.When when -> when(when, scope);
                case Statement.Measured m -> notYet(m, "`measured`");
                case Statement.Holds h -> notYet(h, "`holds`");
                case Statement.Pattern p -> notYet(p, "`pattern`");
                case Statement.Param p -> notYet(p, "`param`");
                case Statement.Property property -> {
                    if (!SettingsReader.isDeclaration(property)) {
                        stranger(property);
                    }
                }
                case Statement.Broken broken -> {
                }
            }
        }
    }

    private void notYet(Statement statement, String what) {
        Span span = statement.span();
        session.add(Finding.of(
                ModelFindings.NOT_YET,
                new Span(span.file(), span.start(), Math.min(span.end(), span.start() + what.length() - 2)),
                what + " is a word of the language that this version of Treen does not follow yet")
                .found("The statement is left out of all results.")
                .build());
    }

    private static final List<String> DECLARATIONS = List.of("project", "use", "let", "board", "sheet", "part", "joint",
            "require", "accept", "repeat");

    private void stranger(Statement.Property property) {
        List<String> near = NearWords.of(property.name().text(), DECLARATIONS);
        Finding.Builder finding = Finding.of(
                ModelFindings.DOES_NOT_BELONG,
                property.name().span(),
                "`" + property.name().text() + "` begins nothing that can stand here")
                .found("A file holds `project`, `use`, `let`, `board`, `sheet`, `part`, `joint`, `require`, `accept`"
                        + " and `repeat`.");
        near.forEach(
                each -> finding.remedy(Remedy.safe("write `" + each + "`", new Edit(property.name().span(), each))));
        session.add(finding.build());
    }

    private boolean enter(Scope scope, Name name, Scope.Entry entry) {
        if (name.text().isEmpty()) {
            return false;
        }
        Scope.Entry before = scope.entries().putIfAbsent(name.text(), entry);
        if (before != null) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME, name.span(), "`" + name.text() + "` is the name of two things")
                    .related(before.nameAt(), "the first of them; this one counts")
                    .about(name.text())
                    .build());
            return false;
        }
        return true;
    }

    private void symbol(String path, String kind, Span nameAt, Statement statement, String doc) {
        session.symbols.add(new Symbol(path, kind, nameAt, statement.span(), doc));
    }

    private void let(Statement.Let let, Scope scope) {
        Cell cell = new Cell(
                session, let.name().text(), let.name().span(), () -> expressions.evaluate(let.value(), scope));
        if (enter(scope, let.name(), new Scope.Constant(let.name().span(), cell))) {
            symbol(let.name().text(), "let", let.name().span(), let, let.doc());
        }
    }

    private void declarePart(Statement.Part part, Scope scope) {
        if (part.name().text().isEmpty()) {
            return;
        }
        if (parts.size() >= MOST) {
            if (!tooMany) {
                tooMany = true;
                session.add(Finding.of(
                        ModelFindings.TOO_MANY, part.name().span(), "There are more than " + MOST + " parts")
                        .build());
            }
            return;
        }
        Optional<Integer> number = part.index().flatMap(index -> expressions
                .arithmetic()
                .whole(expressions.evaluate(index, scope).value()));
        String path = part.name().text() + number.map(n -> "[" + n + "]").orElse("");
        Optional<PartEntry> like = part.like().flatMap(expr -> likeOf(expr, scope));
        Properties properties = Properties.read(
                session, Schemas.PART, part.body(), scope, like.map(PartEntry::properties));
        PartEntry entry = new PartEntry(session, reader, part, path, properties);
        boolean entered = number.isPresent()
                ? enterElement(scope, part, number.get(), entry)
                : part.index().isEmpty() && enter(scope, part.name(), entry);
        if (entered) {
            session.parts.put(path, entry);
            parts.add(entry);
            symbol(path, "part", part.name().span(), part, part.doc());
        }
    }

    private boolean enterElement(Scope scope, Statement.Part part, int number, PartEntry entry) {
        // Elements belong to the scope outside the repeat that makes them.
        Scope home = scope.home();
        Scope.Entry array = home.entries()
                .computeIfAbsent(
                        part.name().text(),
                        name -> new Scope.Array(part.name().span(), name, new LinkedHashMap<>()));
        if (!(array instanceof Scope.Array(Span nameAt, String path, Map<Integer, PartEntry> elements))) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME,
                    part.name().span(),
                    "`" + part.name().text() + "` is the name of two things")
                    .related(array.nameAt(), "the first of them")
                    .build());
            return false;
        }
        if (elements.putIfAbsent(number, entry) != null) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME,
                    part.name().span(),
                    "There are two parts `" + part.name().text() + "[" + number + "]`")
                    .build());
            return false;
        }
        return true;
    }

    private Optional<PartEntry> likeOf(Expr expr, Scope scope) {
        Derived derived = expressions.evaluate(expr, scope);
        if (derived.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                && kind == Datum.Thing.Kind.PART) {
            return Optional.ofNullable(session.parts.get(path));
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "`like` wants the name of a part")
                    .found("`" + expr.span().text() + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return Optional.empty();
    }

    private void board(Statement.Board board, Scope scope) {
        if (board.name().text().isEmpty()) {
            return;
        }
        String path = board.name().text();
        Properties properties = Properties.read(
                session, board.sheet() ? Schemas.SHEET : Schemas.BOARD, board.body(), scope, Optional.empty());
        BoardEntry entry = new BoardEntry(
                path, board.name().span(), boardReader.read(board, path, properties));
        if (enter(scope, board.name(), entry)) {
            session.boards.put(path, entry);
            boards.add(entry);
            symbol(path, board.sheet() ? "sheet" : "board", board.name().span(), board, board.doc());
        }
    }

    // ---- repeats and choices

    private void repeat(Statement.Repeat repeat, Scope scope) {
        Derived over = expressions.evaluate(repeat.over(), scope);
        if (over.value() instanceof Datum.Unknown) {
            return;
        }
        Optional<Integer> low = Optional.empty();
        Optional<Integer> high = Optional.empty();
        if (over.value() instanceof Datum.Between(Datum from, Datum to)) {
            low = expressions.arithmetic().whole(from);
            high = expressions.arithmetic().whole(to);
        }
        if (low.isEmpty() || high.isEmpty()) {
            session.add(Finding.of(
                    ModelFindings.WRONG_KIND,
                    repeat.over().span(),
                    "`repeat` wants a range of whole numbers, as `1..3`")
                    .found("`" + repeat.over().span().text() + "` is " + Arithmetic.phrase(over.value()) + ".")
                    .build());
            return;
        }
        if ((long) high.get() - low.get() >= MOST_ROUNDS) {
            session.add(Finding.of(
                    ModelFindings.TOO_MANY,
                    repeat.over().span(),
                    "This repeats more than " + MOST_ROUNDS + " times")
                    .build());
            return;
        }
        for (int i = low.get(); i <= high.get(); i++) {
            Scope round = Scope.within(scope);
            Datum number = new Datum.Exactly(Quantity.number(i));
            Span at = repeat.variable().span();
            Cell cell = new Cell(
                    session,
                    repeat.variable().text(),
                    at,
                    () -> new Derived(number, Derivation.written(repeat.variable().text(), number, at)));
            round.entries().put(repeat.variable().text(), new Scope.Constant(at, cell));
            declare(repeat.body().map(Block::statements).orElse(List.of()), round);
        }
    }

    private void when(Statement.When when, Scope scope) {
        Derived condition = expressions.evaluate(when.condition(), scope);
        switch (condition.value()) {
            case Datum.Truth(boolean holds) -> declare(
                    (holds ? when.body() : when.otherwise()).map(Block::statements).orElse(List.of()), scope);
            case Datum.Unknown unknown -> {
            }
            default -> session.add(Finding.of(
                    ModelFindings.WRONG_KIND, when.condition().span(), "`when` wants a condition")
                    .found("`" + when.condition().span().text() + "` is " + Arithmetic.phrase(condition.value()) + ".")
                    .build());
        }
    }

    // ---- files

    private void use(Statement.Use use, Scope scope) {
        if (use.path().isEmpty()) {
            return;
        }
        String path = use.path().get().value();
        Span at = use.path().get().span();
        Optional<SourceFile> file = loader.load(path, at.file());
        if (file.isEmpty()) {
            session.add(Finding.of(ModelFindings.FILE_NOT_FOUND, at, "The file \"" + path + "\" is not there")
                    .found("It is looked for beside `" + at.file().name() + "`, with and without `.treen`.")
                    .build());
            return;
        }
        Scope inside = files.get(file.get().name());
        if (inside == null) {
            SyntaxTree tree = Parser.parse(file.get());
            session.findings.addAll(tree.findings());
            Settings theirs = new SettingsReader(session, reader).read(tree);
            inside = new Scope(null, theirs.units());
            files.put(file.get().name(), inside);
            declare(tree.statements(), inside);
        }
        if (use.alias().isPresent()) {
            enter(scope, use.alias().get(), new Scope.Other(use.alias().get().span(), inside));
            return;
        }
        for (Map.Entry<String, Scope.Entry> each : inside.entries().entrySet()) {
            Scope.Entry before = scope.entries().putIfAbsent(each.getKey(), each.getValue());
            if (before != null && !before.equals(each.getValue())) {
                session.add(Finding.of(
                        ModelFindings.SAME_NAME,
                        at,
                        "`" + each.getKey() + "` comes from two files or is declared here too")
                        .related(before.nameAt(), "the first of them; this one counts")
                        .related(each.getValue().nameAt(), "the other")
                        .remedy(Remedy.choice("write `as name` after the path, and `name." + each.getKey() + "`"))
                        .build());
            }
        }
    }

    // ---- parts and joints

    private Optional<Part> part(PartEntry entry, Settings settings) {
        Optional<Measure> length = entry.known(0);
        Optional<Measure> width = entry.known(1);
        Optional<Measure> thickness = entry.known(2);
        Optional<Board> from = entry.properties().one("from").flatMap(this::boardOf);
        Optional<Placing> placing = entry.properties().inner(session, "place", Schemas.PLACE)
                .flatMap(p -> placing(p, entry));
        if (length.isEmpty() || width.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        Rings rings = entry.properties()
                .one("rings")
                .flatMap(reader::rings)
                .or(() -> from.map(Board::rings))
                .orElse(Rings.ASSUMED);
        Allowances standard = from.map(Board::allow).orElse(settings.allow());
        return Optional.of(new Part(
                entry.path(),
                entry.nameAt(),
                length.get(),
                width.get(),
                thickness.get(),
                new Part.Overall(entry.overall(0), entry.overall(1), entry.overall(2)),
                from,
                rings,
                entry.properties()
                        .one("rings")
                        .map(given -> Reader.valueSpan(given.property()))
                        .orElse(entry.nameAt()),
                placing,
                new ServiceReader(session, reader, settingsReader.rooms()).read(entry.properties()),
                settingsReader.allowances(entry.properties(), standard),
                entry.statement().doc()));
    }

    private Optional<Board> boardOf(Properties.Given given) {
        if (given.property().values().size() != 1) {
            return Optional.empty();
        }
        Expr expr = given.property().values().getFirst().expr();
        Derived derived = expressions.evaluate(expr, given.scope());
        if (derived.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                && kind == Datum.Thing.Kind.BOARD) {
            return Optional.ofNullable(session.boards.get(path)).flatMap(BoardEntry::board);
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "`from` wants the name of a board or sheet")
                    .found("`" + expr.span().text() + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return Optional.empty();
    }

    private Optional<Placing> placing(Properties properties, PartEntry entry) {
        Optional<Direction> length = properties.one("length").flatMap(this::direction);
        Optional<Direction> width = properties.one("width").flatMap(this::direction);
        Optional<List<dev.treen.quantity.Length>> at = properties.one("at").flatMap(g -> reader.point(g, 3));
        Span span = entry.properties()
                .one("place")
                .map(g -> g.property().span())
                .orElse(entry.nameAt());
        for (PropertySchema needed : Schemas.PLACE.properties()) {
            if (properties.one(needed.name()).isEmpty()) {
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
        return Optional.of(new Placing(length.get(), width.get(), third, at.get(), span));
    }

    private Optional<Direction> direction(Properties.Given given) {
        List<String> words = java.util.Arrays.stream(Direction.values()).map(Direction::word).toList();
        return reader.word(given, words).flatMap(Direction::named);
    }

    private void joint(PendingJoint pending, Map<String, Part> made, List<Joint> to) {
        Statement.Joint statement = pending.statement();
        String kind = statement.kind().text();
        JointSchema schema = jointSchemas.get(kind);
        if (schema == null) {
            unknownJoint(statement);
            return;
        }
        Properties properties = Properties.read(session, schema.block(), statement.body(), pending.scope(),
                Optional.empty());
        Map<String, Setting> settings = new LinkedHashMap<>();
        for (PropertySchema property : schema.block().properties()) {
            properties.one(property.name()).ifPresent(given -> {
                reader.setting(given, property).ifPresent(s -> settings.put(s.name(), s));
                tails(given, property.name(), settings);
            });
        }
        Span inside = statement
                .body()
                .map(b -> new Span(b.span().file(), b.span().start() + 1, b.span().start() + 1))
                .orElse(statement.span().endPoint());
        for (Statement.Pair pair : statement.pairs()) {
            if (pair.into() != schema.into()) {
                session.add(Finding.of(
                        ModelFindings.JOINED_WRONGLY,
                        pair.span(),
                        "A " + kind + " is written `a " + (schema.into() ? "into" : "to") + " b`")
                        .build());
                continue;
            }
            Optional<Part> left = partOf(pair.left(), pending.scope(), made);
            Optional<Part> right = partOf(pair.right(), pending.scope(), made);
            if (left.isEmpty() || right.isEmpty()) {
                continue;
            }
            if (left.get().is(right.get())) {
                session.add(Finding.of(
                        ModelFindings.JOINED_WRONGLY,
                        pair.span(),
                        "`" + left.get().name() + "` is joined to itself")
                        .build());
                continue;
            }
            String name = statement
                    .alias()
                    .map(Name::text)
                    .orElse(kind + " " + left.get().name() + (pair.into() ? " into " : " to ")
                            + right.get().name());
            to.add(new Joint(
                    kind,
                    statement.kind().span(),
                    name,
                    pending.number(),
                    left.get(),
                    right.get(),
                    pair.into(),
                    settings,
                    pair.span(),
                    inside,
                    statement.body().isPresent()));
        }
    }

    /** {@code stop 3/8 from front} gives a second setting, {@code stop.from}. */
    private static void tails(Properties.Given given, String name, Map<String, Setting> settings) {
        given.property().values().stream().flatMap(v -> v.tails().stream()).forEach(tail -> tail.argument()
                .filter(Expr.Word.class::isInstance)
                .map(Expr.Word.class::cast)
                .ifPresent(word -> {
                    String key = name + "." + tail.word().text();
                    Datum value = new Datum.Word(word.name());
                    settings.put(
                            key,
                            new Setting(
                                    key,
                                    tail.word().span(),
                                    word.span(),
                                    value,
                                    Derivation.written(key, value, word.span())));
                }));
    }

    private void unknownJoint(Statement.Joint statement) {
        String kind = statement.kind().text();
        if (kind.isEmpty()) {
            return;
        }
        List<String> near = NearWords.of(kind, jointSchemas.keySet());
        Finding.Builder finding = Finding.of(
                ModelFindings.UNKNOWN_JOINT, statement.kind().span(), "There is no joint called `" + kind + "`")
                .found("There are " + NearWords.quoted(List.copyOf(jointSchemas.keySet())) + ".");
        near.forEach(each -> finding.remedy(
                near.size() == 1
                        ? Remedy.safe("write `" + each + "`", new Edit(statement.kind().span(), each))
                        : Remedy.choice("write `" + each + "`", new Edit(statement.kind().span(), each))));
        session.add(finding.build());
    }

    private Optional<Part> partOf(Expr expr, Scope scope, Map<String, Part> made) {
        if (expr instanceof Expr.Missing) {
            return Optional.empty();
        }
        Derived derived = expressions.evaluate(expr, scope);
        if (derived.value() instanceof Datum.Thing(String path, Datum.Thing.Kind kind)
                && kind == Datum.Thing.Kind.PART) {
            return Optional.ofNullable(made.get(path));
        }
        if (!(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, expr.span(), "A joint wants the names of parts")
                    .found("`" + expr.span().text() + "` is " + Arithmetic.phrase(derived.value()) + ".")
                    .build());
        }
        return Optional.empty();
    }
}
