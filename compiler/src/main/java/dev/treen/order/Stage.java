package dev.treen.order;

/** The large parts of the work, by which a plan is headed and a calendar is told. */
public enum Stage {
    /** From boards to pieces of the right width and thickness. */
    WOOD("Prepare the wood"),
    /** Grooves, lengths and joints. */
    JOINTS("Cut grooves, lengths and joints"),
    /** Put together dry, and what is made to measure. */
    FITTING("Try it dry, measure and fit"),
    /** The glue-up with all that comes before it. */
    GLUING("Glue up"),
    /** Clean, fit what moves, finish. */
    ENDING("Clean up, fit and finish");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /** What it is called at the head of its steps. */
    public String words() {
        return words;
    }
}
