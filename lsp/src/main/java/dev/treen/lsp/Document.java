package dev.treen.lsp;

import dev.treen.finding.Edit;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import dev.treen.model.FileLoader;
import dev.treen.model.Library;
import dev.treen.plan.Compilation;
import dev.treen.plan.Editing;
import dev.treen.plan.Lazy;
import dev.treen.quantity.Unit;
import dev.treen.rewrite.OtherUnits;
import dev.treen.source.SourceFile;
import dev.treen.syntax.SyntaxTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/**
 * One version of an open file, immutable. The analysis is made when it is first asked for and kept; a later version of
 * the text is another document, whose analysis takes over what has not changed. Once a later version has been analysed,
 * an earlier one is analysed for itself.
 */
public final class Document {
    private static final int MOST_BESIDE = 200;

    private final String uri;
    private final int version;
    private final SourceFile file;
    private final PositionEncoding encoding;
    private final FileLoader loader;
    private final UnaryOperator<String> addresses;
    private final Set<String> usedNames = ConcurrentHashMap.newKeySet();
    private final Lazy<Positions> positions;
    private final Chain chain;
    private final int link;
    private final Lazy<Compilation> analysis;
    private final Lazy<Compilation> alone;

    /** The versions of one text, of which the newest that was asked about takes over from those before. */
    private static final class Chain {
        final Editing editing;
        int links;
        int newest;

        Chain(String name) {
            editing = new Editing(name);
        }

        synchronized int next() {
            links++;
            return links;
        }

        /** Whether {@code link} is the newest that was asked about, or is so from now on. */
        synchronized boolean reaches(int link) {
            newest = Math.max(newest, link);
            return newest == link;
        }
    }

    Document(String uri, int version, SourceFile file, PositionEncoding encoding, FileLoader loader,
            UnaryOperator<String> addresses) {
        this(uri, version, file, encoding, loader, addresses, new Chain(file.name()));
    }

    private Document(String uri, int version, SourceFile file, PositionEncoding encoding, FileLoader loader,
            UnaryOperator<String> addresses, Chain chain) {
        this.uri = uri;
        this.version = version;
        this.file = file;
        this.encoding = encoding;
        this.loader = loader;
        this.addresses = addresses;
        this.positions = new Lazy<>(() -> Positions.of(file.text(), encoding));
        this.chain = chain;
        this.link = chain.next();
        FileLoader noting = noting(loader, usedNames);
        this.analysis = new Lazy<>(() -> Compilation.of(file, noting, chain.editing));
        this.alone = new Lazy<>(() -> Compilation.of(file, noting));
    }

    /** The document after the client's changes, in their order. */
    Document changed(int newVersion, List<TextDocumentContentChangeEvent> changes) {
        String text = file.text();
        boolean first = true;
        for (TextDocumentContentChangeEvent change : changes) {
            if (change.getRange() == null) {
                text = change.getText();
            } else {
                // Nearly always there is one change, and the lines of the text that it is made in are known.
                Positions lines = first ? positions() : Positions.of(text, encoding);
                Positions.Span span = lines.span(change.getRange());
                text = text.substring(0, span.start()) + change.getText() + text.substring(span.end());
            }
            first = false;
        }
        return new Document(uri, newVersion, new SourceFile(file.name(), text), encoding, loader, addresses, chain);
    }

    /** The same text, to be analysed afresh: a file that it uses has changed. */
    Document afresh() {
        return new Document(uri, version, file, encoding, loader, addresses, chain);
    }

    /** What writes this text in another unit and changes no size; looked at apart from the editing. */
    public Optional<List<Edit>> inUnits(Unit unit) {
        return OtherUnits.of(Compilation.of(file, loader), loader, unit);
    }

    /** Its address at the client. */
    public String uri() {
        return uri;
    }

    /** The address of the file called {@code name}: its own, of one that it uses, or of Treen's own patterns. */
    public String address(String name) {
        return name.equals(file.name()) ? uri : addresses.apply(name);
    }

    /** The client's number for this text. */
    public int version() {
        return version;
    }

    /** The text. */
    public SourceFile file() {
        return file;
    }

    /** Between offsets and the client's positions. */
    public Positions positions() {
        return positions.get();
    }

    /** The file that {@code path} in {@code from} means, as this document finds it. */
    public Optional<SourceFile> used(String path, SourceFile from) {
        return path.startsWith(Library.FOLDER) ? Library.tree(path).map(SyntaxTree::file) : loader.load(path, from);
    }

    /** The files beside this one, as `use` names them: in its own folder, and in the folders in that. */
    public List<String> beside() {
        Path folder = Path.of(file.name()).getParent();
        if (file.name().contains("://") || folder == null || !Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder, 2)) {
            return files.filter(path -> path.toString().endsWith(".treen") && !path.toString().equals(file.name()))
                    .map(path -> folder.relativize(path).toString().replace('\\', '/').replaceAll("\\.treen$", ""))
                    .filter(path -> !path.startsWith("."))
                    .sorted()
                    .limit(MOST_BESIDE)
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            return List.of();
        }
    }

    /** Loads, and notes the names of what it found. It knows nothing of the document, which it may outlive. */
    private static FileLoader noting(FileLoader loader, Set<String> usedNames) {
        return (path, from) -> {
            Optional<SourceFile> found = loader.load(path, from);
            found.ifPresent(each -> usedNames.add(each.name()));
            return found;
        };
    }

    /** Whether what is known of it rests on the file called {@code name} too. */
    boolean uses(String name) {
        return usedNames.contains(name);
    }

    /** What the compiler says of it. */
    public Compilation analysis() {
        return chain.reaches(link) ? analysis.get() : alone.get();
    }
}
