package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.source.SourceFile;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A version of a text that a later one has overtaken is let go, whatever the later one took over from it. */
class OvertakenTest {
    private static final Path EXAMPLES = Path.of("../examples");
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Pattern FIGURE = Pattern.compile("[0-9](?= |\\R)");
    private static final int EDITS = 6;

    static Stream<Path> examples() throws Exception {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            // Those that show one joint each are much alike.
            return files.filter(path -> path.toString().endsWith(".treen"))
                    .filter(path -> !path.getParent().endsWith("joints"))
                    .sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void versionsAreLetGo(Path path) throws Exception {
        List<WeakReference<SourceFile>> overtaken = new ArrayList<>();
        Document last = edited(path.toAbsolutePath(), overtaken);
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (held(overtaken) > 0 && System.nanoTime() < until) {
            System.gc();
            Thread.sleep(20);
        }
        assertThat(held(overtaken)).as("overtaken texts that something still holds").isZero();
        assertThat(last.analysis().quick()).isNotNull();
    }

    private static long held(List<WeakReference<SourceFile>> overtaken) {
        return overtaken.stream().filter(each -> each.get() != null).count();
    }

    /**
     * The newest of a row of versions, each looked at; the texts of those before it go into {@code overtaken}. One figure
     * after the other becomes another and then again what it was, so that most of each version is taken over.
     */
    private static Document edited(Path path, List<WeakReference<SourceFile>> overtaken) throws Exception {
        Random random = new Random(path.getFileName().toString().hashCode());
        Document document = new Documents().closed(new SourceFile(path.toString(), Files.readString(path)));
        List<Integer> figures = FIGURE.matcher(document.file().text()).results().map(found -> found.start()).toList();
        assertThat(figures).isNotEmpty();
        for (int i = 0; i < EDITS; i++) {
            int at = figures.get(random.nextInt(figures.size()));
            String figure = document.file().text().substring(at, at + 1);
            document = typed(typed(document, at, "4".equals(figure) ? "3" : "4", overtaken), at, figure, overtaken);
        }
        document.analysis().quick();
        document.analysis().bodies();
        return document;
    }

    private static Document typed(
            Document before, int at, String figure, List<WeakReference<SourceFile>> overtaken) {
        before.analysis().quick();
        overtaken.add(new WeakReference<>(before.file()));
        return before.changed(before.version() + 1, List.of(new TextDocumentContentChangeEvent(
                before.positions().range(at, at + 1), figure)));
    }
}
