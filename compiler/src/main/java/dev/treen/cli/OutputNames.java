package dev.treen.cli;

import dev.treen.cutting.BoardCut;
import java.nio.file.Path;

/** What the folder of a plan and the files in it are called. */
public final class OutputNames {
    private static final int LONGEST = 80;

    private OutputNames() {
    }

    /** The folder beside a project, where nobody names another. */
    public static Path beside(Path project) {
        String plain = String.valueOf(project.getFileName());
        return project.resolveSibling(plain.replaceFirst("\\.(treen|html?)$", "") + "-plan");
    }

    /** A layout's name, without its ending. */
    public static String layout(BoardCut board) {
        return stem("layout-" + board.name());
    }

    /** File systems have no room for very long names, and shells stumble over blanks and brackets. */
    static String stem(String name) {
        String stem = name.replaceAll("[^\\p{L}\\p{N}_.]+", "-").replaceAll("-+$", "");
        return stem.length() <= LONGEST ? stem : stem.substring(0, LONGEST);
    }
}
