package dev.treen.lsp.feature;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.DiagnosticsTagSupport;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;

/** What a finding looks like in an editor. The project is invented. */
class DiagnosticsTest {
    private static final String TWICE = """
            part lid { length 160; width 80; thickness 9 }
            part lid { length 120; width 80; thickness 9 }
            """;

    @Test
    void theOtherPlaceIsToldToo() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TWICE);
            List<Diagnostic> told = editor.diagnostics(uri).stream()
                    .filter(each -> each.getCode().getLeft().equals("same-name")).toList();
            assertThat(told).singleElement().satisfies(each -> {
                assertThat(each.getRange().getStart().getLine()).isEqualTo(1);
                assertThat(each.getRelatedInformation()).singleElement().satisfies(other -> {
                    assertThat(other.getLocation().getUri()).isEqualTo(uri);
                    assertThat(other.getLocation().getRange().getStart().getLine()).isZero();
                });
            });
        }
    }

    private static ClientCapabilities shows(PublishDiagnosticsCapabilities how) {
        TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
        text.setPublishDiagnostics(how);
        ClientCapabilities can = new ClientCapabilities();
        can.setTextDocument(text);
        return can;
    }

    /** The link leads to a page that is there, and goes when the session ends; who cannot follow it gets none. */
    @Test
    void eachCodeLeadsToItsPage() throws Exception {
        PublishDiagnosticsCapabilities how = new PublishDiagnosticsCapabilities();
        how.setCodeDescriptionSupport(true);
        Path page;
        try (Editor editor = new Editor(shows(how))) {
            String uri = editor.open(TWICE);
            Diagnostic told = editor.diagnostics(uri).stream()
                    .filter(each -> each.getCode().getLeft().equals("same-name")).findFirst().orElseThrow();
            page = Path.of(URI.create(told.getCodeDescription().getHref()));
            assertThat(page).isRegularFile();
            assertThat(Files.readString(page)).contains("same-name", "At the bench");
        }
        assertThat(page).doesNotExist();
        try (Editor editor = new Editor()) {
            assertThat(editor.diagnostics(editor.open(TWICE)))
                    .allSatisfy(each -> assertThat(each.getCodeDescription()).isNull());
        }
    }

    /** What is not heeded is tagged for clients that know the tag, and for no others. */
    @Test
    void whatIsNotHeededIsTagged() throws Exception {
        String text = "part lid { length 160; width 80; thickness 9; width 70 }\n";
        PublishDiagnosticsCapabilities how = new PublishDiagnosticsCapabilities();
        how.setTagSupport(Either.forRight(new DiagnosticsTagSupport(List.of(DiagnosticTag.Unnecessary))));
        try (Editor editor = new Editor(shows(how))) {
            assertThat(editor.diagnostics(editor.open(text)))
                    .filteredOn(each -> each.getCode().getLeft().equals("given-twice"))
                    .singleElement()
                    .satisfies(each -> assertThat(each.getTags()).containsExactly(DiagnosticTag.Unnecessary));
        }
        try (Editor editor = new Editor()) {
            assertThat(editor.diagnostics(editor.open(text))).allSatisfy(each -> assertThat(each.getTags()).isNull());
        }
    }
}
