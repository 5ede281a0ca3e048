package dev.treen.wood;

import java.util.Optional;

/**
 * How a number stands against the limits of its rule.
 *
 * @param grade how serious it is
 * @param limit the figure that was crossed; empty when all is fine
 */
public record Verdict(Grade grade, Optional<Figure> limit) {

    /** How serious a crossed limit is; the greater the later. */
    public enum Grade {
        /** Within all limits. */
        FINE,
        /** An unusual proportion. */
        NOTE,
        /** It will show, or relies on luck. */
        WARNING,
        /** It will break, jam, fall out, or cannot be made. */
        ERROR
    }

    /** Nothing was crossed. */
    public static final Verdict FINE = new Verdict(Grade.FINE, Optional.empty());

    /** The worse of two verdicts; the first where both are alike. */
    public Verdict or(Verdict other) {
        return other.grade.compareTo(grade) > 0 ? other : this;
    }

    /** Crossed when {@code value} is less than the figure. */
    static Verdict below(double value, Figure figure) {
        return value < figure.value() ? crossed(figure) : FINE;
    }

    /** Crossed when {@code value} is the figure or less. */
    static Verdict atOrBelow(double value, Figure figure) {
        return value <= figure.value() ? crossed(figure) : FINE;
    }

    /** Crossed when {@code value} is more than the figure. */
    static Verdict above(double value, Figure figure) {
        return value > figure.value() ? crossed(figure) : FINE;
    }

    static Verdict crossed(Figure figure) {
        Grade grade = switch (figure.role()) {
            case ERROR -> Grade.ERROR;
            case WARNING -> Grade.WARNING;
            case NOTE -> Grade.NOTE;
            case CLEARANCE, DEFAULT ->
                throw new IllegalArgumentException(figure.key() + " is not a limit");
        };
        return new Verdict(grade, Optional.of(figure));
    }
}
