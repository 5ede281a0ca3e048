package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.jsonrpc.services.JsonNotification;
import org.eclipse.lsp4j.jsonrpc.services.JsonRequest;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Nothing is handled that no session has asked for: one session here sends everything that the server handles. */
@Timeout(180)
class EveryMethodTest {
    private static final String URI = "file:///nowhere/everything.treen";
    private static final String FILE = "\"textDocument\":{\"uri\":\"" + URI + "\"}";
    private static final String AT = FILE + ",\"position\":{\"line\":1,\"character\":6}";
    private static final String SPAN = "{\"start\":{\"line\":0,\"character\":0},\"end\":{\"line\":1,\"character\":0}}";
    private static final String TABS = ",\"options\":{\"tabSize\":2,\"insertSpaces\":true}";
    private static final String ITEM = "\"item\":{\"name\":\"a\",\"kind\":13,\"uri\":\"" + URI + "\",\"range\":" + SPAN
            + ",\"selectionRange\":" + SPAN + "}";

    /** What is sent with each. */
    private static final Map<String, String> PARAMS = new TreeMap<>(Map.ofEntries(
            Map.entry("initialized", ""),
            Map.entry("textDocument/didChange", "\"textDocument\":{\"uri\":\"" + URI
                    + "\",\"version\":2},\"contentChanges\":[{\"text\":\"let a = 1\\npart b { length a }\\n\"}]"),
            Map.entry("textDocument/didSave", FILE),
            Map.entry("textDocument/didClose", FILE),
            Map.entry("textDocument/documentSymbol", FILE),
            Map.entry("textDocument/codeLens", FILE),
            Map.entry("textDocument/documentLink", FILE),
            Map.entry("textDocument/foldingRange", FILE),
            Map.entry("textDocument/diagnostic", FILE),
            Map.entry("textDocument/semanticTokens/full", FILE),
            Map.entry("textDocument/semanticTokens/full/delta", FILE + ",\"previousResultId\":\"0\""),
            Map.entry("textDocument/semanticTokens/range", FILE + ",\"range\":" + SPAN),
            Map.entry("textDocument/inlayHint", FILE + ",\"range\":" + SPAN),
            Map.entry("textDocument/codeAction", FILE + ",\"range\":" + SPAN + ",\"context\":{\"diagnostics\":[]}"),
            Map.entry("textDocument/formatting", FILE + TABS),
            Map.entry("textDocument/rangeFormatting", FILE + ",\"range\":" + SPAN + TABS),
            Map.entry("textDocument/rangesFormatting", FILE + ",\"ranges\":[" + SPAN + "]" + TABS),
            Map.entry("textDocument/onTypeFormatting", AT + ",\"ch\":\"}\"" + TABS),
            Map.entry("textDocument/selectionRange", FILE + ",\"positions\":[{\"line\":1,\"character\":6}]"),
            Map.entry("textDocument/references", AT + ",\"context\":{\"includeDeclaration\":true}"),
            Map.entry("textDocument/rename", AT + ",\"newName\":\"c\""),
            Map.entry("completionItem/resolve", "\"label\":\"part\""),
            Map.entry("codeAction/resolve", "\"title\":\"Nothing\""),
            Map.entry("inlayHint/resolve", "\"position\":{\"line\":0,\"character\":0},\"label\":\"1\""),
            Map.entry("callHierarchy/incomingCalls", ITEM),
            Map.entry("callHierarchy/outgoingCalls", ITEM),
            Map.entry("workspace/symbol", "\"query\":\"a\""),
            Map.entry("workspace/diagnostic", "\"previousResultIds\":[]"),
            Map.entry("workspace/executeCommand", "\"command\":\"treen.explain\",\"arguments\":[\"same-name\"]"),
            Map.entry("workspace/willRenameFiles", "\"files\":[]"),
            Map.entry("workspace/didChangeConfiguration", "\"settings\":{}"),
            Map.entry("workspace/didChangeWatchedFiles", "\"changes\":[]"),
            Map.entry("workspace/didChangeWorkspaceFolders", "\"event\":{\"added\":[],\"removed\":[]}"),
            Map.entry("window/workDoneProgress/cancel", "\"token\":\"none\"")));
    /** Asked with a place, as most are. */
    private static final Set<String> AT_A_PLACE = Set.of("textDocument/completion", "textDocument/hover",
            "textDocument/definition", "textDocument/declaration", "textDocument/typeDefinition",
            "textDocument/implementation", "textDocument/documentHighlight", "textDocument/linkedEditingRange",
            "textDocument/prepareRename", "textDocument/signatureHelp", "textDocument/prepareCallHierarchy");
    /** Begin and end the session. */
    private static final Set<String> AROUND = Set.of("initialize", "shutdown", "exit", "textDocument/didOpen");

    /** What the server handles, by the name in the protocol; whether it is answered. */
    private static Map<String, Boolean> handled() {
        Map<String, Boolean> all = new TreeMap<>();
        add(all, LanguageServer.class, TreenServer.class, "");
        add(all, TextDocumentService.class, TextService.class, "textDocument/");
        add(all, WorkspaceService.class, WorkspaceFiles.class, "workspace/");
        return all;
    }

    private static void add(Map<String, Boolean> all, Class<?> protocol, Class<?> ours, String segment) {
        Set<String> own = Arrays.stream(ours.getDeclaredMethods())
                .filter(method -> !method.isSynthetic() && Modifier.isPublic(method.getModifiers()))
                .map(Method::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        for (Method method : protocol.getMethods()) {
            Optional<JsonRequest> request = Optional.ofNullable(method.getAnnotation(JsonRequest.class));
            Optional<JsonNotification> told = Optional.ofNullable(method.getAnnotation(JsonNotification.class));
            if (own.contains(method.getName()) && (request.isPresent() || told.isPresent())) {
                String value = request.map(JsonRequest::value).orElseGet(() -> told.orElseThrow().value());
                boolean in = request.map(JsonRequest::useSegment).orElseGet(() -> told.orElseThrow().useSegment());
                all.put((in ? segment : "") + (value.isEmpty() ? method.getName() : value), request.isPresent());
            }
        }
    }

    @Test
    void everythingThatIsHandledIsAsked() {
        Map<String, Boolean> handled = handled();
        Set<String> known = new TreeSet<>(PARAMS.keySet());
        known.addAll(AT_A_PLACE);
        known.addAll(AROUND);
        assertThat(known).as("what this test sends").isEqualTo(handled.keySet());
        try (RawClient client = new RawClient()) {
            client.send(
                    message(Optional.of(1), "initialize", "\"processId\":null,\"rootUri\":null,\"capabilities\":{}"));
            assertThat(client.answerTo("1").has("result")).isTrue();
            client.send(message(Optional.empty(), "textDocument/didOpen", "\"textDocument\":{\"uri\":\"" + URI
                    + "\",\"languageId\":\"treen\",\"version\":1,\"text\":\"let a = 1\\npart b { length a }\\n\"}"));
            int id = 10;
            for (Map.Entry<String, Boolean> each : handled.entrySet()) {
                String method = each.getKey();
                if (AROUND.contains(method) || method.equals("textDocument/didClose")) {
                    continue;
                }
                id++;
                client.send(message(each.getValue() ? Optional.of(id) : Optional.empty(), method,
                        PARAMS.getOrDefault(method, AT)));
                if (each.getValue()) {
                    JsonObject answer = client.answerTo(String.valueOf(id));
                    assertThat(answer.has("result")).as("%s: %s", method, answer).isTrue();
                }
            }
            client.send(message(Optional.empty(), "textDocument/didClose", FILE));
            client.send("{\"jsonrpc\":\"2.0\",\"id\":5,\"method\":\"shutdown\"}");
            assertThat(client.answerTo("5").get("result").isJsonNull()).isTrue();
            client.send("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
            assertThat(client.server.awaitExit()).isZero();
        }
    }

    private static String message(Optional<Integer> id, String method, String params) {
        return "{\"jsonrpc\":\"2.0\"," + id.map(number -> "\"id\":" + number + ",").orElse("") + "\"method\":\""
                + method
                + "\",\"params\":{" + params + "}}";
    }
}
