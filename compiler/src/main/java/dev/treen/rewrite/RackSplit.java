package dev.treen.rewrite;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.model.Library;
import dev.treen.model.Project;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Formatter;
import dev.treen.syntax.Name;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SaidWords;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Moves what belongs to the shop and not to one piece (boards, sheets, woods, saws, allowances, rooms, with the values that
 * they rest on) into a file beside the project, which then uses it. What rests on the piece itself stays. The project means
 * the same afterwards, or nothing is handed out.
 */
public final class RackSplit {
    private static final Set<String> OF_THE_SHOP = Set.of("saw", "allow", "climate", "species");

    private final Compilation before;
    private final FileLoader loader;
    private final List<Statement> statements;
    private final Map<String, Statement> declared = new LinkedHashMap<>();

    /**
     * Both texts.
     *
     * @param rack the text of the new file
     * @param edits what changes in the project
     */
    public record Written(String rack, List<Edit> edits) {
        /** Keeps its own copy. */
        public Written {
            edits = List.copyOf(edits);
        }
    }

    private RackSplit(Compilation before, FileLoader loader) {
        this.before = before;
        this.loader = loader;
        this.statements = before.tree().statements();
        statements.forEach(each -> name(each).ifPresent(name -> declared.putIfAbsent(name, each)));
    }

    /** Whether {@code statement}, at the top of a file, belongs to the shop. */
    public static boolean isOfTheShop(Statement statement) {
        return switch (statement) {
            case Statement.Board board -> !board.name().text().isEmpty();
            case Statement.Property property -> OF_THE_SHOP.contains(property.name().text())
                    && preset(property).isPresent();
            case Statement.Project _,Statement.Use _,Statement.Let _,Statement.Part _,Statement.Joint _,Statement.Require _,Statement.Accept _,Statement.Measured _,Statement.Holds _,Statement.Pattern _,Statement.Param _,Statement.Repeat _,Statement.When _,Statement.Broken _ ->
                false;
        };
    }

    /** Whether the file has something for a rack and something that stays, as far as a glance shows. */
    public static boolean mayBeSplit(SyntaxTree tree) {
        return tree.statements().stream().anyMatch(RackSplit::isOfTheShop)
                && tree.statements().stream().anyMatch(RackSplit::isOfThePiece);
    }

    private static boolean isOfThePiece(Statement statement) {
        return !isOfTheShop(statement) && !(statement instanceof Statement.Project)
                && !(statement instanceof Statement.Use) && !(statement instanceof Statement.Let);
    }

    /**
     * The project with its rack in a file called {@code name}, without {@code .treen}, beside it; nothing where it has
     * errors, where all that could move rests on the piece, or where it would not mean the same.
     */
    public static Optional<Written> of(Compilation project, FileLoader loader, String name) {
        boolean fit = mayBeSplit(project.tree())
                && !Compilation.hasErrors(project.evaluation().project().findings());
        return fit ? new RackSplit(project, loader).split(name) : Optional.empty();
    }

    private Optional<Written> split(String name) {
        Set<Statement> moving = moving();
        if (moving.stream().noneMatch(RackSplit::isOfTheShop)) {
            return Optional.empty();
        }
        SourceFile file = before.file();
        String end = file.text().contains("\r\n") ? "\r\n" : "\n";
        List<Span> stretches = Stretches.of(before.tree(), moving);
        Written written = new Written(
                rack(moving, stretches).replace("\n", end),
                Stretches.without(file, stretches, "use \"" + name + "\"", stretches.getFirst().start()));
        return meansTheSame(written, name) ? Optional.of(written) : Optional.empty();
    }

    /** What can move: all that is of the shop, and the values it rests on, but what rests on something that stays. */
    private Set<Statement> moving() {
        Set<Statement> moving = new LinkedHashSet<>();
        statements.stream().filter(RackSplit::isOfTheShop).forEach(moving::add);
        List<Statement> open = new ArrayList<>(moving);
        while (!open.isEmpty()) {
            for (Statement rested : restsOn(open.removeLast())) {
                if (rested instanceof Statement.Let && moving.add(rested)) {
                    open.add(rested);
                }
            }
        }
        while (moving.removeIf(each -> !moving.containsAll(restsOn(each)))) {
            // What rests on one that has just been found to stay stays too.
        }
        Set<Statement> wanted = moving.stream().filter(RackSplit::isOfTheShop).collect(Collectors.toSet());
        List<Statement> reached = new ArrayList<>(wanted);
        while (!reached.isEmpty()) {
            restsOn(reached.removeLast()).stream().filter(wanted::add).forEach(reached::add);
        }
        moving.retainAll(wanted);
        return moving;
    }

    private List<Statement> restsOn(Statement statement) {
        return SaidWords.of(statement).stream()
                .flatMap(word -> Optional.ofNullable(declared.get(word.name())).stream())
                .filter(each -> !each.equals(statement))
                .distinct()
                .toList();
    }

    private static Optional<String> name(Statement statement) {
        return switch (statement) {
            case Statement.Let let -> Optional.of(let.name().text());
            case Statement.Board board -> Optional.of(board.name().text());
            case Statement.Part part -> Optional.of(part.name().text());
            case Statement.Pattern pattern -> Optional.of(pattern.name().text());
            case Statement.Property property -> preset(property);
            case Statement.Project _,Statement.Use _,Statement.Joint _,Statement.Require _,Statement.Accept _,Statement.Measured _,Statement.Holds _,Statement.Param _,Statement.Repeat _,Statement.When _,Statement.Broken _ ->
                Optional.empty();
        };
    }

    /** The name that stands behind the word of the statement: of a saw, say, or of a thing made by a pattern. */
    private static Optional<String> preset(Statement.Property property) {
        return property.values().stream()
                .findFirst()
                .flatMap(value -> value.expr() instanceof Expr.Word word
                        ? Optional.of(word.name())
                        : Optional.<String>empty());
    }

    private String rack(Set<Statement> moving, List<Span> stretches) {
        String units = before.evaluation().project().settings().units().name().toLowerCase(Locale.ROOT);
        StringBuilder text = new StringBuilder(
                "// The rack: boards and what else the shop has.\n\nproject \"Rack\" { units " + units + " }\n\n");
        List<String> uses = uses(moving);
        uses.forEach(use -> text.append(use).append('\n'));
        text.append(uses.isEmpty() ? "" : "\n");
        int done = 0;
        for (Span stretch : stretches) {
            boolean apart = done > 0 && done < stretch.start();
            text.append(apart ? "\n" : "").append(lines(stretch));
            done = stretch.end();
        }
        String whole = text.toString();
        return Formatter.format(Parser.parse(new SourceFile("rack", whole)));
    }

    private static String lines(Span stretch) {
        return stretch.text().replace("\r\n", "\n").stripTrailing() + "\n";
    }

    /** What the rack has to take in itself, for what is said in it. */
    private List<String> uses(Set<Statement> moving) {
        Set<String> said = moving.stream()
                .flatMap(each -> SaidWords.of(each).stream())
                .map(Expr.Word::name)
                .collect(Collectors.toSet());
        List<String> lines = new ArrayList<>();
        for (Statement statement : statements) {
            if (statement instanceof Statement.Use use && use.path().isPresent()
                    && use.alias().map(Name::text).map(said::contains)
                            .orElseGet(() -> declares(use.path().get().value(), said))) {
                lines.add(use.span().text());
            }
        }
        return lines;
    }

    private boolean declares(String path, Set<String> said) {
        return Library.tree(path)
                .or(() -> loader.load(path, before.file()).map(Parser::parse))
                .stream()
                .flatMap(tree -> tree.statements().stream())
                .anyMatch(each -> name(each).filter(said::contains).isPresent());
    }

    private boolean meansTheSame(Written written, String name) {
        SourceFile file = before.file();
        SourceFile project = new SourceFile(file.name(), Edit.applied(file.text(), written.edits()));
        Compilation after = Compilation.of(project, beside(file, loader, name, written.rack()));
        Project was = before.evaluation().project();
        Project is = after.evaluation().project();
        return new WrittenSizes().of(was).equals(new WrittenSizes().of(is))
                && said(was.findings()).equals(said(is.findings()));
    }

    /** Files as they will be: with {@code text} beside {@code file} under {@code name}. */
    static FileLoader beside(SourceFile file, FileLoader loader, String name, String text) {
        SourceFile rack = new SourceFile(file.name().replaceFirst("[^/\\\\]*$", "") + name + ".treen", text);
        return (path, from) -> path.equals(name) && from.name().equals(file.name())
                ? Optional.of(rack)
                : loader.load(path, from);
    }

    private static List<String> said(List<Finding> findings) {
        return findings.stream()
                .map(each -> each.code() + ": " + each.headline() + " " + each.found() + " " + each.at().text())
                .sorted()
                .toList();
    }
}
