package dev.treen.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of the project, for tests that read them as text. */
final class Repository {

    /** A text file: its path from the root, written with slashes, and what is in it. */
    record Text(String path, String content) {
        Stream<String> lines() {
            return content.lines();
        }
    }

    private Repository() {
    }

    static Path root() {
        String given = System.getProperty("treen.root");
        Path folder = Path.of(given == null ? "" : given).toAbsolutePath();
        // An editor that runs a single test starts in the module's folder and hands over nothing.
        while (!Files.exists(folder.resolve("mvnw"))) {
            folder = folder.getParent();
        }
        return folder;
    }

    /** All that git keeps or would keep, but for pictures and what is gone from the disk. */
    static List<Text> texts() throws IOException, InterruptedException {
        Path root = root();
        return files(root).filter(each -> Files.isRegularFile(root.resolve(each)))
                .map(each -> new Text(each, read(root.resolve(each))))
                .filter(each -> each.content().indexOf('\0') < 0)
                .toList();
    }

    private static Stream<String> files(Path root) throws IOException, InterruptedException {
        Process git = new ProcessBuilder("git", "-C", root.toString(), "ls-files", "-z", "--cached", "--others",
                "--exclude-standard").redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String listed = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (git.waitFor() != 0) {
            throw new IOException("git cannot list the files of " + root);
        }
        return Stream.of(listed.split("\0"));
    }

    private static String read(Path file) {
        try {
            // Latin 1 takes every byte, and what the tests look for is ASCII.
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
