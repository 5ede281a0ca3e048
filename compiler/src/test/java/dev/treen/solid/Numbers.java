package dev.treen.solid;

import org.apache.commons.numbers.fraction.BigFraction;

/** Short ways to write exact values in tests. */
final class Numbers {

    private Numbers() {
    }

    static BigFraction whole(long value) {
        return BigFraction.of(value);
    }

    static BigFraction part(long top, long bottom) {
        return BigFraction.of(java.math.BigInteger.valueOf(top), java.math.BigInteger.valueOf(bottom));
    }

    static Solid block(long x0, long y0, long z0, long x1, long y1, long z1) {
        return Solid.of(Box.of(x0, y0, z0, x1, y1, z1));
    }

    static Convex cutter(long x0, long y0, long z0, long x1, long y1, long z1) {
        return Convex.box(Box.of(x0, y0, z0, x1, y1, z1), Origin.STOCK);
    }

    static Vec3 at(long x, long y, long z) {
        return Vec3.of(x, y, z);
    }
}
