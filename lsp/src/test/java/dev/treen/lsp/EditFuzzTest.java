package dev.treen.lsp;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * After any row of edits the server says what it would say of the text had it just been opened: the text it keeps, the
 * diagnostics and the colours are those of the whole. {@code -Dtreen.edits=100000} makes so many edits over all examples.
 */
class EditFuzzTest {
    private static final Path EXAMPLES = Path.of("../examples");
    private static final int EDITS = Integer.getInteger("treen.edits", 240);
    /** Before a text has become quite another, it begins again as it was. */
    private static final int ROW = 20;

    @TestFactory
    List<DynamicTest> editsComeToTheSameAsAFreshText() throws Exception {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            List<Path> all = files.filter(path -> path.toString().endsWith(".treen")).sorted().toList();
            int each = Math.max(1, EDITS / all.size());
            List<DynamicTest> tests = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                Path path = all.get(i);
                long seed = i;
                tests.add(DynamicTest.dynamicTest(EXAMPLES.relativize(path).toString(), () -> edit(path, seed, each)));
            }
            assertThat(tests).isNotEmpty();
            return tests;
        }
    }

    private static void edit(Path path, long seed, int count) throws Exception {
        SeededEdits edits = new SeededEdits(seed);
        String begin = Files.readString(path);
        try (Editor editor = new Editor()) {
            String uri = editor.open(path);
            var tokens = get(editor.document().semanticTokensFull(new SemanticTokensParams(file(uri))));
            List<Integer> colours = new ArrayList<>(tokens.getData());
            String known = tokens.getResultId();
            for (int i = 0; i < count; i++) {
                if (i % ROW == ROW - 1) {
                    editor.type(uri, editor.whole(uri), begin);
                }
                SeededEdits.Edit edit = edits.next(editor.text(uri));
                editor.type(uri, Positions.of(editor.text(uri), PositionEncoding.UTF16).range(edit.start(), edit.end()),
                        edit.with());
                var change = get(editor.document().semanticTokensFullDelta(
                        new SemanticTokensDeltaParams(file(uri), known))).getRight();
                known = change.getResultId();
                for (SemanticTokensEdit each : change.getEdits()) {
                    List<Integer> old = colours.subList(each.getStart(), each.getStart() + each.getDeleteCount());
                    old.clear();
                    colours.addAll(each.getStart(), each.getData());
                }
                String told = editor.diagnostics(uri).toString();
                String which = "edit " + i + ": " + edit;
                String fresh = path.toAbsolutePath().normalize().resolveSibling("fresh.treen").toUri().toString();
                editor.open(fresh, editor.text(uri));
                String name = String.valueOf(path.getFileName());
                assertThat(told.replace(name, "fresh.treen")).as(which).isEqualTo(editor.diagnostics(fresh).toString());
                assertThat(colours).as(which).isEqualTo(get(editor.document()
                        .semanticTokensFull(new SemanticTokensParams(file(fresh)))).getData());
                editor.shut(fresh);
            }
        }
    }
}
