package dev.treen.cli;

import dev.treen.source.SourceFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;

/**
 * Puts a new text in the place of a file, so that at every moment one of the two is there whole: the new text is written
 * beside the old and has reached the disk before it takes the name.
 */
final class FileUpdate {
    private FileUpdate() {
    }

    /** Why {@code file} was left as it is; empty when {@code text} has taken its place. */
    static Optional<String> write(SourceFile file, String text) {
        try {
            // A link stays a link: what it points to is written.
            Path place = Path.of(file.name()).toRealPath();
            if (!Files.isWritable(place)) {
                return Optional.of("`" + file.name() + "` is write-protected");
            }
            Path folder = Optional.ofNullable(place.getParent()).orElse(place.toAbsolutePath().getRoot());
            Path fresh = Files.createTempFile(folder, ".treen-new", ".treen");
            try {
                fill(fresh, text);
                keepPermissions(place, fresh);
                if (!Arrays.equals(Files.readAllBytes(place), file.text().getBytes(StandardCharsets.UTF_8))) {
                    return Optional.of("`" + file.name() + "` has changed while it was being formatted");
                }
                move(fresh, place);
            } finally {
                Files.deleteIfExists(fresh);
            }
            return Optional.empty();
        } catch (IOException | SecurityException refused) {
            return Optional.of("`" + file.name() + "` cannot be written: " + refused.getMessage());
        }
    }

    private static void fill(Path fresh, String text) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    /** Puts a whole file in its place, at once where the file system can. */
    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException elsewhere) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
