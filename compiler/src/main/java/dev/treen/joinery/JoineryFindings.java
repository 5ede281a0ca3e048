package dev.treen.joinery;

import dev.treen.finding.FindingKind;
import java.util.List;

/** The kinds of finding that making joints raises. */
public final class JoineryFindings {
    /** Parts that are joined and lie apart. */
    public static final FindingKind DO_NOT_MEET = FindingKind.error("parts-do-not-meet",
            "Parts that are joined do not touch");
    /** Parts that are joined and lie in each other. */
    public static final FindingKind OVERLAP = FindingKind.error("parts-overlap",
            "Parts that are joined fill the same space");
    /** A joint whose parts have no place. */
    public static final FindingKind NEEDS_PLACE = FindingKind.error("joint-needs-place",
            "A joint needs to know where its parts lie");
    /** Parts that meet in a way that the joint cannot have. */
    public static final FindingKind MEETS_WRONGLY = FindingKind.error("meets-wrongly",
            "The parts meet in another way than the joint wants");

    /** An overall size that its joints use up. */
    public static final FindingKind NOTHING_SEEN = FindingKind.error("nothing-between-joints",
            "A part's joints take all of its overall size");
    /** A property of a joint that cannot be as it is written. */
    public static final FindingKind DOES_NOT_FIT = FindingKind.error("setting-does-not-fit",
            "A property of a joint does not fit its parts");

    /** A tenon that can be made and should not be made so. */
    public static final FindingKind TENON_PROPORTIONS = FindingKind.warning("tenon-proportions",
            "A tenon or tongue is out of proportion");

    /** Buttons whose tongues draw out of their groove. */
    public static final FindingKind BUTTON_LETS_GO = FindingKind.warning("button-lets-go",
            "A button loses its hold in dry air");

    /** Tails, pins or fingers too thin to cut or to hold. */
    public static final FindingKind TOO_FINE = FindingKind.warning("joint-too-fine",
            "Tails, pins or fingers are too fine to cut or to hold");

    /** A halving of which one part keeps too little. */
    public static final FindingKind HALVING_TOO_DEEP = FindingKind.warning("halving-too-deep",
            "A halving leaves one part too thin");

    /** Dowels that can be bored and should not be so. */
    public static final FindingKind DOWEL_PROPORTIONS = FindingKind.warning("dowel-proportions",
            "Dowels are too thick, too few or too deep");

    /** A loose tongue or a key that leaves too little wood. */
    public static final FindingKind SPLINE_TOO_DEEP = FindingKind.warning("spline-too-deep",
            "A loose tongue or a key leaves too little wood");

    /** A loose tongue with its grain along the joint. */
    public static final FindingKind SPLINE_ALONG = FindingKind.error("spline-along",
            "The grain of a loose tongue runs along the joint");

    private JoineryFindings() {
    }

    /** All of them. */
    public static List<FindingKind> all() {
        return List.of(DO_NOT_MEET, OVERLAP, NEEDS_PLACE, MEETS_WRONGLY, NOTHING_SEEN, DOES_NOT_FIT,
                TENON_PROPORTIONS, BUTTON_LETS_GO, TOO_FINE,
                HALVING_TOO_DEEP, DOWEL_PROPORTIONS, SPLINE_TOO_DEEP, SPLINE_ALONG);
    }
}
