package dev.treen.lsp.stdio;

import org.jspecify.annotations.Nullable;

/** Where the server writes about itself; never the stream that the client reads. */
@FunctionalInterface
public interface ServerLog {

    /** Notes one thing, with its cause where it is a fault of ours. */
    void note(String what, @Nullable Throwable cause);

    /** Writes to standard error, which editors show in a log window. */
    static ServerLog standardError() {
        return (what, cause) -> {
            System.err.println("treen lsp: " + what);
            if (cause != null) {
                cause.printStackTrace();
            }
        };
    }
}
