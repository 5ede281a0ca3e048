package dev.treen.syntax;

import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Our own sample projects: every form of the language is in one of them. */
final class Samples {
    static final List<String> ALL = List.of("tea_caddy", "tea_caddy_by_hand", "wall_shelf", "frame_and_panel",
            "garden_bench");

    private Samples() {
    }

    static SourceFile file(String name) {
        return new SourceFile(name + ".treen", text(name));
    }

    static String text(String name) {
        try (InputStream in = Samples.class.getResourceAsStream("samples/" + name + ".treen")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
