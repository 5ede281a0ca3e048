package dev.treen.lsp.stdio;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.lsp4j.jsonrpc.JsonRpcException;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;

/**
 * Sends messages in the order in which they are given, each whole. They are written by a thread of their own: were the
 * reading thread to wait for a client that itself waits to be read, both would wait for ever.
 */
final class OutgoingMessages implements MessageConsumer {

    /** No message is empty, so this one ends the writing. */
    private static final byte[] LAST = new byte[0];

    private final OutputStream out;
    private final MessageJsonHandler json;
    private final Limits limits;
    private final Runnable clientIsGone;
    private final LinkedBlockingQueue<byte[]> unsent = new LinkedBlockingQueue<>();
    private final AtomicLong unsentBytes = new AtomicLong();
    private final AtomicBoolean broken = new AtomicBoolean();
    private final Thread writer;

    /**
     * Starts the writing thread.
     *
     * @param clientIsGone called when the client can no longer be written to
     */
    OutgoingMessages(OutputStream out, MessageJsonHandler json, Limits limits, Runnable clientIsGone) {
        this.out = out;
        this.json = json;
        this.limits = limits;
        this.clientIsGone = clientIsGone;
        this.writer = Thread.ofPlatform().name("treen-lsp-writer").daemon().unstarted(this::write);
    }

    void start() {
        writer.start();
    }

    @Override
    public void consume(Message message) {
        byte[] body = json.serialize(message).getBytes(StandardCharsets.UTF_8);
        byte[] header = ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = new byte[header.length + body.length];
        System.arraycopy(header, 0, whole, 0, header.length);
        System.arraycopy(body, 0, whole, header.length, body.length);
        if (broken.get()) {
            throw new JsonRpcException(new IOException("the client no longer reads"));
        }
        if (unsentBytes.addAndGet(whole.length) > limits.unsent()) {
            giveUp();
        }
        unsent.add(whole);
    }

    /** The session is over: the writing ends behind what has been given so far. */
    void end() {
        unsent.add(LAST);
    }

    /** Waits until everything given so far is on its way, but no longer than a client can be expected to need. */
    void finish(Duration atMost) {
        unsent.add(LAST);
        try {
            writer.join(atMost);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void write() {
        try {
            for (byte[] message = unsent.take(); message.length > 0; message = unsent.take()) {
                out.write(message);
                out.flush();
                unsentBytes.addAndGet(-message.length);
            }
        } catch (IOException closed) {
            giveUp();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void giveUp() {
        broken.set(true);
        clientIsGone.run();
    }
}
