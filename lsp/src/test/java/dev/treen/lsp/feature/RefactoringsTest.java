package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.Test;

class RefactoringsTest {
    private static final String TRAY = """
            let wall = 4 + 5
            part front { length 160; width 2 * wall; thickness wall }
            part back { length 160 + 2 * 8; width 40; thickness 9 }
            """;

    private static Optional<String> after(Editor editor, String uri, Range range, String kind) throws Exception {
        List<CodeAction> actions = get(editor.document().codeAction(
                new CodeActionParams(file(uri), range, new CodeActionContext(List.of(), List.of(kind))))).stream()
                .map(each -> each.getRight())
                .toList();
        assertThat(actions).allMatch(each -> each.getKind().startsWith(kind));
        return actions.stream().findFirst()
                .map(each -> applied(editor.text(uri), each.getEdit().getChanges().get(uri)));
    }

    @Test
    void aValueGetsAName() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(after(editor, uri, editor.range(uri, "160 + 2 * 8"), "refactor.extract")).contains("""
                    let wall = 4 + 5
                    part front { length 160; width 2 * wall; thickness wall }
                    let measure = 160 + 2 * 8
                    part back { length measure; width 40; thickness 9 }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "part"), "refactor.extract")).isEmpty();
        }
    }

    private static Range between(Editor editor, String uri, String needle, int fromStart, int fromEnd) {
        return new Range(editor.at(uri, needle, fromStart), editor.at(uri, needle, needle.length() - fromEnd));
    }

    @Test
    void aSelectionThatBeginsOrEndsInABlankIsOfWhatIsInIt() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            Optional<String> named = after(editor, uri, editor.range(uri, "160 + 2 * 8"), "refactor.extract");
            assertThat(named).isPresent();
            for (String selected : List.of(" 160 + 2 * 8", "160 + 2 * 8;", " 160 + 2 * 8;")) {
                Range range = between(editor, uri, selected, 0, selected.endsWith(";") ? 1 : 0);
                assertThat(after(editor, uri, range, "refactor.extract")).as(selected).isEqualTo(named);
            }
            String wide = editor.open(TRAY.replace("160 + 2 * 8;", "160 + 2 * 8  \t;"));
            assertThat(after(editor, wide, editor.range(wide, " 160 + 2 * 8  \t"), "refactor.extract"))
                    .hasValueSatisfying(text -> assertThat(text).contains("length measure  \t;"));
        }
    }

    /** What is required keeps its meaning: a limit that is broken is broken by as much when it has a name. */
    @Test
    void aValueInWhatIsRequiredGetsAName() throws Exception {
        try (Editor editor = new Editor()) {
            String tray = TRAY + "require back.length - 2 * 8 <= front.length - 20mm because \"it slides\"\n"
                    + "require front.length <= 100\n";
            String uri = editor.open(tray);
            String sum = "back.length - 2 * 8";
            assertThat(after(editor, uri, editor.range(uri, sum), "refactor.extract")).contains(tray
                    .replace(sum, "measure").replace("require measure", "let measure = " + sum + "\nrequire measure"));
            assertThat(after(editor, uri, between(editor, uri, "- 2 * 8 <=", 2, 3), "refactor.extract"))
                    .hasValueSatisfying(text -> assertThat(text).contains("back.length - measure <="));
            assertThat(after(editor, uri, editor.range(uri, "<="), "refactor.extract")).isEmpty();
            assertThat(after(editor, uri, editor.range(uri, "it slides"), "refactor.extract")).isEmpty();
            List<String> told = editor.diagnostics(uri).stream().map(each -> each.getCode().getLeft()).toList();
            assertThat(told).hasSize(2);
            for (String value : List.of(sum, "2 * 8 <", "20mm", "100\n")) {
                String named = after(editor, uri, new Range(editor.at(uri, value, 0), editor.at(uri, value, 0)),
                        "refactor.extract").orElseThrow();
                assertThat(named).contains("let measure = ").isNotEqualTo(tray);
                assertThat(editor.retype(uri, named)).as(named).extracting(each -> each.getCode().getLeft())
                        .containsExactlyInAnyOrder("requirement-not-met", "requirement-not-met");
                editor.retype(uri, tray);
            }
        }
    }

    @Test
    void aNameGetsItsValueBack() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(after(editor, uri, editor.range(uri, "wall"), "refactor.inline")).contains("""
                    part front { length 160; width 2 * (4 + 5); thickness (4 + 5) }
                    part back { length 160 + 2 * 8; width 40; thickness 9 }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "front"), "refactor.inline")).isEmpty();
        }
    }

    /** Offered at the head of the project and at its unit alone; what has no short form keeps its unit. */
    @Test
    void theWholeFileGoesToTheOtherUnit() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    project "Tray" { units in }
                    let wall = 3/8
                    part front { length 7 1/2; width 2 * wall; thickness wall }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "units"), "refactor.rewrite")).contains("""
                    project "Tray" { units mm }
                    let wall = 9.525
                    part front { length 190.5; width 2 * wall; thickness wall }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "project"), "refactor.rewrite")).isPresent();
            assertThat(after(editor, uri, editor.range(uri, "front"), "refactor.rewrite")).isEmpty();
            String metric = editor.open("""
                    project "Tray"
                    part front { length 254; width 40; thickness 12.7 }
                    """);
            assertThat(after(editor, metric, editor.range(metric, "Tray"), "refactor.rewrite")).contains("""
                    project "Tray" { units in }
                    part front { length 10; width 40mm; thickness 1/2 }
                    """);
        }
    }

    /** The tea caddy that ships written out part by part, which is a box of the library. */
    @Test
    void partsThatAPatternMakesAreWrittenAsIt() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(Path.of("..", "examples", "tea-caddy", "tea-caddy.treen"));
            String asBox = after(editor, uri, editor.range(uri, "part front"), "refactor.rewrite").orElseThrow();
            assertThat(asBox).contains("use \"treen/box\"", "box caddy {").doesNotContain("part ", "joint ");
            assertThat(after(editor, uri, editor.range(uri, "joint mitre"), "refactor.rewrite")).contains(asBox);
            assertThat(after(editor, uri, editor.range(uri, "board plank"), "refactor.rewrite")).isEmpty();
            assertThat(editor.retype(uri, asBox)).isEmpty();
            assertThat(after(editor, uri, editor.range(uri, "box caddy"), "refactor.rewrite")).isEmpty();
        }
    }

    /** Among more than a thousand parts a pattern is not looked for: its search would outlast the maker's patience. */
    @Test
    void aPatternIsLookedForAmongAThousandPartsAtMost() throws Exception {
        String caddy = java.nio.file.Files.readString(Path.of("..", "examples", "tea-caddy", "tea-caddy.treen"));
        String slats = "\nrepeat i in 1..%d { part slat[i] { length 300; width 40; thickness 12 } }\n";
        try (Editor editor = new Editor()) {
            String few = editor.open(caddy + slats.formatted(3));
            assertThat(after(editor, few, editor.range(few, "part front"), "refactor.rewrite")).isPresent();
            String many = editor.open(caddy + slats.formatted(1_000));
            assertThat(after(editor, many, editor.range(many, "part front"), "refactor.rewrite")).isEmpty();
        }
    }
}
