package dev.treen.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

    /** The text of a file that Treen made here before; empty where there is none that can be read. */
    Optional<String> read(String name) {
        Path file = folder.resolve(name);
        try {
            boolean ours = Files.isDirectory(folder)
                    && made().contains(name)
                    && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && Files.size(file) <= ProjectFiles.LARGEST;
            return ours ? Optional.of(Files.readString(file)) : Optional.empty();
        } catch (IOException | SecurityException unreadable) {
            return Optional.empty();
        }
    }

    /** Why the files cannot be written; empty when they are. */
    Optional<String> write(Map<String, byte[]> files) {
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
            return Optional.of("the folder `" + folder + "` cannot be written: " + why(refused));
        }
    }

    /** What the system says, without the names of our own temporary files. */
    private static String why(Exception refused) {
        return switch (refused) {
            case AccessDeniedException _ -> "it is write-protected";
            case FileAlreadyExistsException there -> "`" + there.getFile() + "` is a file, and a folder is wanted";
            case FileSystemException system when system.getReason() != null -> system.getReason();
            default -> String.valueOf(refused.getMessage());
        };
    }

    private List<String> made() throws IOException {
        Path list = folder.resolve(LIST);
        return Files.isRegularFile(list) ? Files.readAllLines(list) : List.of();
    }

    private void writeAll(Map<String, byte[]> files, List<String> before) throws IOException {
        boolean fresh = Files.notExists(folder, LinkOption.NOFOLLOW_LINKS);
        Files.createDirectories(folder);
        try {
            fill(files, before);
        } catch (IOException | SecurityException refused) {
            if (fresh) {
                removeEmpty();
            }
            throw refused;
        }
    }

    /** A folder that came to nothing goes again. */
    private void removeEmpty() {
        try {
            Files.deleteIfExists(folder);
        } catch (IOException inUse) {
            // Something is in it, or it may not be removed: it stays, and why nothing was written is said in any case.
        }
    }

    private void fill(Map<String, byte[]> files, List<String> before) throws IOException {
        Path temporary = Files.createTempDirectory(folder, ".treen-new");
        try {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                Files.write(temporary.resolve(each.getKey()), each.getValue());
            }
            // All is on the disk. Should the moves be cut short, the list already knows what may be written over next time.
            Set<String> both = new LinkedHashSet<>(before);
            both.addAll(files.keySet());
            list(temporary, both);
            for (String name : files.keySet()) {
                FileUpdate.move(temporary.resolve(name), folder.resolve(name));
            }
            for (String old : before) {
                if (!files.containsKey(old) && plain(old)) {
                    Files.deleteIfExists(folder.resolve(old));
                }
            }
            list(temporary, files.keySet());
        } finally {
            for (String name : files.keySet()) {
                Files.deleteIfExists(temporary.resolve(name));
            }
            Files.deleteIfExists(temporary.resolve(LIST));
            Files.deleteIfExists(temporary);
        }
    }

    private void list(Path temporary, Collection<String> names) throws IOException {
        Files.write(temporary.resolve(LIST), names);
        FileUpdate.move(temporary.resolve(LIST), folder.resolve(LIST));
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
