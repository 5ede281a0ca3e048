package dev.treen.lsp;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.plan.Lazy;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/**
 * One version of an open file, immutable. The analysis is made when it is first asked for and kept; a later version of
 * the text is another document with an analysis of its own.
 */
public final class Document {
    private final String uri;
    private final int version;
    private final SourceFile file;
    private final PositionEncoding encoding;
    private final FileLoader loader;
    private final Lazy<Positions> positions;
    private final Lazy<Compilation> analysis;

    Document(String uri, int version, SourceFile file, PositionEncoding encoding, FileLoader loader) {
        this.uri = uri;
        this.version = version;
        this.file = file;
        this.encoding = encoding;
        this.loader = loader;
        this.positions = new Lazy<>(() -> Positions.of(file.text(), encoding));
        this.analysis = new Lazy<>(() -> Compilation.of(file, loader));
    }

    /** The document after the client's changes, in their order. */
    Document changed(int newVersion, List<TextDocumentContentChangeEvent> changes) {
        String text = file.text();
        for (TextDocumentContentChangeEvent change : changes) {
            if (change.getRange() == null) {
                text = change.getText();
            } else {
                Positions.Span span = Positions.of(text, encoding).span(change.getRange());
                text = text.substring(0, span.start()) + change.getText() + text.substring(span.end());
            }
        }
        return new Document(uri, newVersion, new SourceFile(file.name(), text), encoding, loader);
    }

    /** The same text, to be analysed afresh: a file that it uses has changed. */
    Document afresh() {
        return new Document(uri, version, file, encoding, loader);
    }

    /** Its address at the client. */
    public String uri() {
        return uri;
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
        return loader.load(path, from);
    }

    /** What the compiler says of it. */
    public Compilation analysis() {
        return analysis.get();
    }
}
