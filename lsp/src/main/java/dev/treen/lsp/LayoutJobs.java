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

    /** A text as it was looked at: once it has been overtaken, it would have to be looked at anew to ask it again. */
    private record Served(Document document, Compilation analysis) {}

    /** One layout, for the newest text that it serves. */
    private static final class Job {
        volatile Served serves;
        /** What the layout depends on; nothing before it has begun, when nobody needs to know. */
        volatile @Nullable Object input;
        volatile boolean cancelled;
        volatile @Nullable Cutting result;
        volatile @Nullable ScheduledFuture<?> waiting;

        Job(Served serves) {
            this.serves = serves;
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
        Served asked = new Served(document, document.analysis());
        if (Compilation.hasErrors(asked.analysis().quick().findings())) {
            forget(document.uri());
            return;
        }
        Job before = newest.get(document.uri());
        Object begun = before == null || before.cancelled ? null : before.input;
        if (before != null && begun != null && begun.equals(Cutter.input(asked.analysis().joined()))) {
            Cutting known = before.result;
            if (known == null || known.findings().isEmpty()) {
                before.serves = asked;
                return;
            }
            // What it has to say stands at places of the text before.
        }
        begin(asked);
    }

    private synchronized void begin(Served asked) {
        String uri = asked.document().uri();
        forget(uri);
        Job job = new Job(asked);
        newest.put(uri, job);
        try {
            job.waiting = worker.schedule(() -> run(job), REST_MILLIS, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException over) {
            // The session has ended meanwhile: nobody waits for the layout.
            newest.remove(uri, job);
        }
    }

    private synchronized void beginAgain(Job job) {
        if (!job.cancelled) {
            begin(job.serves);
        }
    }

    /** The layout for this text, once it is known. */
    Optional<Cutting> of(Document document) {
        return Optional.ofNullable(newest.get(document.uri()))
                .filter(job -> job.serves.document().equals(document))
                .flatMap(job -> Optional.ofNullable(job.result));
    }

    /** The text is closed, or nothing can be laid out. */
    synchronized void forget(String uri) {
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
        Served asked = job.serves;
        String address = asked.document().file().name().replace('\\', '/');
        String name = address.substring(address.lastIndexOf('/') + 1);
        try (Progressing.Task task = progressing.begin("Laying out the boards of " + name)) {
            job.input = Cutter.input(asked.analysis().joined());
            Cutting cutting = Cutter.cut(
                    asked.analysis().joined(), EarlierPlan.beside(asked.document().file().name()), task::stands,
                    () -> job.cancelled || task.isStopped());
            if (job.cancelled) {
                return;
            }
            if (!asked.equals(job.serves) && !cutting.findings().isEmpty()) {
                // What it has to say stands at places of the text before, and is worked out for the one that it serves now.
                beginAgain(job);
                return;
            }
            job.result = cutting;
            done.accept(job.serves.document());
        } catch (RuntimeException | StackOverflowError fault) {
            LOG.log(Level.SEVERE, "A fault in Treen while laying out the boards of " + name, fault);
        }
    }
}
