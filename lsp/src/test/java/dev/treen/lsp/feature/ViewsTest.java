package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an editor shows of a file without being asked about a word. */
class ViewsTest {
    private static final String TRAY = """
            // A tray for pencils,
            // all invented.
            let wall = 9
            let high = wall + 20 ° 30

            /// Seen first.
            part front {
              length     160
              width      wall
              thickness  9
            }
            joint mitre front to front { gap 1 }
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void blocksAndCommentsFold() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(get(editor.document().foldingRange(new FoldingRangeRequestParams(file(uri)))))
                    .extracting(FoldingRange::getStartLine, FoldingRange::getEndLine)
                    .containsExactlyInAnyOrder(
                            org.assertj.core.groups.Tuple.tuple(0, 1), org.assertj.core.groups.Tuple.tuple(6, 9));
        }
    }

    @Test
    void selectionsGrowFromTheWordToTheFile() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            SelectionRange range = get(editor.document().selectionRange(
                    new SelectionRangeParams(file(uri), List.of(editor.at(uri, "160", 1))))).getFirst();
            List<String> texts = new ArrayList<>();
            for (SelectionRange each = range; each != null; each = each.getParent()) {
                texts.add(editor.read(uri, each.getRange()));
            }
            assertThat(texts).first().isEqualTo("160");
            assertThat(texts).last().isEqualTo(TRAY);
            assertThat(texts).contains("length     160").anyMatch(text -> text.startsWith("part front {"));
            for (int i = 1; i < texts.size(); i++) {
                assertThat(texts.get(i)).contains(texts.get(i - 1));
            }
        }
    }

    /** The lines of an outline, each with what it is and what its name's place reads. */
    private static List<String> lines(Editor editor, String uri, List<DocumentSymbol> symbols, String indent) {
        List<String> lines = new ArrayList<>();
        for (DocumentSymbol each : symbols) {
            String whole = editor.read(uri, each.getRange());
            String named = editor.read(uri, each.getSelectionRange());
            assertThat(whole).contains(named);
            lines.add(indent + each.getName() + " | " + each.getDetail() + " | " + named.replaceAll("\\s+", " "));
            if (each.getChildren() != null) {
                lines.addAll(lines(editor, uri, each.getChildren(), indent + "  "));
            }
        }
        return lines;
    }

    private static List<String> outline(Editor editor, String uri) throws Exception {
        return lines(editor, uri, get(editor.document().documentSymbol(new DocumentSymbolParams(file(uri)))).stream()
                .map(each -> each.getRight())
                .toList(), "");
    }

    @Test
    void theOutlineHasTheProjectTheJointsAndWhatPatternsMake() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    project "Doors of a cupboard" { units mm }
                    let wide = 50
                    pattern frame {
                      param high : length = 700
                      part stile { length high; width wide; thickness 21 }
                      part rail { length 300; width wide; thickness 21 }
                      joint mortise_tenon rail to stile { }
                      when high > 800 { part middle like rail }
                    }
                    frame left
                    frame right { high 900 }
                    repeat i in 1..2 { part shelf[i] { length 400; width 200; thickness 18 } }
                    joint housing shelf[1] into left.stile, shelf[2]  into left.stile as shelved { depth 6 }
                    joint housing shelf[1] into left.stile,
                    joint
                    joint butt
                    """);
            assertThat(outline(editor, uri)).containsExactly(
                    "Doors of a cupboard | project | project \"Doors of a cupboard\"",
                    "wide | let | wide",
                    "frame | pattern | frame",
                    "  stile | part | stile",
                    "  rail | part | rail",
                    "  mortise_tenon rail to stile | joint | joint mortise_tenon rail to stile",
                    "  middle | part | middle",
                    "left | frame | left",
                    "  stile | part | left",
                    "  rail | part | left",
                    "right | frame | right",
                    "  stile | part | right",
                    "  rail | part | right",
                    "  middle | part | right",
                    "shelf[1] | part | shelf",
                    "shelf[2] | part | shelf",
                    "housing shelf[1] into left.stile, shelf[2] into left.stile | joint shelved | joint housing "
                            + "shelf[1] into left.stile, shelf[2] into left.stile as shelved",
                    "housing shelf[1] into left.stile | joint | joint housing shelf[1] into left.stile,");
        }
    }

    /** What a pattern of another file makes stands under the name that it has here. */
    @Test
    void theOutlineShowsWhatALibraryPatternMakes() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("use \"treen/box\"\nproject\nbox caddy { inside 160 x 80 x 70 }\n");
            assertThat(outline(editor, uri))
                    .contains("project | project | project", "caddy | box | caddy", "  front | part | caddy")
                    .allMatch(line -> line.startsWith("project") || line.endsWith("| caddy"));
            assertThat(outline(editor, editor.open(""))).isEmpty();
        }
    }

    private static List<Integer> patched(List<Integer> data, List<SemanticTokensEdit> edits) {
        List<Integer> now = new ArrayList<>(data);
        edits.forEach(edit -> {
            now.subList(edit.getStart(), edit.getStart() + edit.getDeleteCount()).clear();
            now.addAll(edit.getStart(), edit.getData());
        });
        return now;
    }

    @Test
    void coloursComeWholeInPartAndAsWhatHasChanged() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            var whole = get(editor.document().semanticTokensFull(new SemanticTokensParams(file(uri))));
            assertThat(whole.getData().size() % 5).isZero();
            var line = get(editor.document().semanticTokensRange(new SemanticTokensRangeParams(
                    file(uri), new Range(new Position(2, 0), new Position(2, 12)))));
            List<String> legend = editor.greeting().getCapabilities().getSemanticTokensProvider().getLegend()
                    .getTokenTypes();
            assertThat(List.of(3, 8, 13, 18)).extracting(i -> legend.get(line.getData().get(i)))
                    .containsExactly("keyword", "variable", "operator", "number");
            editor.type(uri, editor.range(uri, "160"), "200 + wall");
            var change = get(editor.document().semanticTokensFullDelta(
                    new SemanticTokensDeltaParams(file(uri), whole.getResultId()))).getRight();
            assertThat(change.getEdits()).hasSize(1);
            assertThat(change.getEdits().getFirst().getData().size()).isLessThan(20);
            var again = get(editor.document().semanticTokensFull(new SemanticTokensParams(file(uri))));
            assertThat(patched(whole.getData(), change.getEdits())).isEqualTo(again.getData());
            assertThat(get(editor.document().semanticTokensFullDelta(
                    new SemanticTokensDeltaParams(file(uri), "forgotten"))).getLeft().getData())
                    .isEqualTo(again.getData());
        }
    }

    /** By the schema a word of a value is one of a few, and not the name of a property. */
    @Test
    void wordsOfValuesHaveAnotherColourThanProperties() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    let deep = max(3, 4)
                    board plank { species black_cherry; size 900 x 140 x 27; moisture 9% }
                    part front { length 160; width deep; thickness auto; from plank; place { length right } }
                    part far { length front.width; width wrong; from nowhere }
                    joint mitre front to far { keys none }
                    """);
            var data = get(editor.document().semanticTokensFull(new SemanticTokensParams(file(uri)))).getData();
            List<String> legend = editor.greeting().getCapabilities().getSemanticTokensProvider().getLegend()
                    .getTokenTypes();
            List<String> words = new ArrayList<>();
            int line = 0;
            int character = 0;
            for (int i = 0; i < data.size(); i += 5) {
                line += data.get(i);
                character = data.get(i + 1) + (data.get(i) == 0 ? character : 0);
                words.add(editor.read(uri, new Range(new Position(line, character),
                        new Position(line, character + data.get(i + 2)))) + " " + legend.get(data.get(i + 3)));
            }
            assertThat(words).contains("max function", "species property", "black_cherry enumMember", "size property",
                    "length property", "deep variable", "auto enumMember", "plank struct", "right enumMember",
                    "front class", "wrong variable", "nowhere variable", "mitre type", "none enumMember")
                    .doesNotContain("right property", "black_cherry property", "auto property", "mitre property");
        }
    }

    @Test
    void usedFilesAreLinks() throws Exception {
        Files.writeString(folder.resolve("rack.treen"), "let wall = 9\n");
        Path tray = Files.writeString(folder.resolve("tray.treen"), "use \"rack\"\nuse \"nowhere\"\n");
        try (Editor editor = new Editor()) {
            String uri = editor.open(tray);
            var links = get(editor.document().documentLink(new DocumentLinkParams(file(uri))));
            assertThat(links).hasSize(1);
            assertThat(editor.read(uri, links.getFirst().getRange())).isEqualTo("rack");
            assertThat(links.getFirst().getTarget()).endsWith("rack.treen");
        }
    }

    @Test
    void whatDependsOnASizeBothWays() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY.replace(" ° 30", ""));
            CallHierarchyItem wall = get(editor.document().prepareCallHierarchy(
                    new CallHierarchyPrepareParams(file(uri), editor.at(uri, "wall", 1)))).getFirst();
            assertThat(wall.getName()).isEqualTo("wall");
            assertThat(get(editor.document().callHierarchyIncomingCalls(new CallHierarchyIncomingCallsParams(wall))))
                    .extracting(each -> each.getFrom().getName()).containsExactlyInAnyOrder("high", "front");
            CallHierarchyItem high = get(editor.document().prepareCallHierarchy(
                    new CallHierarchyPrepareParams(file(uri), editor.at(uri, "high", 1)))).getFirst();
            assertThat(get(editor.document().callHierarchyOutgoingCalls(new CallHierarchyOutgoingCallsParams(high))))
                    .extracting(each -> each.getTo().getName()).containsExactly("wall");
        }
    }

    @Test
    void aJointSaysWhatItCanBeTold() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("part a { length 1; width 1; thickness 1 }\njoint groove a into a { wide 5 }\n");
            var help = get(editor.document().signatureHelp(
                    new SignatureHelpParams(file(uri), editor.at(uri, "wide 5", 6))));
            assertThat(help.getSignatures().getFirst().getLabel()).startsWith("joint groove A into B { ");
            var parameters = help.getSignatures().getFirst().getParameters();
            var span = parameters.get(help.getActiveParameter()).getLabel().getRight();
            assertThat(help.getSignatures().getFirst().getLabel().substring(span.getFirst(), span.getSecond()))
                    .isEqualTo("wide");
            assertThat(get(editor.document().signatureHelp(
                    new SignatureHelpParams(file(uri), editor.at(uri, "length", 1))))).isNull();
        }
    }
}
