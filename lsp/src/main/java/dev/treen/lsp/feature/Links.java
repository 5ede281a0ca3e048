package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.DocumentLink;

/** The files that a file uses, to be opened by a click. */
public final class Links {
    /** Makes the links. */
    public Links() {
    }

    /** The links of a document; a file that is not there has none. */
    public List<DocumentLink> of(Document document) {
        List<DocumentLink> links = new ArrayList<>();
        for (Statement statement : document.analysis().tree().statements()) {
            if (statement instanceof Statement.Use(var _, var path, var _)) {
                path.ifPresent(text -> document.used(text.value(), document.file()).ifPresent(file -> {
                    Span at = text.span();
                    DocumentLink link = new DocumentLink(
                            document.positions().range(at.start() + 1, Math.max(at.start() + 1, at.end() - 1)),
                            document.address(file.name()));
                    link.setTooltip("Open " + file.name());
                    links.add(link);
                }));
            }
        }
        return links;
    }
}
