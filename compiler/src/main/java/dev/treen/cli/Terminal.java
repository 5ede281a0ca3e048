package dev.treen.cli;

import dev.treen.finding.Finding;
import dev.treen.plan.FindingText;
import java.io.Console;
import java.util.List;

/** How a command talks to whoever started it. */
final class Terminal {
    private Terminal() {
    }

    /** Colour is for a terminal, and not for those who asked to go without (no-color.org). */
    @SuppressWarnings("SystemConsoleNull") // the library's own annotation still says that it may be null
    private static boolean colour() {
        if (System.getenv("NO_COLOR") != null || "dumb".equals(System.getenv("TERM"))) {
            return false;
        }
        Console console = System.console();
        return console != null && console.isTerminal();
    }

    static String text(List<Finding> findings) {
        return new FindingText(colour()).of(findings);
    }

    /** Says what is wrong with a command line and how it is meant. */
    static int wrongUse(Subcommand.Streams streams, String what, String usage) {
        streams.err().println("treen: " + what);
        streams.err().println("Use: " + usage);
        return Main.WRONG_USE;
    }
}
