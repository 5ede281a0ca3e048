package dev.treen.yield.engine;

/** A small reproducible source of random numbers (xorshift, Marsaglia 2003), the same on every machine. */
final class Dice {
    private long state;

    Dice(long seed) {
        state = seed * 0x9E3779B97F4A7C15L + 0x7F4A7C15L;
        if (state == 0) {
            state = 88172645463325252L;
        }
        for (int i = 0; i < 8; i++) {
            next();
        }
    }

    private long next() {
        state ^= state << 13;
        state ^= state >>> 7;
        state ^= state << 17;
        return state;
    }

    /** From 0 to n - 1. */
    int below(int n) {
        return (int) (((next() >>> 33) * n) >>> 31);
    }

    /** From 0 up to 1. */
    double unit() {
        return (next() >>> 11) * 0x1.0p-53;
    }
}
