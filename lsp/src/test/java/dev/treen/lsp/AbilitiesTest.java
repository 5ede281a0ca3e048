package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import dev.treen.lsp.position.PositionEncoding;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Nothing is advertised without a handler, and nothing is handled that is not advertised. */
class AbilitiesTest {
    /** The method that answers for an ability, where its name is another. */
    private static final Map<String, String> ANSWERED_BY = Map.ofEntries(
            Map.entry("documentFormatting", "formatting"), Map.entry("documentRangeFormatting", "rangeFormatting"),
            Map.entry("documentOnTypeFormatting", "onTypeFormatting"),
            Map.entry("callHierarchy", "prepareCallHierarchy"),
            Map.entry("semanticTokens", "semanticTokensFull"), Map.entry("workspaceSymbol", "symbol"));
    /** Methods that belong to an ability of another name. */
    private static final Set<String> BESIDES = Set.of("rangesFormatting", "prepareRename", "semanticTokensRange",
            "semanticTokensFullDelta", "callHierarchyIncomingCalls", "callHierarchyOutgoingCalls", "didOpen",
            "didChange", "didClose", "didSave", "resolveCompletionItem", "resolveInlayHint", "resolveCodeAction");

    private static Set<String> handled() {
        return Arrays.stream(TextService.class.getDeclaredMethods())
                .filter(method -> !method.isSynthetic() && java.lang.reflect.Modifier.isPublic(method.getModifiers()))
                .map(method -> method.getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatIsAdvertisedIsHandledAndTheOtherWayRound() {
        JsonObject can = new Gson().toJsonTree(Abilities.in(PositionEncoding.UTF8)).getAsJsonObject();
        Set<String> advertised = can.keySet().stream()
                .filter(key -> key.endsWith("Provider"))
                .map(key -> key.substring(0, key.length() - "Provider".length()))
                .map(key -> ANSWERED_BY.getOrDefault(key, key))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> answered = handled();
        answered.removeAll(BESIDES);
        answered.addAll(Set.of("symbol", "executeCommand"));
        assertThat(answered).isEqualTo(advertised);
        assertThat(advertised.toString().toLowerCase(Locale.ROOT)).contains("rename", "hover");
    }
}
