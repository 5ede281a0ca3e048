package dev.treen.rewrite;

import dev.treen.model.Datum;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.model.Setting;
import dev.treen.model.Symbol;
import dev.treen.model.Usage;
import dev.treen.plan.Compilation;
import dev.treen.quantity.Dimension;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Formatter;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SaidWords;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The block that says of an instance all that was said of the parts and joints one by one. */
final class InstanceText {
    private static final Set<String> SAID_BY_PATTERN = Set.of("length", "width", "thickness", "place", "from");

    private final Compilation before;
    private final Thing thing;
    private final Set<Statement> gone;
    private final PatternSource source;
    private final Solver.Fit fit;
    private final Unit unit;
    private final Map<String, Statement.Let> lets = new LinkedHashMap<>();

    InstanceText(
            Compilation before, Thing thing, Set<Statement> gone, PatternSource source, Solver.Fit fit) {
        this.before = before;
        this.thing = thing;
        this.gone = gone;
        this.source = source;
        this.fit = fit;
        this.unit = before.evaluation().project().settings().units();
        before.tree().statements().forEach(each -> {
            if (each instanceof Statement.Let let) {
                lets.put(let.name().text(), let);
            }
        });
    }

    /** A name for the thing that nothing in the file has: a word of the project's title, or the pattern's with a number. */
    static String name(Compilation project, String pattern) {
        Set<String> taken = project.evaluation().symbols().stream()
                .map((Symbol symbol) -> symbol.name())
                .collect(Collectors.toSet());
        List<String> candidates = new ArrayList<>();
        for (Statement statement : project.tree().statements()) {
            if (statement instanceof Statement.Project(var _, Optional<Expr.Text> title, var _)) {
                String words = title.map(text -> text.value().toLowerCase(Locale.ROOT)).orElse("");
                List.of(words.split("[^a-z]+", -1)).reversed().stream()
                        .filter(word -> word.length() > 2 && !word.equals(pattern) && isName(word, pattern))
                        .forEach(candidates::add);
            }
        }
        for (int i = 1; i <= taken.size() + 1; i++) {
            candidates.add(pattern + "_" + i);
        }
        return candidates.stream().filter(each -> !taken.contains(each)).findFirst().orElseThrow();
    }

    private static boolean isName(String word, String pattern) {
        return Parser.parse(new SourceFile("name", "let " + word + " = 1\n" + pattern + " " + word + " {\n}\n"))
                .findings().isEmpty();
    }

    /** The statement, in the one style. */
    String written(String name) {
        List<String> lines = new ArrayList<>(fit.given().lines(source.parameters(), this::value));
        String common = Solver.common(thing);
        if (!common.isEmpty()) {
            lines.add("from " + common);
        }
        if (fit.at().stream().anyMatch(each -> each.signum() != 0)) {
            lines.add("place { at " + String.join(", ", fit.at().stream()
                    .map(each -> FigureText.measures(List.of(each), unit)).toList()) + " }");
        }
        Map<String, List<String>> inside = new TreeMap<>();
        new TreeMap<>(fit.names()).forEach((theirs, ours) -> part(theirs, ours).ifPresent(
                line -> inside.computeIfAbsent(theirs.substring(0, theirs.lastIndexOf('.') + 1),
                        instance -> new ArrayList<>()).add(line)));
        inside.forEach((instance, parts) -> lines.addAll(in(instance, parts)));
        lines.addAll(joints());
        String text = source.name() + " " + name + " {\n" + String.join("\n", lines) + "\n}\n";
        return Formatter.format(Parser.parse(new SourceFile("instance", text))).stripTrailing();
    }

    /** Lines for what stands inside an instance, whose dotted name ends in a dot; of none, the lines as they are. */
    private static List<String> in(String instance, List<String> lines) {
        if (instance.isEmpty()) {
            return lines;
        }
        int dot = instance.indexOf('.');
        return List.of(instance.substring(0, dot) + " {\n"
                + String.join("\n", in(instance.substring(dot + 1), lines)) + "\n}");
    }

    /** The measures of a parameter: by the name of a value that the parts rested on, where that says the same. */
    private String value(String key) {
        List<BigFraction> measures = fit.given().measures().getOrDefault(key, List.of());
        Set<String> said = restedOn();
        return lets.keySet().stream()
                .filter(said::contains)
                .filter(let -> measures.size() > 1 || let.equals(key))
                .filter(let -> Optional.ofNullable(lets.get(let)).map(this::value).filter(measures::equals).isPresent())
                .findFirst()
                .orElseGet(() -> FigureText.measures(measures, unit));
    }

    private List<BigFraction> value(Statement.Let let) {
        return before.evaluation().usages().stream()
                .filter(usage -> usage.declaredAt().start() == let.name().span().start()
                        && usage.declaredAt().file().name().equals(before.file().name())
                        && usage.at().text().equals(let.name().text()))
                .map((Usage usage) -> measures(usage.value().value()))
                .filter(measures -> !measures.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private static List<BigFraction> measures(Datum value) {
        return switch (value) {
            case Datum.Bare(BigFraction amount, Unit of) -> of.of(amount).as(Dimension.LENGTH).stream().toList();
            case Datum.Exactly(var quantity) -> quantity.as(Dimension.LENGTH).stream().toList();
            case Datum.Sizes(List<Datum> each) -> each.stream().flatMap(one -> measures(one).stream()).toList();
            case Datum.Between _,Datum.Several _,Datum.Text _,Datum.Truth _,Datum.Word _,Datum.Thing _,Datum.Unknown _ ->
                List.of();
        };
    }

    /** The values that the parts and joints rested on, those behind them too. */
    private Set<String> restedOn() {
        Set<String> found = new LinkedHashSet<>();
        List<Statement> open = new ArrayList<>(gone);
        while (!open.isEmpty()) {
            SaidWords.of(open.removeLast()).forEach(word -> {
                Statement.Let let = lets.get(word.name());
                if (let != null && found.add(word.name())) {
                    open.add(let);
                }
            });
        }
        return found;
    }

    /** Values that nothing rests on once the parts and joints are gone. */
    Set<Statement> restedOnNoMore() {
        Set<String> candidates = restedOn();
        String block = written("it");
        Set<Statement> idle = new LinkedHashSet<>();
        boolean more = true;
        while (more) {
            Set<String> said = before.tree().statements().stream()
                    .filter(each -> !gone.contains(each) && !idle.contains(each))
                    .flatMap(each -> SaidWords.of(each).stream())
                    .map(Expr.Word::name)
                    .collect(Collectors.toSet());
            more = lets.values().stream()
                    .filter(let -> candidates.contains(let.name().text()) && !said.contains(let.name().text())
                            && !block.matches("(?s).*\\b" + let.name().text() + "\\b.*"))
                    .map(idle::add)
                    .reduce(false, Boolean::logicalOr);
        }
        return idle;
    }

    /** What a part says of itself beyond what the pattern says of it. */
    private Optional<String> part(String theirs, String ours) {
        Map<String, String> said = new LinkedHashMap<>();
        Part part = thing.parts().get(ours);
        if (part == null) {
            return Optional.empty();
        }
        properties(part.name(), said, 0);
        String from = part.source();
        boolean byParameter = Optional.ofNullable(fit.made().parts().get(theirs))
                .filter(made -> !from.isEmpty() && made.source().equals(from))
                .isPresent();
        if (!from.equals(Solver.common(thing)) && !from.isEmpty() && !byParameter) {
            said.put("from", "from " + from);
        }
        return said.isEmpty()
                ? Optional.empty()
                : Optional.of("part " + theirs.substring(theirs.lastIndexOf('.') + 1) + " { "
                        + String.join("; ", said.values()) + " }");
    }

    private void properties(String name, Map<String, String> said, int depth) {
        for (Statement statement : gone) {
            if (statement instanceof Statement.Part part && part.name().text().equals(name)) {
                part.body().ifPresent(body -> body.statements().forEach(each -> {
                    if (each instanceof Statement.Property property
                            && !SAID_BY_PATTERN.contains(property.name().text())) {
                        said.putIfAbsent(property.name().text(), property.span().text());
                    }
                }));
                if (depth < thing.parts().size()) {
                    part.like().ifPresent(like -> properties(like.span().text(), said, depth + 1));
                }
            }
        }
    }

    /** What the joints say beyond what the pattern says of them, where the pattern has a name for them. */
    private List<String> joints() {
        Map<String, Set<String>> changes = new LinkedHashMap<>();
        Map<Thing.Tie, Joint> wanted = thing.byTie();
        fit.made().byTie().forEach((tie, made) -> {
            Joint ours = wanted.get(new Thing.Tie(fit.names().getOrDefault(tie.left(), ""),
                    fit.names().getOrDefault(tie.right(), ""), tie.kind(), tie.into()));
            String alias = made.name().substring(made.name().lastIndexOf('.') + 1);
            if (ours != null && !alias.contains(" ")) {
                ours.settings().values().stream()
                        .filter(setting -> !setting.auto() && !saysTheSame(setting, made))
                        .forEach(setting -> changes.computeIfAbsent(alias, key -> new LinkedHashSet<>())
                                .add(whole(setting.name().replaceAll("\\..*", ""), ours)));
            }
        });
        return changes.entrySet().stream()
                .map(each -> "joint " + each.getKey() + " { " + String.join("; ", each.getValue()) + " }")
                .toList();
    }

    /** A property with the words that follow its value: {@code stop 8 from front}. */
    private static String whole(String property, Joint joint) {
        StringBuilder text = new StringBuilder(property);
        Optional.ofNullable(joint.settings().get(property))
                .ifPresent(setting -> text.append(' ').append(setting.valueAt().text()));
        joint.settings().values().stream()
                .filter(each -> each.name().startsWith(property + "."))
                .forEach(tail -> text.append(tail.name().replace(property + ".", " ")).append(' ')
                        .append(tail.valueAt().text()));
        return text.toString();
    }

    private static boolean saysTheSame(Setting setting, Joint made) {
        return made.given(setting.name())
                .filter(other -> other.value().equals(setting.value())
                        || (!measures(other.value()).isEmpty()
                                && measures(other.value()).equals(measures(setting.value()))))
                .isPresent();
    }
}
