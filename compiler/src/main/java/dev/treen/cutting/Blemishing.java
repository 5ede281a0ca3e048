package dev.treen.cutting;

import static dev.treen.cutting.Units.down;
import static dev.treen.cutting.Units.up;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Defect;
import dev.treen.model.Direction;
import dev.treen.model.Placing;
import dev.treen.model.Takes;
import dev.treen.quantity.Length;
import dev.treen.yield.Blemish;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which flaws which parts may have in them, and where: nowhere that a joint touches. A knot keeps from joints and edges as
 * far as the grain swirls around it, half its radius and 10 mm at the least (rules of the trade Y-02: common practice, no
 * source).
 */
final class Blemishing {
    private static final long SWIRL = 10L * Units.FINE;
    private static final String KNOT = "knot";

    private final JointPlaces joints;
    private final Set<String> taken = new HashSet<>();

    Blemishing(Joined joined) {
        this.joints = new JointPlaces(joined);
        joined.made().forEach(part -> part.part().takes().flaws().forEach(flaw -> taken.add(flaw.kind())));
    }

    /** Whether a flaw is one that some part may have in it. */
    boolean taken(Defect flaw) {
        return taken.contains(flaw.kind());
    }

    /** A flaw as one that some parts take; how deep it is nobody knows, so in a resawn board it goes through. */
    Blemish blemish(Defect flaw, int leaves) {
        dev.treen.yield.Defect shape = Rack.defect(flaw);
        dev.treen.yield.Defect reach = shape;
        if (flaw instanceof Defect.Disc disc && flaw.kind().equals(KNOT)) {
            long radius = up(disc.radius());
            reach = dev.treen.yield.Defect.Knot.round(
                    down(disc.x()), down(disc.y()), radius + Math.max(SWIRL, (radius + 1) / 2) + 1);
        }
        return new Blemish(kind(flaw.kind(), leaves > 1 ? Defect.Face.BOTH : flaw.face()), shape, reach);
    }

    private static String kind(String kind, Defect.Face face) {
        return kind + " " + face.word();
    }

    /** The ways in which a part may lie on flaws; none where it takes none. */
    List<Piece.Way> ways(FinishedPart part, boolean inRun) {
        Takes takes = part.part().takes();
        if (!takes.any()) {
            return List.of();
        }
        List<Rect> touched = joints.of(part).stream().map(place -> rough(place, part)).toList();
        Optional<Placing> placing = part.part().placing();
        if (placing.isEmpty()) {
            return List.of(new Piece.Way("", clear(part, takes, touched, Optional.empty(), false, false)));
        }
        Map<Map<String, List<Rect>>, Piece.Way> ways = new LinkedHashMap<>();
        Direction upper = upper(placing.get());
        for (int i = 0; i < 4; i++) {
            boolean over = i > 1;
            boolean ends = i % 2 == 1;
            Direction up = over ? upper.opposite() : upper;
            Direction left = ends ? placing.get().length() : placing.get().length().opposite();
            // Turned over about its length, then end for end: that changes sides across it once or twice.
            Map<String, List<Rect>> clear = clear(part, takes, touched, Optional.of(up), ends, over != ends);
            ways.putIfAbsent(clear, new Piece.Way(
                    up.surface() + " up, " + left.surface() + " end to the left", clear));
        }
        return inRun ? List.of(whichever(List.copyOf(ways.values()))) : List.copyOf(ways.values());
    }

    /**
     * The way in which a stave may lie on flaws: as its part, and for a knot clear of both its edges, which are glued. How it
     * lies in the part the grain and the rings decide, so it must be right every way.
     */
    List<Piece.Way> ways(FinishedPart part, Glued glued, int stave) {
        List<Piece.Way> whole = ways(part, true);
        if (whole.isEmpty()) {
            return List.of();
        }
        long half = up(glued.edges().dividedBy(2));
        Length before = glued.staves().subList(0, stave - 1).stream().reduce(Length.ZERO, Length::plus);
        long from = down(before) - half;
        long width = up(glued.roughWidth(stave));
        Rect own = new Rect(0, Math.max(0, from), up(part.roughLength().value()), width + Math.min(0, from));
        long length = own.length();
        Map<String, List<Rect>> clear = new LinkedHashMap<>();
        whole.getFirst().keepClear().forEach((kind, places) -> {
            List<Rect> here = new ArrayList<>();
            for (Rect place : places) {
                long low = Math.max(place.y(), own.y());
                long high = Math.min(place.top(), own.top());
                if (low < high) {
                    // Laid end for end and turned over it has its near edge on the other side.
                    long y = low - from;
                    here.add(new Rect(place.x(), y, place.length(), high - low));
                    here.add(new Rect(place.x(), Math.max(0, width - y - (high - low)), place.length(), high - low));
                }
            }
            if (kind.startsWith(KNOT + " ")) {
                long edge = Math.max(1, half);
                here.add(new Rect(0, 0, length, edge));
                here.add(new Rect(0, width - edge, length, edge));
            }
            clear.put(kind, here.stream().distinct().toList());
        });
        return List.of(new Piece.Way("", clear));
    }

    // In a run the grain decides how a part lies, so it must be right every way.
    private static Piece.Way whichever(List<Piece.Way> ways) {
        Map<String, List<Rect>> all = new LinkedHashMap<>(ways.getFirst().keepClear());
        for (Piece.Way way : ways) {
            all.keySet().retainAll(way.keepClear().keySet());
        }
        all.replaceAll((kind, first) -> ways.stream()
                .flatMap(way -> way.keepClear().getOrDefault(kind, List.of()).stream())
                .distinct()
                .toList());
        return new Piece.Way("", all);
    }

    /** The face that looks up when length and width lie along and across the board. */
    private static Direction upper(Placing placing) {
        int length = placing.length().axis();
        int width = placing.width().axis();
        int sign = placing.length().sign() * placing.width().sign() * ((width - length + 3) % 3 == 1 ? 1 : -1);
        return Direction.of(3 - length - width, sign);
    }

    private Map<String, List<Rect>> clear(
            FinishedPart part, Takes takes, List<Rect> touched, Optional<Direction> up, boolean ends, boolean sides) {
        Map<String, List<Rect>> clear = new LinkedHashMap<>();
        for (String kind : taken) {
            for (Defect.Face face : Defect.Face.values()) {
                List<Direction> seen = up.map(top -> switch (face) {
                    case BOTH -> List.of(top, top.opposite());
                    case UPPER -> List.of(top);
                    case UNDER -> List.of(top.opposite());
                }).orElse(List.of());
                if (takes.allows(kind, seen)) {
                    List<Rect> places = new ArrayList<>(touched);
                    if (kind.equals(KNOT)) {
                        places.addAll(edges(part));
                    }
                    clear.put(kind(kind, face), places.stream().map(each -> turned(each, part, ends, sides)).toList());
                }
            }
        }
        return clear;
    }

    private static Rect turned(Rect place, FinishedPart part, boolean ends, boolean sides) {
        long x = ends ? up(part.roughLength().value()) - place.right() : place.x();
        long y = sides ? up(part.roughWidth().value()) - place.top() : place.y();
        return new Rect(x, y, place.length(), place.width());
    }

    /** What is planed and shot off all round, and the edges that this leaves. */
    private static List<Rect> edges(FinishedPart part) {
        long length = up(part.roughLength().value());
        long width = up(part.roughWidth().value());
        long ends = Math.max(1, over(part.roughLength().value(), part.length().value()));
        long sides = Math.max(1, over(part.roughWidth().value(), part.width().value()));
        return List.of(
                new Rect(0, 0, ends, width),
                new Rect(length - ends, 0, ends, width),
                new Rect(0, 0, length, sides),
                new Rect(0, width - sides, length, sides));
    }

    private static long over(Length rough, Length finished) {
        return up(rough.minus(finished).dividedBy(2));
    }

    /** A place of the finished part on the rough one; what reaches its end or edge reaches the rough one's. */
    private static Rect rough(Rectangle place, FinishedPart part) {
        long[] along = stretch(place.x(), place.length(), part.length().value(), part.roughLength().value());
        long[] across = stretch(place.y(), place.width(), part.width().value(), part.roughWidth().value());
        return new Rect(along[0], across[0], along[1] - along[0], across[1] - across[0]);
    }

    private static long[] stretch(Length at, Length size, Length finished, Length rough) {
        Length before = rough.minus(finished).dividedBy(2);
        long from = at.isZero() ? 0 : down(at.plus(before));
        long to = at.plus(size).compareTo(finished) >= 0 ? up(rough) : up(at.plus(size).plus(before));
        return to > from ? new long[]{from, to} : from > 0 ? new long[]{from - 1, from} : new long[]{0, 1};
    }
}
