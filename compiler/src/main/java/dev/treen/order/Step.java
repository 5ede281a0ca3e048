package dev.treen.order;

import dev.treen.joinery.Work;
import java.util.List;

/**
 * One thing to do.
 *
 * @param number from 1
 * @param action in the imperative
 * @param parts the parts or boards worked on
 * @param tool by kind
 * @param settings what is set before it
 * @param from the line or face it is worked from; may be empty
 * @param check what to look at before going on; may be empty
 * @param caution may be empty
 * @param because why it comes here; may be empty
 */
public record Step(
        int number,
        String action,
        List<String> parts,
        String tool,
        List<Work.GaugeSetting> settings,
        String from,
        String check,
        String caution,
        String because) {
    /** Keeps its own copies. */
    public Step {
        parts = List.copyOf(parts);
        settings = List.copyOf(settings);
    }
}
