package dev.treen.plan;

import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every Treen file that ships: the examples and the library. What is added later is found by itself. */
public final class TreenFiles {
    private static final List<Path> PLACES = List.of(
            Path.of("..", "examples"), Path.of("src", "main", "resources"), Path.of("..", "library"));

    /** Finds the files that a project uses beside it. */
    public static final FileLoader LOADER = TreenFiles::load;

    private TreenFiles() {
    }

    /** Their paths, in the order of the alphabet. */
    public static List<Path> all() {
        return PLACES.stream().filter(Files::isDirectory).flatMap(TreenFiles::under).sorted().toList();
    }

    /** The projects among them that are meant to compile as they are. */
    public static List<Path> examples() {
        return under(PLACES.getFirst()).sorted().toList();
    }

    public static SourceFile file(Path path) {
        try {
            return new SourceFile(path.toString(), Files.readString(path));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The compilation of {@code text} in the place of the file at {@code path}. */
    public static Compilation compile(Path path, String text) {
        return Compilation.of(new SourceFile(path.toString(), text), LOADER);
    }

    /** Without the plans that somebody has built beside them. */
    private static Stream<Path> under(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> p.toString().endsWith(".treen") && !p.getParent().toString().endsWith("-plan"))
                    .toList()
                    .stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<SourceFile> load(String path, SourceFile from) {
        Path beside = Path.of(from.name()).resolveSibling(path + ".treen");
        return Files.isRegularFile(beside) ? Optional.of(file(beside)) : Optional.empty();
    }
}
