package dev.treen.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes results whole or not at all: everything is written to a temporary folder beside the place, then moved. Files
 * that Treen did not make are never touched; what it made stands in a list in the folder.
 */
final class OutputFolder {
    private static final String LIST = ".treen-made";

    private final Path folder;

    OutputFolder(Path folder) {
        this.folder = folder;
    }

    /** Why the files cannot be written; empty when they are. */
    Optional<String> write(Map<String, String> files) {
        try {
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                return Optional.of("`" + folder + "` is a file, and a folder is wanted");
            }
            List<String> mine = made();
            for (String name : files.keySet()) {
                Path there = folder.resolve(name);
                boolean ours = mine.contains(name) && Files.isRegularFile(there, LinkOption.NOFOLLOW_LINKS);
                if (Files.exists(there, LinkOption.NOFOLLOW_LINKS) && !ours) {
                    return Optional.of("`" + folder.resolve(name) + "` is there already and was not made by Treen;"
                            + " move it, or choose another folder with -o");
                }
            }
            writeAll(files, mine);
            return Optional.empty();
        } catch (IOException | SecurityException refused) {
            return Optional.of("the folder `" + folder + "` cannot be written: " + refused.getMessage());
        }
    }

    private List<String> made() throws IOException {
        Path list = folder.resolve(LIST);
        return Files.isRegularFile(list) ? Files.readAllLines(list) : List.of();
    }

    private void writeAll(Map<String, String> files, List<String> before) throws IOException {
        Files.createDirectories(folder);
        Path temporary = Files.createTempDirectory(folder, ".treen-new");
        try {
            for (Map.Entry<String, String> each : files.entrySet()) {
                Files.writeString(temporary.resolve(each.getKey()), each.getValue(), StandardCharsets.UTF_8);
            }
            List<String> all = new ArrayList<>(files.keySet());
            Files.write(temporary.resolve(LIST), all);
            all.add(LIST);
            for (String name : all) {
                FileUpdate.move(temporary.resolve(name), folder.resolve(name));
            }
            for (String old : before) {
                if (!files.containsKey(old) && plain(old)) {
                    Files.deleteIfExists(folder.resolve(old));
                }
            }
        } finally {
            for (String name : files.keySet()) {
                Files.deleteIfExists(temporary.resolve(name));
            }
            Files.deleteIfExists(temporary.resolve(LIST));
            Files.deleteIfExists(temporary);
        }
    }

    /** A list that somebody has tampered with must not lead outside the folder. */
    private boolean plain(String name) {
        try {
            return Path.of(name).getNameCount() == 1
                    && !Path.of(name).isAbsolute()
                    && Files.isRegularFile(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
        } catch (InvalidPathException impossible) {
            return false;
        }
    }
}
