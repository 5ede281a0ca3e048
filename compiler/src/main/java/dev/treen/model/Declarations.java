package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.quantity.Quantity;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Enters the names that statements declare. Patterns, values and things go before what asks for them, whatever the order
 * of the text: first files and patterns, then lets, presets, boards, parts and instances, then what repeats or depends.
 */
final class Declarations {
    private static final List<String> BEGINNINGS = List.of("project", "use", "let", "board", "sheet", "part", "joint",
            "require", "accept", "repeat", "pattern", "measured", "holds", "run", "saw", "allow", "climate",
            "species", "glue", "finish", "hardware");

    private final EarlierValues earlier;
    private final Session session;
    private final Expressions expressions;
    private final Reader reader;
    private final Files files;
    private final Boards boards;
    private final SettingsReader settings;
    private final Instances instances;
    private final PatternSchemas patterns;
    private final Map<String, BlockSchema> schemas = new LinkedHashMap<>();
    private int rounds;
    private boolean tooMany;

    Declarations(
            Session session,
            Expressions expressions,
            Reader reader,
            Files files,
            Boards boards,
            SettingsReader settings,
            EarlierValues earlier) {
        this.earlier = earlier;
        this.session = session;
        this.expressions = expressions;
        this.reader = reader;
        this.files = files;
        this.boards = boards;
        this.settings = settings;
        this.instances = new Instances(session, reader, new Parameters(session, expressions, reader), this);
        this.patterns = new PatternSchemas(session);
    }

    Instances instances() {
        return instances;
    }

    /** The patterns that were met, by name, as an editor wants to know them. */
    Map<String, BlockSchema> schemas() {
        return schemas;
    }

    void declare(List<Statement> statements, Scope scope, Sequence sequence) {
        for (Statement statement : statements) {
            switch (statement) {
                case Statement.Use use -> files.use(use, scope, sequence.place(), this);
                case Statement.Pattern pattern -> pattern(pattern, scope);
                default -> {
                }
            }
        }
        if (scope.tellsWhatItIsAsked()) {
            earlier.filesAreRead();
        }
        for (Statement statement : statements) {
            if (statement instanceof Statement.Let let) {
                apart(let, () -> let(let, scope));
            }
        }
        List<Runnable> likes = new ArrayList<>();
        List<Runnable> later = new ArrayList<>();
        for (Statement statement : statements) {
            Sequence place = sequence.place();
            switch (statement) {
                case Statement.Board board -> apart(board, () -> board(board, scope, place));
                case Statement.Part part when part.like().isEmpty() -> apart(part, () -> part(part, scope, place));
                case Statement.Part part -> likes.add(() -> apart(part, () -> part(part, scope, place)));
                case Statement.Property property -> apart(property, () -> property(property, scope, place));
                case Statement.Joint joint -> place.add(new Sequence.ToJoin(joint, scope));
                case Statement.Require require -> place.add(new Sequence.ToRequire(require, scope));
                case Statement.Accept accept -> place.add(new Sequence.ToAccept(accept, scope));
                case Statement.Measured measured -> place.add(new Sequence.ToMeasure(measured, scope));
                case Statement.Holds holds -> place.add(new Sequence.ToHold(holds, scope));
                case Statement.Repeat repeat -> later.add(() -> repeat(repeat, scope, place));
                case Statement.When when -> later.add(() -> when(when, scope, place));
                case Statement.Param param -> misplaced(param);
                case Statement.Project p -> {
                }
                case Statement.Use u -> {
                }
                case Statement.Let l -> {
                }
                case Statement.Pattern p -> {
                }
                case Statement.Broken b -> {
                }
            }
        }
        likes.forEach(Runnable::run);
        later.forEach(Runnable::run);
    }

    /** Notes of a statement at the top are taken apart from all others. */
    private void apart(Statement statement, Runnable work) {
        Notes notes = earlier.of(statement).map(unit -> unit.notes).orElse(session.notes());
        session.noting(notes, () -> {
            work.run();
            return true;
        });
    }

    /** What a statement that stays the same declared before. */
    private <T extends Scope.Entry> Optional<T> stays(Statement statement, Class<T> kind) {
        return earlier.of(statement)
                .filter(unit -> unit.stays)
                .flatMap(unit -> Optional.ofNullable(unit.entry))
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private void tracks(Statement statement, Scope.Entry entry) {
        earlier.of(statement).ifPresent(unit -> earlier.tracks(unit, entry));
    }

    private void misplaced(Statement.Param param) {
        session.add(Finding.of(
                ModelFindings.DOES_NOT_BELONG, param.name().span(), "A parameter belongs in a pattern")
                .found("Here a value is given a name with `let " + param.name().text() + " = …`.")
                .build());
    }

    // ---- names

    boolean enter(Scope scope, Span nameAt, String name, Scope.Entry entry) {
        if (name.isEmpty()) {
            return false;
        }
        // A part may be called as the choice that decides about it: `base` of a box.
        boolean besideChoice = entry instanceof PartEntry && !scope.entries().containsKey(name);
        Optional<Scope.Entry> before = besideChoice ? Optional.empty() : scope.own(name);
        if (before.isPresent()) {
            sameName(name, nameAt, before.get().nameAt(), "the first of them; this one counts");
            return false;
        }
        scope.entries().put(name, entry);
        return true;
    }

    private void sameName(String name, Span at, Span first, String label) {
        session.add(Finding.of(ModelFindings.SAME_NAME, at, "`" + name + "` is the name of two things")
                .related(first, label)
                .about(name)
                .build());
    }

    /** Enters {@code entry} as number {@code number} of the row {@code name}, outside the repeat that makes it. */
    boolean enterElement(Scope scope, Span nameAt, String name, int number, Scope.Entry entry) {
        Scope home = scope.home();
        Scope.Entry row = home.entries()
                .computeIfAbsent(name, n -> new Scope.Array(nameAt, home.prefix() + n, new LinkedHashMap<>()));
        if (!(row instanceof Scope.Array(Span first, String path, Map<Integer, Scope.Entry> elements))) {
            sameName(name, nameAt, row.nameAt(), "the first of them");
            return false;
        }
        if (elements.putIfAbsent(number, entry) != null) {
            session.add(Finding.of(
                    ModelFindings.SAME_NAME, nameAt, "There are two of `" + name + "[" + number + "]`")
                    .build());
            return false;
        }
        return true;
    }

    /** The number in the brackets of a name. */
    Optional<Integer> number(Expr index, Scope scope) {
        Derived derived = expressions.evaluate(index, scope);
        Optional<Integer> number = expressions.arithmetic().whole(derived.value());
        if (number.isEmpty() && !(derived.value() instanceof Datum.Unknown)) {
            session.add(Finding.of(ModelFindings.WRONG_KIND, index.span(), "A whole number is wanted in brackets")
                    .build());
        }
        return number;
    }

    private void symbol(String path, String kind, Span nameAt, Statement statement, String doc) {
        session.declared(new Symbol(path, kind, nameAt, statement.span(), doc));
    }

    private void let(Statement.Let let, Scope scope) {
        Optional<Scope.Constant> known = stays(let, Scope.Constant.class);
        if (known.isPresent()) {
            scope.entries().put(let.name().text(), known.get());
            tracks(let, known.get());
            return;
        }
        // A value is kept for later versions of the text: it may hold on to nothing of the files of this one.
        Expressions here = expressions;
        Cell cell = new Cell(
                session,
                scope,
                let.name().text(),
                let.name().span(),
                () -> here.evaluate(let.value(), scope));
        Scope.Constant constant = new Scope.Constant(let.name().span(), cell);
        if (enter(scope, let.name().span(), let.name().text(), constant)) {
            tracks(let, constant);
            symbol(cell.path(), "let", let.name().span(), let, let.doc());
        }
    }

    private void pattern(Statement.Pattern pattern, Scope scope) {
        PatternEntry entry = new PatternEntry(pattern, scope, patterns.of(pattern));
        if (enter(scope, pattern.name().span(), pattern.name().text(), entry)) {
            schemas.putIfAbsent(entry.name(), entry.schema());
            symbol(entry.name(), "pattern", pattern.name().span(), pattern, pattern.doc());
        }
    }

    private void board(Statement.Board board, Scope scope, Sequence place) {
        if (board.name().text().isEmpty()) {
            return;
        }
        String path = scope.prefix() + board.name().text();
        BoardEntry entry = boards.entry(board, path, scope);
        if (enter(scope, board.name().span(), board.name().text(), entry)) {
            BoardEntry before = session.boards.putIfAbsent(path, entry);
            if (before != null) {
                sameName(path, entry.nameAt(), before.nameAt(), "the first of them; this one counts");
                return;
            }
            place.add(entry);
            tracks(board, entry);
            symbol(path, board.sheet() ? "sheet" : "board", board.name().span(), board, board.doc());
        }
    }

    private void part(Statement.Part part, Scope scope, Sequence place) {
        String name = part.name().text();
        Optional<PartEntry> known = stays(part, PartEntry.class);
        if (known.isPresent()) {
            scope.entries().put(name, known.get());
            session.parts.put(known.get().path(), known.get());
            place.add(known.get());
            tracks(part, known.get());
            return;
        }
        if (name.isEmpty() || tooManyParts(part)) {
            return;
        }
        Optional<Integer> number = part.index().flatMap(index -> number(index, scope));
        if (part.index().isPresent() && number.isEmpty()) {
            return;
        }
        Optional<PartEntry> like = part.like().flatMap(expr -> likeOf(expr, scope));
        PartEntry entry = new PartEntry(
                session, reader, part, name + number.map(n -> "[" + n + "]").orElse(""), scope,
                properties(part, scope, number, like));
        boolean entered = number.isPresent()
                ? enterElement(scope, part.name().span(), name, number.get(), entry)
                : enter(scope, part.name().span(), name, entry);
        if (entered) {
            PartEntry before = session.parts.putIfAbsent(entry.path(), entry);
            if (before != null) {
                sameName(entry.path(), entry.nameAt(), before.nameAt(), "the first of them; this one counts");
                return;
            }
            place.add(entry);
            if (number.isEmpty()) {
                tracks(part, entry);
            }
            symbol(entry.path(), "part", part.name().span(), part, part.doc());
        }
    }

    private boolean tooManyParts(Statement.Part part) {
        if (session.parts.size() < Evaluator.MOST) {
            return false;
        }
        if (!tooMany) {
            tooMany = true;
            session.add(Finding.of(
                    ModelFindings.TOO_MANY, part.name().span(), "There are more than " + Evaluator.MOST + " parts")
                    .build());
        }
        return true;
    }

    /** The part's own properties; before them what the instance changes, behind them what it is like and the defaults. */
    private PartEntry.Layers properties(
            Statement.Part part, Scope scope, Optional<Integer> number, Optional<PartEntry> like) {
        Optional<InstanceEntry> instance = scope.instance();
        Optional<Properties> defaults = instance.map(i -> i.given().only(Schemas.PART_DEFAULTS));
        Optional<Properties> beyond = like.map(PartEntry::written).or(() -> defaults);
        Properties written = Properties.read(session, Schemas.PART, part.body(), scope, beyond);
        Properties said = written;
        for (Overrules.Over<Statement.Part> over : instance.map(i -> i.overrules().part(part.name().text()))
                .orElse(List.of())) {
            Optional<Integer> which = over.statement().index().flatMap(i -> number(i, over.scope()));
            if (over.statement().index().isEmpty() || which.equals(number)) {
                Properties before = said;
                said = session.within(over.scope().instance(), () -> Properties.read(
                        session, Schemas.PART, over.statement().body(), over.scope(), Optional.of(before)));
            }
        }
        // What it is like is not there, which is told: what that would have said is not missing too.
        boolean open = like.map(PartEntry::open).orElse(part.like().isPresent());
        return new PartEntry.Layers(written, said, open);
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

    // ---- lines that begin with a name

    private void property(Statement.Property property, Scope scope, Sequence place) {
        String name = property.name().text();
        if (scope.find(name).orElse(null) instanceof PatternEntry pattern) {
            instances.enter(property, pattern, scope, place);
            return;
        }
        if (settings.declares(property, scope)) {
            return;
        }
        switch (name) {
            case "run" -> place.add(new Sequence.ToRun(property, scope));
            case "saw", "allow", "glue", "finish" -> preset(property, scope);
            default -> stranger(property, scope);
        }
    }

    private void preset(Statement.Property property, Scope scope) {
        String kind = property.name().text();
        boolean open = property.body().isEmpty() && (kind.equals("glue") || kind.equals("finish"));
        if (open || property.values().size() != 1 || !(property.values().getFirst().expr() instanceof Expr.Word word)) {
            session.add(Finding.of(
                    ModelFindings.MISSING_PROPERTY,
                    Reader.valueSpan(property),
                    open
                            ? "A `" + kind + "` outside `project` wants a name and a block"
                            : "A name is wanted after `" + kind + "`")
                    .found("Under it a project finds it: `" + kind + " mine { … }`, then `" + kind
                            + " mine` in the block of the project.")
                    .build());
            return;
        }
        if (enter(scope, word.span(), word.name(), new Scope.Preset(word.span(), property, scope))) {
            symbol(scope.prefix() + word.name(), kind, word.span(), property, property.doc());
        }
    }

    private void stranger(Statement.Property property, Scope scope) {
        String name = property.name().text();
        if (name.isEmpty()) {
            return;
        }
        List<String> known = new ArrayList<>(BEGINNINGS);
        known.addAll(schemas.keySet());
        Finding.Builder finding = Finding.of(
                ModelFindings.DOES_NOT_BELONG,
                property.name().span(),
                "`" + name + "` begins nothing that can stand here")
                .found("A line begins with a word of the language, as `part` or `joint`, or with the name of a pattern.");
        files.libraryWith(name).ifPresent(file -> finding.remedy(Remedy.safe(
                "write `use \"" + file + "\"` for its pattern `" + name + "`",
                files.useLine(file, property.span().file(), scope))));
        NearWords.remedies(name, property.name().span(), known).forEach(finding::remedy);
        session.add(finding.build());
    }

    // ---- repeats and choices

    private void repeat(Statement.Repeat repeat, Scope scope, Sequence place) {
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
                    .found("`" + Reader.cut(repeat.over().span().text()) + "` is " + Arithmetic.phrase(over.value())
                            + ".")
                    .build());
            return;
        }
        long wanted = (long) high.get() - low.get() + 1;
        if (wanted > 0 && rounds + wanted > Evaluator.MOST_ROUNDS) {
            session.add(Finding.of(
                    ModelFindings.TOO_MANY,
                    repeat.over().span(),
                    "This repeats more than " + Evaluator.MOST_ROUNDS + " times")
                    .found("All repeats of a project go round at most " + Evaluator.MOST_ROUNDS + " times together.")
                    .build());
            return;
        }
        rounds += (int) Math.max(0, wanted);
        List<Statement> body = repeat.body().map(Block::statements).orElse(List.of());
        for (int i = low.get(); i <= high.get(); i++) {
            Scope round = Scope.within(scope);
            Datum number = new Datum.Exactly(Quantity.number(i));
            Span at = repeat.variable().span();
            Cell cell = new Cell(
                    session,
                    round,
                    repeat.variable().text(),
                    at,
                    () -> new Derived(number, Derivation.written(repeat.variable().text(), number, at)));
            round.entries().put(repeat.variable().text(), new Scope.Constant(at, cell));
            declare(body, round, place.place());
        }
    }

    private void when(Statement.When when, Scope scope, Sequence place) {
        Derived condition = expressions.evaluate(when.condition(), scope);
        switch (condition.value()) {
            case Datum.Truth(boolean holds) -> declare(
                    (holds ? when.body() : when.otherwise()).map(Block::statements).orElse(List.of()), scope, place);
            case Datum.Unknown unknown -> {
            }
            default -> session.add(Finding.of(
                    ModelFindings.WRONG_KIND, when.condition().span(), "`when` wants a condition")
                    .found("`" + Reader.cut(when.condition().span().text()) + "` is "
                            + Arithmetic.phrase(condition.value()) + ".")
                    .build());
        }
    }
}
