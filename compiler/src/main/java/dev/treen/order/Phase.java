package dev.treen.order;

/** When in the making of a piece an operation comes, in the order of a workshop; an order may mix neighbours. */
public enum Phase {
    /** Boards take on the moisture of the room. */
    REST,
    /** A face and an edge of a board that is to be resawn. */
    FLATTEN,
    /** A thick board becomes leaves. */
    RESAW,
    /** Boards and leaves become strips and rough parts. */
    SAW,
    /** A true face and edge on every piece. */
    TRUE,
    /** Width and thickness. */
    SIZE,
    /** What runs along the grain, while strips are whole. */
    ALONG,
    /** Strips become parts. */
    APART,
    /** Parts get their length. */
    LENGTH,
    /** Joints at ends and across. */
    JOINTS,
    /** Put together dry. */
    TRY,
    /** Openings are measured. */
    MEASURE,
    /** Parts made to what was measured. */
    FITTED,
    /** Inside faces are cleaned and finished. */
    INSIDE,
    /** The glue-up is tried without glue. */
    REHEARSE,
    /** What the glue-up closes in goes to its place, dry. */
    ENCLOSE,
    /** The glue-up. */
    GLUE,
    /** Square, while the glue is wet. */
    SQUARE,
    /** Keys are let into the corners, once the glue has set. */
    KEYED,
    /** Outside faces are cleaned. */
    CLEAN,
    /** What slides, swings or turns is fitted. */
    FIT,
    /** Finish outside. */
    FINISH
}
