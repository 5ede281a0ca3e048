package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * What it takes to saw a layout, the less the better.
 *
 * @param cuts saw cuts, of which a long rip counts as several, but for those that trim a board and those round a flaw in a leftover
 * @param settings of a fence or stop: what is sawn to one measure at one stage of one board is sawn at one setting
 * @param stages turns from crosscutting to ripping and back, each of which asks for another saw or fence, of all boards
 */
record Effort(int cuts, int settings, int stages) {
    /** A setting is about a quarter of a cut's work and a turn an eighth; the figures are our own. */
    private static final double SETTING = 0.25;

    private static final double STAGE = 0.125;

    /** What a rip counts more for each length of a strip beyond the first (rule of the trade Y-13; figure our own). */
    private static final long LONG = 4;

    /** The part of a key that holds the measure; the stage stands above it. */
    private static final int MEASURE_BITS = 56;

    /** Reads the boards of one state. */
    private static final class Reader {
        private final BoardTree tree;
        private final long strip;
        private long[] measures = new long[16];
        private int measured;
        private int cuts;
        private int stages;

        Reader(BoardTree tree, long strip) {
            this.tree = tree;
            this.strip = strip;
        }

        void read(int node, int stage) {
            if (tree.kind(node) != BoardTree.ROW && tree.kind(node) != BoardTree.STACK) {
                return;
            }
            stages = Math.max(stages, stage + 1);
            boolean row = tree.kind(node) == BoardTree.ROW;
            int cut = row ? 1 : (int) (1 + LONG * ((tree.length(node) - 1) / strip));
            for (int c = tree.first(node); c >= 0; c = tree.next(c)) {
                cuts += c == tree.first(node) ? 0 : cut;
                // What is left over lies last where nothing keeps it elsewhere, and is not measured.
                boolean rest = tree.free(c) && (tree.clear || tree.next(c) < 0);
                if (!rest) {
                    measure(stage, row ? tree.length(c) : tree.width(c));
                }
                read(c, stage + 1);
            }
        }

        private void measure(int stage, long size) {
            if (measured == measures.length) {
                measures = Arrays.copyOf(measures, measured * 2);
            }
            measures[measured++] = ((long) stage << MEASURE_BITS) + size;
        }

        int settings() {
            Arrays.sort(measures, 0, measured);
            int settings = 0;
            for (int i = 0; i < measured; i++) {
                settings += i > 0 && measures[i] == measures[i - 1] ? 0 : 1;
            }
            return settings;
        }
    }

    static Effort of(State state) {
        int cuts = 0;
        int settings = 0;
        int stages = 0;
        for (int i = 0; i < state.open; i++) {
            var reader = new Reader(state.slot[i], state.f.problem.settings().strip());
            reader.read(0, 0);
            cuts += reader.cuts;
            settings += reader.settings();
            stages += reader.stages;
        }
        return new Effort(cuts, settings, stages);
    }

    /** In cuts. */
    double inCuts() {
        return cuts + SETTING * settings + STAGE * stages;
    }
}
