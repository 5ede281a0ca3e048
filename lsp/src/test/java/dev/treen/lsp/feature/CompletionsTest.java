package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Severity;
import dev.treen.lsp.Editor;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.Test;

/** What is offered while typing. The projects are invented. */
class CompletionsTest {
    private static final Set<String> UNREAD = Set.of("stray-character", "unreadable-line", "unknown-property",
            "unknown-name", "value-missing", "wrong-kind", "file-not-found");

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
                String uses = item.getAdditionalTextEdits() == null
                        ? ""
                        : item.getAdditionalTextEdits().getFirst().getNewText();
                Compilation made = Compilation.of(new SourceFile("snippet.treen", uses + text + beside),
                        (path, from) -> Optional.empty());
                // The sizes of a pattern's fields are for the maker to set; what they are written as is not.
                assertThat(made.checked().findings()).as(text).noneMatch(f -> f.severity() == Severity.ERROR
                        && (uses.isEmpty() || UNREAD.contains(f.code())));
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
        List<String> more = properties.stream().filter(each -> !each.equals("length")).toList();
        assertThat(offered(CORNER + "part lid { length 160; | }\n")).isEqualTo(more);
        assertThat(offered(CORNER + "part lid { length 160; wi| }\n")).isEqualTo(more);
        assertThat(offered(CORNER + "part lid { place { length right }; | }\n"))
                .isEqualTo(properties.stream().filter(each -> !each.equals("place")).toList());
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

    private static final String THINGS = """
            project "Things" { units mm }
            board plank { species black_cherry; size 900 x 140 x 27; moisture 9% }
            let wall = 9
            let inside = 160 x 80 x 70
            let air = 35%..65%
            part front { length 160; width 84; thickness wall; from plank }
            part left { length 80; width 84; thickness wall; from plank }
            """;

    @Test
    void theHeadOfEachStatementOffersWhatCanFollow() throws Exception {
        assertThat(offered(THINGS + "joint mitre |\n")).containsExactly("front", "left");
        assertThat(offered(THINGS + "joint mitre front |\n")).containsExactly("to");
        assertThat(offered(THINGS + "joint groove front |\n")).containsExactly("into");
        assertThat(offered(THINGS + "joint mitre front to |\n")).containsExactly("front", "left");
        assertThat(offered(THINGS + "joint mitre front to left |\n")).containsExactly("as");
        assertThat(offered(THINGS + "part lid |\n")).containsExactly("like");
        assertThat(offered(THINGS + "part lid like |\n")).containsExactly("front", "left");
        assertThat(offered(THINGS + "repeat i |\n")).containsExactly("in");
        assertThat(offered(THINGS + "require wall |\n")).contains("<=", ">=").doesNotContain("plank", "because");
        assertThat(offered(THINGS + "require wall >= |\n")).contains("inside", "front", "min");
        assertThat(offered(THINGS + "require wall >= 9 |\n")).containsExactly("because", "and", "or");
        assertThat(offered(THINGS + "accept panel-tight |\n")).containsExactly("on", "because");
        assertThat(offered(THINGS + "accept panel-tight on |\n")).contains("front", "plank");
        assertThat(offered(THINGS + "accept panel-tight on front |\n")).containsExactly("because");
        assertThat(offered("pattern frame {\n  param stile : |\n}\n")).contains("length", "one of");
        for (String name : List.of("part |", "board |", "let |", "let x |", "pattern |", "repeat |", "project |")) {
            assertThat(offered(THINGS + name + "\n")).as(name).isEmpty();
        }
    }

    @Test
    void aValueIsOfferedByWhatTheNameIsFor() throws Exception {
        assertThat(offered(THINGS + "part lid { length | }\n")).contains("wall", "front", "min")
                .doesNotContain("lid", "plank");
        assertThat(offered(THINGS + "part lid { length 3m| }\n")).containsExactly("mm", "cm", "m", "in", "ft");
        assertThat(offered(THINGS + "part lid { length 300 | }\n")).containsExactly("overall");
        assertThat(offered(THINGS + "part lid { from | }\n")).containsExactly("plank", "black_cherry");
        assertThat(offered(THINGS + "part lid { place { length | } }\n"))
                .containsExactlyInAnyOrder("right", "left", "back", "front", "up", "down");
        assertThat(offered(THINGS + "let x = inside.|\n")).containsExactly("length", "width", "thickness");
        assertThat(offered(THINGS + "let x = air.|\n")).containsExactly("low", "high");
        assertThat(offered(THINGS + "let x = wall.|\n")).isEmpty();
        assertThat(offered(THINGS + "project \"B\" { climate { temperature 18d| } }\n"))
                .containsExactly("degC", "degF");
        assertThat(offered("pattern frame {\n  param stile : length = 57mm\n  part a { width | }\n}\n"))
                .as("a pattern that nothing uses").contains("stile");
    }

    @Test
    void aPatternsPartsAreOfferedInItsInstance() throws Exception {
        String box = "use \"treen/box\"\nbox caddy { inside 160 x 80 x 70 }\n";
        assertThat(offered(box + "joint mitre caddy.|\n")).contains("front", "left", "base");
        assertThat(offered("use \"treen/box\"\nbox caddy { inside 160 x 80 x 70; run | }\n"))
                .contains("front", "left").doesNotContain("caddy");
    }

    @Test
    void filesAreOfferedBetweenTheQuotes() throws Exception {
        assertThat(offered("use \"|\"\n")).contains("treen/box");
        assertThat(offered("use |\n")).contains("treen/box");
        try (Editor editor = new Editor()) {
            String uri = editor.open(java.nio.file.Path.of("../examples/spice-cabinet/spice-cabinet.treen"));
            editor.type(uri, editor.whole(uri), "use \"\n");
            List<CompletionItem> items = at(editor, uri, new Position(0, 5));
            assertThat(items).extracting(CompletionItem::getLabel).contains("shop/rack");
            TextEdit edit = named(items, "shop/rack").getTextEdit().getLeft();
            assertThat(Editor.applied(editor.text(uri), List.of(edit))).isEqualTo("use \"shop/rack\"\n");
        }
    }

    @Test
    void aPatternThatComesWithTreenBringsTheFileThatItIsIn() throws Exception {
        try (Editor editor = new Editor(snippets())) {
            String uri = editor.open("project \"Tea\" { units mm }\n\n");
            CompletionItem box = named(at(editor, uri, new Position(1, 0)), "box");
            assertThat(box.getInsertText()).contains("inside $");
            String made = "box caddy { inside 160 x 80 x 70 }";
            List<TextEdit> edits = new ArrayList<>(box.getAdditionalTextEdits());
            String text = Editor.applied(editor.text(uri), edits) + made;
            assertThat(Compilation.of(new SourceFile("made.treen", text), (path, from) -> Optional.empty())
                    .checked().findings()).as(text).noneMatch(f -> f.severity() == Severity.ERROR);
            editor.retype(uri, text + "\n");
            CompletionItem again = named(at(editor, uri, editor.at(uri, made, made.length() + 1)), "box");
            assertThat(again.getAdditionalTextEdits()).as("it is there by now").isNull();
        }
    }

    @Test
    void warningsAreOfferedBehindAcceptAndTakeThePlaceOfTheWholeCode() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(THINGS + "accept contents-ti\n");
            List<CompletionItem> items = at(editor, uri, editor.at(uri, "contents-ti", 11));
            assertThat(items).extracting(CompletionItem::getLabel)
                    .contains("contents-tight")
                    .as("an error cannot be accepted").doesNotContain("unknown-name", "accept-matches-nothing");
            assertThat(editor.read(uri, named(items, "contents-tight").getTextEdit().getLeft().getRange()))
                    .isEqualTo("contents-ti");
        }
    }

    /** The fields of each property, filled with what they propose, are what the property takes. */
    @Test
    void everyPropertyTakesWhatItsFieldsPropose() throws Exception {
        int tried = 0;
        for (String block : List.of("project \"A\" {\n  |\n}\n", "board plank {\n  |\n}\n", "part lid {\n  |\n}\n",
                "sheet ply {\n  |\n}\n", "project \"A\" { climate {\n  |\n} }\n",
                "board plank { knot {\n  |\n} }\n", CORNER + "joint mitre front to left {\n  |\n}\n",
                CORNER + "joint dovetail front to left {\n  |\n}\n")) {
            try (Editor editor = new Editor(snippets())) {
                String before = block.substring(0, block.indexOf('|'));
                String uri = editor.open(block.replace("|", ""));
                Position at = new Position((int) before.chars().filter(c -> c == '\n').count(), 2);
                for (CompletionItem item : at(editor, uri, at)) {
                    String filled = item.getInsertText()
                            .replaceAll("\\$\\{\\d+\\|(\\w+)[^}]*\\|}", "$1")
                            .replaceAll("\\$\\{\\d+:([^}]*)}", "$1");
                    if (!filled.contains("$")) {
                        tried++;
                        Compilation made = Compilation.of(
                                new SourceFile("field.treen", block.replace("|", filled)),
                                (path, from) -> Optional.empty());
                        assertThat(made.checked().findings()).as(block.replace("|", filled)).noneMatch(
                                f -> f.severity() == Severity.ERROR && f.at().text().contains(filled.split(" ")[1]));
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(20);
    }
}
