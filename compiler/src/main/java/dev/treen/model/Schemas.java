package dev.treen.model;

import static dev.treen.model.PropertySchema.needed;
import static dev.treen.model.PropertySchema.optional;
import static dev.treen.model.PropertySchema.repeated;

import dev.treen.model.Shape.Inner;
import dev.treen.model.Shape.OneOf;
import dev.treen.model.Shape.Plain;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** The schema of every block but the joints', whose own classes declare theirs. */
public final class Schemas {
    /** Room air through the year. */
    public static final BlockSchema CLIMATE = new BlockSchema(
            "climate",
            "The air of the room where the piece will live, through the year. It decides how much the wood moves."
                    + " Outside the project block it has a name, `climate shed { … }`, and parts live in it by"
                    + " `room shed`.",
            "climate { humidity 35%..65%; temperature 18degC..24degC }",
            List.of(
                    needed("humidity", Plain.PERCENT_RANGE,
                            "Relative humidity, from the driest month to the dampest, or month by month."),
                    needed("temperature", Plain.TEMPERATURE_RANGE,
                            "From the coldest to the warmest, or month by month.")));

    /** A wood of the project's own. */
    public static final BlockSchema WOOD = new BlockSchema(
            "species",
            "A wood that the tables do not hold, or that was measured; boards then name it as their species.",
            "species bog_oak { shrinkage 8.9%, 4.5%; gravity 0.72 }",
            List.of(
                    optional("shrinkage", Plain.PAIR, "by `movement`",
                            "The whole shrinkage from green to ovendry, along the rings and across them, in percent."),
                    optional("movement", Plain.PAIR, "by `shrinkage`",
                            "The change for each 1 % of moisture, along the rings and across them, as a fraction."),
                    optional("gravity", Plain.NUMBER, "not known", "Specific gravity at 12 % moisture, for weights."),
                    optional("stiffness", Plain.NUMBER, "not known", "Modulus of elasticity in GPa, for sag.")));

    /** Which faces may be finished. */
    static final List<String> FINISHES = List.of("both", "one", "none");

    /** What saw and plane take. */
    public static final BlockSchema ALLOW = new BlockSchema(
            "allow",
            "What sawing and planing take. A board or part may overrule the project's.",
            "allow { kerf 1; shooting 0.5; planing 0.5; resaw 1; end_waste 15 }",
            List.of(
                    optional("kerf", Plain.LENGTH, "1.2 by hand, 3.2 by machine", "What the saw takes at each cut."),
                    optional("shooting", Plain.LENGTH, "0.5", "Left on each end for the shooting board."),
                    optional("planing", Plain.LENGTH, "0.5 by hand, 1 by machine",
                            "Left on each edge and face to plane."),
                    optional("resaw", Plain.LENGTH, "1", "Left on each resawn face to flatten and smooth."),
                    optional("end_waste", Plain.LENGTH, "15", "Not used at each end of an uncut board.")));

    static final List<String> CLASSES = List.of("fine", "medium", "coarse", "very_coarse");

    /** How exactly things are made. */
    public static final BlockSchema TOLERANCE = new BlockSchema(
            "tolerance",
            "How exactly things come out, each plus or minus. Said here, a clearance has to stand all of them at once, in"
                    + " every month, and what is left `auto` leaves room for that and no more. A part may have its own;"
                    + " what it does not say is as the project says.",
            "tolerance { length 0.1; width 0.2; thickness 0.1; depth 0.1 }",
            List.of(
                    optional("class", new OneOf(CLASSES), "each as below",
                            "A class of general tolerances by ISO 2768-1, which knows how much by the size. Written for"
                                    + " metal; `medium` is fair for what has to fit and `coarse` for the rest (common"
                                    + " practice, no source). Single figures beside it count before it."),
                    optional("length", Plain.LENGTH, "0.2 by hand, 0.15 by machine", "Of lengths, sawn and shot."),
                    optional("width", Plain.LENGTH, "0.2 by hand, 0.15 by machine", "Of widths."),
                    optional("thickness", Plain.LENGTH, "0.2 by hand, 0.1 by machine", "Of thicknesses."),
                    optional("depth", Plain.LENGTH, "0.1", "Of grooves and housings, by a gauge or a stop."),
                    optional("measured", Plain.LENGTH, "0.2", "Of what is measured on the piece as made.")));

    /** A saw. */
    public static final BlockSchema SAW = new BlockSchema(
            "saw",
            "A saw of the shop: what it takes and how deep it reaches. The block of a project names the one it uses.",
            "saw tenon_saw { kerf 0.6; depth 60 }",
            List.of(
                    needed("kerf", Plain.LENGTH, "What it takes at each cut."),
                    optional("depth", Plain.LENGTH, "any", "How thick a piece it goes through.")));

    /** The words of the language for the members of an enum. */
    static List<String> words(Enum<?>[] values) {
        return Stream.of(values).map(each -> each.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** How a part lies on a sheet. */
    static final List<String> GRAIN = List.of("along", "any");
    /** A mark that is there or not. */
    static final List<String> YES_NO = List.of("yes", "no");

    /** When boards that are offcuts are taken. */
    static final List<String> OFFCUTS = List.of("first", "alike");

    /** Whether thick boards are resawn. */
    static final List<String> RESAW = List.of("auto", "never");

    /** What the author wants of the layout. */
    public static final BlockSchema LAYOUT = new BlockSchema(
            "layout",
            "What the cutting layout keeps to, beyond runs of grain and that every part has its place: parts that match, and"
                    + " offcuts that are used up.",
            "layout { matched door_left, door_right; offcuts first; keep 200 x 50 }",
            List.of(
                    repeated("matched", Plain.PARTS,
                            "Parts that come from one board, whichever it is, so that colour and figure match."),
                    repeated("bookmatch", Plain.PARTS,
                            "Two parts of one size that are two leaves of one piece, opened like a book, so that the figure"
                                    + " of one is the other's in a mirror. May stand more than once."),
                    optional("resaw", new OneOf(RESAW), "auto",
                            "Whether thick boards are sawn into leaves where that saves wood."),
                    optional("labour", Plain.PERCENT, "10%",
                            "What each resaw cut counts for beside the wood, as a share of what its board costs, or of its"
                                    + " area where not every board has a price. A board is resawn only where that saves"
                                    + " more."),
                    optional("offcuts", new OneOf(OFFCUTS), "alike",
                            "Whether boards marked `offcut yes` are taken before whole ones."),
                    repeated("takes", Plain.FLAWS,
                            "The flaws that every part may have in it that says nothing of its own, away from joints."),
                    optional("keep", Plain.SIZE_2, "150mm x 40mm",
                            "The least leftover worth keeping, along the grain and across it."),
                    optional("steady", Plain.PERCENT, "2%",
                            "How much more wood, by price or area, the layout of the last plan may take than one made anew"
                                    + " before parts are moved. `0%` moves them for any gain."),
                    optional("plain", Plain.PERCENT, "0%",
                            "How much of the largest leftover may be given for less work at the saw. Of layouts that keep as"
                                    + " much of it, the one with fewer saw cuts, settings of fence and stop, and turns from"
                                    + " ripping to crosscutting is taken; a further large leftover counts as much as a"
                                    + " cut.")));

    /** What things besides boards cost. */
    public static final BlockSchema WARE_PRICE = new BlockSchema(
            "price of supplies",
            "What glue, finish or hardware costs, as it is sold. Say one of these. In what money the project says with"
                    + " `currency`; Treen changes no money.",
            "price { litre 24 }",
            List.of(
                    optional("each", Plain.NUMBER, "by another", "For a piece; with `pack`, for a whole one."),
                    optional("litre", Plain.NUMBER, "by another", "For a litre."),
                    optional("kilogram", Plain.NUMBER, "by another",
                            "For a kilogram; then `weighs` says what a litre weighs.")));

    private static final PropertySchema WARE_PRICED = optional(
            "price", new Inner(WARE_PRICE), "not known", WARE_PRICE.doc());
    private static final PropertySchema BOTTLE = optional("pack", Plain.NUMBER, "as much as is wanted",
            "How much a bottle or can holds, in millilitres; then whole ones are bought.");
    private static final PropertySchema WEIGHS = optional("weighs", Plain.NUMBER, "not known",
            "What a litre weighs, in kilograms; for a price by weight.");

    /** The finishes of {@code finishes.csv}. */
    public static final List<String> FINISH_KINDS = List.of(
            "drying_oil", "wiping_varnish", "brushed_varnish", "shellac");

    /** The glue. */
    public static final BlockSchema GLUE = new BlockSchema(
            "glue",
            "What the joints are glued with, for its cost. Outside the project block it has a name, `glue bottle { … }`, and"
                    + " the project says `glue bottle`.",
            "glue { pack 500; price { each 8.90 } }",
            List.of(WARE_PRICED, BOTTLE, WEIGHS));

    /** The finish. */
    public static final BlockSchema FINISH = new BlockSchema(
            "finish",
            "What the piece is finished with: then the plan reckons this one alone. Outside the project block it has a name,"
                    + " `finish can { … }`, and the project says `finish can`. It does not change how much the wood moves.",
            "finish { kind shellac; price { litre 31 } }",
            List.of(needed("kind", new OneOf(FINISH_KINDS), "Which of those that the plan knows the coverage of."),
                    WARE_PRICED, BOTTLE, WEIGHS));

    /** What joints take, one each. */
    public static final List<String> HARDWARE_KINDS = List.of("screw", "nail", "hinge", "dowel", "button");

    /** A piece of hardware. */
    public static final BlockSchema HARDWARE = new BlockSchema(
            "hardware",
            "Something to be bought. With `kind` it is what joints take, of all sizes or only of those it says, and has a"
                    + " price; the joints say how many. Without one it is something that no joint takes, as a knob.",
            "hardware brass_hinge { kind hinge; long 40; price { each 3.40 } }",
            List.of(
                    optional("kind", new OneOf(HARDWARE_KINDS), "none: no joint takes it", "What takes it."),
                    optional("thick", Plain.LENGTH, "any", "Only those that are so thick."),
                    optional("long", Plain.LENGTH, "any", "Only those that are so long."),
                    optional("count", Plain.COUNT, "as many as joints take", "How many, of what no joint takes."),
                    WARE_PRICED,
                    optional("pack", Plain.NUMBER, "sold singly", "How many are in a packet; whole ones are bought.")));

    /** The project. */
    public static final BlockSchema PROJECT = new BlockSchema(
            "project",
            "What holds for the whole project.",
            "project \"Tea caddy\" { units mm; tools hand }",
            List.of(
                    optional("units", new OneOf(List.of("mm", "cm", "in")), "mm",
                            "What a bare number means where a length is wanted."),
                    optional("currency", Plain.TEXT, "not said",
                            "The money of all prices, as it is written before a sum."),
                    optional("glue", new Shape.Named(GLUE), "not said", GLUE.doc()),
                    optional("finish", new Shape.Named(FINISH), "any of those known", FINISH.doc()),
                    optional("climate", new Inner(CLIMATE), "30%..60% at 18degC..24degC", CLIMATE.doc()),
                    optional("tools", new OneOf(List.of("hand", "machine")), "hand",
                            "Chooses the usual allowances and cautions."),
                    optional("saw", Plain.SAW, "the kerf of `allow`",
                            "The saw that cuts the parts, declared with `saw`."),
                    optional("allow", new Shape.Named(ALLOW), "by `tools`", ALLOW.doc()),
                    optional("tolerance", new Inner(TOLERANCE), "by `tools`", TOLERANCE.doc()),
                    optional("layout", new Inner(LAYOUT), "none", LAYOUT.doc())));

    private static final PropertySchema FACE = optional(
            "face", new OneOf(Defect.Face.words()), "both",
            "Where it is seen: on the `upper` face, from which places are measured, on the `under` one, or on `both`.");

    /** A round flaw. */
    public static final BlockSchema DISC = new BlockSchema(
            "knot",
            "A round flaw that parts keep clear of, or take.",
            "knot { at 310, 45; radius 14 }",
            List.of(
                    needed("at", Plain.POINT_2, "Its middle, from the left end and the near edge."),
                    needed("radius", Plain.LENGTH, "How far it reaches."),
                    FACE));

    /** A line flaw. */
    public static final BlockSchema LINE = new BlockSchema(
            "check",
            "A split along a line.",
            "check { from 0, 118; to 70, 126 }",
            List.of(
                    needed("from", Plain.POINT_2, "Where it begins, from the left end and the near edge."),
                    needed("to", Plain.POINT_2, "Where it ends."),
                    optional("width", Plain.LENGTH, "1", "How wide it is."),
                    FACE));

    /** A rectangular flaw. */
    public static final BlockSchema PATCH = new BlockSchema(
            "sapwood",
            "A rectangle that parts keep clear of, or take.",
            "sapwood { at 0, 120; size 900 x 20 }",
            List.of(
                    needed("at", Plain.POINT_2, "Its corner nearest to the left end and the near edge."),
                    needed("size", Plain.SIZE_2, "Along the grain, then across."),
                    FACE));

    /** How a part is glued up. */
    public static final BlockSchema GLUE_UP = new BlockSchema(
            "glue_up",
            "Staves glued edge to edge make the part, so that boards narrower than the part will do. The layout chooses how"
                    + " many and how wide; their joints keep clear of what is cut into the part. Staves have those flaws"
                    + " in them that the part `takes` on whichever face, knots well clear of the joints; the leaves of a"
                    + " book have none.",
            "glue_up { widest 90; rings alternate }",
            List.of(
                    optional("staves", Plain.COUNT, "as many as save wood",
                            "How many, 2 at the least."),
                    optional("widest", Plain.LENGTH, "as the boards give",
                            "No stave is wider than this: a flat-sawn one goes hollow by the square of its width."),
                    optional("rings", new OneOf(words(GlueUp.Order.values())), "alternate",
                            "How the heart sides lie: `alternate` up and down by turns, so that the whole stays flat;"
                                    + " `alike` all one way, for what battens or a frame hold flat."),
                    optional("match", new OneOf(words(GlueUp.Match.values())), "none",
                            "`board` takes all staves from one board; `book` makes two of them, the leaves of one piece"
                                    + " opened like a book.")));

    private static final PropertySchema SPECIES = optional(
            "species", Plain.SPECIES, "movement of a lively wood", "What wood it is; decides how much it moves.");
    private static final PropertySchema RINGS = optional(
            "rings", Plain.RINGS, "flat", "How the growth rings meet the wide face; decides which way it moves most.");
    private static final PropertySchema OWN_TOLERANCE = optional(
            "tolerance", new Inner(TOLERANCE), "the project's", TOLERANCE.doc());
    private static final PropertySchema OVERRULE = optional("allow", new Shape.Named(ALLOW), "the project's",
            ALLOW.doc());

    private static final PropertySchema OFFCUT = optional(
            "offcut", new OneOf(YES_NO), "no",
            "Left over from earlier work; with `offcuts first` in the project's `layout` it is used up first.");

    /** What a board costs. */
    public static final BlockSchema PRICE = new BlockSchema(
            "price",
            "What a board or sheet costs, as it is sold: for the whole of it, by what it holds or by what it covers. Say one"
                    + " of these. In what money the project says with `currency`; Treen changes no money.",
            "price { each 38.50 }",
            List.of(
                    optional("each", Plain.NUMBER, "by another", "For the whole board or sheet."),
                    optional("cubic_metre", Plain.NUMBER, "by another", "For what it holds."),
                    optional("board_foot", Plain.NUMBER, "by another",
                            "For what it holds; a board foot is 144 cubic inches."),
                    optional("square_metre", Plain.NUMBER, "by another", "For its face."),
                    optional("square_foot", Plain.NUMBER, "by another", "For its face.")));

    private static final PropertySchema PRICED = optional("price", new Inner(PRICE), "not known", PRICE.doc());

    /** A board. */
    public static final BlockSchema BOARD = new BlockSchema(
            "board",
            "A board on the rack, as it was measured.",
            "board plank { species black_cherry; size 900 x 140 x 27; moisture 9% }",
            List.of(
                    needed("size", Plain.SIZE_3, "Along the grain, across it, and thick, as measured."),
                    SPECIES,
                    RINGS,
                    optional("moisture", Plain.PERCENT, "8%", "Moisture content, as the meter says."),
                    optional("core", Plain.PERCENT, "as outside",
                            "Moisture in its middle, from a fresh cut: thick boards are often damper there."),
                    optional("heart", Plain.LENGTH, "not known",
                            "How far the heart of the tree lay from its face, from the curve of the rings on its end; it"
                                    + " decides how hollow a flat-sawn part goes."),
                    optional("leaves", Plain.COUNT, "as many as save wood",
                            "Into how many leaves of one thickness it is resawn, from 1 to 6; 1 leaves it whole."),
                    optional("cup", Plain.LENGTH, "0",
                            "How hollow its face is across its whole width, under a straight edge. Planing it flat takes as"
                                    + " much from its thickness; a piece of half the width is a quarter as hollow."),
                    repeated("rip", Plain.LENGTH,
                            "Where it is ripped from end to end before its faces are planed, from the near edge to the"
                                    + " kerf. May stand more than once."),
                    OFFCUT,
                    PRICED,
                    repeated("knot", new Inner(DISC), "A knot. Parts keep clear of it that do not take it."),
                    repeated("check", new Inner(LINE), "A split. Parts keep clear of it that do not take it."),
                    repeated("wane", new Inner(PATCH), "Missing wood at an edge."),
                    repeated("sapwood", new Inner(PATCH), "Sapwood, for parts that take it."),
                    repeated("worm", new Inner(DISC), "Worm holes."),
                    repeated("pith", new Inner(LINE), "The heart of the tree, which splits."),
                    repeated("punky", new Inner(PATCH), "Soft, decayed wood."),
                    OVERRULE));

    /** A sheet. */
    public static final BlockSchema SHEET = new BlockSchema(
            "sheet",
            "A manufactured panel, which hardly moves.",
            "sheet birch_ply { size 1220 x 610 x 6 }",
            List.of(
                    needed("size", Plain.SIZE_3, "Along the face grain, across it, and thick."),
                    optional("species", Plain.SPECIES, "plywood", "What it is made of: plywood or mdf."),
                    OFFCUT,
                    PRICED,
                    repeated("knot", new Inner(DISC), "A damaged spot. Parts keep clear of it that do not take it."),
                    OVERRULE));

    private static final PropertySchema IN_ROOM = optional(
            "room", Plain.ROOM, "the project's", "Where it lives, if it is another room.");
    private static final PropertySchema FINISHED = optional(
            "finish",
            new OneOf(FINISHES),
            "not said",
            "Which of its faces are finished. A finish slows what the seasons do; it does not stop it.");

    private static final PropertySchema TAKES = repeated(
            "takes", Plain.FLAWS,
            "The flaws that it may have in it, where no joint touches it: a knot no nearer to a joint or an edge than half its"
                    + " radius, and 10 mm at the least. `takes sapwood on bottom` allows only what is seen on that face"
                    + " and not on the other. `none` overrules what the project takes.");

    /** Where a part lies. */
    public static final BlockSchema PLACE = new BlockSchema(
            "place",
            "Lays the part in the assembly: x to the right, y to the back, z up.",
            "place { length right; width up; at 0, -9, 0 }",
            List.of(
                    needed("length", Plain.DIRECTION, "The way the grain points."),
                    needed("width", Plain.DIRECTION, "The way the width points."),
                    needed("at", Plain.POINT_3, "The part's lowest corner: left, front, foot.")));

    /** A part. */
    public static final BlockSchema PART = new BlockSchema(
            "part",
            "A piece of wood, written as the eye sees it: between its shoulders or, at a corner, inside to inside."
                    + " Joints add what they hide.",
            "part front { length 160; width 84; thickness 9; from plank }",
            List.of(
                    needed("length", Plain.LENGTH, "Along the grain; `overall` after it means with the joints."),
                    needed("width", Plain.LENGTH, "Across the grain; `overall` after it means with the joints."),
                    needed("thickness", Plain.LENGTH, "Face to face."),
                    optional("from", Plain.BOARD, "any board",
                            "The board that it comes from; or a species, as `black_cherry`: then the layout takes it from any"
                                    + " board or sheet of that species on the rack. What is called so comes before a species."),
                    optional("bought", Plain.STUFF, "it is made",
                            "Bought ready in its finished size, as a pane of glass or a turned knob, and of what: `glass`,"
                                    + " `metal`, `stone`, `plastic`, `card`, a sheet, or a wood. It is not laid out on boards, not planed, cut to size or"
                                    + " finished; it stands in the list of what to buy, and is put in at its step: what is no"
                                    + " wood when the rest has its finish."),
                    optional("price", new Inner(PRICE), "not known",
                            "What it costs, where it is bought. " + PRICE.doc()),
                    optional("grain", new OneOf(GRAIN), "along",
                            "How it lies on a sheet: `along` the face grain with its length, or `any` way that saves wood. On a"
                                    + " sheet of mdf it lies any way. On a board the grain always runs along its length,"
                                    + " since by that it moves and breaks."),
                    RINGS,
                    IN_ROOM,
                    optional("carries", Plain.LOAD, "not said",
                            "What lies on it, spread evenly; a weight with `at middle` lies in the middle. It decides"
                                    + " how far a shelf sags."),
                    FINISHED,
                    TAKES,
                    optional("glue_up", new Inner(GLUE_UP), "in one piece", GLUE_UP.doc()),
                    optional("place", new Inner(PLACE), "not placed: sizes only", PLACE.doc()),
                    OWN_TOLERANCE,
                    OVERRULE));

    /** Where an instance stands. */
    public static final BlockSchema INSTANCE_PLACE = new BlockSchema(
            "place",
            "Stands the instance in the assembly: x to the right, y to the back, z up.",
            "place { at 400, 0, 0; facing left }",
            List.of(
                    needed("at", Plain.POINT_3, "Where its own origin lies; the pattern says which corner that is."),
                    optional("facing", Plain.DIRECTION, "front",
                            "Where its front looks: `front`, `right`, `back`, `left`; `up` lays it on its back, `down` on"
                                    + " its face.")));

    /** What every instance of a pattern may say, beside the pattern's own parameters. */
    public static final BlockSchema INSTANCE = new BlockSchema(
            "instance",
            "A thing made by a pattern: the pattern's word, a name, and a block with its parameters. In the block,"
                    + " `part NAME { … }` and `joint NAME { … }` change one part or joint inside.",
            "box caddy { inside 160 x 80 x 70; from plank }",
            List.of(
                    optional("from", Plain.BOARD, "any board",
                            "The board of all parts inside that name no other; or a species, any board of which will do."),
                    RINGS,
                    IN_ROOM,
                    FINISHED,
                    OWN_TOLERANCE,
                    TAKES,
                    OVERRULE,
                    optional("run", Plain.PARTS, "none",
                            "Parts inside whose grain runs from one to the next, as they lie on the board. Round a box it"
                                    + " meets at all corners but the one between the last and the first."),
                    optional("place", new Inner(INSTANCE_PLACE), "at the origin", INSTANCE_PLACE.doc())));

    /** The properties of an instance that are the defaults of its parts. */
    static final Set<String> PART_DEFAULTS = Set.of(
            "from", "rings", "room", "finish", "tolerance", "allow", "takes");

    private Schemas() {
    }

    /** All blocks, for completion, hover and the reference. */
    public static List<BlockSchema> all() {
        return List.of(
                PROJECT,
                CLIMATE,
                WOOD,
                ALLOW,
                SAW,
                TOLERANCE,
                LAYOUT,
                BOARD,
                SHEET,
                PRICE,
                GLUE,
                FINISH,
                HARDWARE,
                WARE_PRICE,
                DISC,
                LINE,
                PATCH,
                PART,
                GLUE_UP,
                PLACE,
                INSTANCE,
                INSTANCE_PLACE);
    }
}
