package dev.treen.lsp.feature;

import dev.treen.cutting.CuttingFindings;
import dev.treen.finding.Finding;
import dev.treen.finding.Related;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import dev.treen.model.ModelFindings;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;

/** Findings as the editor's diagnostics. */
public final class Diagnostics {
    /** What is told of with these codes is not heeded: an editor may show it faded. */
    private static final Set<String> NOT_HEEDED = Set.of(
            ModelFindings.GIVEN_TWICE.code(), CuttingFindings.WISH_NAMES_NOTHING.code(), "accept-matches-nothing");

    private final PositionEncoding encoding;
    private final Function<Document, List<Finding>> findings;
    private final Function<String, Optional<String>> pages;
    private final BooleanSupplier fades;

    /**
     * For a client that counts in {@code encoding}.
     *
     * @param findings what there is to say of a document
     * @param pages where the page of a code lies, if the client follows links to it
     * @param fades whether the client shows faded what is not heeded
     */
    public Diagnostics(
            PositionEncoding encoding,
            Function<Document, List<Finding>> findings,
            Function<String, Optional<String>> pages,
            BooleanSupplier fades) {
        this.encoding = encoding;
        this.findings = findings;
        this.pages = pages;
        this.fades = fades;
    }

    /** The findings of a document that lie in its own text. */
    public List<Diagnostic> of(Document document) {
        List<Diagnostic> diagnostics = new ArrayList<>();
        for (Finding finding : findings.apply(document)) {
            if (finding.at().file().equals(document.file())) {
                diagnostics.add(diagnostic(document, finding));
            }
        }
        // A statement for several parts is found at fault once for each; what reads the same is told once.
        return diagnostics.stream().distinct().toList();
    }

    List<Finding> findings(Document document) {
        return findings.apply(document);
    }

    Diagnostic diagnostic(Document document, Finding finding) {
        Diagnostic diagnostic = new Diagnostic(range(document, finding.at()), message(finding));
        diagnostic.setSource("treen");
        diagnostic.setCode(finding.code());
        diagnostic.setSeverity(severity(finding.severity()));
        pages.apply(finding.code()).map(DiagnosticCodeDescription::new).ifPresent(diagnostic::setCodeDescription);
        if (fades.getAsBoolean() && NOT_HEEDED.contains(finding.code())) {
            diagnostic.setTags(List.of(DiagnosticTag.Unnecessary));
        }
        List<DiagnosticRelatedInformation> related = new ArrayList<>();
        for (Related each : finding.related()) {
            Location at = new Location(
                    document.address(each.at().file().name()), range(document, each.at()));
            related.add(new DiagnosticRelatedInformation(at, each.label()));
        }
        diagnostic.setRelatedInformation(related);
        return diagnostic;
    }

    /** Where a span lies for the client. */
    Range range(Document document, Span span) {
        Positions positions = span.file().equals(document.file())
                ? document.positions()
                : Positions.of(span.file().text(), encoding);
        return positions.range(span.start(), span.end());
    }

    /** What, by how much, why, and what to do: read from top to bottom without the excerpt. */
    static String message(Finding finding) {
        StringBuilder text = new StringBuilder(finding.headline());
        if (!finding.found().isEmpty()) {
            text.append('\n').append(finding.found());
        }
        if (!finding.because().isEmpty()) {
            text.append('\n').append(finding.because());
        }
        for (Remedy remedy : finding.remedies()) {
            text.append("\n→ ").append(remedy.text());
        }
        return text.toString();
    }

    private static DiagnosticSeverity severity(Severity severity) {
        return switch (severity) {
            case ERROR -> DiagnosticSeverity.Error;
            case WARNING -> DiagnosticSeverity.Warning;
            case NOTE -> DiagnosticSeverity.Information;
        };
    }
}
