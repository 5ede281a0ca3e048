package dev.treen.lsp.stdio;

import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.jspecify.annotations.Nullable;

/** Keeps whatever a handler throws at once, stack overflow included, away from the thread that reads. */
record GuardedEndpoint(Endpoint handlers, ServerLog log) implements Endpoint {

    @Override
    public CompletableFuture<?> request(String method, @Nullable Object parameter) {
        if (method.startsWith("$/")) {
            // There is none that a client may ask, and the protocol wants an error where the library gives null.
            return CompletableFuture.failedFuture(new ResponseErrorException(
                    new ResponseError(ResponseErrorCode.MethodNotFound, "there is no method " + method, null)));
        }
        try {
            return handlers.request(method, parameter);
        } catch (Throwable fault) {
            // It is told to the client and noted like a fault that comes later.
            return CompletableFuture.failedFuture(fault);
        }
    }

    @Override
    public void notify(String method, @Nullable Object parameter) {
        try {
            handlers.notify(method, parameter);
        } catch (Throwable fault) {
            log.note("a fault of Treen's own in " + method, fault);
        }
    }
}
