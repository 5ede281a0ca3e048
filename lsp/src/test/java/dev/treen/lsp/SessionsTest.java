package dev.treen.lsp;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sessions that count in other ways, in inches, and several beside each other. */
class SessionsTest {
    private static final String URI = "file:///bench/tray.treen";
    private static final String TRAY = """
            project "Tray 🌳👩‍🔧 ½ é" { units mm }
            part front { length 160; width 40; thickness 9 } // 🌳
            require front.length < 100 because "🌳é short"
            /* 🌳é */ require front.width + 3 < max(front.width, front.length)
            """;

    private static Range range(String text, PositionEncoding encoding, String needle) {
        int at = text.lastIndexOf(needle);
        assertThat(at).as(needle).isNotNegative();
        return Positions.of(text, encoding).range(at, at + needle.length());
    }

    private static String read(String text, PositionEncoding encoding, Range range) {
        Positions.Span span = Positions.of(text, encoding).span(range);
        return text.substring(span.start(), span.end());
    }

    /** Every way to count, with signs before the cursor that are one, two and several units long. */
    @ParameterizedTest
    @CsvSource({"utf-8,UTF8", "utf-16,UTF16", "utf-32,UTF32"})
    void placesBehindSignsOfSeveralUnits(String name, PositionEncoding encoding) throws Exception {
        GeneralClientCapabilities general = new GeneralClientCapabilities();
        general.setPositionEncodings(List.of(name));
        ClientCapabilities can = new ClientCapabilities();
        can.setGeneral(general);
        try (Editor editor = new Editor(can)) {
            assertThat(editor.greeting().getCapabilities().getPositionEncoding()).isEqualTo(name);
            var document = editor.document();
            document.didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(URI, "treen", 1, TRAY)));
            var hover = get(document.hover(new HoverParams(file(URI), range(TRAY, encoding, "units").getStart())));
            assertThat(read(TRAY, encoding, hover.getRange())).isEqualTo("units");
            var symbols = get(document.documentSymbol(new DocumentSymbolParams(file(URI))));
            assertThat(read(TRAY, encoding, symbols.getFirst().getRight().getRange()))
                    .startsWith("project").endsWith("units mm }");
            var edits = get(document.rename(new RenameParams(
                    file(URI), range(TRAY, encoding, "front.length)").getStart(), "fore"))).getChanges().get(URI);
            assertThat(edits).extracting(TextEdit::getRange)
                    .extracting(each -> read(TRAY, encoding, each))
                    .hasSize(5).containsOnly("front");
            // A change behind such signs, and one in the midst of them, are made where they are meant.
            document.didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(URI, 2), List.of(
                    new TextDocumentContentChangeEvent(range(TRAY, encoding, "front.length)"), "fron.length)"))));
            String typed = TRAY.replace("front.length)", "fron.length)");
            var told = get(document.diagnostic(new DocumentDiagnosticParams(file(URI)))).getLeft().getItems();
            assertThat(told).extracting(each -> read(typed, encoding, each.getRange())).contains("fron");
            var fix = get(document.codeAction(new CodeActionParams(file(URI), range(typed, encoding, "fron."),
                    new CodeActionContext(told)))).stream()
                    .map(each -> each.getRight())
                    .filter(each -> each.getEdit() != null && each.getTitle().contains("front"))
                    .findFirst().orElseThrow().getEdit().getChanges().get(URI).getFirst();
            assertThat(read(typed, encoding, fix.getRange())).isEqualTo("fron");
            document.didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(URI, 3), List.of(
                    new TextDocumentContentChangeEvent(range(typed, encoding, "½ é\""), "é\""))));
            String last = typed.replace("½ é\"", "é\"");
            assertThat(read(last, encoding, get(document.hover(
                    new HoverParams(file(URI), range(last, encoding, "units").getStart()))).getRange()))
                    .isEqualTo("units");
        }
    }

    /** What is shown of a project in inches is in inches. */
    @Test
    void aProjectInInchesIsShownInInches() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    project "Tray" { units in }
                    let wall = 3/8
                    pattern rim {
                      part left {
                        length 7 1/2; width 2 * wall; thickness wall; place { length right; width up; at 0, 0, 0 }
                      }
                      part right like left { place { at 0, 2, 0 } }
                    }
                    rim upper
                    part front { length 7 1/2; width 2 * wall; thickness wall }
                    """);
            List<String> labels = get(editor.document().inlayHint(
                    new InlayHintParams(file(uri), editor.whole(uri)))).stream()
                    .map(each -> each.getLabel().getLeft()).toList();
            assertThat(labels).contains("7 1/2 x 3/4 x 3/8 in", "2 parts, 7 1/2 x 2 3/8 x 3/4 in over all")
                    .noneMatch(label -> label.contains("mm"));
            assertThat(get(editor.document().hover(new HoverParams(file(uri), editor.at(uri, "part front", 6))))
                    .getContents().getRight().getValue()).contains("7 1/2").doesNotContain("mm");
        }
    }

    /** Two editors on one server have each its own text under one address, and its own files to read. */
    @Test
    void editorsBesideEachOtherAreSeparate() throws Exception {
        try (Editor one = new Editor(); Editor other = new Editor()) {
            one.open(URI, "use \"rack\"\npart front { length wall; width 40; thickness 9 }\n");
            other.open(URI, "part front { length 200; width 40; thickness 9 }\n");
            one.open("file:///bench/rack.treen", "let wall = 160\n");
            assertThat(one.retype(URI, one.text(URI) + "\n")).isEmpty();
            assertThat(other.diagnostics(URI)).isEmpty();
            for (Editor each : List.of(one, other)) {
                String hints = get(each.document().inlayHint(
                        new InlayHintParams(file(URI), each.whole(URI)))).toString();
                assertThat(hints).contains(each == one ? "160 x 40 x 9" : "200 x 40 x 9")
                        .doesNotContain(each == one ? "200" : "160");
            }
            one.shut(URI);
            assertThat(get(other.document().documentSymbol(new DocumentSymbolParams(file(URI))))).hasSize(1);
            assertThat(get(one.document().documentSymbol(new DocumentSymbolParams(file(URI))))).isEmpty();
        }
    }
}
