package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holds messages against the protocol as it is published: a JSON Schema made from the type declarations of the npm
 * packages vscode-languageserver-protocol and vscode-languageserver-types, 3.18.5 (MIT), by
 * {@code src/test/protocol/make-schema.mjs}. The library that judges had no part in writing the messages.
 */
public final class ProtocolSchema {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern LENGTH = Pattern.compile("Content-Length: *([0-9]+)");
    private static final ObjectNode RULES = rules();
    private static final Map<String, Schema> READY = new HashMap<>();

    private ProtocolSchema() {
    }

    /** Fails if a message of a session is not as the protocol says. */
    static void check(byte[] client, byte[] server) throws IOException {
        Map<String, String> asked = new HashMap<>();
        List<String> wrong = new ArrayList<>();
        List<JsonNode> ofClient = messages(client);
        List<JsonNode> ofServer = messages(server);
        ofClient.forEach(message -> note("client", message, asked));
        ofServer.forEach(message -> note("server", message, asked));
        ofClient.forEach(message -> wrong.addAll(breaches("server", message, asked)));
        ofServer.forEach(message -> wrong.addAll(breaches("client", message, asked)));
        assertThat(wrong).as("breaches of the protocol").isEmpty();
    }

    private static ObjectNode rules() {
        try (InputStream in = ProtocolSchema.class.getResourceAsStream("protocol.schema.json")) {
            return (ObjectNode) JSON.readTree(Objects.requireNonNull(in));
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static void note(String who, JsonNode message, Map<String, String> asked) {
        if (message.has("id") && message.has("method")) {
            asked.put(who + message.get("id").asText(), message.get("method").asText());
        }
    }

    /** What is wrong with a message; answers are for questions of {@code asker}. */
    private static List<String> breaches(String asker, JsonNode message, Map<String, String> asked) {
        if (message.has("method")) {
            return breaches(message.get("method").asText(), "params", message.get("params"));
        }
        String method = asked.get(asker + message.get("id").asText());
        if (method == null) {
            return List.of("an answer to nothing: " + message);
        }
        if (message.has("error")) {
            boolean whole = message.get("error").get("code").isInt() && message.get("error").get("message").isTextual();
            return whole ? List.of() : List.of("half an error: " + message);
        }
        return message.has("result")
                ? breaches(method, "result", message.get("result"))
                : List.of("an answer without a result: " + message);
    }

    /** What is wrong with the {@code params} or the {@code result} of a message. */
    static synchronized List<String> breaches(String method, String part, JsonNode value) {
        JsonNode rule = RULES.at("/definitions/Messages/properties").path(method).path("properties").path(part);
        if (rule.isMissingNode()) {
            return List.of("the protocol knows no " + method);
        }
        if (rule.has("not")) {
            return List.of();
        }
        if (value == null) {
            return List.of(method + " has no " + part);
        }
        String at = "#/definitions/Messages/properties/" + method.replace("/", "~1") + "/properties/" + part;
        List<Error> errors = READY.computeIfAbsent(at, ProtocolSchema::schema).validate(value);
        return errors.stream().limit(5).map(error -> method + " " + part + ": " + error + " in " + value).toList();
    }

    private static Schema schema(String at) {
        ObjectNode rules = RULES.deepCopy();
        rules.put("$ref", at.replace("$", "%24"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(rules);
    }

    private static List<JsonNode> messages(byte[] bytes) throws IOException {
        List<JsonNode> messages = new ArrayList<>();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        Matcher length = LENGTH.matcher(text);
        for (int at = 0; length.find(at);) {
            int start = text.indexOf("\r\n\r\n", length.start()) + 4;
            int end = start + Integer.parseInt(length.group(1));
            if (end > bytes.length) {
                break;
            }
            messages.add(JSON.readTree(bytes, start, end - start));
            at = end;
        }
        return messages;
    }
}
