package dev.treen.joinery;

import dev.treen.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * One piece of work that a joint asks for, before anything is said of order.
 *
 * @param stage when in the life of a part it comes
 * @param action in the imperative, without the parts: "Plough the groove for base"
 * @param parts dotted names of the parts worked on
 * @param after dotted names of parts that must have been made first, to be measured or scribed from
 * @param tool by kind: plough plane, gauge, mitre shooting board
 * @param settings what is set before it: each with a name and a length, "fence" 5.0
 * @param from the line or face it is worked from
 * @param check what to look at before going on; may be empty
 * @param caution may be empty
 */
public record Work(
        Stage stage,
        String action,
        List<String> parts,
        List<String> after,
        String tool,
        List<GaugeSetting> settings,
        String from,
        String check,
        String caution) {

    /** Keeps its own copies. */
    public Work {
        parts = List.copyOf(parts);
        after = List.copyOf(after);
        settings = List.copyOf(settings);
    }

    /** When in the life of a part a piece of work comes; in the order in which they follow each other. */
    public enum Stage {
        /** Along the grain, while the strip is whole: grooves, rebates on edges. */
        ALONG_STRIP,
        /** At the ends or across, once the part has its length: mitres, end rebates, housings. */
        AFTER_LENGTH,
        /** Small pieces that a joint takes, made of offcuts to fit what has been cut for them. */
        PIECES,
        /** On a part that is sized from what was measured on others: tongues of a base, a lid. */
        AFTER_MEASURING,
        /** Put together with glue. */
        GLUE,
        /** On the piece as it came out of the clamps, before it is cleaned: keys across a glued corner. */
        AFTER_GLUE,
        /** On what was glued up closed and cleaned: a lid is cut free, before anything is hung on it. */
        CUT_FREE,
        /** Put together without glue, or fitted after gluing. */
        FIT,
        /** Put on once what is glued has set: screws, nails, hinges. */
        WHEN_SET
    }

    /** A gauge, fence or stop and the length it is set to. */
    public record GaugeSetting(String name, Length value) {}

    /** Work without an order of its own beyond its stage. */
    public static Work of(Stage stage, String action, List<String> parts, String tool, GaugeSetting... settings) {
        return new Work(stage, action, parts, List.of(), tool, List.of(settings), "", "", "");
    }

    /** The first setting, where there is one. */
    public Optional<GaugeSetting> setting() {
        return settings.stream().findFirst();
    }

    /** A figure that all pairs of a statement share. */
    static Length figure(List<MadeJoint> statement, String name) {
        return figure(statement.getFirst(), name);
    }

    /** A figure of one pair; none counts as zero. */
    static Length figure(MadeJoint made, String name) {
        return made.figure(name).map(f -> f.measure().value()).orElse(Length.ZERO);
    }
}
