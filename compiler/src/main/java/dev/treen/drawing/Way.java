package dev.treen.drawing;

/** A way of looking at a part that lies with its face side to the eye, its face edge below and its grain to the right. */
enum Way {
    /** At the face side. */
    FRONT("face side", Measured.LENGTH, Measured.WIDTH),
    /** At the left end. */
    LEFT("left end", Measured.THICKNESS, Measured.WIDTH),
    /** At the edge away from the face edge. */
    ABOVE("far edge", Measured.LENGTH, Measured.THICKNESS),
    /** At the face edge. */
    BELOW("face edge", Measured.LENGTH, Measured.THICKNESS),
    /** At the right end. */
    RIGHT("right end", Measured.THICKNESS, Measured.WIDTH),
    /** At the side away from the face side. */
    BACK("far side", Measured.LENGTH, Measured.WIDTH);

    private final String caption;
    private final Measured across;
    private final Measured upward;

    Way(String caption, Measured across, Measured upward) {
        this.caption = caption;
        this.across = across;
        this.upward = upward;
    }

    /** What is seen. */
    String caption() {
        return caption;
    }

    /** What lies to the right or to the left on paper. */
    Measured across() {
        return across;
    }

    /** What lies up or down on paper. */
    Measured upward() {
        return upward;
    }

    /** Whether figures across count from the right. */
    boolean fromRight() {
        return this == LEFT || this == BACK;
    }

    /** Whether figures upward count from the top. */
    boolean fromTop() {
        return this == BELOW;
    }
}
