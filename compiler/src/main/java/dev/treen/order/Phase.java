package dev.treen.order;

/** When in the making of a piece an operation comes, in the order of a workshop; an order may mix neighbours. */
public enum Phase {
    /** Boards take on the moisture of the room. */
    REST(Stage.WOOD),
    /** A wide or hollow board is ripped before its faces are planed. */
    RIP(Stage.WOOD),
    /** A face and an edge of a board that is to be resawn. */
    FLATTEN(Stage.WOOD),
    /** A thick board becomes leaves. */
    RESAW(Stage.WOOD),
    /** Parts are drawn on boards and leaves. */
    MARK(Stage.WOOD),
    /** Boards and leaves become strips and rough parts. */
    SAW(Stage.WOOD),
    /** A sawn-out piece becomes the leaves of a book. */
    LEAVES(Stage.WOOD),
    /** Staves are glued into the board for a part. */
    STAVES(Stage.WOOD),
    /** A true face and edge on every piece. */
    TRUE(Stage.WOOD),
    /** Width and thickness. */
    SIZE(Stage.WOOD),
    /** What runs along the grain, while strips are whole. */
    ALONG(Stage.JOINTS),
    /** Strips become parts. */
    APART(Stage.JOINTS),
    /** Parts get their length. */
    LENGTH(Stage.JOINTS),
    /** Joints at ends and across. */
    JOINTS(Stage.JOINTS),
    /** Put together dry. */
    TRY(Stage.FITTING),
    /** Openings are measured. */
    MEASURE(Stage.FITTING),
    /** Parts made to what was measured. */
    FITTED(Stage.FITTING),
    /** Faces that are hard to reach later are cleaned and finished. */
    INSIDE(Stage.GLUING),
    /** The glue-up is tried without glue. */
    REHEARSE(Stage.GLUING),
    /** The glue-up. */
    GLUE(Stage.GLUING),
    /** Square, while the glue is wet. */
    SQUARE(Stage.GLUING),
    /** Keys are let into the corners, once the glue has set. */
    KEYED(Stage.GLUING),
    /** Outside faces are cleaned. */
    CLEAN(Stage.ENDING),
    /** A lid is cut free of a box that was glued up closed. */
    FREED(Stage.ENDING),
    /** The opening for a door or a drawer is measured on what is glued. */
    OPENING(Stage.ENDING),
    /** What slides, swings or turns is fitted. */
    FIT(Stage.ENDING),
    /** Finish outside. */
    FINISH(Stage.ENDING),
    /** Hardware goes back, and what was taken apart to be finished goes together. */
    MOUNT(Stage.ENDING),
    /** The finish cures. */
    CURE(Stage.ENDING);

    private final Stage stage;

    Phase(Stage stage) {
        this.stage = stage;
    }

    /** The part of the work that it belongs to. */
    public Stage stage() {
        return stage;
    }

    /** Phases that come in one go are one band: glue, and square while the glue is wet, stage by stage. */
    Phase band() {
        return this == SQUARE ? GLUE : this;
    }
}
