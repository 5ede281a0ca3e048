package dev.treen.lsp;

import dev.treen.finding.Finding;
import dev.treen.finding.Related;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Looks at finished bodies beside the editing, on a thread of its own, when typing has rested for a moment. Until it has,
 * what it said of the version before stands, but for what speaks of statements that have changed since.
 */
final class BodyJobs {
    private static final Logger LOG = Logger.getLogger(BodyJobs.class.getName());
    private static final long REST_MILLIS = 200;

    private final Map<String, Document> asked = new ConcurrentHashMap<>();
    private final Map<String, ScheduledFuture<?>> waiting = new ConcurrentHashMap<>();
    private final Map<String, List<Finding>> shown = new ConcurrentHashMap<>();
    private final ScheduledThreadPoolExecutor worker = new ScheduledThreadPoolExecutor(1,
            Thread.ofPlatform().daemon().name("treen-bodies").stackSize(16L << 20).factory());
    private final Consumer<Document> done;

    /** Jobs that tell {@code done} of each text whose bodies have been looked at. */
    BodyJobs(Consumer<Document> done) {
        worker.setRemoveOnCancelPolicy(true);
        this.done = done;
    }

    /** A text was looked at: its bodies are to be looked at too, unless an edit comes before. */
    void ask(Document document) {
        asked.put(document.uri(), document);
        Compilation analysis = document.analysis();
        try {
            // One waits for each text: a version that has been overtaken is let go at once, with all that it holds.
            ScheduledFuture<?> before = waiting.put(document.uri(),
                    worker.schedule(() -> run(document, analysis), REST_MILLIS, TimeUnit.MILLISECONDS));
            if (before != null) {
                before.cancel(false);
            }
        } catch (RejectedExecutionException over) {
            // The session has ended meanwhile.
            asked.remove(document.uri(), document);
        }
    }

    /** A text has changed: what is being looked at stops, and goes on from there once the new text is asked for. */
    void overtaken(String uri) {
        asked.remove(uri);
    }

    /** What is known of the bodies of a text; empty while nothing is. */
    Optional<List<Finding>> of(Document document) {
        return Optional.ofNullable(shown.get(document.uri()))
                .map(all -> all.stream().filter(each -> standsIn(document, each)).toList());
    }

    /** The text is closed. */
    void forget(String uri) {
        asked.remove(uri);
        shown.remove(uri);
        ScheduledFuture<?> before = waiting.remove(uri);
        if (before != null) {
            before.cancel(false);
        }
    }

    void stop() {
        worker.shutdownNow();
    }

    private boolean isNewest(Document document) {
        return document.equals(asked.get(document.uri()));
    }

    private void run(Document document, Compilation analysis) {
        if (!isNewest(document)) {
            return;
        }
        try {
            List<Finding> found = analysis.bodies(() -> !isNewest(document));
            if (isNewest(document)) {
                shown.put(document.uri(), found);
                done.accept(document);
            }
        } catch (CancellationException overtaken) {
            // The next version goes on from what is remembered.
        } catch (RejectedExecutionException over) {
            // The session has ended meanwhile.
        } catch (RuntimeException | StackOverflowError fault) {
            LOG.log(Level.SEVERE, "A fault in Treen while looking at the bodies of " + document.uri(), fault);
        }
    }

    /** Whether all that a finding points at in this text is still there. */
    private static boolean standsIn(Document document, Finding finding) {
        return isThere(document, finding.at().file())
                && finding.related().stream().map(Related::at).allMatch(at -> isThere(document, at.file()));
    }

    private static boolean isThere(Document document, SourceFile file) {
        return !file.name().equals(document.file().name()) || file.equals(document.file());
    }
}
