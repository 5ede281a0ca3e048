package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowDocumentParams;
import org.eclipse.lsp4j.ShowDocumentResult;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.services.LanguageClient;

/** The editor's end: says yes to what the server asks, and keeps it for the tests to look at. */
public final class EditorClient implements LanguageClient {
    private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
    private final Map<String, PublishDiagnosticsParams> newest = new HashMap<>();

    /** Registrations, as they come. */
    public final BlockingQueue<RegistrationParams> registrations = new LinkedBlockingQueue<>();
    /** Progress, as it comes. */
    public final BlockingQueue<ProgressParams> progress = new LinkedBlockingQueue<>();
    /** Documents to be shown, as they come. */
    public final BlockingQueue<ShowDocumentParams> shown = new LinkedBlockingQueue<>();
    /** Messages to the user, as they come. */
    public final BlockingQueue<MessageParams> messages = new LinkedBlockingQueue<>();
    /** Which refreshes were asked for, as they come. */
    public final BlockingQueue<String> refreshed = new LinkedBlockingQueue<>();

    /** What refreshes are answered with: at once, unless a test holds it back. */
    public volatile CompletableFuture<Void> refreshAnswer = CompletableFuture.completedFuture(null);

    /** What the user has set under `treen`. */
    public volatile Object settings = new com.google.gson.JsonObject();

    EditorClient() {
    }

    @Override
    public CompletableFuture<List<Object>> configuration(ConfigurationParams params) {
        return CompletableFuture.completedFuture(
                params.getItems().stream().map(item -> "treen".equals(item.getSection()) ? settings : null).toList());
    }

    /** Waits for the diagnostics of {@code version}. */
    List<Diagnostic> published(String uri, int version) throws InterruptedException {
        while (!newest.containsKey(uri) || !Integer.valueOf(version).equals(newest.get(uri).getVersion())) {
            nextPublished();
        }
        return newest.get(uri).getDiagnostics();
    }

    /** Waits for whatever diagnostics come next. */
    public PublishDiagnosticsParams nextPublished() throws InterruptedException {
        PublishDiagnosticsParams got = next(published);
        newest.put(got.getUri(), got);
        return got;
    }

    /** Whether diagnostics have come that nobody has looked at. */
    public boolean hasPublished() {
        return !published.isEmpty();
    }

    /** Waits for the next of {@code queue}. */
    public static <T> T next(BlockingQueue<T> queue) throws InterruptedException {
        T got = queue.poll(60, TimeUnit.SECONDS);
        assertThat(got).as("something within a minute").isNotNull();
        return got;
    }

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
        published.add(diagnostics);
    }

    @Override
    public void telemetryEvent(Object object) {
        throw new AssertionError("Treen sends no telemetry");
    }

    @Override
    public void showMessage(MessageParams message) {
        messages.add(message);
    }

    @Override
    public void logMessage(MessageParams message) {
        messages.add(message);
    }

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
        return CompletableFuture.failedFuture(new UnsupportedOperationException("nobody to ask"));
    }

    @Override
    public CompletableFuture<Void> registerCapability(RegistrationParams params) {
        registrations.add(params);
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams params) {
        return CompletableFuture.completedFuture(new ApplyWorkspaceEditResponse(true));
    }

    @Override
    public CompletableFuture<Void> createProgress(WorkDoneProgressCreateParams params) {
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void notifyProgress(ProgressParams params) {
        progress.add(params);
    }

    @Override
    public CompletableFuture<ShowDocumentResult> showDocument(ShowDocumentParams params) {
        shown.add(params);
        return CompletableFuture.completedFuture(new ShowDocumentResult(true));
    }

    @Override
    public CompletableFuture<Void> refreshSemanticTokens() {
        return refreshed("tokens");
    }

    @Override
    public CompletableFuture<Void> refreshCodeLenses() {
        return refreshed("lenses");
    }

    @Override
    public CompletableFuture<Void> refreshInlayHints() {
        return refreshed("hints");
    }

    @Override
    public CompletableFuture<Void> refreshDiagnostics() {
        return refreshed("diagnostics");
    }

    private CompletableFuture<Void> refreshed(String what) {
        refreshed.add(what);
        return refreshAnswer;
    }
}
