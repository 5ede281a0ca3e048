package dev.treen.lsp.stdio;

import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;

/**
 * Holds a session to the protocol's order: initialize first and once, nothing after shutdown but exit. Knows when the
 * session is over, and with which exit code.
 */
final class Lifecycle implements MessageConsumer {

    private enum Phase {
        NEW, RUNNING, SHUT_DOWN
    }

    private final MessageConsumer server;
    private final MessageConsumer answers;
    private final CompletableFuture<Integer> exitCode;
    /** Read and written by the reading thread only, but for the exit code after the client has died. */
    private volatile Phase phase = Phase.NEW;

    /**
     * Begins a session.
     *
     * @param server where messages go that come in order
     * @param answers where the others are answered
     * @param exitCode completed when the session is over
     */
    Lifecycle(MessageConsumer server, MessageConsumer answers, CompletableFuture<Integer> exitCode) {
        this.server = server;
        this.answers = answers;
        this.exitCode = exitCode;
    }

    @Override
    public void consume(Message message) {
        switch (message) {
            case RequestMessage request -> request(request);
            case NotificationMessage notification -> notification(notification);
            default -> server.consume(message);
        }
    }

    /** The client is gone, whether it said so or not. */
    void clientEnded() {
        exitCode.complete(phase == Phase.SHUT_DOWN ? 0 : 1);
    }

    private void request(RequestMessage request) {
        boolean initialize = request.getMethod().equals("initialize");
        switch (phase) {
            case NEW -> {
                if (!initialize) {
                    refuse(request, ResponseErrorCode.ServerNotInitialized, "initialize has to come first");
                    return;
                }
                phase = Phase.RUNNING;
                watchClient(request);
            }
            case RUNNING -> {
                if (initialize) {
                    refuse(request, ResponseErrorCode.InvalidRequest, "the session has begun already");
                    return;
                }
                if (request.getMethod().equals("shutdown")) {
                    phase = Phase.SHUT_DOWN;
                }
            }
            case SHUT_DOWN -> {
                refuse(request, ResponseErrorCode.InvalidRequest, "the server has been shut down");
                return;
            }
        }
        server.consume(request);
    }

    private void notification(NotificationMessage notification) {
        if (notification.getMethod().equals("exit")) {
            try {
                server.consume(notification);
            } finally {
                clientEnded();
            }
        } else if (phase == Phase.RUNNING) {
            server.consume(notification);
        }
    }

    /**
     * The stream ends with the client, unless a process that the client started has inherited it: so the process is
     * watched as well. One that cannot be seen although it has just written to us lives behind a wall, in a container
     * say, and is left to the stream.
     */
    private void watchClient(RequestMessage initialize) {
        if (initialize.getParams() instanceof InitializeParams params && params.getProcessId() != null) {
            ProcessHandle.of(params.getProcessId()).ifPresent(client -> {
                CompletableFuture<Void> _ = client.onExit().thenRun(this::clientEnded);
            });
        }
    }

    private void refuse(RequestMessage request, ResponseErrorCode code, String words) {
        ResponseMessage answer = new ResponseMessage();
        answer.setRawId(request.getRawId());
        answer.setError(new ResponseError(code, words, null));
        answers.consume(answer);
    }
}
