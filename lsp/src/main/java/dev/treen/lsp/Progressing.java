package dev.treen.lsp;

import dev.treen.cli.Course;
import dev.treen.yield.Progress;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkDoneProgressEnd;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;

/** Tells the client how long work goes, where it takes long enough to be told of, and hears when it is to stop. */
final class Progressing {
    private static final long SILENT_NANOS = 400_000_000;
    private static final long BETWEEN_NANOS = 100_000_000;

    private final Supplier<Optional<LanguageClient>> client;
    private final Map<String, Task> running = new ConcurrentHashMap<>();
    private volatile boolean shown;

    Progressing(Supplier<Optional<LanguageClient>> client) {
        this.client = client;
    }

    /** The client said whether it shows progress. */
    void shown(boolean can) {
        shown = can;
    }

    /** The user has had enough of a task. */
    void cancel(String token) {
        Optional.ofNullable(running.get(token)).ifPresent(task -> task.cancelled = true);
    }

    Task begin(String title) {
        return new Task(title);
    }

    /** One piece of long work; the client hears of it when it has lasted a moment. */
    final class Task implements Course, AutoCloseable {
        private final String title;
        private final String token = UUID.randomUUID().toString();
        private final long since = System.nanoTime();
        private long last = since;
        private boolean begun;
        private volatile boolean cancelled;

        private Task(String title) {
            this.title = title;
        }

        @Override
        public boolean isStopped() {
            return cancelled;
        }

        @Override
        public void stands(Progress.Report report) {
            long now = System.nanoTime();
            if (now - since < SILENT_NANOS || (begun && now - last < BETWEEN_NANOS)) {
                return;
            }
            last = now;
            tell(Course.said(report), Optional.of(Course.percent(report)));
        }

        @Override
        public void begins(String step) {
            tell(step, Optional.empty());
        }

        private void tell(String message, Optional<Integer> percent) {
            if (!shown) {
                return;
            }
            if (begun) {
                WorkDoneProgressReport told = new WorkDoneProgressReport();
                told.setCancellable(true);
                percent.ifPresent(told::setPercentage);
                told.setMessage(message);
                say(told);
                return;
            }
            begun = true;
            running.put(token, this);
            client.get().ifPresent(to -> {
                var _ = to.createProgress(new WorkDoneProgressCreateParams(Either.forLeft(token)));
            });
            WorkDoneProgressBegin told = new WorkDoneProgressBegin();
            told.setTitle(title);
            told.setCancellable(true);
            percent.ifPresent(told::setPercentage);
            told.setMessage(message);
            say(told);
        }

        @Override
        public void ends() {
            // The client hears of the end when the task is closed, after what came of it is on the disk.
        }

        @Override
        public void close() {
            if (begun) {
                running.remove(token);
                say(new WorkDoneProgressEnd());
            }
        }

        private void say(WorkDoneProgressNotification what) {
            client.get().ifPresent(to -> to.notifyProgress(
                    new ProgressParams(Either.forLeft(token), Either.forLeft(what))));
        }
    }
}
