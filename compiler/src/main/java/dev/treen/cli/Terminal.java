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
    private static boolean colour() {
        return System.getenv("NO_COLOR") == null && isThere();
    }

    /** Whether somebody looks on, at a screen on which a line can be written over. */
    @SuppressWarnings("SystemConsoleNull") // the library's own annotation still says that it may be null
    private static boolean isThere() {
        Console console = System.console();
        return !"dumb".equals(System.getenv("TERM")) && console != null && console.isTerminal();
    }

    /** Says on the terminal how work goes, where there is one. */
    static Course course(Subcommand.Streams streams) {
        return isThere() ? new TerminalCourse(streams.err(), System::nanoTime) : Course.silent();
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
