package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What real editors said, said again. The sessions were written down by {@code editor-support/record-session.mjs} while
 * the editors' tests drove them. Each answer must have at least the shape that the editor got then.
 */
@Timeout(120)
class SessionReplayTest {
    @TempDir
    private Path project;

    @ParameterizedTest
    @ValueSource(strings = {"emacs-30", "helix-25.01", "kate-22.12", "neovim-0.10", "neovim-0.7", "vim-9.0-ale",
            "vscode-1.100"})
    void answersAsTheEditorWasAnswered(String editor) throws IOException {
        List<JsonObject> lines = lines(editor);
        assertThat(lines.stream().filter(line -> line.has("message")).findFirst().orElseThrow()
                .getAsJsonObject("message").get("method").getAsString()).isEqualTo("initialize");
        try (RawClient client = new RawClient()) {
            boolean exited = false;
            boolean shutDown = false;
            for (JsonObject line : lines) {
                if (line.get("from").getAsString().equals("disk")) {
                    write(line);
                    continue;
                }
                JsonObject message = line.getAsJsonObject("message");
                boolean says = message.has("method") && line.get("from").getAsString().equals("editor");
                if (says) {
                    client.send(message.toString());
                    exited |= message.get("method").getAsString().equals("exit");
                    // Kate tells of it and does not ask; by the protocol that is no shutdown.
                    shutDown |= message.get("method").getAsString().equals("shutdown") && message.has("id");
                    if (message.has("id")) {
                        String id = message.get("id").toString();
                        compare(editor, id, lines, client.answerTo(id));
                    }
                }
            }
            if (exited) {
                assertThat(client.server.awaitExit()).isEqualTo(shutDown ? 0 : 1);
            }
        }
    }

    /** A file of the project is as it was then. */
    private void write(JsonObject line) throws IOException {
        Path file = project.resolve(line.get("file").getAsString());
        if (line.get("text").isJsonNull()) {
            Files.deleteIfExists(file);
        } else {
            Files.createDirectories(file.resolve("..").normalize());
            Files.writeString(file, line.get("text").getAsString());
        }
    }

    private List<JsonObject> lines(String editor) throws IOException {
        Path session = Path.of("src/test/resources/dev/treen/lsp/sessions", editor + ".jsonl");
        String folder = project.toUri().toString().replaceAll("/$", "");
        return Files.readAllLines(session).stream()
                .map(line -> line.replace("file:///project", folder))
                .map(line -> JsonParser.parseString(line).getAsJsonObject())
                .toList();
    }

    private static void compare(String editor, String id, List<JsonObject> lines, JsonObject answer) {
        lines.stream()
                .filter(line -> line.get("from").getAsString().equals("server"))
                .map(line -> line.getAsJsonObject("message"))
                .filter(message -> !message.has("method") && message.get("id").toString().equals(id))
                // What the editor gave up asking for has no answer that could be compared.
                .filter(then -> !then.has("error"))
                .findFirst()
                .ifPresent(then -> {
                    Set<String> now = shape(answer);
                    Set<String> wanted = shape(then);
                    wanted.removeIf(path -> hasOptions(path, now));
                    if (offersNothing(answer, wanted)) {
                        return;
                    }
                    assertThat(now).as("%s, request %s", editor, id).containsAll(wanted);
                });
    }

    /**
     * Only what is offered while typing has a place in a row; where nothing can stand a later server offers nothing.
     */
    private static boolean offersNothing(JsonObject answer, Set<String> wanted) {
        return wanted.contains(".result[].sortText") && answer.has("result") && answer.get("result").isJsonArray()
                && answer.getAsJsonArray("result").isEmpty();
    }

    /** The protocol lets a server say of an ability that it has it, or with which options: a later one may say more. */
    private static boolean hasOptions(String path, Set<String> now) {
        return path.matches("\\.result\\.capabilities\\.\\w+Provider")
                && now.stream().anyMatch(each -> each.startsWith(path + "."));
    }

    /** Every path to a value within, with the kind of the value; the elements of a list count as one. */
    private static Set<String> shape(JsonObject message) {
        Set<String> paths = new TreeSet<>();
        walk("", message, paths);
        return paths;
    }

    private static void walk(String path, JsonElement value, Set<String> into) {
        switch (value) {
            case JsonObject object -> object.entrySet().forEach(entry -> {
                // Documents in a workspace edit are named by their address.
                String key = entry.getKey().startsWith("file:") ? "file" : entry.getKey();
                walk(path + "." + key, entry.getValue(), into);
            });
            case JsonArray array -> array.forEach(element -> walk(path + "[]", element, into));
            default -> into.add(path);
        }
    }
}
