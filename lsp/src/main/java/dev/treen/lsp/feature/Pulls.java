package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentDiagnosticReport;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.RelatedUnchangedDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceUnchangedDocumentDiagnosticReport;

/** Diagnostics that the client asks for, with ids by which it is spared what it knows already. */
public final class Pulls {
    private final Diagnostics diagnostics;

    /** The diagnostics that {@code diagnostics} makes. */
    public Pulls(Diagnostics diagnostics) {
        this.diagnostics = diagnostics;
    }

    /** The report of one file; {@code known} is the id of the report that the client has, or empty. */
    public DocumentDiagnosticReport of(Document document, String known) {
        List<Diagnostic> found = diagnostics.of(document);
        String id = id(found);
        if (id.equals(known)) {
            return new DocumentDiagnosticReport(new RelatedUnchangedDocumentDiagnosticReport(id));
        }
        RelatedFullDocumentDiagnosticReport report = new RelatedFullDocumentDiagnosticReport(found);
        report.setResultId(id);
        return new DocumentDiagnosticReport(report);
    }

    /** The reports of all files; {@code known} has the ids that the client has, by address. */
    public WorkspaceDiagnosticReport of(List<Document> documents, Map<String, String> known) {
        List<WorkspaceDocumentDiagnosticReport> reports = new ArrayList<>();
        for (Document document : documents) {
            List<Diagnostic> found = diagnostics.of(document);
            String id = id(found);
            reports.add(id.equals(known.get(document.uri())) ? unchanged(document, id) : full(document, found, id));
        }
        return new WorkspaceDiagnosticReport(reports);
    }

    /** The version of a file that is not open is 0: the library leaves out the null that the protocol also allows. */
    private static WorkspaceDocumentDiagnosticReport unchanged(Document document, String id) {
        return new WorkspaceDocumentDiagnosticReport(
                new WorkspaceUnchangedDocumentDiagnosticReport(id, document.uri(), document.version()));
    }

    private static WorkspaceDocumentDiagnosticReport full(Document document, List<Diagnostic> found, String id) {
        WorkspaceFullDocumentDiagnosticReport report = new WorkspaceFullDocumentDiagnosticReport(
                found, document.uri(), document.version());
        report.setResultId(id);
        return new WorkspaceDocumentDiagnosticReport(report);
    }

    /** The same for the same diagnostics, in every session. */
    private static String id(List<Diagnostic> found) {
        return UUID.nameUUIDFromBytes(found.toString().getBytes(StandardCharsets.UTF_8)).toString();
    }
}
