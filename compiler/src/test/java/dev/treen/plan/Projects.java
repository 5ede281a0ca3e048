package dev.treen.plan;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Projects for tests, invented like all our scenes. */
public final class Projects {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private Projects() {
    }

    /** A project without joints: a head with {@code allow}, then what follows. */
    public static Compilation of(String allow, String rest) {
        return compile("project \"A shelf for jars\" { units mm; tools hand; allow { " + allow + " } }\n" + rest);
    }

    /** The compilation of {@code text}. */
    public static Compilation compile(String text) {
        return Compilation.of(new SourceFile("jars.treen", text), FileLoader.NONE);
    }

    /** The example called {@code name}. */
    public static Compilation example(String name) {
        return compile(text(name));
    }

    /** The compilation of the example of the joint called {@code kind}. */
    public static Compilation joint(String kind) {
        return compile(read(EXAMPLES.resolve("joints").resolve(kind + ".treen")));
    }

    /** The text of the example called {@code name}. */
    public static String text(String name) {
        return read(EXAMPLES.resolve(name).resolve(name + ".treen"));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Codes of {@code findings}. */
    public static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }
}
