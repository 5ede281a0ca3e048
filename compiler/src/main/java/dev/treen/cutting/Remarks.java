package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.LayoutWishes;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a maker may want to know of thick boards, beside the layout: where much of one becomes shavings, and whether resawing
 * it, or another board, is the better use.
 */
final class Remarks {
    /** Less than this off a board is not worth a word, nor less than a quarter of it: the figures are our own. */
    private static final Length LEAST = Length.ofMm(5);

    private static final int SHARE = 4;
    private static final int MOST = 4;
    private static final double CM3 = 1000;

    private final Joined joined;
    private final Settings settings;
    private final LengthFormat format;

    Remarks(Joined joined) {
        this.joined = joined;
        this.settings = joined.project().settings();
        this.format = settings.format();
    }

    /** One for each board of which much is planed away. */
    List<String> shavings(List<BoardCut> boards) {
        Map<String, List<BoardCut>> leaves = new LinkedHashMap<>();
        boards.stream()
                .filter(cut -> !cut.board().sheet())
                .forEach(cut -> leaves.computeIfAbsent(cut.board().name(), name -> new ArrayList<>()).add(cut));
        List<String> remarks = new ArrayList<>();
        leaves.values().forEach(cuts -> remark(cuts, remarks));
        return remarks.size() <= MOST ? remarks : remarks.subList(0, MOST);
    }

    private void remark(List<BoardCut> cuts, List<String> remarks) {
        BoardCut first = cuts.getFirst();
        List<String> thin = new ArrayList<>();
        Length thickest = Length.ZERO;
        Length thinOnes = Length.ZERO;
        double lost = 0;
        for (BoardCut cut : cuts) {
            for (BoardCut.OnBoard piece : cut.parts()) {
                Length thick = thickness(cut, piece.blank());
                Length over = cut.thickness().minus(thick);
                thickest = thickest.max(thick);
                if (over.compareTo(LEAST) >= 0 && over.times(SHARE).compareTo(cut.thickness()) >= 0) {
                    thin.add(piece.name());
                    thinOnes = thinOnes.max(thick);
                    lost += over.toDoubleMm() * piece.area().length().toDoubleMm()
                            * piece.area().width().toDoubleMm() / CM3;
                }
            }
        }
        if (thin.isEmpty()) {
            return;
        }
        String names = "`" + String.join("`, `", thin.subList(0, Math.min(MOST, thin.size()))) + "`"
                + (thin.size() > MOST ? " and " + (thin.size() - MOST) + " more" : "");
        remarks.add("`" + first.board().name() + "` gives " + format.text(first.thickness()) + " once flat; of " + names
                + ", " + format.text(thinOnes) + " thick" + (thin.size() > 1 ? " at the most" : "") + ", about "
                + Math.round(lost) + " cm³ become shavings. " + better(first, thickest, thinOnes));
    }

    /** What a blank needs of its leaf. */
    private Length thickness(BoardCut cut, Blank blank) {
        Length each = blank.parts().stream()
                .flatMap(name -> joined.part(name).stream())
                .map(Staving::thickness)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
        int count = blank.members().size();
        return each.times(count).plus(Leaves.between(cut.board()).times(count - 1L));
    }

    private String better(BoardCut cut, Length thickest, Length thin) {
        Board board = cut.board();
        LayoutWishes wishes = settings.layout();
        int more = cut.leaves() + 1;
        Length leaf = Leaves.leaf(board, more);
        if (leaf.compareTo(thin) < 0) {
            Length enough = thin.plus(board.allow().planing().value().times(2));
            return "It is too thin to be resawn into " + more + " leaves for them; a board of " + format.text(enough)
                    + " would do.";
        }
        String leaves = more + " leaves of " + format.text(leaf);
        if (board.leaves().isPresent()) {
            return "Resawn into " + leaves + " it would give more; `leaves " + cut.leaves() + "` keeps it from that.";
        }
        if (!wishes.resaw()) {
            return "Resawn into " + leaves + " it would give more; `resaw never` keeps it from that.";
        }
        if (leaf.compareTo(thickest) < 0) {
            return "A part of " + format.text(thickest) + " on it keeps it from being resawn into " + leaves
                    + ": a board of their own would serve the thin ones better.";
        }
        return "Resawn into " + leaves
                + " it would save less than that cut counts for (`labour`), or another part would"
                + " have no room.";
    }

    /** How much thickness a hollow board gives as a whole, and ripped so that its widest part still has room. */
    record Hollow(Board board, FinishedPart part, Length whole, Length ripped, Length rip) {}

    /**
     * Hollow boards that are too thin once they are planed flat as a whole, and not once ripped: for all parts that may come
     * from them, or for one that must.
     */
    List<Hollow> hollow() {
        List<Hollow> found = new ArrayList<>();
        for (Board board : joined.project().boards()) {
            if (board.cup().isEmpty() || !board.rips().isEmpty() || board.sheet()) {
                continue;
            }
            Length whole = Leaves.leaf(board, 1);
            List<FinishedPart> parts = joined.made().stream()
                    .filter(part -> Leaves.mayComeFrom(part, board))
                    .toList();
            boolean useless = parts.stream().allMatch(part -> Staving.thickness(part).compareTo(whole) > 0);
            parts.stream()
                    .filter(part -> useless || part.part().sources().size() == 1)
                    .filter(part -> part.part().glueUp().isEmpty())
                    .filter(part -> Staving.thickness(part).compareTo(whole) > 0)
                    .flatMap(part -> ripped(board, part, whole).stream())
                    .max(Comparator.comparing(Hollow::rip))
                    .ifPresent(found::add);
        }
        return found;
    }

    private java.util.Optional<Hollow> ripped(Board board, FinishedPart part, Length whole) {
        Length rip = part.roughWidth().value().roundUpTo(NoRoom.step(joined));
        Length width = board.width().value();
        boolean room = rip.plus(board.allow().kerf().value()).compareTo(width) < 0;
        Length flat = whole.plus(board.cup().orElseThrow().value())
                .minus(Ripped.flatter(board.cup().orElseThrow().value(), rip, width));
        return room && flat.compareTo(Staving.thickness(part)) >= 0
                ? java.util.Optional.of(new Hollow(board, part, whole, flat, rip)) : java.util.Optional.empty();
    }
}
