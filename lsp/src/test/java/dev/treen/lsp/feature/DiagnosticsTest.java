package dev.treen.lsp.feature;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
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
}
