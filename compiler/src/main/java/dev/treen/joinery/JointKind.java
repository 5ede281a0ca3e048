package dev.treen.joinery;

import dev.treen.model.JointSchema;
import java.util.List;

/** A kind of joint: all that is known of it in one place. To add one, write a class and name it in {@link JointKinds}. */
public interface JointKind {
    /** How the language writes it. */
    JointSchema schema();

    /** What it does to its two parts. */
    Effect make(Meeting meeting, Surroundings surroundings);

    /** Whether it holds its two parts fast to each other; a panel in its groove is free to move. */
    default boolean holdsFast() {
        return true;
    }

    /** Whether its two parts may be written filling the same space, as bars that cross in a halving. */
    default boolean crosses() {
        return false;
    }

    /**
     * Whether it only fastens parts where their other joints have put them, as screws and nails do. Such joints are made
     * last, and their parts are taken with what the others add.
     */
    default boolean fastens() {
        return false;
    }

    /** When it is made among all joints: first what shapes the parts, then what fastens them, last what cuts them apart. */
    default Turn turn() {
        return fastens() ? Turn.FASTENS : Turn.SHAPES;
    }

    /** When a joint is made. */
    enum Turn {
        /** From the parts as they are written. */
        SHAPES,
        /** From the parts with what other joints add. */
        FASTENS,
        /** When it is known what stands in the saw's way. */
        CUTS_APART
    }

    /** The work of all pairs of one statement, which share their settings. Never empty lists of parts. */
    List<Work> works(List<MadeJoint> statement);
}
