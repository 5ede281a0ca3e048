package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.treen.lsp.stdio.StdioServer;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A client that sends bytes as it likes to the real server, over real pipes. */
final class RawClient implements AutoCloseable {
    final StdioServer server;
    private final OutputStream toServer;
    private final BlockingQueue<JsonObject> received = new LinkedBlockingQueue<>();

    RawClient() {
        try {
            Pipe there = Pipe.open();
            Pipe back = Pipe.open();
            toServer = Channels.newOutputStream(there.sink());
            server = StdioServer.launch(new TreenServer(), Channels.newInputStream(there.source()),
                    Channels.newOutputStream(back.sink()));
            DataInputStream in = new DataInputStream(Channels.newInputStream(back.source()));
            Thread.ofPlatform().daemon().start(() -> read(in));
        } catch (IOException noPipes) {
            throw new UncheckedIOException(noPipes);
        }
    }

    private void read(DataInputStream in) {
        try (in) {
            while (true) {
                StringBuilder header = new StringBuilder();
                while (!header.toString().endsWith("\r\n\r\n")) {
                    header.append((char) in.readUnsignedByte());
                }
                byte[] body = new byte[Integer.parseInt(header.toString().replaceAll("\\D", ""))];
                in.readFully(body);
                received.add(JsonParser.parseString(new String(body, StandardCharsets.UTF_8)).getAsJsonObject());
            }
        } catch (IOException closed) {
            // The session is over.
        }
    }

    void send(String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        sendRaw(("Content-Length: " + bytes.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        sendRaw(bytes);
    }

    void sendRaw(byte[] bytes) {
        try {
            toServer.write(bytes);
            toServer.flush();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    /** The answer to a request; what the server asks meanwhile is answered with nothing. */
    JsonObject answerTo(String id) {
        while (true) {
            JsonObject next = next();
            if (next.has("method")) {
                if (next.has("id")) {
                    send("{\"jsonrpc\":\"2.0\",\"id\":" + next.get("id") + ",\"result\":null}");
                }
            } else if (next.get("id").toString().equals(id)) {
                return next;
            }
        }
    }

    /** The next answers, by the number of their request, in whatever order they come. */
    Map<String, JsonObject> answersTo(int requests) {
        Map<String, JsonObject> answers = new HashMap<>();
        while (answers.size() < requests) {
            JsonObject next = next();
            if (!next.has("method")) {
                answers.put(next.get("id").toString(), next);
            }
        }
        return answers;
    }

    /** The next message of a kind. */
    JsonObject next(String method) {
        while (true) {
            JsonObject next = next();
            if (next.has("method") && next.get("method").getAsString().equals(method)) {
                return next;
            }
        }
    }

    private JsonObject next() {
        try {
            JsonObject next = received.poll(60, TimeUnit.SECONDS);
            assertThat(next).as("a message from the server").isNotNull();
            return next;
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    @Override
    public void close() {
        try {
            toServer.close();
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
        server.awaitExit();
    }
}
