package dev.treen.lsp.feature;

import com.google.gson.JsonElement;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a plan is built when the editor asks for it: the settings under {@code treen} of an editor.
 *
 * @param paper for which sheets {@code plan.pdf} is laid out, {@code none} where it is left out, as the command line has
 *     them; empty where the project's units decide
 */
public record PlanSettings(Optional<String> paper) {
    /** As the command line builds it. */
    public static final PlanSettings USUAL = new PlanSettings(Optional.empty());

    /** What {@code settings} say: those of all programs, with a section {@code treen}, or that section alone. */
    public static PlanSettings of(@Nullable Object settings) {
        JsonElement paper = Section.of(settings).get("paper");
        return paper == null || !paper.isJsonPrimitive()
                ? USUAL
                : new PlanSettings(Optional.of(paper.getAsString()).filter(word -> !word.isBlank()));
    }
}
