package dev.treen.lsp.feature;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import dev.treen.lsp.Document;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What goes to the client with something that is finished later, and comes back when it is asked for.
 *
 * @param uri the address of the text that it was offered for
 * @param version of that text
 * @param at where in it, as an offset
 */
record Offer(String uri, int version, int at) {
    static Offer of(Document document, int at) {
        return new Offer(document.uri(), document.version(), at);
    }

    /** What a client sent back; nothing where it is none of ours. */
    static Optional<Offer> in(@Nullable Object data) {
        return data instanceof JsonObject all && number(all.get("version")) && number(all.get("at"))
                && all.get("uri") != null && all.get("uri").isJsonPrimitive()
                        ? Optional.of(new Offer(
                                all.get("uri").getAsString(), all.get("version").getAsInt(), all.get("at").getAsInt()))
                        : Optional.empty();
    }

    private static boolean number(@Nullable JsonElement element) {
        return element != null && element.isJsonPrimitive() && element.getAsJsonPrimitive().isNumber();
    }

    JsonObject json() {
        JsonObject all = new JsonObject();
        all.addProperty("uri", uri);
        all.addProperty("version", version);
        all.addProperty("at", at);
        return all;
    }

    /** Whether the text is still the one that it was offered for. */
    boolean isOf(Document document) {
        return version == document.version();
    }
}
