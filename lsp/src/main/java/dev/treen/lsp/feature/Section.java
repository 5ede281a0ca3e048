package dev.treen.lsp.feature;

import com.google.gson.JsonObject;
import org.jspecify.annotations.Nullable;

/** The settings of an editor that are Treen's. */
final class Section {
    private Section() {
    }

    /** Those of all programs come with a section {@code treen}, or that section comes alone; empty where there is none. */
    static JsonObject of(@Nullable Object settings) {
        JsonObject all = object(settings);
        return all.has("treen") ? object(all.get("treen")) : all;
    }

    /** {@code settings} where they are an object; else an empty one. */
    static JsonObject object(@Nullable Object settings) {
        return settings instanceof JsonObject object ? object : new JsonObject();
    }
}
