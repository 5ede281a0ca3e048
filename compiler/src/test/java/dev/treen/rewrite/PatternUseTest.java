package dev.treen.rewrite;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.model.Board;
import dev.treen.model.Datum;
import dev.treen.model.FileLoader;
import dev.treen.model.Instance;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.model.Service;
import dev.treen.model.Setting;
import dev.treen.plan.Compilation;
import dev.treen.plan.TreenFiles;
import dev.treen.quantity.Length;
import dev.treen.source.SourceFile;
import dev.treen.syntax.SaidWords;
import dev.treen.syntax.Statement;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts that are written out come back to the pattern that makes them. The projects are invented. */
class PatternUseTest {
    private static Compilation compiled(String text) {
        return Compilation.of(new SourceFile("jars.treen", text), FileLoader.NONE);
    }

    private static List<PatternUse.Written> at(String text, String place) {
        Compilation project = compiled(text);
        assertThat(text).contains(place);
        return PatternUse.of(project, FileLoader.NONE, text.indexOf(place));
    }

    private static String after(String text, PatternUse.Written written) {
        return Edit.applied(text, written.edits());
    }

    /** The example that is written both ways: each part by itself, and in fifteen lines. */
    @Test
    void theTeaCaddyWrittenOutIsABoxOfTheLibrary() {
        Path path = Path.of("..", "examples", "tea-caddy", "tea-caddy.treen");
        String text = TreenFiles.file(path).text();
        PatternUse.Written written = at(text, "part front").getFirst();
        assertThat(written.pattern()).isEqualTo("box");
        String after = after(text, written);
        assertThat(after).contains("""
                }

                use "treen/box"
                """).contains("""
                let inside = 160 x 80 x 70

                box caddy {
                  inside  inside
                  base    floating { groove 5 x 4; up 5 }
                  lid     sliding  { groove 5 x 4; down 5 }
                  from    plank
                }

                require caddy.front.width - caddy.lid.thickness >= 70mm because "the tin is 70 high"
                """).doesNotContain("let high", "let lid_up", "let wall", "part ");
    }

    static Stream<Path> byPattern() {
        return TreenFiles.examples().stream().filter(path -> !path.toString().contains("expected")).filter(
                path -> !instances(TreenFiles.compile(path, TreenFiles.file(path).text())).isEmpty());
    }

    private static List<Instance> instances(Compilation project) {
        return project.evaluation().project().instances().stream()
                .filter(each -> !each.path().contains(".") && !each.path().contains("["))
                .toList();
    }

    /** Every thing that an example makes by a pattern of the library, written out part by part. */
    @ParameterizedTest
    @MethodSource("byPattern")
    void whatAnExampleMakesByPatternComesBackToIt(Path path) {
        Compilation example = TreenFiles.compile(path, TreenFiles.file(path).text());
        for (Instance instance : instances(example)) {
            String flat = flat(example, instance);
            Compilation project = TreenFiles.compile(path, flat);
            assertThat(project.evaluation().project().findings()).as(flat).isEmpty();
            List<PatternUse.Written> found = PatternUse.of(project, TreenFiles.LOADER, flat.indexOf("\npart ") + 1);
            assertThat(found).as(flat).anyMatch(each -> each.pattern().equals(instance.pattern()));
            found.forEach(each -> assertThat(TreenFiles.compile(path, after(flat, each)).evaluation().project().parts())
                    .hasSameSizeAs(project.evaluation().project().parts()));
        }
    }

    /** The project with one of its things alone, each part and joint a statement. */
    private static String flat(Compilation example, Instance instance) {
        StringBuilder text = new StringBuilder();
        List<String> things = instances(example).stream().map(Instance::path).toList();
        for (Statement statement : example.tree().statements()) {
            boolean speaks = SaidWords.of(statement).stream().anyMatch(word -> things.contains(word.name()));
            boolean ofRest = statement instanceof Statement.Part || statement instanceof Statement.Joint;
            if (!speaks && !ofRest) {
                text.append(statement.span().text()).append('\n');
            }
        }
        String prefix = instance.path() + ".";
        for (Part part : example.evaluation().project().parts()) {
            if (part.name().startsWith(prefix)) {
                text.append(flat(part, prefix));
            }
        }
        Map<Integer, List<Joint>> statements = example.evaluation().project().joints().stream()
                .filter(joint -> joint.left().name().startsWith(prefix) && joint.right().name().startsWith(prefix))
                .collect(Collectors.groupingBy(Joint::statement, TreeMap::new, Collectors.toList()));
        statements.values().forEach(joints -> text.append(flat(joints, prefix)));
        return text.toString();
    }

    private static String name(Part part, String prefix) {
        return part.name().substring(prefix.length()).replaceAll("[.\\[]", "_").replace("]", "");
    }

    private static String flat(Part part, String prefix) {
        return "part " + name(part, prefix) + " {\n"
                + "length " + mm(part.length().value()) + "\nwidth " + mm(part.width().value())
                + "\nthickness " + mm(part.thickness().value()) + "\n"
                + part.service().carries().map(load -> load instanceof Service.Carried.For(String use, var _)
                        ? "carries " + use + "\n"
                        : "").orElse("")
                + part.bought().flatMap(Board::species).map(stuff -> "bought " + stuff + "\n")
                        .or(() -> part.service().finish().map(finish -> "finish " + finish.faces() + "\n"))
                        .orElse("")
                + part.from().map(board -> "from " + board.name() + "\n").orElse("")
                + part.placing().map(placing -> "place { length " + word(placing.length()) + "; width "
                        + word(placing.width()) + "; at " + String.join(", ", placing.at().stream()
                                .map(PatternUseTest::mm).toList())
                        + " }\n").orElse("")
                + "}\n";
    }

    private static String mm(Length length) {
        return "(" + length.mm().getNumerator() + " * 1mm / " + length.mm().getDenominator() + ")";
    }

    private static String word(Object direction) {
        return direction.toString().toLowerCase(Locale.ROOT);
    }

    /** Joints of one statement, which share their settings. */
    private static String flat(List<Joint> joints, String prefix) {
        String settings = joints.getFirst().settings().values().stream()
                .filter(setting -> !setting.auto() && !setting.name().contains("."))
                .map(setting -> setting.name() + " " + said(setting) + joints.getFirst().settings().values().stream()
                        .filter(tail -> tail.name().startsWith(setting.name() + "."))
                        .map(tail -> " " + tail.name().substring(setting.name().length() + 1) + " " + said(tail))
                        .collect(Collectors.joining()))
                .sorted()
                .collect(Collectors.joining("; "));
        String pairs = joints.stream()
                .map(joint -> name(joint.left(), prefix) + (joint.into() ? " into " : " to ")
                        + name(joint.right(), prefix))
                .collect(Collectors.joining(", "));
        return "joint " + joints.getFirst().kind() + " " + pairs + " { " + settings + " }\n";
    }

    private static String said(Setting setting) {
        return switch (setting.value()) {
            case Datum.Exactly(var quantity) -> quantity.asLength().map(PatternUseTest::mm)
                    .orElse(setting.valueAt().text());
            case Datum.Word(String word) -> word;
            case Datum other -> setting.valueAt().text();
        };
    }

    @Test
    void anythingThatIsNotQuiteThePatternIsLeftAlone() {
        Path path = Path.of("..", "examples", "tea-caddy", "tea-caddy.treen");
        String text = TreenFiles.file(path).text();
        assertThat(at(text.replace("place  { at inside.length, 0, 0 }", "place  { at inside.length, 0, 1 }"),
                "part front")).isEmpty();
        assertThat(at(text.replace("inside.length + wall ", "inside.length + 8 "), "part front")).isEmpty();
        assertThat(at(text, "board plank")).isEmpty();
        assertThat(at(text.replace("let wall   = 9", "let wall   = none"), "part front")).isEmpty();
    }
}
