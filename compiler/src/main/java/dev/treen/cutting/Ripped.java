package dev.treen.cutting;

import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.Measure;
import dev.treen.model.Price;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A board, or what comes of one that is ripped before its faces are planed. A piece of a hollow board is as much flatter as
 * the square of its width is smaller (a sagitta over a chord: derived), and so gives more thickness.
 *
 * @param source the board as it lies on the rack
 * @param piece what is laid out as a board of its own; the same where it is not ripped
 */
record Ripped(Board source, Board piece) {
    static List<Ripped> of(Board board) {
        if (board.rips().isEmpty() || board.sheet()) {
            return List.of(new Ripped(board, board));
        }
        List<Ripped> pieces = new ArrayList<>();
        Length from = Length.ZERO;
        for (int i = 0; i <= board.rips().size(); i++) {
            Length to = i < board.rips().size() ? board.rips().get(i).value() : board.width().value();
            pieces.add(new Ripped(board, piece(board, pieces.size() + 1, from, to)));
            from = to.plus(board.allow().kerf().value());
        }
        return pieces;
    }

    private static Board piece(Board board, int number, Length from, Length to) {
        Length width = to.minus(from);
        double share = width.toDoubleMm() / board.width().value().toDoubleMm();
        return new Board(
                board.name() + " piece " + number, board.nameAt(), board.sheet(), board.species(), board.speciesAt(),
                board.declared(), board.length(), changed(board.width(), width), board.thickness(), board.rings(),
                board.moisture(), board.moistureAt(), board.core(), board.heart(), board.leaves(),
                board.cup().map(cup -> changed(cup, flatter(cup.value(), width, board.width().value()))), List.of(),
                board.offcut(), board.price().map(price -> of(price, board, share)), defects(board, from, width),
                board.allow());
    }

    /** How hollow a piece is of what is so hollow over the whole width. */
    static Length flatter(Length cup, Length width, Length whole) {
        return cup.times(width.ratioTo(whole)).times(width.ratioTo(whole));
    }

    private static Measure changed(Measure measure, Length value) {
        return new Measure(value, measure.at(), measure.how());
    }

    private static Price of(Price price, Board board, double share) {
        return new Price(price.of(board) * share, Price.Per.EACH, price.at());
    }

    private static List<Defect> defects(Board board, Length from, Length width) {
        return board.defects().stream().flatMap(each -> moved(each, from, width).stream()).toList();
    }

    private static Optional<Defect> moved(Defect defect, Length from, Length width) {
        Defect there = switch (defect) {
            case Defect.Disc d -> new Defect.Disc(d.kind(), d.x(), d.y().minus(from), d.radius(), d.face(), d.span());
            case Defect.Line l -> new Defect.Line(
                    l.kind(), l.x1(), l.y1().minus(from), l.x2(), l.y2().minus(from), l.width(), l.face(), l.span());
            case Defect.Patch p -> new Defect.Patch(
                    p.kind(), p.x(), p.y().minus(from), p.length(), p.width(), p.face(), p.span());
        };
        Length low = switch (there) {
            case Defect.Disc d -> d.y().minus(d.radius());
            case Defect.Line l -> l.y1().min(l.y2()).minus(l.width());
            case Defect.Patch p -> p.y();
        };
        Length high = switch (there) {
            case Defect.Disc d -> d.y().plus(d.radius());
            case Defect.Line l -> l.y1().max(l.y2()).plus(l.width());
            case Defect.Patch p -> p.y().plus(p.width());
        };
        return high.signum() > 0 && low.compareTo(width) < 0 ? Optional.of(there) : Optional.empty();
    }
}
