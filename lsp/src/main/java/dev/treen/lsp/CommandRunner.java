package dev.treen.lsp;

import com.google.gson.JsonPrimitive;
import dev.treen.cli.Main;
import dev.treen.cli.OutputNames;
import dev.treen.cli.Subcommand;
import dev.treen.cutting.BoardCut;
import dev.treen.lsp.feature.Commands;
import dev.treen.plan.Compilation;
import dev.treen.plan.LayoutSvg;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.ShowDocumentParams;

/** Carries out the {@link Commands}, on a thread of its own; what there is to see, the client is asked to show. */
final class CommandRunner {
    private final Desk desk;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("treen-commands").stackSize(16L << 20).factory());
    private volatile boolean shows;

    CommandRunner(Desk desk) {
        this.desk = desk;
    }

    /** The client said whether it shows documents when asked. */
    void shows(boolean can) {
        shows = can;
    }

    CompletableFuture<Void> run(ExecuteCommandParams params) {
        List<String> arguments = params.getArguments() == null ? List.of()
                : params.getArguments().stream().map(CommandRunner::text).toList();
        return CompletableFuture.runAsync(() -> {
            try {
                carryOut(params.getCommand(), arguments);
            } catch (IOException cannot) {
                say(MessageType.Error, "Treen cannot write: " + cannot.getMessage());
            }
        }, worker);
    }

    void stop() {
        worker.shutdown();
    }

    private static String text(Object argument) {
        return argument instanceof JsonPrimitive written ? written.getAsString() : String.valueOf(argument);
    }

    private void carryOut(String command, List<String> arguments) throws IOException {
        if (command.equals(Commands.BUILD) && !arguments.isEmpty() && arguments.size() <= 2) {
            build(arguments.getFirst(), arguments.stream().skip(1).findFirst().or(desk.plans()::paper));
        } else if (command.equals(Commands.LAYOUT) && arguments.size() == 2) {
            layout(arguments.getFirst(), arguments.getLast());
        } else if (command.equals(Commands.EXPLAIN) && arguments.size() == 1) {
            explain(arguments.getFirst());
        } else {
            say(MessageType.Error, "Treen has no command `" + command + "` with " + arguments.size()
                    + (arguments.size() == 1 ? " argument" : " arguments"));
        }
    }

    /** Builds what is on the disk: the plan must be that of the file beside it. */
    private void build(String uri, Optional<String> paper) throws IOException {
        Path file = Path.of(Documents.nameOf(uri));
        boolean saved = Files.isRegularFile(file) && desk.documents().find(uri)
                .map(document -> desk.documents().onDisk(file)
                        .filter(onDisk -> onDisk.text().equals(document.file().text())).isPresent())
                .orElse(true);
        if (!saved) {
            say(MessageType.Warning, "Save the project first: the plan is made of the file, and lies beside it.");
            return;
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream into = new PrintStream(said, true, StandardCharsets.UTF_8);
        List<String> words = new ArrayList<>(List.of(file.toString()));
        paper.ifPresent(word -> words.addAll(List.of("--paper", word)));
        int exit;
        try (Progressing.Task task = desk.progressing().begin("Building the plan of " + file.getFileName())) {
            exit = Main.build(words, new Subcommand.Streams(new ByteArrayInputStream(new byte[0]), into, into), task);
            if (exit != 0 && task.isStopped()) {
                return;
            }
        }
        if (exit != 0) {
            say(MessageType.Error, "The plan was not built: " + firstLine(said.toString(StandardCharsets.UTF_8)));
            return;
        }
        Path plan = OutputNames.beside(file);
        show(Stream.of("plan.html", "order.md").map(plan::resolve).filter(Files::isRegularFile).findFirst()
                .orElse(plan));
    }

    private static String firstLine(String text) {
        return text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    }

    private void layout(String uri, String board) throws IOException {
        Optional<Document> document = desk.documents().find(uri)
                .filter(open -> !Compilation.hasErrors(open.analysis().quick().findings()));
        if (document.isEmpty()) {
            say(MessageType.Warning, "There is no layout while the project has errors.");
            return;
        }
        Compilation analysis = document.get().analysis();
        for (BoardCut cut : desk.layout(document.get()).orElseGet(analysis::cutting).boards()) {
            if (cut.board().name().equals(board)) {
                show(desk.files().write(OutputNames.layout(cut) + ".svg",
                        LayoutSvg.of(analysis.quick().joined(), cut)));
            }
        }
    }

    private void explain(String code) {
        desk.files().page(code).ifPresentOrElse(
                this::show, () -> say(MessageType.Error, "There is no page of a finding `" + code + "`."));
    }

    private void show(Path file) {
        if (!shows) {
            say(MessageType.Info, "Written: " + file);
            return;
        }
        desk.client().ifPresent(client -> {
            ShowDocumentParams params = new ShowDocumentParams(file.toUri().toString());
            // Pictures and pages are for a viewer, text for the editor.
            params.setExternal(!file.toString().endsWith(".md"));
            params.setTakeFocus(true);
            var _ = client.showDocument(params);
        });
    }

    private void say(MessageType how, String what) {
        desk.client().ifPresent(client -> client.showMessage(new MessageParams(how, what)));
    }
}
