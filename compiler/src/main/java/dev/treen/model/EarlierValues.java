package dev.treen.model;

import dev.treen.source.SourceFile;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Parser;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of the values of one version of a project for the next. A statement that is the same object as before, and
 * asks for no name whose statement has changed, means what it meant; all others, and what rests on them, are worked out
 * anew. Only values, parts and joints at the top of the project's own file are kept: what patterns, repeats and choices
 * make is made anew each time, and a statement that has anything wrong with it too.
 */
public final class EarlierValues {
    /** Settings of a project that stand outside its block: where one changes, nothing is kept. */
    private static final Set<String> SETTINGS = Set.of("saw", "allow", "climate", "species", "glue", "finish",
            "hardware");

    private final Set<Scope.Entry> tracked = Collections.newSetFromMap(new IdentityHashMap<>());
    private IdentityHashMap<Statement, Unit> units = new IdentityHashMap<>();
    private Map<SourceFile, SyntaxTree> files = new HashMap<>();
    private Map<SourceFile, SyntaxTree> filesBefore = new HashMap<>();
    private Notes ofSettings = new Notes();
    private final MeasuredValues measured;
    private Session session;
    private Expressions expressions;
    private Reader reader;
    private @Nullable Scope scope;

    /** Nothing yet. */
    public EarlierValues() {
        this(MeasuredValues.NONE);
    }

    /** Nothing yet, of a project in which this is measured. */
    EarlierValues(MeasuredValues measured) {
        this.measured = measured;
        session = new Session(measured);
        expressions = new Expressions(session);
        reader = new Reader(session, expressions);
    }

    /** One statement at the top, with what came of it. */
    static final class Unit {
        final Notes notes = new Notes();
        /** The names that the statement declares. */
        private final Set<String> names = new HashSet<>(2);
        /** Whether so much may rest on it that nothing can be kept where it changes. */
        private final boolean rules;
        Scope.@Nullable Entry entry;
        @Nullable
        List<Joint> joints;
        boolean stays;

        Unit(Statement statement) {
            rules = changes(statement, names);
        }

        /** Whether all that came of it is here. What a board is made of is read anew each time. */
        private boolean isKept(Statement statement) {
            return stays && (joints != null || (entry != null && !(statement instanceof Statement.Board)));
        }
    }

    Session session() {
        return session;
    }

    Expressions expressions() {
        return expressions;
    }

    Reader reader() {
        return reader;
    }

    /** Notes of what the settings of the project ask for. */
    Notes ofSettings() {
        return ofSettings;
    }

    /** Begins the next version: what is worked out anew has units without anything in them. */
    void begin(SyntaxTree tree) {
        IdentityHashMap<Statement, Unit> before = units;
        units = new IdentityHashMap<>();
        Set<String> changed = new HashSet<>();
        boolean all = tree.statements().size() >= Evaluator.MOST;
        for (Statement statement : tree.statements()) {
            Unit known = before.remove(statement);
            Unit unit = known == null ? new Unit(statement) : known;
            if (known == null) {
                changed.addAll(unit.names);
            }
            all |= known == null ? unit.rules : statement instanceof Statement.Measured;
            units.put(statement, unit);
        }
        for (Unit gone : before.values()) {
            changed.addAll(gone.names);
            all |= gone.rules;
        }
        all |= !spread(changed);
        if (all) {
            forget();
        }
        ofSettings = new Notes();
        tracked.clear();
        session.begin();
        filesBefore = files;
        files = new HashMap<>();
    }

    /** Adds what {@code statement} declares; says whether so much may rest on it that nothing can be kept. */
    private static boolean changes(Statement statement, Set<String> changed) {
        return switch (statement) {
            case Statement.Let let -> named(let.name().text(), changed);
            case Statement.Part part -> named(part.name().text(), changed);
            case Statement.Board board -> named(board.name().text(), changed);
            case Statement.Property property -> {
                property.values().stream()
                        .map(value -> value.expr())
                        .filter(Expr.Word.class::isInstance)
                        .forEach(word -> changed.add(((Expr.Word) word).name()));
                yield SETTINGS.contains(property.name().text());
            }
            case Statement.Joint j -> false;
            case Statement.Require r -> false;
            case Statement.Accept a -> false;
            case Statement.Holds h -> false;
            case Statement.Broken b -> false;
            case Statement.Project p -> true;
            case Statement.Use u -> true;
            case Statement.Pattern p -> true;
            case Statement.Param p -> true;
            case Statement.Repeat r -> true;
            case Statement.When w -> true;
            case Statement.Measured m -> true;
        };
    }

    private static boolean named(String name, Set<String> changed) {
        changed.add(name);
        return false;
    }

    /** What rests on what has changed has changed; whether anything can be kept then. */
    private boolean spread(Set<String> changed) {
        units.values().forEach(unit -> unit.stays = true);
        boolean more = true;
        while (more) {
            more = false;
            for (Unit unit : units.values()) {
                boolean same = unit.stays && unit.notes.mayStay() && !meet(unit.notes.asked(), changed)
                        && !meet(unit.names, changed);
                if (unit.stays && !same) {
                    unit.stays = false;
                    more |= changed.addAll(unit.names);
                    if (unit.rules && meet(unit.notes.asked(), changed)) {
                        return false;
                    }
                }
            }
        }
        units.replaceAll((statement, unit) -> unit.isKept(statement) ? unit : new Unit(statement));
        return !meet(ofSettings.asked(), changed);
    }

    private static boolean meet(Set<String> one, Set<String> other) {
        return one.size() > other.size() ? meet(other, one) : one.stream().anyMatch(other::contains);
    }

    /** The names of the file that has these units. */
    Scope scope(dev.treen.quantity.Unit bare) {
        Scope known = scope;
        if (known == null || known.units() != bare) {
            known = Scope.file(bare, this::asked);
            scope = known;
            forget();
        }
        known.begin();
        return known;
    }

    private void asked(String name, Optional<Scope.Entry> found) {
        session.notes().asks(name);
        if (found.isEmpty() || !tracked.contains(found.get())) {
            session.notes().asksBeyond();
        }
    }

    /** The tree of a file that is used, read once. */
    SyntaxTree tree(SourceFile file) {
        SyntaxTree known = filesBefore.get(file);
        SyntaxTree tree = known == null ? Parser.parse(file) : known;
        files.put(file, tree);
        return tree;
    }

    /** The files are known: where they are others than before, nothing is kept. */
    void filesAreRead() {
        if (!files.keySet().equals(filesBefore.keySet())) {
            forget();
        }
    }

    private void forget() {
        units.replaceAll((statement, unit) -> new Unit(statement));
    }

    /** What is known of a statement at the top of the project's own file; empty for any other. */
    Optional<Unit> of(Statement statement) {
        return Optional.ofNullable(units.get(statement));
    }

    /** The entry of a statement at the top: it is known on what it rests. */
    void tracks(Unit unit, Scope.Entry entry) {
        unit.entry = entry;
        tracked.add(entry);
    }

    /** Puts all notes together, in the order of the text. */
    void gather(SyntaxTree tree) {
        session.gather(ofSettings);
        tree.statements().forEach(each -> of(each).ifPresent(unit -> session.gather(unit.notes)));
    }

    /** Whether chains of values are so long that it matters where one begins to follow them. */
    boolean chainsAreLong() {
        return session.highest() > Session.LONGEST_CHAIN - 10;
    }

    /** Begins as if nothing were known. */
    void clear() {
        units = new IdentityHashMap<>();
        files = new HashMap<>();
        session = new Session(measured);
        expressions = new Expressions(session);
        reader = new Reader(session, expressions);
        scope = null;
    }
}
