package dev.treen.lsp.stdio;

/**
 * How much a client may ask of the pipes. A message beyond a limit is answered with an error and skipped; the ones
 * after it are read as usual.
 *
 * @param message bytes in one message
 * @param nesting arrays and objects inside one another
 * @param unsent bytes that wait for a client which no longer reads; beyond this the client is taken for dead
 */
public record Limits(int message, int nesting, long unsent) {

    /** What the server uses. No message of a real client nests deeper than about 20. */
    public static final Limits DEFAULT = new Limits(16 << 20, 128, 256L << 20);
}
