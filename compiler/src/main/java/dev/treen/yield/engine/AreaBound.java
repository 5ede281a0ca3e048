package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import java.util.ArrayList;

/** The bound that costs nothing: parts do not overlap, so their areas add up. */
final class AreaBound {
    private AreaBound() {
    }

    /** Least weight of boards whose clear area holds the area of all parts; as many whole boards as that takes. */
    static Bound weight(Folded f) {
        var room = clear(f);
        return new Bound(Cover.least(f.weight, room, f.count, need(f)), "area");
    }

    /** The area of all parts. */
    static double need(Folded f) {
        double need = 0;
        for (int t = 0; t < f.types; t++) {
            need += (double) f.area[t] * f.copies[t];
        }
        return need;
    }

    /** The area of each board that parts can cover. */
    static double[] clear(Folded f) {
        var room = new double[f.stocks];
        for (int b = 0; b < f.stocks; b++) {
            room[b] = Math.max(0, room(f, b) - LostArea.of(f, b));
        }
        return room;
    }

    /** Least reach along the first board, kerf folded in: area, the longest part, and parts that pass no other. */
    static long reach(Folded f) {
        double area = 0;
        long longest = 0;
        long wide = 0;
        for (int t = 0; t < f.types; t++) {
            if (f.copies[t] > 0) {
                long along = f.turns[t] ? Math.min(f.length[t], f.width[t]) : f.length[t];
                long across = f.turns[t] ? along : f.width[t];
                area += (double) f.area[t] * f.copies[t];
                longest = Math.max(longest, along);
                wide += 2 * across > f.boardWidth[0] ? along * f.copies[t] : 0;
            }
        }
        long byArea = (long) Math.ceil(area / f.boardWidth[0] * (1 - 1e-12) - 1e-9);
        return Math.max(byArea, Math.max(longest, wide));
    }

    private static double room(Folded f, int b) {
        return Math.max(0.0, (double) f.boardLength[b]) * Math.max(0.0, (double) f.boardWidth[b]);
    }

    /** Most value by area: parts by value per area until the boards are full. */
    static Bound value(Folded f) {
        double room = 0;
        for (int b = 0; b < f.stocks; b++) {
            room += room(f, b) * Math.min(f.count[b], f.items());
        }
        var order = new ArrayList<Integer>();
        for (int t = 0; t < f.types; t++) {
            if (f.copies[t] > 0) {
                order.add(t);
            }
        }
        order.sort((a, b) -> Double.compare((double) f.value[b] / f.area[b], (double) f.value[a] / f.area[a]));
        double value = 0;
        for (int t : order) {
            double copies = f.endless[t] >= 0 ? room / f.area[t] : Math.min(f.copies[t], room / f.area[t]);
            value += copies * f.value[t];
            room -= copies * f.area[t];
            if (room <= 0) {
                break;
            }
        }
        return new Bound((long) Math.floor(value * (1 + 1e-12) + 1e-9), "area");
    }
}
