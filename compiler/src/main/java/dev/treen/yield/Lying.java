package dev.treen.yield;

import java.util.List;

/** In which of its ways a part may lie on the blemishes of a board, by their true shapes. */
public final class Lying {
    private Lying() {
    }

    /** The blemishes of {@code stock} that reach into a place. */
    public static List<Blemish> under(Stock stock, Rect area) {
        return stock.blemishes().stream().filter(each -> Touching.inside(each.shape(), stock, area)).toList();
    }

    /** The ways of a part that are right at a place, the first the best. A part without ways takes no blemish. */
    public static List<Piece.Way> ways(Stock stock, Piece piece, Rect area) {
        List<Blemish> under = under(stock, area);
        return piece.ways().stream()
                .filter(way -> under.stream().allMatch(each -> right(way, each, stock, area)))
                .toList();
    }

    private static boolean right(Piece.Way way, Blemish blemish, Stock stock, Rect area) {
        List<Rect> clear = way.keepClear().get(blemish.kind());
        if (clear == null) {
            return false;
        }
        for (Rect each : clear) {
            Rect there = new Rect(area.x() + each.x(), area.y() + each.y(), each.length(), each.width());
            if (Touching.inside(blemish.reach(), stock, there)) {
                return false;
            }
        }
        return true;
    }
}
