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

    /** A screw or nail that comes out of the wood. */
    public static final FindingKind LEAVES_WOOD = FindingKind.error("fastener-leaves-wood",
            "A screw or nail comes out of the wood");
    /** A screw or nail that nearly comes out. */
    public static final FindingKind NEARLY_THROUGH = FindingKind.warning("fastener-nearly-through",
            "A screw or nail nearly comes through");
    /** A screw or nail in a groove, a mortise or another hole. */
    public static final FindingKind HITS_CUT = FindingKind.error("fastener-hits-cut",
            "A screw or nail comes into another joint");
    /** A screw or nail near an end or an edge. */
    public static final FindingKind NEAR_EDGE = FindingKind.warning("fastener-near-edge",
            "A screw or nail is near an end or an edge");
    /** A screw or nail too short to hold. */
    public static final FindingKind GRIPS_LITTLE = FindingKind.warning("fastener-grips-little",
            "A screw or nail hardly grips the second part");
    /** A screw or nail that splits the wood. */
    public static final FindingKind WILL_SPLIT = FindingKind.warning("will-split",
            "A screw or nail is too thick for the wood");

    /** Wedges that split what they are driven in. */
    public static final FindingKind WEDGE_SPLITS = FindingKind.warning("wedge-splits",
            "Wedges press across the grain or near an end");

    /** Hinges let in too deep or not deep enough. */
    public static final FindingKind HINGE_BINDS = FindingKind.warning("hinge-binds",
            "A hinge is let in too deep, or not deep enough");
    /** A leaf that leaves too little wood. */
    public static final FindingKind HINGE_WIDE = FindingKind.warning("hinge-wide",
            "A hinge's leaf leaves hardly any wood beside it");

    /** A batten longer than its board is wide when dry. */
    public static final FindingKind BATTEN_STANDS_OUT = FindingKind.warning("batten-stands-out",
            "A batten stands out of its board when that is dry");
    /** A corner block on end grain. */
    public static final FindingKind BLOCK_END_GRAIN = FindingKind.warning("block-end-grain",
            "A corner block is glued on end grain");

    /** A saw line that something stands in the way of. */
    public static final FindingKind LINE_CUTS = FindingKind.error("lid-line-cuts",
            "The line at which a lid is cut free runs into something");

    /** A joint that is cut into what no tool here cuts. */
    public static final FindingKind BOUGHT_CUT = FindingKind.error("bought-cut",
            "A joint would be cut into a part that is bought ready");

    private JoineryFindings() {
    }

    /** All of them. */
    public static List<FindingKind> all() {
        return List.of(DO_NOT_MEET, OVERLAP, NEEDS_PLACE, MEETS_WRONGLY, NOTHING_SEEN, DOES_NOT_FIT,
                TENON_PROPORTIONS, BUTTON_LETS_GO, TOO_FINE,
                HALVING_TOO_DEEP, DOWEL_PROPORTIONS, SPLINE_TOO_DEEP, SPLINE_ALONG,
                LEAVES_WOOD, NEARLY_THROUGH, HITS_CUT, NEAR_EDGE, GRIPS_LITTLE, WILL_SPLIT,
                WEDGE_SPLITS, HINGE_BINDS, HINGE_WIDE,
                BATTEN_STANDS_OUT, BLOCK_END_GRAIN, LINE_CUTS, BOUGHT_CUT);
    }
}
