package dev.treen.model;

import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SyntaxTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The patterns that come with Treen, written in Treen: every project may use them as {@code treen/box}. */
public final class Library {
    /** How the path of every file of the library begins. */
    public static final String FOLDER = "treen/";

    private static final List<String> NAMES = List.of("bench", "bookcase", "box", "breadboard_top", "carcase", "drawer",
            "frame_and_panel", "picture_frame", "table", "tray",
            "wall_cabinet");

    private static final Map<String, SyntaxTree> READ = new ConcurrentHashMap<>();

    private Library() {
    }

    /** The paths of all files, as a project writes them. */
    public static List<String> paths() {
        return NAMES.stream().map(name -> FOLDER + name).toList();
    }

    /** The file of {@code path}, read; empty where the library has none. */
    public static Optional<SyntaxTree> tree(String path) {
        String plain = path.endsWith(".treen") ? path.substring(0, path.length() - ".treen".length()) : path;
        return paths().contains(plain) ? Optional.of(READ.computeIfAbsent(plain, Library::read)) : Optional.empty();
    }

    private static SyntaxTree read(String path) {
        String name = path + ".treen";
        try (InputStream in = Library.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the library lacks " + name);
            }
            return Parser.parse(new SourceFile(name, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
