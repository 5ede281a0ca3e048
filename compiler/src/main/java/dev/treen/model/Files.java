package dev.treen.model;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The files that a project takes in. A file is read once, however often it is used; files that use each other each see
 * the other's names.
 */
final class Files {
    /** How many files one project may take in. */
    static final int MOST = 200;

    private final Session session;
    private final FileLoader loader;
    private final EarlierValues earlier;
    private final SettingsReader settings;
    private final Map<String, Scope> files = new LinkedHashMap<>();
    private final Map<String, Optional<SyntaxTree>> loaded = new HashMap<>();

    Files(Session session, FileLoader loader, SettingsReader settings, EarlierValues earlier) {
        this.earlier = earlier;
        this.session = session;
        this.loader = loader;
        this.settings = settings;
    }

    /** The scope of the project's own file. */
    Scope first(SyntaxTree tree) {
        Scope scope = earlier.scope(settings.units(tree));
        files.put(tree.file().name(), scope);
        return scope;
    }

    void use(Statement.Use use, Scope scope, Sequence place, Declarations declarations) {
        if (use.path().isEmpty()) {
            return;
        }
        String path = use.path().get().value();
        Span at = use.path().get().span();
        Optional<SyntaxTree> tree = path.startsWith(Library.FOLDER)
                ? Library.tree(path)
                : loaded.computeIfAbsent(
                        at.file().name() + "\n" + path, key -> loader.load(path, at.file()).map(earlier::tree));
        if (tree.isEmpty()) {
            notFound(use.path().get());
            return;
        }
        Scope inside = files.get(tree.get().file().name());
        if (inside == null) {
            if (files.size() >= MOST) {
                session.add(Finding.of(ModelFindings.TOO_MANY, at, "More than " + MOST + " files are used")
                        .build());
                return;
            }
            inside = read(tree.get(), use, place, declarations);
        }
        if (use.alias().isPresent()) {
            declarations.enter(
                    scope,
                    use.alias().get().span(),
                    use.alias().get().text(),
                    new Scope.Other(use.alias().get().span(), inside));
            return;
        }
        if (inside != scope.home()) {
            scope.used().add(new Scope.Used(at, inside));
        }
    }

    private Scope read(SyntaxTree tree, Statement.Use use, Sequence place, Declarations declarations) {
        session.findings.addAll(tree.findings());
        Unit units = settings.units(tree);
        String prefix = use.alias().map(name -> name.text() + ".").orElse("");
        Scope inside = Scope.file(units, prefix);
        files.put(tree.file().name(), inside);
        session.within(Optional.empty(), () -> declarations.declare(tree.statements(), inside, place));
        return inside;
    }

    private void notFound(Expr.Text path) {
        Span at = path.span();
        Finding.Builder finding = Finding.of(
                ModelFindings.FILE_NOT_FOUND, at, "The file \"" + Reader.cut(path.value()) + "\" is not there")
                .found(path.value().startsWith(Library.FOLDER)
                        ? "The library has " + NearWords.quoted(Library.paths()) + "."
                        : "It is looked for beside `" + at.file().name() + "`, with and without `.treen`.");
        NearWords.of(path.value(), Library.paths())
                .forEach(near -> finding.remedy(
                        Remedy.safe("write \"" + near + "\"", new Edit(at, "\"" + near + "\""))));
        session.add(finding.build());
    }

    /** Names that two files have, or a file and the one that uses it: which is meant cannot be known. */
    void reportSameNames() {
        for (Scope scope : List.copyOf(files.values())) {
            Map<String, Scope.Entry> known = new LinkedHashMap<>(scope.entries());
            for (Scope.Used used : scope.used()) {
                used.scope().entries().forEach((name, entry) -> {
                    Scope.Entry before = known.putIfAbsent(name, entry);
                    if (before != null && !before.equals(entry) && !saidAlready(before, entry)) {
                        sameName(used.at(), name, before, entry);
                    }
                });
            }
        }
    }

    /** Two parts or two boards without a prefix have been told apart when they were declared. */
    private static boolean saidAlready(Scope.Entry one, Scope.Entry other) {
        return (one instanceof PartEntry && other instanceof PartEntry)
                || (one instanceof BoardEntry && other instanceof BoardEntry);
    }

    private void sameName(Span at, String name, Scope.Entry before, Scope.Entry other) {
        session.add(Finding.of(
                ModelFindings.SAME_NAME, at, "`" + name + "` comes from two files or is declared here too")
                .related(before.nameAt(), "the first of them; this one counts")
                .related(other.nameAt(), "the other")
                .remedy(Remedy.choice("write `as name` after the path, and `name." + name + "`"))
                .about(name)
                .build());
    }

    /** The file of the library that has a pattern called {@code name}, where it is not used yet. */
    Optional<String> libraryWith(String name) {
        return Library.paths().stream()
                .filter(path -> path.endsWith("/" + name) && !files.containsKey(path + ".treen"))
                .findFirst();
    }

    /** The edit that puts a {@code use} of {@code path} into {@code file}: behind the last one, else behind the project. */
    Edit useLine(String path, SourceFile file, Scope scope) {
        return scope.home().used().stream()
                .map(Scope.Used::at)
                .filter(span -> span.file().equals(file))
                .max(Comparator.comparingInt(Span::end))
                .map(last -> new Edit(endOfLine(last), "\nuse \"" + path + "\""))
                .orElseGet(() -> new Edit(file.span(0, 0), "use \"" + path + "\"\n"));
    }

    private static Span endOfLine(Span span) {
        SourceFile source = span.source();
        int line = source.lineOf(span.to());
        int end = source.lineStart(line) + source.lineText(line).length();
        return source.span(end, end);
    }
}
