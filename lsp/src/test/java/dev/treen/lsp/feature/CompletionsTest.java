package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Severity;
import dev.treen.lsp.Editor;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.junit.jupiter.api.Test;

/** What is offered while typing. The projects are invented. */
class CompletionsTest {
    private static final String CORNER = """
            project "Corner" { units mm }
            part front { length 160; width 84; thickness 9; place { length right; width up; at 0, -9, 0 } }
            part left { length 80; width 84; thickness 9; place { length back; width up; at -9, 0, 0 } }
            part far { length 80; width 84; thickness 9; place { length back; width up; at 500, 0, 0 } }
            """;

    private static ClientCapabilities snippets() {
        CompletionItemCapabilities item = new CompletionItemCapabilities();
        item.setSnippetSupport(true);
        TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
        text.setCompletion(new CompletionCapabilities(item));
        ClientCapabilities can = new ClientCapabilities();
        can.setTextDocument(text);
        return can;
    }

    private static List<CompletionItem> at(Editor editor, String uri, Position position) throws Exception {
        return get(editor.document().completion(new CompletionParams(file(uri), position))).getLeft();
    }

    private static CompletionItem named(List<CompletionItem> items, String label) {
        return items.stream().filter(item -> item.getLabel().equals(label)).findFirst().orElseThrow();
    }

    @Test
    void everySnippetCompilesAsItStands() throws Exception {
        try (Editor editor = new Editor(snippets())) {
            String uri = editor.open("\n");
            List<CompletionItem> whole = at(editor, uri, new Position(0, 0)).stream()
                    .filter(item -> item.getInsertTextFormat() == InsertTextFormat.Snippet)
                    .toList();
            assertThat(whole).extracting(CompletionItem::getLabel).contains("project", "board", "part", "let");
            for (CompletionItem item : whole) {
                String text = item.getInsertText()
                        .replaceAll("\\$\\{\\d+\\|(\\w+)[^}]*\\|}", "$1")
                        .replaceAll("\\$\\{\\d+:([^}]*)}", "$1");
                String beside = "\npart lid { length 160; width 80; thickness 9 }\n";
                Compilation made = Compilation.of(new SourceFile("snippet.treen", text + beside),
                        (path, from) -> Optional.empty());
                assertThat(made.checked().findings()).as(text).noneMatch(f -> f.severity() == Severity.ERROR);
            }
        }
    }

    @Test
    void anEditorWithoutFieldsGetsPlainWords() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("\n");
            assertThat(at(editor, uri, new Position(0, 0)))
                    .isNotEmpty()
                    .allMatch(item -> item.getInsertText() == null && item.getInsertTextFormat() == null);
        }
    }

    @Test
    void nothingIsOfferedInCommentsAndTexts() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    // a box for
                    project "Tea caddy" {
                      units mm /* of old */
                    }
                    """);
            assertThat(at(editor, uri, editor.at(uri, "box for", 3))).as("within a comment").isEmpty();
            assertThat(at(editor, uri, editor.at(uri, "box for", 7))).as("at its end").isEmpty();
            assertThat(at(editor, uri, editor.at(uri, "Tea caddy", 4))).as("in a text").isEmpty();
            assertThat(at(editor, uri, editor.at(uri, "of old", 3))).as("between two marks").isEmpty();
            assertThat(at(editor, uri, editor.at(uri, "units mm", 0))).as("before a comment").isNotEmpty();
        }
    }

    @Test
    void anItemIsToldInFullWhenItIsLookedAt() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("\n");
            CompletionItem part = named(at(editor, uri, new Position(0, 0)), "part");
            CompletionItem resolved = get(editor.document().resolveCompletionItem(part));
            assertThat(resolved.getDocumentation().getRight().getValue()).contains("```treen\npart ");
            assertThat(resolved.getLabel()).isEqualTo("part");
        }
    }

    @Test
    void kindsThatSuitTheTwoPartsComeFirst() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(CORNER + "joint  front to left\n");
            List<CompletionItem> items = at(editor, uri, editor.at(uri, "joint ", 6));
            assertThat(named(items, "mitre").getDetail()).endsWith("suits these parts");
            assertThat(named(items, "groove").getDetail()).doesNotContain("suits");
            assertThat(named(items, "mitre").getSortText()).isLessThan(named(items, "groove").getSortText());
        }
        try (Editor editor = new Editor()) {
            String uri = editor.open(CORNER + "joint  front to far\n");
            assertThat(named(at(editor, uri, editor.at(uri, "joint ", 6)), "mitre").getDetail())
                    .doesNotContain("suits");
        }
    }

    /** Where a cursor stands ({@code |} in the text), what is offered. */
    private static List<String> offered(String marked) throws Exception {
        try (Editor editor = new Editor()) {
            String before = marked.substring(0, marked.indexOf('|'));
            String uri = editor.open(marked.replace("|", ""));
            Position at = new Position(
                    (int) before.chars().filter(c -> c == '\n').count(),
                    before.length() - before.lastIndexOf('\n') - 1);
            return at(editor, uri, at).stream().map(CompletionItem::getLabel).toList();
        }
    }

    @Test
    void aBlockInOneLineOffersWhatOneOfManyLinesDoes() throws Exception {
        List<String> properties = offered(CORNER + "part lid {\n  |\n}\n");
        assertThat(properties).contains("length", "thickness", "from").doesNotContain("joint");
        assertThat(offered(CORNER + "part lid { | }\n")).isEqualTo(properties);
        assertThat(offered(CORNER + "part lid {|}\n")).isEqualTo(properties);
        assertThat(offered(CORNER + "part lid { length 160; | }\n")).isEqualTo(properties);
        assertThat(offered(CORNER + "part lid { length 160; wi| }\n")).isEqualTo(properties);
        assertThat(offered(CORNER + "part lid { place { length right }; | }\n")).isEqualTo(properties);
        assertThat(offered(CORNER + "part lid { |\n")).as("not closed yet").isEqualTo(properties);
        assertThat(offered(CORNER + "part lid { place { | } }\n")).contains("width", "at").doesNotContain("thickness");
        assertThat(offered(CORNER + "part lid { place { length | } }\n")).contains("right", "up");
        assertThat(offered(CORNER + "joint mitre front to left { | }\n")).contains("keys").doesNotContain("part");
        assertThat(offered("board plank { species | }\n")).contains("black_cherry").doesNotContain("size");
        assertThat(offered("board plank { species black_cherry; | }\n")).contains("size", "moisture");
    }

    @Test
    void asMuchIsOfferedBehindATextWithMarksInIt() throws Exception {
        assertThat(offered("project \"A { box; 1\" { | }\n")).contains("units").doesNotContain("part");
    }
}
