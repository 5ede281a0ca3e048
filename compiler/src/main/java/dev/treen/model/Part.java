package dev.treen.model;

import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * A part with the sizes that the author wrote: seen, between its shoulders.
 *
 * @param name dotted name, {@code shelf[2]} for an element of an array
 * @param nameAt where it is declared
 * @param length along the grain
 * @param overall which measures were written {@code overall}: then they are finished sizes, and the joints are taken off
 * @param from the board that it comes from, where one is named; where any of a species will do, the one whose wood it is
 *     taken to have
 * @param bought what it is bought as, where it is not made: a piece of its own size, with what it is of and its price
 * @param anyOf the boards of a species, any of which may give it
 * @param rings the part's own, or its board's
 * @param ringsAt where the part's own are written, or the declaration
 * @param planned the seen size as it was planned, where something it rests on has been measured since: the assembly is
 *     drawn and joined as planned, and only sizes follow what was measured
 * @param takes the flaws that it may have in it
 * @param turns whether it may lie with its length across the face grain of a sheet
 * @param glueUp the staves that it is glued up from, where it is
 * @param service the room and the load that it has to stand
 * @param tolerances how exactly it is made: its own word, and behind it the project's
 */
public record Part(
        String name,
        Span nameAt,
        Measure length,
        Measure width,
        Measure thickness,
        Overall overall,
        Optional<Board> from,
        Optional<Board> bought,
        Optional<AnyOf> anyOf,
        Rings rings,
        Span ringsAt,
        Optional<Placing> placing,
        Optional<Size> planned,
        Takes takes,
        boolean turns,
        Optional<GlueUp> glueUp,
        Service service,
        Allowances allow,
        Tolerances tolerances,
        String doc) {

    /** Which measures were written with the joints in them. */
    public record Overall(boolean length, boolean width, boolean thickness) {
        /** None. */
        public static final Overall NONE = new Overall(false, false, false);
    }

    /** The same with other flaws that it may have. */
    public Part taking(Takes others) {
        return new Part(
                name, nameAt, length, width, thickness, overall, from, bought, anyOf, rings, ringsAt, placing, planned,
                others, turns,
                glueUp, service, allow, tolerances, doc);
    }

    /** The same, glued up from staves. */
    public Part gluedUp(GlueUp how) {
        return new Part(
                name, nameAt, length, width, thickness, overall, from, bought, anyOf, rings, ringsAt, placing, planned,
                takes, turns,
                Optional.of(how), service, allow, tolerances, doc);
    }

    /**
     * Whether it may lie with its length across what is the length of a board: only on a sheet, where it is told so or the
     * sheet has no grain. Wood lies with its grain along the part, for by that it moves and breaks.
     */
    public boolean turnsOn(Board board) {
        return board.sheet() && (turns || board.species().filter("mdf"::equals).isPresent());
    }

    /** What it is made of: the board that it comes from, or what it is bought as. */
    public Optional<Board> stuff() {
        return bought.or(() -> from);
    }

    /** Whether it is a sheet, or bought and no wood: then the seasons hardly move it. */
    public boolean still() {
        return stuff().filter(Board::sheet).isPresent();
    }

    /** Whether it is bought and of nothing that a woodworker's tools cut or glue holds, as a pane of glass. */
    public boolean foreign() {
        return bought.flatMap(Board::species).filter(Bought::foreign).isPresent();
    }

    /** The boards and sheets that it may come from; empty where it names none, for then it may come from any. */
    public List<Board> sources() {
        return anyOf.map(AnyOf::boards).orElseGet(() -> from.stream().toList());
    }

    /** What the project says that it comes from: the name of a board or sheet, or a species; empty for nothing. */
    public String source() {
        return anyOf.map(AnyOf::species).or(() -> from.map(Board::name)).orElse("");
    }

    /** Whether it may come from this board or sheet. */
    public boolean mayComeFrom(Board board) {
        List<Board> sources = sources();
        return sources.isEmpty() || sources.stream().anyMatch(each -> each.name().equals(board.name()));
    }

    /** Whether it says itself how its rings lie. */
    public boolean saysRings() {
        return !ringsAt.equals(nameAt);
    }

    /** The same as it is when it comes from {@code board}: with its rings, where it says none of its own. */
    public Part takenFrom(Board board) {
        return new Part(
                name, nameAt, length, width, thickness, overall, Optional.of(board), bought, Optional.empty(),
                saysRings() ? rings : board.rings(), ringsAt, placing, planned, takes, turns, glueUp, service, allow,
                tolerances,
                doc);
    }

    /** The seen size. */
    public Size seen() {
        return new Size(length.value(), width.value(), thickness.value());
    }

    /** The size that it has in the assembly: as planned. */
    public Size assembled() {
        return planned.orElseGet(this::seen);
    }

    /** The measure by number: length 0, width 1, thickness 2. */
    public Measure measure(int which) {
        return switch (which) {
            case 0 -> length;
            case 1 -> width;
            case 2 -> thickness;
            default -> throw new IllegalArgumentException("no measure " + which);
        };
    }

    /** Two parts are the same when their names are. */
    public boolean is(Part other) {
        return name.equals(other.name);
    }
}
