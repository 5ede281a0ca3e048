package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A part, with its allowances, against the board that it is to come from: too short, too narrow or too thin. */
final class BoardTooSmall implements Check {
    static final FindingKind TOO_SHORT = FindingKind.error("board-too-short", "A board is too short for a part");
    static final FindingKind TOO_NARROW = FindingKind.error("board-too-narrow", "A board is too narrow for a part");
    static final FindingKind TOO_THIN = FindingKind.error("board-too-thin", "A board is too thin for a part");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_SHORT, TOO_NARROW, TOO_THIN);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        for (FinishedPart part : joined.parts()) {
            part.part().sources().stream()
                    .map(board -> compare(part, board, settings))
                    .min(Comparator.comparingInt(List::size))
                    .ifPresent(findings::addAll);
        }
        return findings;
    }

    /** What is too small, of a board that may give the part. */
    private static List<Finding> compare(FinishedPart part, Board board, Settings settings) {
        Length waste = board.allow().endWaste().value().times(2);
        Length usable = board.length().value().minus(waste).max(Length.ZERO);
        Measure thickness = board.sheet() ? part.thickness() : part.roughThickness();
        return List.of(
                new Side(TOO_SHORT, "short", part.length(), part.roughLength(), usable, board.length()),
                new Side(TOO_NARROW, "narrow", part.width(), part.roughWidth(), board.width().value(), board.width()),
                new Side(TOO_THIN, "thin", part.thickness(), thickness, board.thickness().value(), board.thickness()))
                .stream()
                // What is glued up from staves may be wider than its boards; whether they fit, the layout knows.
                .filter(side -> !(side.kind().equals(TOO_NARROW) && part.part().glueUp().isPresent()))
                .filter(side -> side.kind().equals(TOO_THIN) || !turned(part, board, usable))
                .filter(side -> side.needed().value().compareTo(side.there()) > 0)
                .map(side -> finding(side, part.part(), board, waste, settings))
                .toList();
    }

    /** Whether it fits with its length across a sheet. */
    private static boolean turned(FinishedPart part, Board board, Length usable) {
        return part.part().turnsOn(board)
                && part.roughWidth().value().compareTo(usable) <= 0
                && part.roughLength().value().compareTo(board.width().value()) <= 0;
    }

    /**
     * One measure of a part against its board.
     *
     * @param needed with allowances
     * @param there what the board has to give
     * @param board as it was measured
     */
    private record Side(
            FindingKind kind, String word, Measure finished, Measure needed, Length there, Measure board) {
        Length missing() {
            return needed.value().minus(there);
        }
    }

    /** Where any board of a species will do, this one is the nearest. */
    private static String others(Part part) {
        return part.anyOf().filter(any -> any.boards().size() > 1)
                .map(any -> " No other board of `" + any.species() + "` gives it either.")
                .orElse("");
    }

    private static Finding finding(Side side, Part part, Board board, Length waste, Settings settings) {
        Length allowances = side.needed().value().minus(side.finished().value());
        boolean ends = side.kind().equals(TOO_SHORT);
        Finding.Builder finding = Finding.of(
                side.kind(),
                side.needed().at(),
                "`" + board.name() + "` is too " + side.word() + " for `" + part.name() + "`")
                .label("too much for its board")
                .found("`" + part.name() + "` needs " + Amounts.text(side.needed().value(), settings)
                        + (allowances.isZero()
                                ? ""
                                : ": " + Amounts.text(side.finished().value(), settings) + " finished and "
                                        + Amounts.text(allowances, settings) + " of allowance")
                        + "; `" + board.name() + "` has " + Amounts.text(side.there(), settings)
                        + (ends && !waste.isZero() ? " between its ends" : "") + ": "
                        + Amounts.text(side.missing(), settings) + " too little." + others(part))
                .because("Finished sizes hold what the joints hide; saw and plane take the allowances.")
                .related(side.board().at(), "`" + board.name() + "` as it was measured")
                .about(part.name())
                .about(board.name())
                .number("needed", side.needed().value().toDoubleMm())
                .number("there", side.there().toDoubleMm());
        if (side.missing().compareTo(allowances) <= 0) {
            finding.remedy(Remedy.choice("write a smaller allowance: the finished size itself would come out"));
        }
        if (side.kind().equals(TOO_NARROW) && !board.sheet()) {
            finding.remedy(Remedy.choice("glue it up from staves: write `glue_up { }` in the part"));
        }
        return finding.remedy(Remedy.choice("make the part smaller by " + Amounts.text(side.missing(), settings)
                + ", or take another board"))
                .build();
    }
}
