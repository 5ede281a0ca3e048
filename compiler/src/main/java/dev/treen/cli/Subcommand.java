package dev.treen.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.List;

/**
 * A command that another module adds to {@code treen}, found through {@link java.util.ServiceLoader} only when the name
 * asked for is not one of the compiler's own: the commands run most must not pay for looking.
 */
public interface Subcommand {

    /** The word typed after {@code treen}. */
    String name();

    /** One line for the list of commands, beginning with a verb and without a full stop. */
    String summary();

    /** Runs the command on what follows its name and gives the exit code: 0 done, 1 findings, 2 wrong use. */
    int run(List<String> arguments, Streams streams);

    /** Touches what the command needs, quickly and without a word, while the launcher records a start-up cache. */
    default void warmUp() {
    }

    /** The three streams a command talks through, so that a test can hand it others. */
    record Streams(InputStream in, PrintStream out, PrintStream err) {}
}
