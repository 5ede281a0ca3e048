package dev.treen.lsp;

import dev.treen.cutting.Cutting;
import dev.treen.finding.Finding;
import dev.treen.lsp.feature.CodeActions;
import dev.treen.lsp.feature.Diagnostics;
import dev.treen.lsp.feature.HintSettings;
import dev.treen.lsp.feature.PlanSettings;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.plan.Compilation;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.ConfigurationItem;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.ResourceOperationKind;
import org.eclipse.lsp4j.ShowDocumentCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.jsonrpc.CancelChecker;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * Where the work of a session is done. Texts change on the thread that reads messages; all else is worked out on one
 * worker, in the order of arrival, each answer from the version it was asked about. A version that a newer one has
 * overtaken is not analysed for its own sake.
 */
final class Desk {
    private static final Logger LOG = Logger.getLogger(Desk.class.getName());

    private final SessionFiles files = new SessionFiles();
    private final Documents documents = new Documents(files::pattern);
    private final ExecutorService worker = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("treen-analysis").stackSize(16L << 20).factory());
    private final ExecutorService searcher = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("treen-search").stackSize(16L << 20).factory());
    private final Workspace workspace = new Workspace(documents);
    private final Progressing progressing = new Progressing(this::client);
    private final LayoutJobs layouts = new LayoutJobs(progressing, this::laidOut);
    private final BodyJobs bodies = new BodyJobs(this::lookedAt);
    private final CommandRunner commands = new CommandRunner(this);
    private final Refreshes refreshes = new Refreshes(this::client);
    private final Publisher publisher = new Publisher(
            this::client, refreshes, document -> diagnostics().of(document));
    private volatile boolean links;
    private volatile boolean fades;
    private volatile boolean snippets;
    private volatile boolean pictures;
    private volatile CodeActions.Client actions = new CodeActions.Client(false, false);
    private volatile boolean tellsSettings;
    private volatile HintSettings hints = HintSettings.ALL;
    private volatile PlanSettings plans = PlanSettings.USUAL;
    private volatile PositionEncoding encoding = PositionEncoding.UTF16;
    private volatile Diagnostics diagnostics = new Diagnostics(
            PositionEncoding.UTF16, this::findings, this::page, () -> fades);
    private volatile @Nullable LanguageClient client;

    void encoding(PositionEncoding agreed) {
        encoding = agreed;
        documents.encoding(agreed);
        diagnostics = new Diagnostics(agreed, this::findings, this::page, () -> fades);
    }

    void connect(LanguageClient toClient) {
        client = toClient;
    }

    void stop() {
        worker.shutdown();
        searcher.shutdown();
        layouts.stop();
        bodies.stop();
        commands.stop();
        files.delete();
    }

    /** What the client can be asked for. */
    void client(ClientCapabilities can) {
        var window = Optional.ofNullable(can).map(ClientCapabilities::getWindow);
        progressing.shown(window.map(WindowClientCapabilities::getWorkDoneProgress).orElse(false));
        commands.shows(window.map(WindowClientCapabilities::getShowDocument)
                .map(ShowDocumentCapabilities::isSupport).orElse(false));
        var everywhere = Optional.ofNullable(can).map(ClientCapabilities::getWorkspace);
        tellsSettings = everywhere.map(WorkspaceClientCapabilities::getConfiguration).orElse(false);
        refreshes.client(everywhere);
        boolean editsLater = Optional.ofNullable(can).map(ClientCapabilities::getTextDocument)
                .map(TextDocumentClientCapabilities::getCodeAction)
                .map(Desk::resolvesEdits)
                .orElse(false);
        actions = new CodeActions.Client(editsLater, everywhere.map(WorkspaceClientCapabilities::getWorkspaceEdit)
                .map(Desk::createsFiles)
                .orElse(false));
        var told = Optional.ofNullable(can).map(ClientCapabilities::getTextDocument)
                .map(TextDocumentClientCapabilities::getPublishDiagnostics);
        links = told.map(PublishDiagnosticsCapabilities::getCodeDescriptionSupport).orElse(false);
        fades = told.map(PublishDiagnosticsCapabilities::getTagSupport)
                .map(either -> either.map(all -> all, tags -> tags.getValueSet().contains(DiagnosticTag.Unnecessary)))
                .orElse(false);
        snippets = Optional.ofNullable(can).map(ClientCapabilities::getTextDocument)
                .map(TextDocumentClientCapabilities::getCompletion)
                .map(CompletionCapabilities::getCompletionItem)
                .map(CompletionItemCapabilities::getSnippetSupport)
                .orElse(false);
        pictures = Optional.ofNullable(can).map(ClientCapabilities::getTextDocument)
                .map(TextDocumentClientCapabilities::getHover)
                .map(HoverCapabilities::getContentFormat)
                .filter(formats -> formats.contains(MarkupKind.MARKDOWN))
                .isPresent();
    }

    /** Whether the client asks for the edits of an action once the user has chosen it. */
    private static boolean resolvesEdits(CodeActionCapabilities can) {
        return Boolean.TRUE.equals(can.getDataSupport()) && can.getResolveSupport() != null
                && can.getResolveSupport().getProperties().contains("edit");
    }

    private static boolean createsFiles(WorkspaceEditCapabilities can) {
        return Boolean.TRUE.equals(can.getDocumentChanges()) && can.getResourceOperations() != null
                && can.getResourceOperations().contains(ResourceOperationKind.Create);
    }

    /** What the client can be given for an action. */
    CodeActions.Client actions() {
        return actions;
    }

    /** Which hints are wanted. */
    HintSettings hints() {
        return hints;
    }

    /**
     * The settings may have changed: the client is asked for them, or has {@code told} them where it cannot be asked.
     */
    void settings(@Nullable Object told) {
        LanguageClient to = client;
        if (to == null || !tellsSettings) {
            settled(told);
            return;
        }
        ConfigurationItem section = new ConfigurationItem();
        section.setSection("treen");
        var _ = to.configuration(new ConfigurationParams(List.of(section)))
                .thenAccept(all -> settled(all.isEmpty() ? null : all.getFirst()));
    }

    /** Whether the client can be asked for settings. */
    boolean tellsSettings() {
        return tellsSettings;
    }

    private void settled(@Nullable Object told) {
        plans = PlanSettings.of(told);
        hints(HintSettings.of(told));
    }

    /** How plans are built. */
    PlanSettings plans() {
        return plans;
    }

    private void hints(HintSettings wanted) {
        boolean anew = !wanted.equals(hints);
        hints = wanted;
        if (anew) {
            refreshes.hints();
        }
    }

    /** Whether the client shows Markdown in a hover, and so may show a picture. */
    boolean pictures() {
        return pictures;
    }

    /** Whether the client goes from field to field in what is put in. */
    boolean snippets() {
        return snippets;
    }

    Progressing progressing() {
        return progressing;
    }

    /** What this session has written to be shown. */
    SessionFiles files() {
        return files;
    }

    /** Where the page of a finding lies, for a client that follows such links. */
    private Optional<String> page(String code) {
        return links ? files.page(code).map(path -> path.toUri().toString()) : Optional.empty();
    }

    CommandRunner commands() {
        return commands;
    }

    /** The layout of a text, once it is known. */
    Optional<Cutting> layout(Document document) {
        return layouts.of(document);
    }

    /** All that is to be said of a text, with what its bodies and its layout say once that is known. */
    private List<Finding> findings(Document document) {
        Compilation analysis = document.analysis();
        if (documents.find(document.uri()).isEmpty()) {
            return analysis.checked().findings();
        }
        // What was said of the version before moves with its statements, once these are read anew.
        analysis.tree();
        return analysis.findings(
                bodies.of(document), layouts.of(document).map(Cutting::findings).orElse(List.of()));
    }

    /** The client asks what is to be said of its texts. */
    void asked() {
        publisher.asked();
    }

    /** The bodies of a text have been looked at: what they show is published, and asked for by who asks. */
    private void lookedAt(Document document) {
        worker.execute(() -> {
            if (isNewest(document)) {
                publisher.found(document);
            }
        });
    }

    /** A layout is known: what it says is published, and what shows it is asked for again. */
    private void laidOut(Document document) {
        if (!isNewest(document)) {
            return;
        }
        if (layouts.of(document).filter(cutting -> !cutting.findings().isEmpty()).isPresent()) {
            publisher.found(document);
        }
        refreshes.lenses();
    }

    private boolean isNewest(Document document) {
        return documents.find(document.uri()).filter(document::equals).isPresent();
    }

    Documents documents() {
        return documents;
    }

    Workspace workspace() {
        return workspace;
    }

    PositionEncoding encoding() {
        return encoding;
    }

    /** The client, once there is one. */
    Optional<LanguageClient> client() {
        return Optional.ofNullable(client);
    }

    Diagnostics diagnostics() {
        return diagnostics;
    }

    /** A text has changed: it is looked at afresh, and so is every other that uses it. */
    void changed(Document document) {
        bodies.overtaken(document.uri());
        opened(document);
        workspace.afresh();
        List<Document> users = documents.afreshWhereUsed(document.file().name());
        users.forEach(user -> check(user, publisher::found));
        if (!users.isEmpty()) {
            shownElsewhere();
        }
    }

    /** Files on the disk have changed: everything is looked at afresh. */
    void allAfresh() {
        documents.allAfresh();
        workspace.lookAgain();
        workspace.afresh();
        documents.all().forEach(document -> check(document, publisher::found));
        if (!documents.all().isEmpty()) {
            shownElsewhere();
        }
    }

    /**
     * Sizes, lenses and colours of texts that the client did not change itself are others now: it asks for them again.
     */
    private void shownElsewhere() {
        worker.execute(() -> {
            refreshes.hints();
            refreshes.lenses();
            refreshes.colours();
        });
    }

    /** Takes back what was said of a file. */
    void clear(String uri) {
        layouts.forget(uri);
        bodies.forget(uri);
        publisher.forget(uri);
    }

    /** A text is new: it is looked at. */
    void opened(Document document) {
        check(document, publisher::typed);
    }

    private void check(Document document, Consumer<Document> publish) {
        worker.execute(() -> {
            if (!isNewest(document)) {
                return;
            }
            try {
                publish.accept(document);
                bodies.ask(document);
                layouts.ask(document);
            } catch (RuntimeException | StackOverflowError fault) {
                LOG.log(Level.SEVERE, "A fault in Treen while checking " + document.uri(), fault);
            }
        });
    }

    /** What {@code feature} makes of a file, {@code nothing} where the file is not open. */
    <T> CompletableFuture<T> answer(TextDocumentIdentifier file, T nothing, Function<Document, T> feature) {
        Optional<Document> document = documents.find(file.getUri());
        if (document.isEmpty()) {
            return CompletableFuture.completedFuture(nothing);
        }
        return CompletableFutures.computeAsync(worker, (CancelChecker cancel) -> {
            cancel.checkCanceled();
            return feature.apply(document.get());
        });
    }

    /** The same for a feature that has more of its answer later. */
    <T> CompletableFuture<T> answerLater(
            TextDocumentIdentifier file, T nothing, Function<Document, CompletableFuture<T>> feature) {
        return documents.find(file.getUri())
                .map(document -> CompletableFuture.completedFuture(document).thenComposeAsync(feature, worker))
                .orElseGet(() -> CompletableFuture.completedFuture(nothing));
    }

    /** What {@code search} finds for a text, beside the editing; nothing once that has been overtaken. */
    <T> CompletableFuture<List<T>> beside(Document document, Supplier<List<T>> search) {
        return CompletableFuture.supplyAsync(() -> isNewest(document) ? search.get() : List.of(), searcher);
    }

    /** What {@code work} makes of all files. */
    <T> CompletableFuture<T> answer(Supplier<T> work) {
        return CompletableFutures.computeAsync(worker, (CancelChecker cancel) -> {
            cancel.checkCanceled();
            return work.get();
        });
    }

    /** The same where the protocol answers null for nothing; its Java form cannot say so. */
    @SuppressWarnings("NullAway")
    <T> CompletableFuture<T> maybe(TextDocumentIdentifier file, Function<Document, Optional<T>> feature) {
        return answer(file, Optional.<T>empty(), feature).thenApply(found -> found.orElse(null));
    }
}
