package dev.treen.cutting;

import dev.treen.finding.FindingKind;
import java.util.List;

/** The kinds of finding that laying out parts raises. */
public final class CuttingFindings {
    /** A part for which there is no room. */
    public static final FindingKind NO_ROOM = FindingKind.error("part-fits-no-board",
            "There is no room for a part on the boards");
    /** Parts, and no boards. */
    public static final FindingKind NO_BOARDS = FindingKind.note("no-boards",
            "The project names no boards, so there is no layout");
    /** Boards or parts that no layout can be made of. */
    public static final FindingKind NOT_LAID_OUT = FindingKind.error("boards-not-laid-out",
            "The boards cannot be laid out");
    /** A board that is hard to resaw by hand. */
    public static final FindingKind WIDE_RESAW = FindingKind.warning("resaw-wide",
            "A board is too wide to resaw by hand with ease");

    /** A wish for the layout that names what is not there. */
    public static final FindingKind WISH_NAMES_NOTHING = FindingKind.warning("layout-names-no-part",
            "A wish for the layout names a part that is not there, or names it twice");
    /** Parts that should match and cannot come from one board. */
    public static final FindingKind NO_MATCH = FindingKind.warning("match-from-no-board",
            "No one board gives all parts that should match");

    /** A glue line that does not keep clear of what is cut into its part. */
    public static final FindingKind GLUE_LINE_CUT = FindingKind.warning("glue-line-cut",
            "A glue line lies where joints are cut");

    /** A hollow board that is too thin once it is planed flat as a whole. */
    public static final FindingKind HOLLOW_BOARD = FindingKind.warning("board-too-hollow",
            "A board is too hollow to be planed flat as a whole");

    /** Staves that are wider than was asked for. */
    public static final FindingKind STAVES_TOO_WIDE = FindingKind.warning("staves-too-wide",
            "So few staves are wider than was asked for");

    private CuttingFindings() {
    }

    /** All of them. */
    public static List<FindingKind> all() {
        return List.of(NO_ROOM, NO_BOARDS, NOT_LAID_OUT, WIDE_RESAW, WISH_NAMES_NOTHING, NO_MATCH,
                GLUE_LINE_CUT, HOLLOW_BOARD, STAVES_TOO_WIDE);
    }
}
