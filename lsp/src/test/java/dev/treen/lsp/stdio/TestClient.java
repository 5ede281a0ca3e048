package dev.treen.lsp.stdio;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** The other end of the pipes, writing bytes as it likes; it reads by rules of its own, strictly. */
final class TestClient implements AutoCloseable {

    final TestServer service = new TestServer();
    final List<String> log = new CopyOnWriteArrayList<>();
    final StdioServer server;
    private final OutputStream toServer;
    private final InputStream fromServer;
    private final BlockingQueue<JsonObject> received = new LinkedBlockingQueue<>();
    private int nextId = 1000;

    TestClient(Limits limits, boolean reads) {
        try {
            Pipe there = Pipe.open();
            Pipe back = Pipe.open();
            toServer = Channels.newOutputStream(there.sink());
            fromServer = Channels.newInputStream(back.source());
            server = StdioServer.launch(service, Channels.newInputStream(there.source()),
                    Channels.newOutputStream(back.sink()), limits, (what, cause) -> log.add(what));
        } catch (IOException noPipes) {
            throw new UncheckedIOException(noPipes);
        }
        if (reads) {
            read();
        }
    }

    /** A session that has begun. */
    static TestClient begun() {
        TestClient client = new TestClient(Limits.DEFAULT, true);
        client.initialize("null");
        return client;
    }

    void initialize(String processId) {
        send(request(1, "initialize", "{\"processId\":" + processId + ",\"capabilities\":{}}"));
        assertThat(answer().has("result")).isTrue();
        send(notification("initialized", "{}"));
    }

    /** Starts to read what the server sends. */
    void read() {
        Thread.ofPlatform().daemon().start(() -> {
            try (DataInputStream in = new DataInputStream(fromServer)) {
                while (true) {
                    received.add(readFrame(in));
                }
            } catch (IOException closed) {
                // The session is over.
            }
        });
    }

    static JsonObject readFrame(DataInputStream in) throws IOException {
        StringBuilder header = new StringBuilder();
        while (!header.toString().endsWith("\r\n\r\n")) {
            header.append((char) in.readUnsignedByte());
        }
        assertThat(header.toString()).matches("Content-Length: \\d+\r\n\r\n");
        byte[] body = new byte[Integer.parseInt(header.toString().replaceAll("\\D", ""))];
        in.readFully(body);
        return JsonParser.parseString(new String(body, StandardCharsets.UTF_8)).getAsJsonObject();
    }

    static String request(Object id, String method, String params) {
        return "{\"jsonrpc\":\"2.0\",\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + params + "}";
    }

    static String notification(String method, String params) {
        return "{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":" + params + "}";
    }

    static String hover(Object id, int line) {
        return request(id, "textDocument/hover",
                "{\"textDocument\":{\"uri\":\"file:///caddy.treen\"},\"position\":{\"line\":" + line
                        + ",\"character\":0}}");
    }

    static String command(Object id, String command) {
        return request(id, "workspace/executeCommand", "{\"command\":\"" + command + "\",\"arguments\":[]}");
    }

    static byte[] framed(String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        byte[] header = ("Content-Length: " + bytes.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = java.util.Arrays.copyOf(header, header.length + bytes.length);
        System.arraycopy(bytes, 0, whole, header.length, bytes.length);
        return whole;
    }

    void send(String body) {
        sendRaw(framed(body));
    }

    void sendRaw(byte[] bytes) {
        try {
            toServer.write(bytes);
            toServer.flush();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    void sendRaw(String ascii) {
        sendRaw(ascii.getBytes(StandardCharsets.UTF_8));
    }

    void closeStream() {
        try {
            toServer.close();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    /** The next message from the server. */
    JsonObject answer() {
        try {
            JsonObject next = received.poll(20, TimeUnit.SECONDS);
            assertThat(next).as("an answer; log: %s", log).isNotNull();
            return next;
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    /** The next message, which has to be an error for a request. */
    void expectError(String id, int code) {
        JsonObject answer = answer();
        assertThat(answer.get("id")).as("%s", answer).hasToString(id);
        assertThat(answer.getAsJsonObject("error").get("code").getAsInt()).as("%s", answer).isEqualTo(code);
        assertThat(answer.getAsJsonObject("error").toString()).doesNotContain("\\tat ").doesNotContain(".java:");
    }

    /** Fifty questions in a row, each answered, in order, with nothing in between. */
    void expectAlive() {
        int first = nextId;
        nextId += 50;
        for (int id = first; id < first + 50; id++) {
            send(hover(id, id));
        }
        for (int id = first; id < first + 50; id++) {
            JsonObject answer = answer();
            assertThat(answer.get("id").getAsInt()).as("%s", answer).isEqualTo(id);
            assertThat(answer.toString()).contains("line " + id);
        }
    }

    @Override
    public void close() {
        closeStream();
        server.awaitExit();
    }
}
