package dev.treen.lsp.stdio;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.Optional;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * What is written on the outside of a message that could not be read, possibly cut short.
 *
 * @param id the number or name of the request or response, where there is one
 * @param method what is asked for, or empty
 * @param response whether it answers a question of ours
 */
record Envelope(Optional<Either<String, Number>> id, String method, boolean response) {

    /** Whether somebody waits for an answer. */
    boolean wantsAnswer() {
        return id.isPresent() && !response;
    }

    /** Reads the outermost members as far as they can be read. Never fails. */
    static Envelope of(String json) {
        Optional<Either<String, Number>> id = Optional.empty();
        String method = "";
        boolean response = false;
        try (JsonReader in = new JsonReader(new StringReader(json))) {
            in.setStrictness(Strictness.LENIENT);
            // Skipping is a loop in this reader, so depth costs heap and no stack.
            in.setNestingLimit(Integer.MAX_VALUE);
            in.beginObject();
            while (in.hasNext()) {
                switch (in.nextName()) {
                    case "id" -> id = id(in);
                    case "method" -> method = in.nextString();
                    case "result", "error" -> {
                        response = true;
                        in.skipValue();
                    }
                    default -> in.skipValue();
                }
            }
        } catch (IOException | IllegalStateException cutShort) {
            // What was found until here is all there is to find.
        }
        return new Envelope(id, method, response);
    }

    private static Optional<Either<String, Number>> id(JsonReader in) throws IOException {
        JsonToken token = in.peek();
        if (token == JsonToken.STRING) {
            return Optional.of(Either.forLeft(in.nextString()));
        }
        if (token == JsonToken.NUMBER) {
            try {
                return Optional.of(Either.forRight(new BigDecimal(in.nextString())));
            } catch (NumberFormatException lenientNumber) {
                return Optional.empty();
            }
        }
        in.skipValue();
        return Optional.empty();
    }
}
