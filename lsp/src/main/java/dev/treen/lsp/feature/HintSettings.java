package dev.treen.lsp.feature;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Which kinds of hint are wanted: the setting {@code treen.inlayHints} of an editor, an object with a truth for each kind.
 * What it does not say is wanted.
 *
 * @param sizes the finished sizes of parts
 * @param values what is left to Treen, and what a sum or a name comes to
 * @param seasons how far a size moves through the year
 * @param units the unit of a bare number
 */
public record HintSettings(boolean sizes, boolean values, boolean seasons, boolean units) {
    /** All of them. */
    public static final HintSettings ALL = new HintSettings(true, true, true, true);

    /** What {@code settings} say: those of all programs, with a section {@code treen}, or that section alone. */
    public static HintSettings of(@Nullable Object settings) {
        JsonObject hints = Section.object(Section.of(settings).get("inlayHints"));
        return new HintSettings(is(hints, "sizes"), is(hints, "values"), is(hints, "seasons"), is(hints, "units"));
    }

    /** What is no truth is not guessed at. */
    private static boolean is(JsonObject hints, String kind) {
        JsonElement said = hints.get(kind);
        return said == null || !said.isJsonPrimitive() || !said.getAsJsonPrimitive().isBoolean() || said.getAsBoolean();
    }
}
