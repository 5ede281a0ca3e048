package dev.treen.drawing;

import java.util.List;

/** Outlines on paper. */
final class Flat {
    private Flat() {
    }

    /** Half the sum of cross products; with y down an outline that runs clockwise to the eye has a positive one. */
    static double area(List<Spot> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Spot a = outline.get(i);
            Spot b = outline.get((i + 1) % outline.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }

    /** A point well inside: of the middles of all stretches across the outline at three heights, that of the longest. */
    static Spot inside(List<Spot> outline) {
        double top = outline.stream().mapToDouble(Spot::y).min().orElseThrow();
        double bottom = outline.stream().mapToDouble(Spot::y).max().orElseThrow();
        Spot best = outline.getFirst();
        double widest = 0;
        for (double share : new double[]{0.5, 0.33, 0.67}) {
            double y = top + (bottom - top) * share;
            double[] crossings = crossings(outline, y);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                double wide = crossings[i + 1] - crossings[i];
                if (wide > widest * 1.05) {
                    widest = wide;
                    best = new Spot((crossings[i] + crossings[i + 1]) / 2, y);
                }
            }
        }
        return best;
    }

    private static double[] crossings(List<Spot> outline, double y) {
        java.util.stream.DoubleStream.Builder found = java.util.stream.DoubleStream.builder();
        for (int i = 0; i < outline.size(); i++) {
            Spot a = outline.get(i);
            Spot b = outline.get((i + 1) % outline.size());
            if (a.y() > y != b.y() > y) {
                found.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
            }
        }
        return found.build().sorted().toArray();
    }

    /** Words cut short with three dots where they would be longer than {@code wide}. */
    static String shortened(String words, double wide) {
        String shown = words;
        while (shown.length() > 1 && Lettering.width(shown, Lettering.USUAL, false) > wide) {
            shown = shown.substring(0, shown.length() - (shown.endsWith("…") ? 2 : 1)) + "…";
        }
        return shown;
    }
}
