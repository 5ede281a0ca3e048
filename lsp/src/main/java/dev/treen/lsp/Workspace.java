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
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
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

    /** Where nobody tells of changes on the disk, what was seen there counts for so long, for looking and not for editing. */
    private static final long KEPT_NANOS = 2_000_000_000L;

    private record Read(FileTime time, Document document) {}

    /** The files that lay in a folder, and when they were looked for. */
    private record Listing(List<Path> paths, long at) {}

    private final Documents documents;
    private final LongSupplier clock;
    private final List<Path> folders = new CopyOnWriteArrayList<>();
    private final Map<Path, Read> read = new ConcurrentHashMap<>();
    private final Map<Path, Listing> listings = new ConcurrentHashMap<>();
    private final AtomicLong visits = new AtomicLong();
    private volatile boolean watched;

    Workspace(Documents documents) {
        this(documents, System::nanoTime);
    }

    /** With a clock of its own, in nanoseconds. */
    Workspace(Documents documents, LongSupplier clock) {
        this.documents = documents;
        this.clock = clock;
    }

    /** The client tells of every file that changes on the disk: until it does, what was seen there counts. */
    void watched() {
        watched = true;
    }

    /** How often a file on the disk has been looked at. */
    long visits() {
        return visits.get();
    }

    /** Files may have come, gone or changed on the disk. */
    void lookAgain() {
        listings.clear();
    }

    void add(String uri) {
        Path folder = Path.of(Documents.nameOf(uri));
        if (!folders.contains(folder)) {
            folders.add(folder);
        }
    }

    void remove(String uri) {
        folders.remove(Path.of(Documents.nameOf(uri)));
        lookAgain();
    }

    /** Forgets what was worked out of files because one that is open has changed; their texts stay as they are. */
    void afresh() {
        read.replaceAll((path, each) -> new Read(each.time(), documents.closed(each.document().file())));
    }

    /** All files of all folders, and the open ones that lie in none, as they are now. */
    public List<Document> all() {
        lookAgainUnlessWatched();
        List<Document> all = new ArrayList<>(documents.all());
        folders.forEach(folder -> all.addAll(closedIn(folder, all)));
        return all;
    }

    /** The same as they are now, for edits that go into them. */
    public List<Document> aroundNow(Document document) {
        lookAgainUnlessWatched();
        return around(document);
    }

    private void lookAgainUnlessWatched() {
        if (!watched) {
            lookAgain();
        }
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

    private List<Document> closedIn(Path folder, List<Document> opened) {
        Set<String> open = new java.util.HashSet<>();
        opened.forEach(each -> open.add(each.file().name()));
        List<Document> found = new ArrayList<>();
        Optional<Listing> known = Optional.ofNullable(listings.get(folder))
                .filter(listing -> watched || clock.getAsLong() - listing.at() < KEPT_NANOS);
        boolean stands = known.isPresent();
        known.map(Listing::paths).orElseGet(() -> look(folder)).stream()
                .filter(path -> !open.contains(path.toString()))
                .limit(MOST_FILES)
                .forEach(path -> document(path, stands).ifPresent(found::add));
        return found;
    }

    private List<Path> look(Path folder) {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder, DEEPEST, new FileVisitOption[0])) {
            files.peek(path -> visits.incrementAndGet())
                    .filter(path -> path.toString().endsWith(".treen"))
                    .filter(path -> looksOpen(folder.relativize(path)))
                    .sorted()
                    .forEach(found::add);
            listings.put(folder, new Listing(List.copyOf(found), clock.getAsLong()));
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

    /** The file at {@code path}; one that {@code stands} as it was seen is not looked at again. */
    private Optional<Document> document(Path path, boolean stands) {
        Read last = read.get(path);
        if (stands && last != null) {
            return Optional.of(last.document());
        }
        visits.incrementAndGet();
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
