package dev.treen.lsp.stdio;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.MessageIssueException;
import org.eclipse.lsp4j.jsonrpc.RemoteEndpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.services.ServiceEndpoints;
import org.eclipse.lsp4j.jsonrpc.validation.ReflectiveMessageValidator;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * A language server at the end of a pair of streams. Whatever comes through them, it goes on with the next message;
 * and it ends with its client, whichever way that ends.
 */
public final class StdioServer {

    /** The library warns about every cancel that comes too late, which is no fault; kept here so that it stays set. */
    private static final Logger LIBRARY = Logger.getLogger("org.eclipse.lsp4j");
    /** Room for deep recursion in what a handler does at once; it is taken from memory only as it is used. */
    private static final long READER_STACK = 16L << 20;
    private static final Duration LAST_WORDS = Duration.ofSeconds(2);

    private final CompletableFuture<Integer> exitCode;
    private final OutgoingMessages outgoing;
    private final LanguageClient client;

    private StdioServer(CompletableFuture<Integer> exitCode, OutgoingMessages outgoing, LanguageClient client) {
        this.exitCode = exitCode;
        this.outgoing = outgoing;
        this.client = client;
    }

    /**
     * Serves the process's own standard streams until the session is over, and gives the exit code. From here on the
     * streams belong to the protocol: what anything else prints goes to standard error.
     */
    public static int serveStandardStreams(LanguageServer server) {
        InputStream in = new FileInputStream(FileDescriptor.in);
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        System.setOut(System.err);
        System.setIn(InputStream.nullInputStream());
        return launch(server, in, out).awaitExit();
    }

    /** Serves a pair of streams with the usual limits; returns at once. */
    public static StdioServer launch(LanguageServer server, InputStream in, OutputStream out) {
        return launch(server, in, out, Limits.DEFAULT, ServerLog.standardError());
    }

    /**
     * Serves a pair of streams; returns at once. A server that is {@link LanguageClientAware} is given its client
     * before the first message.
     */
    public static StdioServer launch(LanguageServer server, InputStream in, OutputStream out, Limits limits,
            ServerLog log) {
        LIBRARY.setLevel(Level.SEVERE);
        MessageJsonHandler json = new MessageJsonHandler(methods(server));
        CompletableFuture<Integer> exitCode = new CompletableFuture<>();
        OutgoingMessages outgoing = new OutgoingMessages(out, json, limits, () -> exitCode.complete(1));
        RemoteEndpoint endpoint = new RemoteEndpoint(outgoing,
                new GuardedEndpoint(ServiceEndpoints.toEndpoint(server), log), fault -> error(fault, log));
        endpoint.setJsonHandler(json);
        json.setMethodProvider(endpoint);
        LanguageClient client = ServiceEndpoints.toServiceObject(endpoint, LanguageClient.class);
        if (server instanceof LanguageClientAware aware) {
            aware.connect(client);
        }
        outgoing.start();
        Lifecycle lifecycle = new Lifecycle(checked(endpoint), outgoing, exitCode);
        FramedMessages incoming = new FramedMessages(new FrameReader(in, limits), json, outgoing, log);
        Thread reader = new Thread(null, () -> {
            try {
                incoming.listen(lifecycle);
            } finally {
                lifecycle.clientEnded();
            }
        }, "treen-lsp-reader", READER_STACK);
        reader.setDaemon(true);
        reader.start();
        // Nobody may wait for the end of this session; its writing must not wait on for ever with the stream in its
        // hands.
        var _ = exitCode.thenRunAsync(outgoing::end,
                CompletableFuture.delayedExecutor(LAST_WORDS.toMillis(), TimeUnit.MILLISECONDS));
        return new StdioServer(exitCode, outgoing, client);
    }

    /** The client, as an object to call. */
    public LanguageClient client() {
        return client;
    }

    /** Waits for the end of the session: 0 after an orderly shutdown, 1 after any other end. */
    public int awaitExit() {
        int code = exitCode.join();
        outgoing.finish(LAST_WORDS);
        return code;
    }

    private static Map<String, JsonRpcMethod> methods(LanguageServer server) {
        Map<String, JsonRpcMethod> methods = new LinkedHashMap<>(
                ServiceEndpoints.getSupportedMethods(LanguageClient.class));
        methods.putAll(ServiceEndpoints.getSupportedMethods(server.getClass()));
        return methods;
    }

    /**
     * Keeps messages that lack what the protocol demands from the handlers. The greeting is let through as it is: a
     * client with a small mistake in it is better served than sent away.
     */
    private static MessageConsumer checked(RemoteEndpoint endpoint) {
        MessageConsumer validator = new ReflectiveMessageValidator(endpoint);
        return message -> {
            if (message instanceof RequestMessage request && lacksParameters(request, endpoint.getJsonHandler())) {
                throw new MessageIssueException(request,
                        new MessageIssue("it has no params", ResponseErrorCode.InvalidParams.getValue()));
            }
            (isGreeting(message) ? endpoint : validator).consume(message);
        };
    }

    private static boolean lacksParameters(RequestMessage request, MessageJsonHandler json) {
        JsonRpcMethod method = json.getJsonRpcMethod(request.getMethod());
        return request.getParams() == null && method != null && method.getParameterTypes().length > 0;
    }

    private static boolean isGreeting(Message message) {
        return message instanceof RequestMessage request && request.getMethod().equals("initialize");
    }

    /** What the client is told when a handler fails. The details stay on this side. */
    private static ResponseError error(Throwable thrown, ServerLog log) {
        Throwable fault = thrown;
        while ((fault instanceof CompletionException || fault instanceof ExecutionException
                || fault instanceof InvocationTargetException) && fault.getCause() != null) {
            fault = fault.getCause();
        }
        if (fault instanceof ResponseErrorException meant) {
            return meant.getResponseError();
        }
        log.note("a fault of Treen's own while it answered a request", fault);
        String words = "Sorry, this is a fault in Treen and not in your file (" + fault.getClass().getSimpleName()
                + "). The server's log has the details.";
        return new ResponseError(ResponseErrorCode.InternalError, words, null);
    }
}
