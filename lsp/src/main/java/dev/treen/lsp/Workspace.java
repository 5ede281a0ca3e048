package dev.treen.lsp;

import dev.treen.source.SourceFile;
import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/**
 * The folders that the client has open, each for itself: what is asked about a file is looked for in its own folder, in the
 * files that are open as the client has them and in the others as they are on the disk.
 */
public final class Workspace {
    /** More files than any workshop has; what lies beyond is not looked at. */
    static final int MOST_FILES = 1_000;
    private static final int DEEPEST = 8;
    private static final Set<String> PASSED_OVER = Set.of("target", "node_modules", "build");

    private record Read(FileTime time, Document document) {}

    private final Documents documents;
    private final List<Path> folders = new CopyOnWriteArrayList<>();
    private final Map<Path, Read> read = new ConcurrentHashMap<>();

    Workspace(Documents documents) {
        this.documents = documents;
    }

    void add(String uri) {
        Path folder = Path.of(Documents.nameOf(uri));
        if (!folders.contains(folder)) {
            folders.add(folder);
        }
    }

    void remove(String uri) {
        folders.remove(Path.of(Documents.nameOf(uri)));
    }

    /** Forgets what was worked out from files that may have changed since. */
    void afresh() {
        read.clear();
    }

    /** All files of all folders, and the open ones that lie in none. */
    public List<Document> all() {
        List<Document> all = new ArrayList<>(documents.all());
        folders.forEach(folder -> all.addAll(closedIn(folder, all)));
        return all;
    }

    /** The files of the folder that {@code document} lies in, itself among them; where it lies in none, the open ones. */
    public List<Document> around(Document document) {
        Optional<Path> folder = folderOf(document);
        List<Document> found = new ArrayList<>();
        documents.all().stream().filter(each -> folderOf(each).equals(folder)).forEach(found::add);
        folder.ifPresent(inside -> found.addAll(closedIn(inside, found)));
        if (found.stream().noneMatch(each -> each.uri().equals(document.uri()))) {
            found.add(document);
        }
        return found;
    }

    private Optional<Path> folderOf(Document document) {
        Path path = Path.of(document.file().name());
        return folders.stream()
                .filter(path::startsWith)
                .max(java.util.Comparator.comparingInt(Path::getNameCount));
    }

    private List<Document> closedIn(Path folder, List<Document> open) {
        Set<String> known = new java.util.HashSet<>();
        open.forEach(each -> known.add(each.file().name()));
        List<Document> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder, DEEPEST, new FileVisitOption[0])) {
            files.filter(path -> path.toString().endsWith(".treen"))
                    .filter(path -> looksOpen(folder.relativize(path)))
                    .filter(path -> !known.contains(path.toString()))
                    .sorted()
                    .limit(MOST_FILES)
                    .forEach(path -> document(path).ifPresent(found::add));
        } catch (IOException | java.io.UncheckedIOException unreadable) {
            // What cannot be read now is looked for again at the next question.
        }
        return found;
    }

    private static boolean looksOpen(Path inside) {
        for (Path each : inside) {
            if (each.toString().startsWith(".") || PASSED_OVER.contains(each.toString())) {
                return false;
            }
        }
        return true;
    }

    private Optional<Document> document(Path path) {
        try {
            FileTime time = Files.getLastModifiedTime(path);
            Read before = read.get(path);
            if (before != null && before.time().equals(time)) {
                return Optional.of(before.document());
            }
            Optional<SourceFile> file = documents.onDisk(path);
            file.ifPresent(found -> read.put(path, new Read(time, documents.closed(found))));
            return Optional.ofNullable(read.get(path)).map(Read::document);
        } catch (IOException gone) {
            return Optional.empty();
        }
    }
}
