package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.lsp4j.TextDocumentItem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies in a folder is not looked for at every question, and is never out of date for long. */
class WorkspaceTest {
    private static final long SECOND = 1_000_000_000L;

    @TempDir
    private Path folder;
    private final AtomicLong now = new AtomicLong();
    private final Documents documents = new Documents();
    private final Workspace workspace = new Workspace(documents, now::get);

    @BeforeEach
    void fill() throws IOException {
        for (int i = 0; i < 50; i++) {
            Files.writeString(folder.resolve("rack" + i + ".treen"), "let wall" + i + " = 9\n");
        }
        workspace.add(folder.toUri().toString());
    }

    private Document open() {
        return documents.open(new TextDocumentItem(
                folder.resolve("rack0.treen").toUri().toString(), "treen", 1, "let wall0 = 9\n"));
    }

    private String seen(Document document) {
        return workspace.around(document).stream().map(each -> each.file().text()).sorted().toList().toString();
    }

    /** Before, each question looked at the folder, its 50 files and the time of 49 of them: 1,000 visits for ten. */
    @Test
    void theFolderIsLookedAtOnceWhileNothingIsTold() {
        Document document = open();
        workspace.watched();
        assertThat(workspace.around(document)).hasSize(50);
        long once = workspace.visits();
        assertThat(once).isEqualTo(51 + 49);
        for (int i = 0; i < 10; i++) {
            now.addAndGet(60 * SECOND);
            assertThat(workspace.around(document)).hasSize(50);
            workspace.afresh();
        }
        assertThat(workspace.visits()).isEqualTo(once);
    }

    @Test
    void whatTheClientTellsIsLookedAt() throws IOException {
        Document document = open();
        workspace.watched();
        seen(document);
        Files.writeString(folder.resolve("rack7.treen"), "let other = 9.5\n");
        Files.writeString(folder.resolve("new.treen"), "let more = 1\n");
        workspace.lookAgain();
        assertThat(seen(document)).contains("let other", "let more").doesNotContain("wall7 ");
    }

    /** Without being told, for two seconds at the most; and never for edits. */
    @Test
    void whereNobodyTellsItIsLookedAtAgainSoon() throws IOException {
        Document document = open();
        seen(document);
        long once = workspace.visits();
        Files.writeString(folder.resolve("new.treen"), "let more = 1\n");
        now.addAndGet(SECOND);
        assertThat(seen(document)).doesNotContain("let more");
        assertThat(workspace.visits()).isEqualTo(once);
        assertThat(workspace.aroundNow(document)).hasSize(51);
        Files.writeString(folder.resolve("newer.treen"), "let yet = 1\n");
        now.addAndGet(2 * SECOND);
        assertThat(seen(document)).contains("let yet");
    }
}
