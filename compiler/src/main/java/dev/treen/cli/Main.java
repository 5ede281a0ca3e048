package dev.treen.cli;

import dev.treen.finding.NearWords;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.ServiceLoader;

/**
 * Where the {@code treen} command starts. Arguments are read by hand: a library for it costs more time at every start
 * than all the rest of a short run.
 */
public final class Main {

    /** Exit code for a command line that makes no sense. */
    public static final int WRONG_USE = 2;

    private static final long STACK = 64L << 20;

    /** Exit code for a fault in Treen itself. */
    public static final int FAULT = 3;

    private Main() {
    }

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        int exit = run(Arrays.asList(arguments),
                new Subcommand.Streams(new FileInputStream(FileDescriptor.in), out, err));
        out.flush();
        err.flush();
        System.exit(exit);
    }

    /** The same without ending the process, for tests. */
    public static int run(List<String> arguments, Subcommand.Streams streams) {
        if (arguments.isEmpty()) {
            return wrongUse("no command given", streams);
        }
        String name = arguments.getFirst();
        return switch (name) {
            case "--version", "-V" -> {
                streams.out().println("treen " + version());
                yield 0;
            }
            case "--help", "-h", "help" -> {
                help(streams.out());
                yield 0;
            }
            // Asked for by the launcher alone, so not in the help.
            case "--warm-up" -> WarmUp.run();
            // For contributors; DEVELOPERS.md tells of it.
            case "bench" -> guarded(new BenchCommand(), arguments.subList(1, arguments.size()), streams);
            case "build" -> guarded(new BuildCommand(), arguments.subList(1, arguments.size()), streams);
            case "check" -> guarded(new CheckCommand(), arguments.subList(1, arguments.size()), streams);
            case "explain" -> guarded(new ExplainCommand(), arguments.subList(1, arguments.size()), streams);
            case "format" -> guarded(new FormatCommand(), arguments.subList(1, arguments.size()), streams);
            default -> added(name, arguments.subList(1, arguments.size()), streams);
        };
    }

    /**
     * {@code treen build} with these arguments, without ending the process, for whoever has another way to say how it goes.
     * The exit code is that of the command; where {@code course} stopped it, nothing was written and it is not 0.
     */
    public static int build(List<String> arguments, Subcommand.Streams streams, Course course) {
        return guarded(new BuildCommand(course), arguments, streams);
    }

    private static int guarded(Subcommand command, List<String> rest, Subcommand.Streams streams) {
        int[] exit = {FAULT};
        // Expressions may be deep: a stack of our own, which takes memory only as it is used.
        Thread worker = new Thread(null, () -> exit[0] = run(command, rest, streams), "treen", STACK);
        worker.start();
        try {
            worker.join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return exit[0];
    }

    /** Runs {@code command} so that whatever goes wrong in Treen itself ends in an apology, never in a trace. */
    static int run(Subcommand command, List<String> rest, Subcommand.Streams streams) {
        try {
            return command.run(rest, streams);
        } catch (RuntimeException | Error fault) {
            return apologise(fault, streams);
        }
    }

    /** A fault of ours: says so in two lines, and puts the rest where it can be sent from. */
    private static int apologise(Throwable fault, Subcommand.Streams streams) {
        streams.err().println("Sorry: this is a fault in Treen, not in your project; nothing was written.");
        try {
            Path details = Files.createTempFile("treen-fault", ".txt");
            try (PrintStream to = new PrintStream(Files.newOutputStream(details), false, StandardCharsets.UTF_8)) {
                fault.printStackTrace(to);
            }
            streams.err().println("Please report it with your project file and the details in " + details);
        } catch (IOException full) {
            streams.err().println("Please report it with your project file: " + fault);
        }
        return FAULT;
    }

    private static int added(String name, List<String> rest, Subcommand.Streams streams) {
        List<String> known = new ArrayList<>(List.of("build", "check", "explain", "format", "--help", "--version"));
        for (Subcommand each : ServiceLoader.load(Subcommand.class)) {
            if (each.name().equals(name)) {
                return each.run(rest, streams);
            }
            known.add(each.name());
        }
        List<String> near = NearWords.of(name, known);
        return wrongUse((name.startsWith("-") ? "unknown option " : "unknown command ") + name
                + (near.isEmpty() ? "" : "; near is " + near.getFirst()), streams);
    }

    private static int wrongUse(String what, Subcommand.Streams streams) {
        streams.err().println("treen: " + what);
        streams.err().println("Try 'treen --help' for what it can do.");
        return WRONG_USE;
    }

    private static void help(PrintStream out) {
        out.println("""
                treen: wooden projects as plain text

                usage: treen COMMAND [ARGUMENTS]
                       treen --version
                       treen --help
                """);
        out.println("commands:");
        for (Subcommand each : List.of(new BuildCommand(), new CheckCommand(), new ExplainCommand(),
                new FormatCommand())) {
            out.printf("  %-10s %s%n", each.name(), each.summary());
        }
        for (Subcommand each : ServiceLoader.load(Subcommand.class)) {
            out.printf("  %-10s %s%n", each.name(), each.summary());
        }
    }

    private static String version() {
        Properties properties = new Properties();
        try (InputStream in = Main.class.getResourceAsStream("version.properties")) {
            if (in != null) {
                properties.load(in);
            }
        } catch (IOException unreadable) {
            // A version that cannot be read is not worth failing for: the line below says so.
            return "(unknown version)";
        }
        return properties.getProperty("version", "(unknown version)");
    }

    /** Wood has half-inch signs and degrees: what is printed is UTF-8 wherever the command runs. */
    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }
}
