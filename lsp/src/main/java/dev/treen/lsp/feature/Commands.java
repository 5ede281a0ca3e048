package dev.treen.lsp.feature;

import java.util.List;

/** The commands that the server carries out when the editor asks for them. */
public final class Commands {
    /**
     * Builds the plan of a file, by its address, and shows it. A second word says for which sheets {@code plan.pdf} is laid
     * out, or with {@code none} that it is left out, which is quicker; else the setting {@code treen.paper} says so.
     */
    public static final String BUILD = "treen.build";
    /** Shows how a board is cut: the address of the file, and the name of the board. */
    public static final String LAYOUT = "treen.layout";
    /** Shows the page of a finding, by its code. */
    public static final String EXPLAIN = "treen.explain";
    /** All of them. */
    public static final List<String> ALL = List.of(BUILD, LAYOUT, EXPLAIN);

    private Commands() {
    }
}
