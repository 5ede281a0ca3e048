package dev.treen.rewrite;

import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.model.Library;
import dev.treen.model.Project;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Block;
import dev.treen.syntax.Parser;
import dev.treen.syntax.Statement;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A pattern that a project can use, and what it makes with one or another value of its parameters.
 *
 * @param name of the pattern
 * @param path of the file of the library that has to be used for it; empty where the project has it already
 * @param statement the pattern
 * @param parameters all of them, each before those that go with it
 * @param project the file of the project
 */
record PatternSource(
        String name, Optional<String> path, Statement.Pattern statement, List<Parameter> parameters,
        SyntaxTree project, FileLoader loader) {
    private static final String PROBE = "treen_probe";
    /** A board that stands for whichever one is given. */
    static final String WOOD = "treen_probe_wood";

    /** All patterns that {@code project} can use: its own, those of files that it uses, and those of the library. */
    static List<PatternSource> of(SyntaxTree project, FileLoader loader) {
        List<PatternSource> all = new ArrayList<>();
        Set<String> used = new LinkedHashSet<>();
        add(all, project, Optional.empty(), project, loader);
        for (Statement statement : project.statements()) {
            if (statement instanceof Statement.Use use && use.path().isPresent() && use.alias().isEmpty()) {
                String path = use.path().get().value();
                used.add(path.replaceFirst("\\.treen$", ""));
                Library.tree(path)
                        .or(() -> loader.load(path, project.file()).map(Parser::parse))
                        .ifPresent(tree -> add(all, tree, Optional.empty(), project, loader));
            }
        }
        for (String path : Library.paths()) {
            if (!used.contains(path)) {
                add(all, Library.tree(path).orElseThrow(), Optional.of(path), project, loader);
            }
        }
        return all;
    }

    private static void add(
            List<PatternSource> all, SyntaxTree tree, Optional<String> path, SyntaxTree project, FileLoader loader) {
        Unit unit = FigureText.unit(tree);
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Pattern pattern
                    && all.stream().noneMatch(each -> each.name().equals(pattern.name().text()))) {
                all.add(new PatternSource(pattern.name().text(), path, pattern, Parameter.of(pattern, unit), project,
                        loader));
            }
        }
    }

    /** Whether it may make joints of all these kinds, as far as its words show; those of patterns inside it are not seen. */
    boolean mayMake(Set<String> kinds) {
        Set<String> words = new LinkedHashSet<>();
        boolean holdsOthers = words(statement.body(), words);
        parameters.forEach(each -> words.addAll(each.words()));
        return holdsOthers || words.containsAll(kinds);
    }

    private static boolean words(Optional<Block> body, Set<String> kinds) {
        boolean others = false;
        for (Statement each : body.map(Block::statements).orElse(List.of())) {
            if (each instanceof Statement.Joint joint) {
                kinds.add(joint.kind().text());
            }
            others |= each instanceof Statement.Property;
            boolean nested = each instanceof Statement.When || each instanceof Statement.Repeat;
            if (nested) {
                others |= words(each.body(), kinds);
            }
            if (each instanceof Statement.When when) {
                others |= words(when.otherwise(), kinds);
            }
        }
        return others;
    }

    /** What it makes with each of {@code all}, in their order. */
    List<Thing> made(List<Given> all) {
        StringBuilder text = new StringBuilder("project \"Probe\" { units mm }\nboard " + WOOD
                + " { species black_cherry; size 1000 x 100 x 20; moisture 9% }\n");
        path.ifPresent(each -> text.append("use \"").append(each).append("\"\n"));
        project.statements().stream()
                .filter(each -> each instanceof Statement.Use || each instanceof Statement.Pattern
                        || each instanceof Statement.Let || each instanceof Statement.Board)
                .forEach(each -> text.append(each.span().text()).append('\n'));
        for (int i = 0; i < all.size(); i++) {
            Given given = all.get(i);
            text.append(name).append(' ').append(PROBE).append(i).append(" {\n");
            given.lines(parameters, key -> inMm(given.measures().getOrDefault(key, List.of())))
                    .forEach(line -> text.append(line).append('\n'));
            text.append("}\n");
        }
        Project made = Evaluator.evaluate(
                Parser.parse(new SourceFile(project.file().name(), text.toString())), loader, JointKinds.schemas())
                .project();
        return Stream.iterate(0, i -> i < all.size(), i -> i + 1).map(i -> Thing.madeAs(made, PROBE + i)).toList();
    }

    private static String inMm(List<BigFraction> measures) {
        return String.join(" x ", measures.stream().map(each -> "(" + each.getNumerator() + " / "
                + each.getDenominator() + ") * 1mm").map(each -> "(" + each + ")").toList());
    }
}
