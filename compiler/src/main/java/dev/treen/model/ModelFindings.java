package dev.treen.model;

import dev.treen.finding.FindingKind;
import java.util.List;

/** The kinds of finding that evaluation raises. */
public final class ModelFindings {
    /** A name that nothing has. */
    public static final FindingKind UNKNOWN_NAME = FindingKind.error("unknown-name", "Nothing has this name");
    /** Two things of one name. */
    public static final FindingKind SAME_NAME = FindingKind.error("same-name", "Two things have the same name");
    /** A value that needs itself. */
    public static final FindingKind GOES_IN_CIRCLES = FindingKind.error("goes-in-circles", "A value depends on itself");
    /** A value of another kind than is wanted. */
    public static final FindingKind WRONG_KIND = FindingKind.error("wrong-kind", "A value of another kind is wanted");
    /** A length added to a count, and the like. */
    public static final FindingKind DO_NOT_ADD_UP = FindingKind.error("do-not-add-up",
            "These values cannot be reckoned together");
    /** A word that a block does not know. */
    public static final FindingKind UNKNOWN_PROPERTY = FindingKind.error("unknown-property",
            "The block has no such property");
    /** A property given twice. */
    public static final FindingKind GIVEN_TWICE = FindingKind.error("given-twice", "A property is given twice");
    /** A property that must be there. */
    public static final FindingKind MISSING_PROPERTY = FindingKind.error("missing-property",
            "A property that is needed is missing");
    /** A statement in a block that has no use for it. */
    public static final FindingKind DOES_NOT_BELONG = FindingKind.error("does-not-belong",
            "The statement does not belong here");
    /** A size of zero or less, or larger than any workshop. */
    public static final FindingKind ABSURD_SIZE = FindingKind.error("absurd-size", "A size is not possible");
    /** A used file that is not there. */
    public static final FindingKind FILE_NOT_FOUND = FindingKind.error("file-not-found", "A used file is not there");
    /** A kind of joint that Treen does not know. */
    public static final FindingKind UNKNOWN_JOINT = FindingKind.error("unknown-joint", "There is no such joint");
    /** A part joined to itself, or {@code to} for {@code into}. */
    public static final FindingKind JOINED_WRONGLY = FindingKind.error("joined-wrongly",
            "The parts of a joint are said in the wrong way");
    /** A number out of the range that it can have. */
    public static final FindingKind OUT_OF_RANGE = FindingKind.error("out-of-range", "A value is out of its range");
    /** More parts than Treen takes. */
    public static final FindingKind TOO_MANY = FindingKind.error("too-many", "There is more than Treen takes at once");
    /** What was measured differs from the plan. */
    public static final FindingKind MEASURED = FindingKind.note("measured", "The wood came out other than planned");
    /** What was measured differs by far. */
    public static final FindingKind MEASURED_FAR_OFF = FindingKind.warning("measured-far-off",
            "What was measured is far from the plan");
    /** A measurement that would change what has been cut. */
    public static final FindingKind ALREADY_MADE = FindingKind.error("already-made",
            "A measurement would change a part that is already cut");
    /** A project that describes nothing. */
    public static final FindingKind EMPTY_PROJECT = FindingKind.error("empty-project", "There are no parts");
    /** A part that is bought ready and yet told how to be made. */
    public static final FindingKind BOUGHT_AND_MADE = FindingKind.error("bought-and-made",
            "A part is bought, and told how to be made");
    /** A requirement that does not hold. */
    public static final FindingKind NOT_MET = FindingKind.error("requirement-not-met", "A requirement does not hold");

    private ModelFindings() {
    }

    /** All of them. */
    public static List<FindingKind> all() {
        return List.of(
                UNKNOWN_NAME,
                SAME_NAME,
                GOES_IN_CIRCLES,
                WRONG_KIND,
                DO_NOT_ADD_UP,
                UNKNOWN_PROPERTY,
                GIVEN_TWICE,
                MISSING_PROPERTY,
                DOES_NOT_BELONG,
                ABSURD_SIZE,
                FILE_NOT_FOUND,
                UNKNOWN_JOINT,
                JOINED_WRONGLY,
                OUT_OF_RANGE,
                TOO_MANY,
                MEASURED,
                MEASURED_FAR_OFF,
                ALREADY_MADE,
                EMPTY_PROJECT,
                BOUGHT_AND_MADE,
                NOT_MET);
    }
}
