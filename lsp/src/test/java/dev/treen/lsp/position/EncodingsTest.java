package dev.treen.lsp.position;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each encoding over the streams: an edit behind a log, a half and a degree sign begins where that encoding says. */
class EncodingsTest {
    @ParameterizedTest
    // By the encodings themselves: log, half and degree take 4+2+2, 2+1+1 or 1+1+1; 13 other characters stand before.
    @CsvSource({"utf-8, 21", "utf-16, 17", "utf-32, 16"})
    void columnsAreThoseThatWereAgreed(String encoding, int column) throws Exception {
        GeneralClientCapabilities general = new GeneralClientCapabilities();
        general.setPositionEncodings(List.of(encoding));
        ClientCapabilities can = new ClientCapabilities();
        can.setGeneral(general);
        try (Editor editor = new Editor(can)) {
            assertThat(editor.greeting().getCapabilities().getPositionEncoding()).isEqualTo(encoding);
            String uri = editor.open("/* 🪵½° */ let a  = 1\n");
            List<? extends TextEdit> edits = get(editor.document()
                    .formatting(new DocumentFormattingParams(file(uri), new FormattingOptions(4, true))));
            assertThat(edits).extracting(edit -> edit.getRange().getStart().getCharacter()).containsExactly(column);
        }
    }
}
