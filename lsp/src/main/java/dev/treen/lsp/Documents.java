package dev.treen.lsp;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.FileLoader;
import dev.treen.model.Library;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentItem;

/** The files that the client has open, each in its newest version, and the way to those that it has not. */
public final class Documents {
    private static final long LARGEST = 4L << 20;

    private final Map<String, Document> open = new ConcurrentHashMap<>();
    private final Function<String, Optional<Path>> patterns;
    private volatile PositionEncoding encoding = PositionEncoding.UTF16;

    /** Finds no file for the patterns that come with Treen. */
    Documents() {
        this(name -> Optional.empty());
    }

    /** With {@code patterns}, which gives the file where one of Treen's own, by its name, can be read. */
    Documents(Function<String, Optional<Path>> patterns) {
        this.patterns = patterns;
    }

    /** From now on positions count in {@code agreed}. */
    void encoding(PositionEncoding agreed) {
        encoding = agreed;
    }

    Document open(TextDocumentItem item) {
        SourceFile file = new SourceFile(nameOf(item.getUri()), item.getText());
        Document document = new Document(item.getUri(), item.getVersion(), file, encoding, loader(), this::addressOf);
        open.put(item.getUri(), document);
        return document;
    }

    Optional<Document> change(DidChangeTextDocumentParams change) {
        return Optional.ofNullable(open.computeIfPresent(
                change.getTextDocument().getUri(),
                (uri, document) -> document.changed(version(change, document), change.getContentChanges())));
    }

    /** Clients count their versions; for one that does not, the server goes on counting. */
    private static int version(DidChangeTextDocumentParams change, Document before) {
        return Objects.requireNonNullElse(change.getTextDocument().getVersion(), before.version() + 1);
    }

    void close(String uri) {
        open.remove(uri);
    }

    /** The newest version of an open file. */
    public Optional<Document> find(String uri) {
        return Optional.ofNullable(open.get(uri));
    }

    /** All open files. */
    Collection<Document> all() {
        return open.values();
    }

    /** Forgets what was worked out from the file called {@code name}, and gives the open files that use it. */
    List<Document> afreshWhereUsed(String name) {
        List<Document> users = new ArrayList<>();
        open.replaceAll((uri, document) -> {
            if (!document.uses(name)) {
                return document;
            }
            Document afresh = document.afresh();
            users.add(afresh);
            return afresh;
        });
        return users;
    }

    /** Forgets what was worked out. */
    void allAfresh() {
        open.replaceAll((uri, document) -> document.afresh());
    }

    private FileLoader loader() {
        return (path, from) -> candidates(path, from).flatMap(this::read);
    }

    private Optional<Path> candidates(String path, SourceFile from) {
        try {
            Path folder = Path.of(from.name()).toAbsolutePath().getParent();
            if (folder == null) {
                return Optional.empty();
            }
            Path exact = folder.resolve(path).normalize();
            Path named = folder.resolve(path + ".treen").normalize();
            return open.containsKey(uriOf(named.toString())) || Files.isRegularFile(named)
                    ? Optional.of(named)
                    : Optional.of(exact);
        } catch (java.nio.file.InvalidPathException impossible) {
            return Optional.empty();
        }
    }

    /** A document of a file that is not open. */
    Document closed(SourceFile file) {
        return new Document(uriOf(file.name()), 0, file, encoding, loader(), this::addressOf);
    }

    /** The file that {@code path} in {@code from} means, where there is one. */
    public Optional<SourceFile> used(String path, SourceFile from) {
        return loader().load(path, from);
    }

    private Optional<SourceFile> read(Path path) {
        Document opened = open.get(uriOf(path.toString()));
        return opened != null ? Optional.of(opened.file()) : onDisk(path);
    }

    /** A file as it is on the disk. */
    Optional<SourceFile> onDisk(Path path) {
        try {
            return Files.isRegularFile(path) && Files.size(path) <= LARGEST
                    ? Optional.of(new SourceFile(path.toString(), Files.readString(path)))
                    : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private String addressOf(String name) {
        return Library.tree(name).isPresent()
                ? patterns.apply(name).map(path -> path.toUri().toString()).orElse(uriOf(name))
                : uriOf(name);
    }

    /** The name under which a file is known to people: its path, or the address where it has none. */
    public static String nameOf(String uri) {
        try {
            URI parsed = URI.create(uri);
            return "file".equals(parsed.getScheme()) ? Path.of(parsed).toString() : uri;
        } catch (IllegalArgumentException | java.nio.file.FileSystemNotFoundException odd) {
            return uri;
        }
    }

    /** The address of the file that is known as {@code name}. */
    public static String uriOf(String name) {
        try {
            return name.contains("://") ? name : Path.of(name).toUri().toString();
        } catch (java.nio.file.InvalidPathException odd) {
            return name;
        }
    }
}
