package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.util.List;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FormattingTest {
    private static final FormattingOptions OPTIONS = new FormattingOptions(8, false);
    private static final String MESSY = """
            let  a=1
            part shelf {
            length   300 ½ broken
                width 90
              thickness   9  // planed
            }
            let  b=2
            """;

    private Editor editor;

    @BeforeEach
    void start() throws Exception {
        editor = new Editor();
    }

    @AfterEach
    void end() throws Exception {
        editor.close();
    }

    private List<? extends TextEdit> whole(String uri) throws Exception {
        return get(editor.document().formatting(new DocumentFormattingParams(file(uri), OPTIONS)));
    }

    private String typed(String uri, String ch, Position at) throws Exception {
        return applied(editor.text(uri), get(editor.document()
                .onTypeFormatting(new DocumentOnTypeFormattingParams(file(uri), OPTIONS, at, ch))));
    }

    @Test
    void theWholeFileByEditsThatTouchBlanksOnly() throws Exception {
        String uri = editor.open(MESSY);
        List<? extends TextEdit> edits = whole(uri);
        assertThat(edits).hasSizeGreaterThan(3).allSatisfy(edit -> {
            assertThat(editor.read(uri, edit.getRange())).isBlank();
            assertThat(edit.getNewText()).isBlank().hasSizeLessThan(12);
        });
        assertThat(applied(MESSY, edits)).isEqualTo("""
                let a = 1
                part shelf {
                  length   300 ½ broken
                  width      90
                  thickness  9  // planed
                }
                let b = 2
                """);
        editor.retype(uri, applied(MESSY, edits));
        assertThat(whole(uri)).isEmpty();
    }

    @Test
    void onlyTheLinesAskedFor() throws Exception {
        String uri = editor.open(MESSY);
        Range first = new Range(new Position(0, 2), new Position(0, 3));
        assertThat(applied(MESSY, get(editor.document()
                .rangeFormatting(new DocumentRangeFormattingParams(file(uri), OPTIONS, first)))))
                .isEqualTo(MESSY.replace("let  a=1", "let a = 1"));
        Range last = new Range(new Position(6, 0), new Position(6, 0));
        assertThat(applied(MESSY, get(editor.document().rangesFormatting(
                new DocumentRangesFormattingParams(file(uri), OPTIONS, List.of(first, last, first))))))
                .isEqualTo(MESSY.replace("let  a=1", "let a = 1").replace("let  b=2", "let b = 2"));
    }

    @Test
    void aClosingBracePutsItsBlockRight() throws Exception {
        String text = "let  a=1\npart shelf {\nlength   300\n    width 90\n    }\n";
        String uri = editor.open(text);
        assertThat(typed(uri, "}", editor.at(uri, "}", 1)))
                .isEqualTo("let  a=1\npart shelf {\n  length  300\n  width   90\n}\n");
    }

    @Test
    void aNewLineIsIndentedAndTheOneBeforePutRight() throws Exception {
        String uri = editor.open("part shelf {\n  length  300;width   90\n\n}\nlet  b=2\n");
        assertThat(typed(uri, "\n", new Position(2, 0)))
                .isEqualTo("part shelf {\n  length  300\n  width   90\n  \n}\nlet  b=2\n");
        String open = editor.open("part shelf {\n");
        assertThat(typed(open, "\n", new Position(1, 0))).isEqualTo("part shelf {\n  ");
        String closing = editor.open("part shelf {\n      }");
        assertThat(typed(closing, "\n", new Position(1, 6))).isEqualTo("part shelf {\n}");
        String comment = editor.open("/* a note\n     on two lines */\n");
        assertThat(typed(comment, "\n", new Position(1, 5))).isEqualTo(editor.text(comment));
        String bracket = editor.open("let a = (1 +\n       2)\n");
        assertThat(typed(bracket, "\n", new Position(1, 7))).contains("\n       2)");
        assertThat(typed(bracket, "?", new Position(1, 7))).isEqualTo(editor.text(bracket));
    }

    @Test
    void columnsCountAsTheEditorCounts() throws Exception {
        String text = "/* 🪵½° */ let  a=1\n";
        String uri = editor.open(text);
        assertThat(applied(text, whole(uri))).isEqualTo("/* 🪵½° */ let a = 1\n");
    }
}
