package dev.treen.lsp;

import dev.treen.cli.Subcommand;
import java.util.List;

/** {@code treen lsp}: speaks the Language Server Protocol over standard input and output until told to exit. */
public final class LspCommand implements Subcommand {

    /** For the service loader. */
    public LspCommand() {
    }

    @Override
    public String name() {
        return "lsp";
    }

    @Override
    public String summary() {
        return "run the language server on standard input and output";
    }

    @Override
    public int run(List<String> arguments, Streams streams) {
        streams.err().println("treen lsp: the language server is not built yet");
        return 2;
    }
}
