package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;

/** Moves places along a line apart until each has its pitch, as little as can be (pool adjacent violators). */
final class Spread {
    private Spread() {
    }

    /**
     * The places, in the same order, at least {@code pitch} apart and none before {@code least}.
     *
     * @param places from the smallest to the greatest
     */
    static List<Double> apart(List<Double> places, double pitch, double least) {
        List<double[]> pools = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            double[] pool = {places.get(i) - i * pitch, 1};
            while (!pools.isEmpty() && pools.getLast()[0] > pool[0]) {
                double[] before = pools.removeLast();
                double count = before[1] + pool[1];
                pool = new double[]{(before[0] * before[1] + pool[0] * pool[1]) / count, count};
            }
            pools.add(pool);
        }
        List<Double> spread = new ArrayList<>(places.size());
        for (double[] pool : pools) {
            for (int i = 0; i < pool[1]; i++) {
                spread.add(Math.max(least, pool[0]) + spread.size() * pitch);
            }
        }
        return spread;
    }
}
