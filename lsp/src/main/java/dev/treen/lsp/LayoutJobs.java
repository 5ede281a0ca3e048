package dev.treen.lsp;

import dev.treen.cli.EarlierPlan;
import dev.treen.cutting.Cutter;
import dev.treen.cutting.Cutting;
import dev.treen.plan.Compilation;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * Lays boards out beside the editing, on a thread of its own. A layout begins when typing has rested for a moment; an edit
 * that changes what it depends on cancels it, any other leaves it alone, and its result serves the new text too.
 */
final class LayoutJobs {
    private static final Logger LOG = Logger.getLogger(LayoutJobs.class.getName());
    private static final long REST_MILLIS = 250;

    private final Map<String, Job> newest = new ConcurrentHashMap<>();
    private final ScheduledThreadPoolExecutor worker = new ScheduledThreadPoolExecutor(1,
            Thread.ofPlatform().daemon().name("treen-layout").stackSize(16L << 20).factory());
    private final Progressing progressing;
    private final Consumer<Document> done;

    /** One layout, for the newest text that it serves. */
    private static final class Job {
        final Object input;
        volatile Document document;
        volatile boolean cancelled;
        volatile @Nullable Cutting result;
        volatile @Nullable ScheduledFuture<?> waiting;

        Job(Object input, Document document) {
            this.input = input;
            this.document = document;
        }
    }

    /**
     * Jobs that tell {@code progressing} how they go, and {@code done} of each text whose layout is known.
     */
    LayoutJobs(Progressing progressing, Consumer<Document> done) {
        worker.setRemoveOnCancelPolicy(true);
        this.progressing = progressing;
        this.done = done;
    }

    /** A text was looked at: its boards are to be laid out, unless that is known or it has errors. */
    void ask(Document document) {
        if (Compilation.hasErrors(document.analysis().quick().findings())) {
            forget(document.uri());
            return;
        }
        Object input = Cutter.input(document.analysis().joined());
        Job before = newest.get(document.uri());
        if (before != null && before.input.equals(input) && !before.cancelled) {
            Cutting known = before.result;
            if (known == null || known.findings().isEmpty()) {
                before.document = document;
                return;
            }
            // What it has to say stands at places of the text before.
        }
        forget(document.uri());
        Job job = new Job(input, document);
        newest.put(document.uri(), job);
        try {
            job.waiting = worker.schedule(() -> run(job), REST_MILLIS, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException over) {
            // The session has ended meanwhile: nobody waits for the layout.
            newest.remove(document.uri(), job);
        }
    }

    /** The layout for this text, once it is known. */
    Optional<Cutting> of(Document document) {
        return Optional.ofNullable(newest.get(document.uri()))
                .filter(job -> job.document.equals(document))
                .flatMap(job -> Optional.ofNullable(job.result));
    }

    /** The text is closed, or nothing can be laid out. */
    void forget(String uri) {
        Job job = newest.remove(uri);
        if (job != null) {
            job.cancelled = true;
            ScheduledFuture<?> waiting = job.waiting;
            if (waiting != null) {
                // What waits holds a whole version; it is let go at once.
                waiting.cancel(false);
            }
        }
    }

    void stop() {
        newest.keySet().forEach(this::forget);
        worker.shutdownNow();
    }

    private void run(Job job) {
        if (job.cancelled) {
            return;
        }
        String address = job.document.file().name().replace('\\', '/');
        String name = address.substring(address.lastIndexOf('/') + 1);
        try (Progressing.Task task = progressing.begin("Laying out the boards of " + name)) {
            Document asked = job.document;
            Cutting cutting = Cutter.cut(
                    asked.analysis().joined(), EarlierPlan.beside(asked.file().name()), task::report,
                    () -> job.cancelled || task.isCancelled());
            if (job.cancelled) {
                return;
            }
            if (!asked.equals(job.document) && !cutting.findings().isEmpty()) {
                ask(job.document);
                return;
            }
            job.result = cutting;
            done.accept(job.document);
        } catch (RuntimeException | StackOverflowError fault) {
            LOG.log(Level.SEVERE, "A fault in Treen while laying out the boards of " + name, fault);
        }
    }
}
