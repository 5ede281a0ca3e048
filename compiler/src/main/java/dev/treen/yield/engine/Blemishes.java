package dev.treen.yield.engine;

import dev.treen.yield.Blemish;
import dev.treen.yield.Defect;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The blemishes of all boards and the items that take any. Places are those of the folded board, where an item begins
 * where its wood begins, and its kerf lies behind it.
 */
final class Blemishes {
    /** Places beside blemishes that are tried along one axis; beyond this, some are passed over. */
    private static final int MOST_PLACES = 120;

    /** A part of an item: where it begins in it, its size without kerf, and the ways in which it may lie. */
    private record Member(long x, long length, long width, List<Piece.Way> ways) {}

    private record Mark(String kind, List<Rect> shape, List<Rect> reach) {}

    private final List<List<Mark>> marks = new ArrayList<>();
    private final List<List<Member>> members = new ArrayList<>();
    private final long[][][] placesX;
    private final long[][][] placesY;

    Blemishes(YieldProblem problem, List<List<List<Folded.Ref>>> refs) {
        Settings settings = problem.settings();
        for (Stock stock : problem.stocks()) {
            List<Mark> found = new ArrayList<>();
            for (Blemish each : stock.blemishes()) {
                found.add(new Mark(each.kind(), moved(each.shape(), stock, settings),
                        moved(each.reach(), stock, settings)));
            }
            marks.add(found);
        }
        for (List<List<Folded.Ref>> copies : refs) {
            members.add(copies.isEmpty() ? List.of() : members(copies.getFirst(), problem));
        }
        placesX = new long[members.size()][marks.size()][];
        placesY = new long[members.size()][marks.size()][];
    }

    private static List<Rect> moved(Defect defect, Stock stock, Settings settings) {
        return Covers.of(defect, stock).stream()
                .filter(box -> box.length() > 0 && box.width() > 0)
                .map(box -> new Rect(
                        box.x() - settings.endWaste(), box.y() - settings.edgeWaste(), box.length(), box.width()))
                .toList();
    }

    private static List<Member> members(List<Folded.Ref> item, YieldProblem problem) {
        List<Member> found = new ArrayList<>();
        long x = 0;
        boolean takes = false;
        for (Folded.Ref ref : item) {
            Piece piece = problem.pieces().get(ref.piece());
            found.add(new Member(x, piece.length(), piece.width(), piece.ways()));
            takes |= !piece.ways().isEmpty();
            x += piece.length() + problem.settings().kerf();
        }
        return takes ? found : List.of();
    }

    /** Whether items of a type take any blemish. */
    boolean taken(int type) {
        return !members.get(type).isEmpty();
    }

    /** Whether items of any type do. */
    boolean anyTaken() {
        return members.stream().anyMatch(each -> !each.isEmpty());
    }

    /** Whether an item that takes blemishes may not lie at a place, straight, because of those of a stock. */
    boolean blocked(int type, int stock, long x, long y) {
        for (Member member : members.get(type)) {
            if (!right(member, marks.get(stock), x + member.x, y)) {
                return true;
            }
        }
        return false;
    }

    private static boolean right(Member member, List<Mark> marks, long x, long y) {
        Rect all = new Rect(x, y, member.length, member.width);
        List<Mark> under = marks.stream().filter(mark -> overlaps(mark.shape, all)).toList();
        return under.isEmpty() || member.ways.stream().anyMatch(way -> under.stream().allMatch(mark -> {
            List<Rect> clear = way.keepClear().get(mark.kind);
            return clear != null && clear.stream().noneMatch(each -> overlaps(mark.reach,
                    new Rect(x + each.x(), y + each.y(), each.length(), each.width())));
        }));
    }

    private static boolean overlaps(List<Rect> boxes, Rect area) {
        return boxes.stream().anyMatch(area::overlaps);
    }

    /** Where an item's left end may lie so that something of it just clears a blemish of a stock. */
    long[] placesX(int type, int stock) {
        long[] known = placesX[type][stock];
        if (known == null) {
            known = places(type, stock, true);
            placesX[type][stock] = known;
        }
        return known;
    }

    /** The same for its lower edge. */
    long[] placesY(int type, int stock) {
        long[] known = placesY[type][stock];
        if (known == null) {
            known = places(type, stock, false);
            placesY[type][stock] = known;
        }
        return known;
    }

    private long[] places(int type, int stock, boolean along) {
        Set<Long> found = new TreeSet<>();
        for (Member member : members.get(type)) {
            Rect whole = new Rect(0, 0, member.length, member.width);
            for (Mark mark : marks.get(stock)) {
                beside(found, member, whole, mark.shape, along);
                for (Piece.Way way : member.ways) {
                    way.keepClear().getOrDefault(mark.kind, List.of())
                            .forEach(clear -> beside(found, member, clear, mark.reach, along));
                }
            }
        }
        List<Long> all = List.copyOf(found);
        int count = Math.min(MOST_PLACES, all.size());
        long[] places = new long[count];
        for (int i = 0; i < count; i++) {
            places[i] = all.get((int) ((long) i * all.size() / count));
        }
        return places;
    }

    private static void beside(Set<Long> found, Member member, Rect clear, List<Rect> boxes, boolean along) {
        for (Rect box : boxes) {
            found.add(along ? box.right() - member.x - clear.x() : box.top() - clear.y());
            found.add(along ? box.x() - member.x - clear.right() : box.y() - clear.top());
        }
    }
}
