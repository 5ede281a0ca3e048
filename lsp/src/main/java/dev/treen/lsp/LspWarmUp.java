package dev.treen.lsp;

import dev.treen.lsp.stdio.StdioServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A short session with a client made of strings, for {@link LspCommand#warmUp()}. */
final class LspWarmUp {
    private static final long PATIENCE_SECONDS = 10;
    private static final String HERE = "\"textDocument\":{\"uri\":\"file:///warm-up.treen\"}";
    private static final String AT = "\"position\":{\"line\":0,\"character\":12}";
    private static final String ALL = "\"range\":{\"start\":{\"line\":0,\"character\":0},\"end\":{\"line\":1,\"character\":0}}";

    private static final List<String> SESSION = List.of(
            request(1, "initialize", "\"processId\":null,\"rootUri\":null,\"capabilities\":{}"),
            notification("initialized", ""),
            notification("textDocument/didOpen", "\"textDocument\":{\"uri\":\"file:///warm-up.treen\","
                    + "\"languageId\":\"treen\",\"version\":1,\"text\":\"part lid { length 160; widht 80 }\\n\"}"),
            request(2, "textDocument/hover", HERE + "," + AT),
            request(3, "textDocument/completion", HERE + "," + AT),
            request(4, "textDocument/inlayHint", HERE + "," + ALL),
            request(5, "textDocument/documentSymbol", HERE),
            request(6, "textDocument/codeAction", HERE + "," + ALL + ",\"context\":{\"diagnostics\":[]}"));

    private LspWarmUp() {
    }

    static void run() throws IOException, InterruptedException {
        try (PipedOutputStream client = new PipedOutputStream(); Until answered = new Until("\"id\":6", "publish")) {
            StdioServer server = StdioServer.launch(new TreenServer(), new PipedInputStream(client, 1 << 16), answered);
            for (String each : SESSION) {
                send(client, each);
            }
            var _ = answered.seen.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            send(client, request(7, "shutdown", ""));
            send(client, notification("exit", ""));
            var _ = server.awaitExit();
        }
    }

    private static void send(OutputStream to, String message) throws IOException {
        byte[] body = message.getBytes(StandardCharsets.UTF_8);
        to.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        to.write(body);
        to.flush();
    }

    private static String request(int id, String method, String parameters) {
        return "{\"jsonrpc\":\"2.0\",\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":{" + parameters + "}}";
    }

    private static String notification(String method, String parameters) {
        return "{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":{" + parameters + "}}";
    }

    /** Takes what the server says and opens the latch once all the words have come. */
    private static final class Until extends OutputStream {
        private final ByteArrayOutputStream said = new ByteArrayOutputStream();
        private final List<String> words;
        final CountDownLatch seen = new CountDownLatch(1);

        Until(String... words) {
            this.words = List.of(words);
        }

        @Override
        public synchronized void write(int value) {
            said.write(value);
        }

        @Override
        public synchronized void write(byte[] bytes, int from, int count) {
            said.write(bytes, from, count);
            String all = said.toString(StandardCharsets.UTF_8);
            if (words.stream().allMatch(all::contains)) {
                seen.countDown();
            }
        }
    }
}
