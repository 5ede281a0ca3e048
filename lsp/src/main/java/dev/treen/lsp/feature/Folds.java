package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;

/** What can be folded away: blocks, and comments of several lines. The line that closes a block stays in sight. */
public final class Folds {
    /** Makes the folds. */
    public Folds() {
    }

    /** The folds of a document. */
    public List<FoldingRange> of(Document document) {
        List<FoldingRange> folds = new ArrayList<>();
        blocks(document.file(), document.analysis().tree().statements(), folds);
        comments(document, folds);
        return folds;
    }

    private static void blocks(SourceFile file, List<Statement> statements, List<FoldingRange> into) {
        for (Statement statement : statements) {
            statement.body().ifPresent(block -> {
                fold(file, block.span(), into);
                blocks(file, block.statements(), into);
            });
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(block -> {
                    fold(file, block.span(), into);
                    blocks(file, block.statements(), into);
                });
            }
        }
    }

    private static void fold(SourceFile file, Span block, List<FoldingRange> into) {
        int first = file.lineOf(block.start());
        int last = file.lineOf(block.end()) - 1;
        if (last > first) {
            into.add(new FoldingRange(first, last));
        }
    }

    private static void comments(Document document, List<FoldingRange> into) {
        SourceFile file = document.file();
        Optional<int[]> run = Optional.empty();
        for (Token token : document.analysis().tree().tokens()) {
            boolean comment = token.kind() == Token.Kind.COMMENT || token.kind() == Token.Kind.DOC_COMMENT;
            if (!comment || !file.lineText(file.lineOf(token.start())).stripLeading().startsWith("/")) {
                continue;
            }
            int first = file.lineOf(token.start());
            int last = file.lineOf(token.end());
            if (run.isPresent() && run.get()[1] + 1 == first) {
                run.get()[1] = last;
            } else {
                run.ifPresent(lines -> comment(lines, into));
                run = Optional.of(new int[]{first, last});
            }
        }
        run.ifPresent(lines -> comment(lines, into));
    }

    private static void comment(int[] lines, List<FoldingRange> into) {
        if (lines[1] > lines[0]) {
            FoldingRange fold = new FoldingRange(lines[0], lines[1]);
            fold.setKind(FoldingRangeKind.Comment);
            into.add(fold);
        }
    }
}
