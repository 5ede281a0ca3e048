package dev.treen.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.Stream;

/**
 * Does a little of everything and prints nothing: the launcher has Java record the classes that this needs, so that
 * every later start finds them loaded. Whatever goes wrong here only leaves some of them out.
 */
final class WarmUp {
    private static final Subcommand.Streams MUTED = new Subcommand.Streams(InputStream.nullInputStream(), nowhere(),
            nowhere());

    private WarmUp() {
    }

    static int run() {
        try {
            Path folder = Files.createTempDirectory("treen-warm-up");
            try {
                commands(folder);
            } finally {
                remove(folder);
            }
        } catch (IOException noFolder) {
            // No place to write to: the commands that need one stay cold.
        }
        for (Subcommand each : ServiceLoader.load(Subcommand.class)) {
            each.warmUp();
        }
        return 0;
    }

    private static void commands(Path folder) throws IOException {
        Path project = folder.resolve("warm-up.treen");
        try (InputStream in = WarmUp.class.getResourceAsStream("warm-up.treen")) {
            if (in != null) {
                Files.copy(in, project);
            }
        }
        String file = project.toString();
        List<List<String>> lines = List.of(
                List.of("--version"),
                List.of("--help"),
                List.of("no-such-command"),
                List.of("check", file),
                List.of("check", file, "--format", "json"),
                List.of("explain", file, "base.width"),
                List.of("format", file, "--check"),
                List.of("build", file, "-o", folder.resolve("out").toString()));
        for (List<String> each : lines) {
            var _ = Main.run(each, MUTED);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private static PrintStream nowhere() {
        return new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    }
}
