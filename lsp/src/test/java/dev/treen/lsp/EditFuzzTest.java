package dev.treen.lsp;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * After any row of edits the server says what it would say of the text had it just been opened: the text it keeps, the
 * diagnostics, the colours, sizes and hovers are those of the whole. {@code -Dtreen.edits=100000} makes so many edits
 * over all examples, and {@code -Dtreen.rest=200} waits after each 200 of them until bodies and layouts have been
 * looked at too.
 */
class EditFuzzTest {
    private static final Path EXAMPLES = Path.of("../examples");
    private static final int EDITS = Integer.getInteger("treen.edits", 240);
    /** So many edits to a session: all that is said in one is kept, and held against the protocol at its end. */
    private static final int SESSION = 200;
    /** Before a text has become quite another, it begins again as it was. */
    private static final int ROW = 20;
    /** How often both texts are left alone until all is said. */
    private static final int REST = Integer.getInteger("treen.rest", 10);
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Set<String> OF_BODIES = Set.of("parts-clash", "joint-touches-nothing", "cannot-go-together",
            "assembly-not-searched", "cannot-slide-out", "groove-shows", "cuts-meet", "wall-too-thin",
            "accept-matches-nothing");

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
        for (int done = 0; done < count; done += SESSION) {
            session(path, edits, done, Math.min(count, done + SESSION));
        }
    }

    private static void session(Path path, SeededEdits edits, int from, int to) throws Exception {
        String begin = Files.readString(path);
        try (Editor editor = new Editor()) {
            String uri = editor.open(path);
            var tokens = get(editor.document().semanticTokensFull(new SemanticTokensParams(file(uri))));
            List<Integer> colours = new ArrayList<>(tokens.getData());
            String known = tokens.getResultId();
            for (int i = from; i < to; i++) {
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
                var told = quick(editor.diagnostics(uri));
                String which = "edit " + i + ": " + edit;
                String fresh = path.toAbsolutePath().normalize().resolveSibling("fresh.treen").toUri().toString();
                editor.open(fresh, editor.text(uri));
                String name = String.valueOf(path.getFileName());
                assertThat(told.replace(name, "fresh.treen")).as(which).isEqualTo(quick(editor.diagnostics(fresh)));
                assertThat(colours).as(which).isEqualTo(get(editor.document()
                        .semanticTokensFull(new SemanticTokensParams(file(fresh)))).getData());
                assertThat(shown(editor, uri, edit)).as(which).isEqualTo(shown(editor, fresh, edit));
                if (i % REST == REST - 1) {
                    sameAtRest(editor, uri, fresh, name, which);
                }
                editor.shut(fresh);
            }
        }
    }

    /** What is told at once: what finished bodies show comes when typing rests. */
    private static String quick(List<Diagnostic> diagnostics) {
        return diagnostics.stream().filter(each -> !OF_BODIES.contains(each.getCode().getLeft())).toList().toString();
    }

    /** Sizes and values in the lines, what stands at the place of the edit, and the outline. */
    private static String shown(Editor editor, String uri, SeededEdits.Edit edit) throws Exception {
        Position at = Positions.of(editor.text(uri), PositionEncoding.UTF16).position(edit.start());
        List<InlayHint> hints = get(editor.document().inlayHint(new InlayHintParams(file(uri), editor.whole(uri))));
        // By its data a hint is asked about again: the address and the version of the text, which differ.
        hints.forEach(each -> each.setData(null));
        return hints + "\n"
                + get(editor.document().hover(new HoverParams(file(uri), at))) + "\n"
                + get(editor.document().documentSymbol(new DocumentSymbolParams(file(uri))));
    }

    /** With a rest both come to the same, bodies and layouts with all. */
    private static void sameAtRest(Editor editor, String uri, String fresh, String name, String which)
            throws Exception {
        long end = System.nanoTime() + PATIENCE.toNanos();
        String one;
        String other;
        do {
            one = pulled(editor, uri).replace(name, "fresh.treen");
            other = pulled(editor, fresh);
        } while (!one.equals(other) && System.nanoTime() < end);
        assertThat(one).as("at rest, " + which).isEqualTo(other);
    }

    private static String pulled(Editor editor, String uri) throws Exception {
        return get(editor.document().diagnostic(new DocumentDiagnosticParams(file(uri))))
                .getLeft().getItems().toString();
    }
}
