package dev.treen.cutting;

import dev.treen.yield.Layout;

/**
 * How good a layout is, all ways to resaw boards and to divide wide parts considered.
 *
 * @param gap how far it may be from the best possible, as a share
 * @param proved whether nothing better is possible
 * @param how the best possible was bounded
 */
record Proof(double gap, boolean proved, String how) {
    static Proof of(Layout layout, Dividing.Chosen chosen, Dividing dividing) {
        if (chosen.ways() == 1) {
            return new Proof(layout.gap(), layout.proved(), layout.bound().how());
        }
        if (chosen.others().isEmpty()) {
            return new Proof(layout.gap(), false, layout.bound().how() + ", boards and staves divided as here");
        }
        double labour = dividing.labour(chosen.rack(), layout);
        double total = layout.score() + labour;
        double own = dividing.bound(chosen.rack(), layout);
        double bound = Math.min(Math.min(chosen.others().get(), own), total);
        double gap = total <= 0 ? 0 : (total - bound) / total;
        boolean proved = layout.complete() && gap < 1e-9;
        return new Proof(proved ? 0 : gap, proved, layout.bound().how() + ", resaw cuts counted in");
    }
}
