package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;

/** One thing on a sheet. */
public sealed interface Mark {
    /** The same thing at another place. */
    Mark moved(double dx, double dy);

    /** The room it takes. */
    Bounds bounds();

    /** A straight line. */
    record Line(Spot from, Spot to, Pen pen) implements Mark {
        @Override
        public Line moved(double dx, double dy) {
            return new Line(from.plus(dx, dy), to.plus(dx, dy), pen);
        }

        @Override
        public Bounds bounds() {
            return new Bounds(Math.min(from.x(), to.x()), Math.min(from.y(), to.y()), Math.max(from.x(), to.x()),
                    Math.max(from.y(), to.y()));
        }
    }

    /**
     * A filled area.
     *
     * @param outlines closed outlines; where they lie in each other, every second one is a hole
     * @param grey how light: 0 for black, 255 for white
     */
    record Area(List<List<Spot>> outlines, int grey) implements Mark {
        /** Keeps its own copy. */
        public Area {
            outlines = outlines.stream().map(List::copyOf).toList();
        }

        @Override
        public Area moved(double dx, double dy) {
            return new Area(outlines.stream().map(o -> o.stream().map(s -> s.plus(dx, dy)).toList()).toList(), grey);
        }

        @Override
        public Bounds bounds() {
            return outlines.stream()
                    .flatMap(List::stream)
                    .map(s -> new Bounds(s.x(), s.y(), s.x(), s.y()))
                    .reduce(Bounds::join)
                    .orElseThrow();
        }
    }

    /** A small circle: a line around nothing, or black. */
    record Ring(Spot middle, double radius, boolean black) implements Mark {
        @Override
        public Ring moved(double dx, double dy) {
            return new Ring(middle.plus(dx, dy), radius, black);
        }

        @Override
        public Bounds bounds() {
            return Bounds.about(middle, 2 * radius, 2 * radius);
        }
    }

    /**
     * Words whose middle is at a point.
     *
     * @param size of the letters in millimetres
     * @param turned whether they are read from the right, upwards (ISO 129-1; from memory)
     */
    record Label(Spot middle, String words, double size, boolean bold, boolean turned, From from) implements Mark {
        /** Where the letters begin or end for sure, whatever the font. */
        enum From {
            MIDDLE, LEFT, RIGHT
        }

        Label(Spot middle, String words, double size, boolean bold, boolean turned) {
            this(middle, words, size, bold, turned, From.MIDDLE);
        }

        @Override
        public Label moved(double dx, double dy) {
            return new Label(middle.plus(dx, dy), words, size, bold, turned, from);
        }

        @Override
        public Bounds bounds() {
            double wide = Lettering.width(words, size, bold);
            double high = Lettering.height(size);
            return turned ? Bounds.about(middle, high, wide) : Bounds.about(middle, wide, high);
        }
    }

    /** All of {@code marks} at another place. */
    static List<Mark> moved(List<Mark> marks, double dx, double dy) {
        List<Mark> all = new ArrayList<>(marks.size());
        marks.forEach(mark -> all.add(mark.moved(dx, dy)));
        return all;
    }

    /** The room that all of {@code marks} take; they must not be none. */
    static Bounds bounds(List<Mark> marks) {
        return marks.stream().map(Mark::bounds).reduce(Bounds::join).orElseThrow();
    }
}
