package dev.treen.wood;

/**
 * A threshold, clearance, default or constant of a rule, with its origin.
 *
 * @param key the stable name, such as {@code panel-tight.warning}
 * @param rule the number of the rule, such as {@code M-05}
 * @param code the finding the figure belongs to, or empty
 * @param role what the figure does
 * @param value the number, in {@code unit}
 * @param unit the unit as written in the data file
 * @param meaning what the number says, in one phrase
 * @param citation where the number comes from
 */
public record Figure(
        String key, String rule, String code, Role role, double value, String unit, String meaning, Citation citation) {

    /** What a figure does in its rule. */
    public enum Role {
        /** Beyond it the piece breaks, jams, falls out or cannot be made. */
        ERROR,
        /** Beyond it the fault shows, or luck decides. */
        WARNING,
        /** Beyond it a proportion is unusual. */
        NOTE,
        /** Room to leave. */
        CLEARANCE,
        /** A value used where the project is silent, or a constant of the rule. */
        DEFAULT
    }

    Figure withValue(double changed) {
        return new Figure(key, rule, code, role, changed, unit, meaning, Citation.declared());
    }
}
