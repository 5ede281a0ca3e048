package dev.treen.lsp;

import dev.treen.cli.Subcommand;
import dev.treen.lsp.stdio.StdioServer;
import java.io.IOException;
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
        for (String argument : arguments) {
            // Editors' client libraries append --stdio by themselves.
            if (!argument.equals("--stdio")) {
                streams.err().println("treen lsp: unknown option " + argument);
                streams.err().println("It takes none; --stdio is allowed and changes nothing.");
                return 2;
            }
        }
        return StdioServer.serveStandardStreams(new TreenServer());
    }

    @Override
    public void warmUp() {
        try {
            LspWarmUp.run();
        } catch (IOException cutShort) {
            // What was touched until then is recorded all the same.
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
