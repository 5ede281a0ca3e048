package dev.treen.cli;

import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Reads projects and the files they use from disk. */
final class ProjectFiles implements FileLoader {
    /** Larger than the compiler reads, so that it can say so itself, and still far from filling the memory. */
    static final long LARGEST = 64L << 20;

    /** A file, or why it cannot be read. */
    sealed interface Read {
        /** The text. */
        record Found(SourceFile file) implements Read {}

        /** Why there is none. */
        record Refused(String why) implements Read {}
    }

    static Read read(String name) {
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                return new Read.Refused("`" + name + "` is a folder; name the project file in it");
            }
            if (!Files.exists(path)) {
                return new Read.Refused("there is no file `" + name + "`");
            }
            if (Files.size(path) > LARGEST) {
                return tooLarge(name);
            }
            return decode(name, Files.readAllBytes(path));
        } catch (InvalidPathException | IOException refused) {
            return new Read.Refused("`" + name + "` cannot be read: " + refused.getMessage());
        }
    }

    /** The text of a file's bytes. */
    static Read decode(String name, byte[] bytes) {
        if (bytes.length > LARGEST) {
            return tooLarge(name);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Read.Found(new SourceFile(name, text));
        } catch (CharacterCodingException binary) {
            return new Read.Refused("`" + name + "` is not text in UTF-8");
        }
    }

    private static Read tooLarge(String name) {
        return new Read.Refused("`" + name + "` is larger than 64 MiB and is not read");
    }

    @Override
    public Optional<SourceFile> load(String path, SourceFile from) {
        try {
            Path folder = Path.of(from.name()).getParent();
            for (String name : new String[]{path + ".treen", path}) {
                Path file = folder == null ? Path.of(name) : folder.resolve(name).normalize();
                if (Files.isRegularFile(file) && read(file.toString()) instanceof Read.Found(SourceFile found)) {
                    return Optional.of(found);
                }
            }
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
        return Optional.empty();
    }
}
