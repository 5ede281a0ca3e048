package dev.treen.yield;

import java.math.BigInteger;

/** Whether a rectangle reaches into a defect, exactly, by the defect's true shape. */
final class Touching {
    private Touching() {
    }

    static boolean inside(Defect defect, Stock stock, Rect part) {
        return switch (defect) {
            case Defect.Box box -> box.area().area() > 0 && box.area().overlaps(part);
            case Defect.Knot knot -> knot(knot.box(), part);
            case Defect.Split split -> split(split, part);
            case Defect.Strip strip -> switch (strip.side()) {
                case LEFT_END -> part.x() < strip.depth();
                case RIGHT_END -> part.right() > stock.length() - strip.depth();
                case LOWER_EDGE -> part.y() < strip.depth();
                case UPPER_EDGE -> part.top() > stock.width() - strip.depth();
            };
        };
    }

    // The point of the rectangle nearest to the centre lies in the ellipse; everything doubled to stay whole.
    private static boolean knot(Rect box, Rect part) {
        if (box.length() == 0 || box.width() == 0) {
            return false;
        }
        long dx = away(2 * box.x() + box.length(), 2 * part.x(), 2 * part.right());
        long dy = away(2 * box.y() + box.width(), 2 * part.y(), 2 * part.top());
        if (dx >= box.length() || dy >= box.width()) {
            return false;
        }
        BigInteger a = square(dx, box.width());
        BigInteger b = square(dy, box.length());
        return a.add(b).compareTo(square(box.length(), box.width())) < 0;
    }

    private static long away(long centre, long low, long high) {
        return centre < low ? low - centre : Math.max(centre - high, 0);
    }

    private static BigInteger square(long p, long q) {
        BigInteger v = BigInteger.valueOf(p).multiply(BigInteger.valueOf(q));
        return v.multiply(v);
    }

    private static boolean split(Defect.Split s, Rect part) {
        if (crosses(s, part)) {
            return true;
        }
        if (s.width() == 0) {
            return false;
        }
        return nearPart(s.x1(), s.y1(), s.width(), part)
                || nearPart(s.x2(), s.y2(), s.width(), part)
                || nearLine(s, part.x(), part.y())
                || nearLine(s, part.right(), part.y())
                || nearLine(s, part.x(), part.top())
                || nearLine(s, part.right(), part.top());
    }

    // A line passes through the inside of a rectangle unless all corners lie on one side, or its box is beside it.
    private static boolean crosses(Defect.Split s, Rect part) {
        if (Math.max(s.x1(), s.x2()) <= part.x()
                || Math.min(s.x1(), s.x2()) >= part.right()
                || Math.max(s.y1(), s.y2()) <= part.y()
                || Math.min(s.y1(), s.y2()) >= part.top()) {
            return false;
        }
        int a = cross(s, part.x(), part.y()).signum();
        int b = cross(s, part.right(), part.y()).signum();
        int c = cross(s, part.x(), part.top()).signum();
        int d = cross(s, part.right(), part.top()).signum();
        int low = Math.min(Math.min(a, b), Math.min(c, d));
        int high = Math.max(Math.max(a, b), Math.max(c, d));
        return low < 0 && high > 0;
    }

    private static BigInteger cross(Defect.Split s, long x, long y) {
        return product(s.x2() - s.x1(), y - s.y1()).subtract(product(s.y2() - s.y1(), x - s.x1()));
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }

    private static boolean nearPart(long x, long y, long width, Rect part) {
        long dx = away(2 * x, 2 * part.x(), 2 * part.right());
        long dy = away(2 * y, 2 * part.y(), 2 * part.top());
        return product(dx, dx).add(product(dy, dy)).compareTo(product(width, width)) < 0;
    }

    private static boolean nearLine(Defect.Split s, long x, long y) {
        long lx = s.x2() - s.x1();
        long ly = s.y2() - s.y1();
        BigInteger along = product(lx, x - s.x1()).add(product(ly, y - s.y1()));
        BigInteger length2 = product(lx, lx).add(product(ly, ly));
        if (along.signum() < 0 || along.compareTo(length2) > 0) {
            return false;
        }
        BigInteger off = cross(s, x, y);
        BigInteger four = BigInteger.valueOf(4);
        return off.multiply(off).multiply(four).compareTo(product(s.width(), s.width()).multiply(length2)) < 0;
    }
}
