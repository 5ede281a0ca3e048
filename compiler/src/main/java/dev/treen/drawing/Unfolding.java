package dev.treen.drawing;

import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which way and how far each part is drawn out of its joint, so that the whole picture stays small and little of any part is
 * hidden by others. The moves come in the order in which the parts go together; each is tried along every way that is
 * free, at a few distances, and what costs least is kept, round after round until nothing gets better or the work is used up.
 */
final class Unfolding {
    /** How far apart, in halves of the usual gap. */
    private static final int[] HALVES = {1, 2, 4, 6};

    /** A part wholly hidden is as bad as a picture so much larger than the parts put together. */
    private static final double HIDDEN = 0.6;

    /** Sheets and small pictures are about so much wider than high, with names beside. */
    private static final double WIDE = 1.3;
    private static final int ROUNDS = 4;
    private static final long MOST_WORK = 30_000_000;

    /**
     * A move.
     *
     * @param parts what is moved, by number
     * @param onto what it is moved away from
     * @param ways where it can go, the way that is sure to be free first
     */
    record Move(List<Integer> parts, List<Integer> onto, List<Side> ways) {}

    private final Box[] boxes;
    private final Hexagon[] hexagons;
    private final Vec3[] before;
    private final List<Move> moves;
    private final int gap;
    private final double whole;
    private final int[] way;
    private final int[] halves;
    private long work;

    /**
     * @param boxes the room of each part where it stands
     * @param before how far each has been moved already
     * @param gap the usual one, in millimetres
     */
    Unfolding(Box[] boxes, Vec3[] before, List<Move> moves, int gap) {
        this.boxes = boxes;
        this.before = before;
        this.moves = moves;
        this.gap = gap;
        hexagons = Arrays.stream(boxes).map(Hexagon::of).toArray(Hexagon[]::new);
        whole = size(hexagons);
        way = new int[moves.size()];
        halves = new int[moves.size()];
        Arrays.fill(halves, 2);
    }

    /** For each move how far it goes. */
    List<Vec3> find() {
        double best = cost(shifts());
        boolean better = true;
        for (int round = 0; better && round < ROUNDS; round++) {
            better = false;
            for (int move = moves.size() - 1; move >= 0; move--) {
                double now = improved(move, best);
                better |= now < best;
                best = now;
            }
        }
        return shifts();
    }

    private double improved(int move, double known) {
        double best = known;
        int bestWay = way[move];
        int bestHalves = halves[move];
        for (int w = 0; w < moves.get(move).ways().size(); w++) {
            for (int h : HALVES) {
                if (work > MOST_WORK) {
                    break;
                }
                way[move] = w;
                halves[move] = h;
                double cost = cost(shifts());
                if (cost < best - 1e-9) {
                    best = cost;
                    bestWay = w;
                    bestHalves = h;
                }
            }
        }
        way[move] = bestWay;
        halves[move] = bestHalves;
        return best;
    }

    private List<Vec3> shifts() {
        Hexagon[] now = new Hexagon[hexagons.length];
        for (int i = 0; i < now.length; i++) {
            now[i] = hexagons[i].moved(before[i]);
        }
        List<Vec3> shifts = new ArrayList<>(moves.size());
        for (int i = 0; i < moves.size(); i++) {
            Move move = moves.get(i);
            Side side = move.ways().get(way[i]);
            double need = 0;
            for (int part : move.parts()) {
                for (int other : move.onto()) {
                    need = Math.max(need, need(side, now[part], now[other]));
                }
            }
            work += (long) move.parts().size() * move.onto().size();
            long far = (long) Math.ceil(need - 1e-6) + Math.ceilDiv(halves[i] * gap, 2);
            Vec3 shift = side.unit().times(BigFraction.of(far));
            for (int part : move.parts()) {
                now[part] = now[part].moved(shift);
            }
            shifts.add(shift);
        }
        return shifts;
    }

    /** How far one has to go until it is past another that lies in its lane. */
    private static double need(Side side, Hexagon moving, Hexagon staying) {
        for (Axis axis : Axis.values()) {
            boolean beside = least(moving, axis) > most(staying, axis) || most(moving, axis) < least(staying, axis);
            if (axis != side.axis() && beside) {
                return 0;
            }
        }
        // Coordinates grow towards the eye, against the axis to the back.
        boolean grows = (side.sign() > 0) != (side.axis() == Axis.Y);
        return grows ? most(staying, side.axis()) - least(moving, side.axis())
                : most(moving, side.axis()) - least(staying, side.axis());
    }

    private static double least(Hexagon box, Axis axis) {
        return switch (axis) {
            case X -> box.x0();
            case Y -> box.y0();
            case Z -> box.z0();
        };
    }

    private static double most(Hexagon box, Axis axis) {
        return switch (axis) {
            case X -> box.x1();
            case Y -> box.y1();
            case Z -> box.z1();
        };
    }

    private double cost(List<Vec3> shifts) {
        Vec3[] total = before.clone();
        for (int i = 0; i < shifts.size(); i++) {
            for (int part : moves.get(i).parts()) {
                total[part] = total[part].plus(shifts.get(i));
            }
        }
        Hexagon[] now = new Hexagon[boxes.length];
        for (int i = 0; i < now.length; i++) {
            now[i] = hexagons[i].moved(total[i]);
        }
        work += (long) now.length * now.length;
        return size(now) / whole + HIDDEN * hidden(now);
    }

    private static double size(Hexagon[] boxes) {
        Bounds all = Arrays.stream(boxes).map(Hexagon::onPaper).reduce(Bounds::join).orElseThrow();
        return Math.max(all.width() / WIDE, all.height());
    }

    /** How many parts are hidden, a part that is half hidden counting for a half. */
    private static double hidden(Hexagon[] now) {
        double sum = 0;
        for (int i = 0; i < now.length; i++) {
            Hexagon one = now[i];
            double over = 0;
            for (int j = 0; j < now.length; j++) {
                if (i != j && one.behind(now[j])) {
                    over += one.overlap(now[j]);
                }
            }
            sum += Math.min(1, over / Math.max(1e-9, one.area()));
        }
        return sum;
    }
}
