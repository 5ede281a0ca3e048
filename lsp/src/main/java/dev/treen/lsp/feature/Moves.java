package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.Documents;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;

/** A file or folder gets another place: every {@code use} that would lose it, or that moves along with it, is rewritten. */
public final class Moves {
    private static final String ENDING = ".treen";

    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public Moves(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** What has to be written anew in {@code among} before {@code renames} are carried out. */
    public WorkspaceEdit before(List<Document> among, List<FileRename> renames) {
        Places places = new Places(among, encoding);
        Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
        for (Document document : among) {
            for (Statement statement : document.analysis().tree().statements()) {
                if (statement instanceof Statement.Use(var _, var path, var _)) {
                    path.flatMap(text -> edit(document, text, renames, places))
                            .ifPresent(edit -> edits.computeIfAbsent(document.uri(), u -> new ArrayList<>()).add(edit));
                }
            }
        }
        return new WorkspaceEdit(edits);
    }

    private static Optional<TextEdit> edit(
            Document document, Expr.Text text, List<FileRename> renames, Places places) {
        Optional<SourceFile> used = document.used(text.value(), document.file());
        if (used.isEmpty()) {
            return Optional.empty();
        }
        Optional<Path> was = path(document.file().name());
        Optional<Path> target = path(used.get().name());
        if (was.isEmpty() || target.isEmpty()) {
            return Optional.empty();
        }
        Path now = after(was.get(), renames);
        Path targetNow = after(target.get(), renames);
        boolean apart = !folder(now).equals(folder(was.get())) || !targetNow.equals(target.get());
        String written = folder(now).relativize(targetNow).toString().replace('\\', '/');
        boolean spelled = text.value().endsWith(ENDING);
        String better = !spelled && written.endsWith(ENDING)
                ? written.substring(0, written.length() - ENDING.length())
                : written;
        if (!apart || better.equals(text.value()) || better.indexOf('"') >= 0) {
            return Optional.empty();
        }
        Span at = text.span();
        return Optional.of(new TextEdit(places.range(at), '"' + better + '"'));
    }

    /** Where a file lies after the renames, of which one may be a folder that it lies in. */
    private static Path after(Path file, List<FileRename> renames) {
        for (FileRename rename : renames) {
            Optional<Path> from = path(Documents.nameOf(rename.getOldUri()));
            Optional<Path> to = path(Documents.nameOf(rename.getNewUri()));
            if (from.isPresent() && to.isPresent() && file.startsWith(from.get())) {
                Path rest = from.get().relativize(file);
                return rest.toString().isEmpty() ? to.get() : to.get().resolve(rest);
            }
        }
        return file;
    }

    private static Path folder(Path file) {
        return file.resolve("..").normalize();
    }

    /** An absolute path with a folder round it; empty for what lies on no disk. */
    private static Optional<Path> path(String name) {
        try {
            return Optional.of(Path.of(name).normalize()).filter(path -> path.isAbsolute() && path.getParent() != null);
        } catch (InvalidPathException odd) {
            return Optional.empty();
        }
    }
}
