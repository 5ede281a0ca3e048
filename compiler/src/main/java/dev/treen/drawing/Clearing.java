package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for words where they lie on no line, on no other words, and where no leader will cross them. */
final class Clearing {
    private static final double ROOM = 0.5;
    private static final double STEP = 1.5;
    private static final double FARTHEST = 70;
    private static final int WAYS = 24;

    private final List<Mark.Line> lines = new ArrayList<>();
    private final List<Bounds> taken = new ArrayList<>();

    /** Takes notice of what is drawn. */
    void add(Mark mark) {
        switch (mark) {
            case Mark.Line line -> lines.add(line);
            case Mark.Label label -> taken.add(label.bounds());
            case Mark.Ring ring -> taken.add(ring.bounds());
            case Mark.Area area -> taken.add(area.bounds());
        }
    }

    boolean free(Bounds box) {
        Bounds wide = box.grown(ROOM);
        return taken.stream().noneMatch(wide::overlaps)
                && lines.stream().noneMatch(line -> wide.crossedBy(line.from(), line.to()));
    }

    /** The nearest free place round {@code anchor} for something so wide and high. */
    Optional<Spot> near(Spot anchor, double wide, double high) {
        for (double far = high / 2 + 1; far < FARTHEST; far += STEP) {
            for (int i = 0; i < WAYS; i++) {
                double turn = 2 * Math.PI * i / WAYS;
                // An ellipse as wide as the words, so that none of its places lies on the anchor.
                Spot middle = anchor.plus(Math.cos(turn) * (far + wide / 2), -Math.sin(turn) * far);
                if (free(Bounds.about(middle, wide, high)) && reachable(middle, anchor)) {
                    return Optional.of(middle);
                }
            }
        }
        return Optional.empty();
    }

    private boolean reachable(Spot from, Spot anchor) {
        Bounds point = new Bounds(anchor.x(), anchor.y(), anchor.x(), anchor.y());
        return taken.stream().filter(box -> !box.contains(point)).noneMatch(box -> box.crossedBy(from, anchor));
    }

    /** Words near what they tell of, with a leader where they are not beside it; nothing where there is no room at all. */
    List<Mark> words(Spot anchor, String words, double size) {
        Mark.Label probe = new Mark.Label(anchor, words, size, false, false);
        double wide = probe.bounds().width();
        double high = probe.bounds().height();
        List<Mark> marks = new ArrayList<>();
        near(anchor, wide, high).ifPresent(middle -> {
            Mark.Label label = new Mark.Label(middle, words, size, false, false);
            Spot from = nearestOf(label.bounds(), anchor);
            if (from.to(anchor) > 2) {
                marks.add(new Mark.Line(from, anchor, Pen.THIN));
                marks.add(new Mark.Ring(anchor, 0.5, true));
            }
            marks.add(label);
        });
        marks.forEach(this::add);
        return marks;
    }

    /** Where a leader leaves words: beside their middle line. */
    private static Spot nearestOf(Bounds box, Spot to) {
        Bounds wide = box.grown(ROOM);
        double x = Math.clamp(to.x(), wide.left(), wide.right());
        double y = Math.clamp(to.y(), wide.top(), wide.bottom());
        return new Spot(x, y);
    }
}
