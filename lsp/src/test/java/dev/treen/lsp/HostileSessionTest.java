package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Clients that mean no good, or are broken, against the whole server. The numbers of the errors are those of the
 * Language Server Protocol 3.17 and of JSON-RPC 2.0.
 */
@Timeout(180)
class HostileSessionTest {
    private static final String URI = "file:///nowhere/hostile.treen";
    private static final String TEXT = "let a = 1\\nlet é = \\\"𝄞\\\"\\npart b { length 3 }\\n";

    private static RawClient begun() {
        RawClient client = new RawClient();
        client.send(request(1, "initialize", "{\"processId\":null,\"rootUri\":null,\"capabilities\":{}}"));
        assertThat(client.answerTo("1").has("result")).isTrue();
        client.send(notification("initialized", "{}"));
        return client;
    }

    private static RawClient opened() {
        RawClient client = begun();
        client.send(notification("textDocument/didOpen", "{\"textDocument\":{\"uri\":\"" + URI
                + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"" + TEXT + "\"}}"));
        client.next("textDocument/publishDiagnostics");
        return client;
    }

    private static String request(int id, String method, String params) {
        return "{\"jsonrpc\":\"2.0\",\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + params + "}";
    }

    private static String notification(String method, String params) {
        return "{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":" + params + "}";
    }

    private static String symbols(int id) {
        return request(id, "textDocument/documentSymbol", "{\"textDocument\":{\"uri\":\"" + URI + "\"}}");
    }

    private static String change(String range, String version) {
        return notification("textDocument/didChange", "{\"textDocument\":{\"uri\":\"" + URI + "\",\"version\":"
                + version + "},\"contentChanges\":[{\"range\":" + range + ",\"text\":\"x\"}]}");
    }

    private static void expectAlive(RawClient client) {
        client.send(symbols(900));
        assertThat(client.answerTo("900").has("result")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"textDocument/hover", "textDocument/completion", "textDocument/documentSymbol", "shutdown"})
    void nothingIsDoneBeforeInitialize(String method) {
        try (RawClient client = new RawClient()) {
            client.send(request(7, method, "{\"textDocument\":{\"uri\":\"" + URI
                    + "\"},\"position\":{\"line\":0,\"character\":0}}"));
            assertThat(error(client.answerTo("7"))).isEqualTo(-32002);
        }
    }

    @Test
    void nothingIsDoneAfterShutdown() {
        try (RawClient client = opened()) {
            client.send("{\"jsonrpc\":\"2.0\",\"id\":8,\"method\":\"shutdown\"}");
            client.answerTo("8");
            client.send(symbols(9));
            assertThat(error(client.answerTo("9"))).isEqualTo(-32600);
        }
    }

    /** Asked before, answered still; and shutdown itself is answered with null, as the protocol has it. */
    @Test
    void whatIsUnderWayAtShutdownIsStillAnswered() {
        try (RawClient client = opened()) {
            for (int id = 20; id < 40; id++) {
                client.send(symbols(id));
            }
            client.send("{\"jsonrpc\":\"2.0\",\"id\":40,\"method\":\"shutdown\"}");
            client.send(symbols(41));
            Map<String, JsonObject> answers = client.answersTo(22);
            for (int id = 20; id < 40; id++) {
                assertThat(answers.get(String.valueOf(id)).has("result")).as("answer to %s", id).isTrue();
            }
            assertThat(answers.get("40").has("result")).isTrue();
            assertThat(answers.get("40").get("result").isJsonNull()).isTrue();
            assertThat(error(answers.get("41"))).isEqualTo(-32600);
        }
    }

    @Test
    void aChangeWithoutAVersionIsTaken() {
        try (RawClient client = opened()) {
            client.send(notification("textDocument/didChange", "{\"textDocument\":{\"uri\":\"" + URI
                    + "\"},\"contentChanges\":[{\"text\":\"let later = 1\\n\"}]}"));
            client.send(symbols(15));
            assertThat(client.answerTo("15").toString()).contains("\"later\"").doesNotContain("\"é\"");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"file:///nowhere/unknown.treen", "untitled:Untitled-1", "not an address", "file://%zz", "",
            "https://example.org/a.treen"})
    void unknownFilesAreAnsweredAndForgotten(String uri) {
        try (RawClient client = opened()) {
            String at = "{\"textDocument\":{\"uri\":\"" + uri + "\"},\"position\":{\"line\":3,\"character\":3}}";
            client.send(request(10, "textDocument/hover", at));
            client.send(request(11, "textDocument/completion", at));
            client.send(request(12, "textDocument/documentSymbol", at));
            client.answerTo("10");
            client.answerTo("11");
            client.answerTo("12");
            client.send(notification("textDocument/didClose", "{\"textDocument\":{\"uri\":\"" + uri + "\"}}"));
            expectAlive(client);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"start\":{\"line\":-1,\"character\":0},\"end\":{\"line\":0,\"character\":0}}",
            "{\"start\":{\"line\":2,\"character\":0},\"end\":{\"line\":0,\"character\":0}}",
            "{\"start\":{\"line\":9,\"character\":9},\"end\":{\"line\":2147483647,\"character\":2147483647}}",
            "{\"start\":{\"line\":1,\"character\":10},\"end\":{\"line\":1,\"character\":10}}"})
    void wrongRangesSpoilNothing(String range) {
        try (RawClient client = opened()) {
            client.send(change(range, "2"));
            client.send(request(13, "textDocument/hover", "{\"textDocument\":{\"uri\":\"" + URI
                    + "\"},\"position\":{\"line\":2147483647,\"character\":-5}}"));
            client.answerTo("13");
            expectAlive(client);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "0", "-7", "null", "2147483647"})
    void staleVersionsSpoilNothing(String version) {
        try (RawClient client = opened()) {
            client.send(change("{\"start\":{\"line\":0,\"character\":0},\"end\":{\"line\":0,\"character\":0}}",
                    version));
            expectAlive(client);
        }
    }

    @Test
    void charactersMayComeInPieces() {
        try (RawClient client = begun()) {
            String open = notification("textDocument/didOpen", "{\"textDocument\":{\"uri\":\"" + URI
                    + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"" + TEXT + "\"}}");
            byte[] body = open.getBytes(StandardCharsets.UTF_8);
            client.sendRaw(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            for (byte one : body) {
                client.sendRaw(new byte[]{one});
            }
            client.next("textDocument/publishDiagnostics");
            client.send(symbols(14));
            assertThat(client.answerTo("14").toString()).contains("\"é\"");
        }
    }

    /** As one message that says its length, and as bytes that belong to none. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aHundredMegabytesOfRubbishCostOnlyThemselves(boolean framed) {
        int piece = 1 << 20;
        int pieces = 100;
        try (RawClient client = opened()) {
            if (framed) {
                client.sendRaw(("Content-Length: " + (long) piece * pieces + "\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
            }
            byte[] rubbish = new byte[piece];
            Arrays.fill(rubbish, (byte) '~');
            for (int i = 0; i < pieces; i++) {
                client.sendRaw(rubbish);
            }
            if (!framed) {
                client.sendRaw("\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            }
            expectAlive(client);
        }
    }

    @Test
    void aChangeBeforeTheFileIsOpenAndOneThatIsOpenedTwiceSpoilNothing() {
        try (RawClient client = begun()) {
            client.send(change("{\"start\":{\"line\":0,\"character\":0},\"end\":{\"line\":0,\"character\":0}}", "2"));
            for (String text : new String[]{"let first = 1", "let second = 2"}) {
                client.send(notification("textDocument/didOpen", "{\"textDocument\":{\"uri\":\"" + URI
                        + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"" + text + "\"}}"));
            }
            client.send(symbols(50));
            assertThat(client.answerTo("50").toString()).contains("second").doesNotContain("first");
        }
    }

    @Test
    void aSecondGreetingIsRefused() {
        try (RawClient client = opened()) {
            client.send(request(51, "initialize", "{\"processId\":null,\"rootUri\":null,\"capabilities\":{}}"));
            assertThat(error(client.answerTo("51"))).isEqualTo(-32600);
            expectAlive(client);
        }
    }

    @Test
    void whatIsNotKnownIsCancelledAndAnsweredWithoutHarm() {
        try (RawClient client = opened()) {
            client.send(notification("$/cancelRequest", "{\"id\":99999}"));
            client.send(notification("$/cancelRequest", "{\"id\":\"none\"}"));
            client.send(notification("notebookDocument/didOpen", "{\"notebookDocument\":{\"uri\":\"x\"}}"));
            client.send(request(52, "notebookDocument/unknown", "{}"));
            assertThat(error(client.answerTo("52"))).isEqualTo(-32601);
            expectAlive(client);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"textDocument/hover", "textDocument/rename", "textDocument/codeAction", "workspace/symbol",
            "workspace/executeCommand"})
    void requestsWithoutParametersAreRefused(String method) {
        try (RawClient client = opened()) {
            client.send(request(53, method, "null"));
            assertThat(error(client.answerTo("53"))).isEqualTo(-32602);
            expectAlive(client);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"line\":4294967296,\"character\":0}", "{\"line\":0,\"character\":1e99}",
            "{\"line\":\"a\",\"character\":[]}"})
    void positionsThatAreNoneAreRefused(String position) {
        try (RawClient client = opened()) {
            client.send(request(54, "textDocument/hover",
                    "{\"textDocument\":{\"uri\":\"" + URI + "\"},\"position\":" + position + "}"));
            assertThat(error(client.answerTo("54"))).isEqualTo(-32602);
            expectAlive(client);
        }
    }

    /** A byte order mark, line ends of three kinds, and halves of a character, as escapes and as bytes. */
    @ParameterizedTest
    @ValueSource(strings = {"\\ufefflet bom = 1\\r\\nlet cr = 2\\rlet lf = 3\\n", "let \\ud834 = 1\\n\\udd1e",
            "let \u00ff = 1"})
    void oddTextsAreTakenAsTheyAre(String text) {
        try (RawClient client = begun()) {
            byte[] body = notification("textDocument/didOpen", "{\"textDocument\":{\"uri\":\"" + URI
                    + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"" + text + "\"}}")
                    .getBytes(StandardCharsets.ISO_8859_1);
            client.sendRaw(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            client.sendRaw(body);
            client.next("textDocument/publishDiagnostics");
            client.send(request(55, "textDocument/semanticTokens/full",
                    "{\"textDocument\":{\"uri\":\"" + URI + "\"}}"));
            assertThat(client.answerTo("55").has("result")).isTrue();
            expectAlive(client);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Content-Length: -5\r\n\r\n", "Content-Length: x\r\n\r\n",
            "Content-Length: 99999999999999999999\r\n\r\n", "Content-Length: 7\r\nContent-Length: 2\r\n\r\n{}",
            "Content-Length: 2\r\n\r\n[]", "Content-Length: 4\r\n\r\nnull",
            "Content-Length: 7\r\n\r\n{\"a\":1}{\"b\":2}"})
    void lengthsThatLieCostNoMessageAfterThem(String bytes) {
        try (RawClient client = opened()) {
            client.sendRaw(bytes.getBytes(StandardCharsets.US_ASCII));
            expectAlive(client);
        }
    }

    @Test
    void aFileThatUsesItselfAndAFolderOfLinksThatGoesAway(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("self.treen"), "use \"self\"\nlet a = 1\n");
        Files.createSymbolicLink(folder.resolve("loop"), folder);
        Files.createSymbolicLink(folder.resolve("alias.treen"), file);
        Files.createSymbolicLink(folder.resolve("broken.treen"), folder.resolve("gone.treen"));
        try (RawClient client = new RawClient()) {
            client.send(request(1, "initialize", "{\"processId\":null,\"rootUri\":null,\"capabilities\":{},"
                    + "\"workspaceFolders\":[{\"uri\":\"" + folder.toUri() + "\",\"name\":\"links\"}]}"));
            client.answerTo("1");
            client.send(notification("initialized", "{}"));
            client.send(notification("textDocument/didOpen", "{\"textDocument\":{\"uri\":\"" + file.toUri()
                    + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"use \\\"self\\\"\\nlet a = 1\\n\"}}"));
            client.send(request(60, "workspace/symbol", "{\"query\":\"a\"}"));
            assertThat(client.answerTo("60").toString()).contains("self.treen");
            for (String name : new String[]{"loop", "alias.treen", "broken.treen", "self.treen"}) {
                Files.delete(folder.resolve(name));
            }
            Files.delete(folder);
            client.send(request(61, "workspace/diagnostic", "{\"previousResultIds\":[]}"));
            assertThat(client.answerTo("61").has("result")).isTrue();
            client.send(request(62, "workspace/executeCommand",
                    "{\"command\":\"treen.build\",\"arguments\":[\"" + file.toUri() + "\"]}"));
            client.answerTo("62");
            assertThat(folder).as("what is gone is not made again").doesNotExist();
            Files.createDirectory(folder);
            expectAlive(client);
        }
    }

    private static int error(JsonObject answer) {
        assertThat(answer.has("error")).as("%s", answer).isTrue();
        return answer.getAsJsonObject("error").get("code").getAsInt();
    }
}
