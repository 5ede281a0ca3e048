package dev.treen.lsp.stdio;

import static dev.treen.lsp.stdio.TestClient.begun;
import static dev.treen.lsp.stdio.TestClient.command;
import static dev.treen.lsp.stdio.TestClient.framed;
import static dev.treen.lsp.stdio.TestClient.hover;
import static dev.treen.lsp.stdio.TestClient.notification;
import static dev.treen.lsp.stdio.TestClient.request;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The server over real pipes. The order of a session, the exit codes and the numbers of the errors are those of the
 * Language Server Protocol 3.17 and of JSON-RPC 2.0.
 */
@Timeout(60)
class StdioServerTest {

    private static final int PARSE_ERROR = -32700;
    private static final int INVALID_REQUEST = -32600;
    private static final int METHOD_NOT_FOUND = -32601;
    private static final int INVALID_PARAMS = -32602;
    private static final int INTERNAL_ERROR = -32603;
    private static final int NOT_INITIALIZED = -32002;

    // ---- the order of a session ----

    @Test
    void anOrderlySessionEndsWithZero() {
        try (TestClient client = begun()) {
            client.send("{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}");
            assertThat(client.answer()).hasToString("{\"jsonrpc\":\"2.0\",\"id\":2,\"result\":null}");
            client.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
            assertThat(client.server.awaitExit()).isZero();
            assertThat(client.service.heard).containsExactly("exit");
        }
    }

    @Test
    void exitWithoutShutdownEndsWithOne() {
        try (TestClient client = begun()) {
            client.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
            assertThat(client.server.awaitExit()).isEqualTo(1);
        }
    }

    @Test
    void exitIsHeardEvenBeforeInitialize() {
        try (TestClient client = new TestClient(Limits.DEFAULT, true)) {
            client.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
            assertThat(client.server.awaitExit()).isEqualTo(1);
        }
    }

    @Test
    void theEndOfTheStreamIsTheEndOfTheServer() {
        try (TestClient client = begun()) {
            client.closeStream();
            assertThat(client.server.awaitExit()).isEqualTo(1);
        }
    }

    @Test
    void theEndOfTheStreamAfterShutdownIsOrderly() {
        try (TestClient client = begun()) {
            client.send("{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}");
            client.answer();
            client.closeStream();
            assertThat(client.server.awaitExit()).isZero();
        }
    }

    @Test
    void theServerEndsWithTheClientsProcessThoughTheStreamStaysOpen() throws IOException {
        Process editor = new ProcessBuilder("sleep", "600").start();
        try (TestClient client = new TestClient(Limits.DEFAULT, true)) {
            client.initialize(Long.toString(editor.pid()));
            client.expectAlive();
            editor.destroyForcibly();
            assertThat(client.server.awaitExit()).isEqualTo(1);
        }
    }

    @Test
    void aClientWhoseProcessCannotBeSeenIsServedAllTheSame() {
        try (TestClient client = new TestClient(Limits.DEFAULT, true)) {
            client.initialize(Integer.toString(Integer.MAX_VALUE));
            client.expectAlive();
        }
    }

    @Test
    void nothingIsAnsweredBeforeInitialize() {
        try (TestClient client = new TestClient(Limits.DEFAULT, true)) {
            client.send(notification("textDocument/didSave", "{\"textDocument\":{\"uri\":\"file:///a.treen\"}}"));
            client.send(hover(5, 1));
            client.expectError("5", NOT_INITIALIZED);
            client.initialize("null");
            client.expectAlive();
            assertThat(client.service.heard).isEmpty();
        }
    }

    @Test
    void initializeComesOnce() {
        try (TestClient client = begun()) {
            client.send(request(6, "initialize", "{\"processId\":null,\"capabilities\":{}}"));
            client.expectError("6", INVALID_REQUEST);
            client.expectAlive();
        }
    }

    @Test
    void nothingIsAnsweredAfterShutdown() {
        try (TestClient client = begun()) {
            client.send("{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}");
            client.answer();
            client.send(hover(3, 1));
            client.expectError("3", INVALID_REQUEST);
            client.send(notification("textDocument/didSave", "{\"textDocument\":{\"uri\":\"file:///a.treen\"}}"));
            client.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
            assertThat(client.server.awaitExit()).isZero();
            assertThat(client.service.heard).containsExactly("exit");
        }
    }

    // ---- messages that cannot be read ----

    /** With the library's own reader none of the fifty is answered once 9,000 characters follow the wrong value. */
    @ParameterizedTest
    @ValueSource(ints = {10, 8_000, 9_000, 1_000_000})
    void aValueOfTheWrongKindCostsOneMessage(int after) {
        try (TestClient client = begun()) {
            client.send(notification("textDocument/didChange",
                    "{\"textDocument\":{\"uri\":\"file:///a.treen\",\"version\":\"seven\"},\"contentChanges\":[{\"text\":\""
                            + "x".repeat(after) + "\"}]}"));
            client.expectAlive();
            client.send(request(8, "textDocument/hover", "{\"position\":{\"line\":\"seven\"},\"more\":\""
                    + "x".repeat(after) + "\"}"));
            client.expectError("8", INVALID_PARAMS);
            client.expectAlive();
        }
    }

    /** With the library's own reader 5,000 levels end the session. */
    @ParameterizedTest
    @ValueSource(ints = {127, 128, 1_000, 5_000, 1_000_000})
    void aDeeplyNestedArgumentCostsOneMessage(int depth) {
        try (TestClient client = begun()) {
            int levels = depth - 3; // the message, its parameters and its arguments are levels too
            client.send(request(9, "workspace/executeCommand", "{\"command\":\"echo\",\"arguments\":["
                    + "[".repeat(levels) + "]".repeat(levels) + "]}"));
            if (depth <= Limits.DEFAULT.nesting()) {
                assertThat(client.answer().get("result").getAsString()).isEqualTo("echo");
            } else {
                client.expectError("9", PARSE_ERROR);
            }
            client.expectAlive();
        }
    }

    @Test
    void theNumberIsFoundWhereverItStands() {
        try (TestClient client = begun()) {
            String deep = "[".repeat(5_000) + "]".repeat(5_000);
            client.send("{\"params\":{\"arguments\":" + deep + "},\"method\":\"x\",\"id\":\"last\"}");
            client.expectError("\"last\"", PARSE_ERROR);
            client.expectAlive();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"no json at all", "[]", "null", "{", "}", "{\"id\":}", "{\"jsonrpc\":\"2.0\"}",
            "{\"jsonrpc\":\"2.0\",\"method\":7}", "{\"id\":null,\"method\":\"x\"}", "\u0000\u0001\u0002",
            "{\"method\":\"x\",\"params\":[1,2,3]}", "{\"method\":\"initialized\"} {\"method\":\"initialized\"}",
            "[{\"id\":1,\"method\":\"x\"}]", "{\"id\":{\"a\":1},\"method\":\"x\"}", "{\"a\":tru}",
            "{\"method\":\"\\ud83e\"}",
            "{\"jsonrpc\":\"2.0\",\"id\":\"of nobody\",\"result\":[]}", "{\"jsonrpc\":\"2.0\",\"id\":77,\"error\":{}}"})
    void rubbishWithNobodyWaitingIsPassedOverInSilence(String body) {
        try (TestClient client = begun()) {
            client.send(body);
            client.expectAlive();
        }
    }

    @Test
    void requestsThatCannotBeUnderstoodAreAnswered() {
        try (TestClient client = begun()) {
            client.send(request(11, "no/such/method", "{}"));
            client.expectError("11", METHOD_NOT_FOUND);
            client.send(request(12, "$/optional", "{}"));
            client.expectError("12", METHOD_NOT_FOUND);
            client.send(request(13, "textDocument/hover", "{\"textDocument\":{\"uri\":\"file:///a.treen\"}}"));
            client.expectError("13", INVALID_PARAMS);
            client.send(request(14, "textDocument/hover", "null"));
            client.expectError("14", INVALID_PARAMS);
            client.send(request("1.5", "textDocument/hover", "{}"));
            client.expectError("1.5", INVALID_REQUEST);
            client.send("{\"jsonrpc\":\"2.0\",\"id\":15,\"method\":\"textDocument/hover\",\"params\":{\"position\":}}");
            client.expectError("15", PARSE_ERROR);
            client.send("{\"jsonrpc\":\"2.0\",\"id\":16,\"method\":\"textDocument/hover\",\"params\":nonsense}");
            client.expectError("16", PARSE_ERROR);
            client.expectAlive();
        }
    }

    @Test
    void bytesThatAreNoUtf8BecomeReplacementCharacters() {
        try (TestClient client = begun()) {
            byte[] body = open("a?b").getBytes(StandardCharsets.ISO_8859_1);
            for (int i = 0; i < body.length; i++) {
                body[i] = body[i] == '?' ? (byte) 0xff : body[i];
            }
            client.sendRaw("Content-Length: " + body.length + "\r\n\r\n");
            client.sendRaw(body);
            client.expectAlive();
            assertThat(client.service.heard).containsExactly("a\uFFFDb");
        }
    }

    @Test
    void aMessageMayArriveByteByByte() {
        try (TestClient client = begun()) {
            String text = "½ in at 20° e\u0301 \uD83E\uDEB5 木";
            for (byte each : framed(open(text))) {
                client.sendRaw(new byte[]{each});
            }
            client.expectAlive();
            assertThat(client.service.heard).containsExactly(text);
        }
    }

    // ---- lengths and headers ----

    @Test
    void aMessageThatReallyIsTooLongIsRefusedAndPassedOver() {
        try (TestClient client = begun()) {
            long length = 100L << 20;
            String start = "{\"jsonrpc\":\"2.0\",\"id\":21,\"method\":\"workspace/executeCommand\",\"params\":{\"command\":\"";
            String end = "\"}}";
            client.sendRaw("Content-Length: " + length + "\r\n\r\n" + start);
            byte[] part = "x".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
            long left = length - start.length() - end.length();
            for (; left >= part.length; left -= part.length) {
                client.sendRaw(part);
            }
            client.sendRaw("x".repeat((int) left) + end);
            client.expectError("21", PARSE_ERROR);
            client.expectAlive();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"100000000", "2147483648", "99999999999999999999999999", "5000"})
    void aLengthThatClaimsTooMuchCostsOneMessage(String claimed) {
        try (TestClient client = begun()) {
            client.sendRaw("Content-Length: " + claimed + "\r\n\r\n" + hover(22, 1));
            client.send(hover(23, 1));
            client.expectError("22", PARSE_ERROR);
            assertThat(client.answer().get("id").getAsInt()).isEqualTo(23);
            client.expectAlive();
        }
    }

    @Test
    void aLengthThatClaimsTooLittleCostsOneMessage() {
        try (TestClient client = begun()) {
            client.sendRaw("Content-Length: 60\r\n\r\n" + hover(24, 1));
            client.expectError("24", PARSE_ERROR);
            client.expectAlive();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"rubbish\r\n", "rubbish", "rubbish\r\n\r\n\r\n", "\u0000\uffff\r",
            "Content-Length: -5\r\n\r\n",
            "Content-Length: many\r\n\r\n", "Content-Length:\r\n\r\n", "Content-Length: 0\r\n\r\n", ": :\r\n\r\n",
            "Content-Type: text/plain\r\n\r\n", "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"x\"}", "\n\n\n", "\r\r\r",
            "HTTP/1.1 200 OK\r\nServer: none\r\n\r\n<html>"})
    void rubbishBeforeAHeaderIsPassedOver(String rubbish) {
        try (TestClient client = begun()) {
            client.sendRaw(rubbish);
            client.expectAlive();
        }
    }

    @Test
    void megabytesOfRubbishArePassedOver() {
        try (TestClient client = begun()) {
            client.sendRaw("r".repeat(5_000_000));
            client.expectAlive();
            client.sendRaw("r\n".repeat(1_000_000));
            client.expectAlive();
            client.sendRaw("{[\"".repeat(1_000_000) + "\n");
            client.expectAlive();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"content-length: %d\r\n\r\n", "Content-Length:%d\n\n", "Content-Length:   %d  \r\n\r\n",
            "Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: %d\r\n\r\n",
            "Content-Length: %d\r\nContent-Type: application/vscode-jsonrpc; charset=utf8\r\n\r\n",
            "Content-Length: 3\r\nContent-Length: %d\r\n\r\n"})
    void headersMayBeWrittenInManyWays(String header) {
        try (TestClient client = begun()) {
            String body = hover(25, 3);
            client.sendRaw(header.formatted(body.length()) + body);
            assertThat(client.answer().toString()).contains("line 3");
            client.expectAlive();
        }
    }

    // ---- handlers that fail ----

    @ParameterizedTest
    @ValueSource(strings = {"overflow", "throw", "throw later", "overflow later", "null"})
    void aHandlerThatFailsCostsOneRequest(String how) {
        try (TestClient client = begun()) {
            client.send(command(31, how));
            client.expectError("31", INTERNAL_ERROR);
            client.expectAlive();
            assertThat(client.log).as("noted once").hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"overflow", "throw"})
    void aNotificationThatFailsCostsNothingElse(String how) {
        try (TestClient client = begun()) {
            client.send(notification("textDocument/didChange",
                    "{\"textDocument\":{\"uri\":\"file:///a.treen\",\"version\":7},\"contentChanges\":[{\"text\":\""
                            + how
                            + "\"}]}"));
            client.expectAlive();
            assertThat(client.log).as("noted once").hasSize(1);
        }
    }

    // ---- the way back ----

    @Test
    void aClientThatReadsLateStillGetsEverything() {
        try (TestClient client = new TestClient(Limits.DEFAULT, false)) {
            client.send(request(1, "initialize", "{\"processId\":null,\"capabilities\":{}}"));
            // Far more than both pipes hold: a server that waits to be read would no longer read.
            for (int id = 100; id < 600; id++) {
                client.send(command(id, "much"));
                client.send(notification("workspace/didChangeConfiguration",
                        "{\"settings\":\"" + "x".repeat(2_000) + "\"}"));
            }
            client.read();
            client.answer();
            for (int id = 100; id < 600; id++) {
                assertThat(client.answer().get("id").getAsInt()).isEqualTo(id);
            }
            client.expectAlive();
        }
    }

    @Test
    void aClientThatNeverReadsEndsTheServer() {
        try (TestClient client = new TestClient(new Limits(1 << 20, 128, 1 << 20), false)) {
            client.send(request(1, "initialize", "{\"processId\":null,\"capabilities\":{}}"));
            for (int id = 100; id < 130; id++) {
                client.send(command(id, "much"));
            }
            assertThat(client.server.awaitExit()).isEqualTo(1);
        }
    }

    @Test
    void whatIsPrintedNeverReachesTheClient() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(ProcessHandle.current().info().command().orElseThrow(), "-cp",
                System.getProperty("java.class.path"), "-XX:TieredStopAtLevel=1", PrintingServer.class.getName())
                .start();
        try (OutputStream in = process.getOutputStream()) {
            in.write(framed(request(1, "initialize", "{\"processId\":null,\"capabilities\":{}}")));
            in.write(framed(command(2, "print")));
            in.write(framed("{\"jsonrpc\":\"2.0\",\"id\":3,\"method\":\"shutdown\"}"));
            in.write(framed("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}"));
        }
        byte[] out = process.getInputStream().readAllBytes();
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(err).isZero();
        assertThat(err).contains("before the session", "a stray line");

        DataInputStream frames = new DataInputStream(new ByteArrayInputStream(out));
        assertThat(TestClient.readFrame(frames).get("id").getAsInt()).isEqualTo(1);
        assertThat(TestClient.readFrame(frames).get("method").getAsString()).isEqualTo("window/logMessage");
        JsonObject printed = TestClient.readFrame(frames);
        assertThat(printed.get("result").getAsString()).isEqualTo("printed");
        assertThat(TestClient.readFrame(frames).get("id").getAsInt()).isEqualTo(3);
        assertThat(frames.available()).as("nothing else").isZero();
    }

    /** What the test above starts. */
    static final class PrintingServer {

        public static void main(String[] arguments) {
            LanguageServer server = new TestServer();
            Thread.ofPlatform().daemon().start(() -> {
                while (System.in instanceof java.io.BufferedInputStream) {
                    Thread.onSpinWait();
                }
                System.out.println("before the session");
            });
            System.exit(StdioServer.serveStandardStreams(server));
        }
    }

    private static String open(String text) {
        return notification("textDocument/didOpen",
                "{\"textDocument\":{\"uri\":\"file:///a.treen\",\"languageId\":\"treen\",\"version\":1,\"text\":\""
                        + text
                        + "\"}}");
    }
}
