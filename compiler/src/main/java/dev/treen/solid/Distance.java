package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The shortest way between two solids.
 *
 * <p>Between convex pieces that share no volume it runs from a corner to a face, or between two edges; all are tried. The
 * squared distance is exact; its root is taken only for {@link #between}.
 */
public final class Distance {

    private Distance() {
    }

    /**
     * The squared shortest distance in square millimetres; zero when the solids touch or share volume.
     *
     * @throws IllegalArgumentException if either is empty
     */
    public static BigFraction squared(Solid a, Solid b) {
        if (a.isEmpty() || b.isEmpty()) {
            throw new IllegalArgumentException("an empty solid is nowhere");
        }
        Rat best = Rat.ZERO;
        boolean some = false;
        for (Convex p : a.pieces()) {
            for (Convex q : b.pieces()) {
                Rat here = boxes(p.bounds(), q.bounds());
                if (some && here.compareTo(best) >= 0) {
                    continue;
                }
                Rat found = p.isBox() && q.isBox() ? here : pieces(p, q);
                best = some ? best.min(found) : found;
                some = true;
            }
        }
        return best.toFraction();
    }

    /** The shortest distance in millimetres, to double precision; exactly zero when the solids meet. */
    public static double between(Solid a, Solid b) {
        return Math.sqrt(squared(a, b).doubleValue());
    }

    private static Rat boxes(Box a, Box b) {
        Rat sum = Rat.ZERO;
        for (Axis axis : Axis.values()) {
            sum = sum.plus(a.gapRat(b, axis).max(Rat.ZERO).square());
        }
        return sum;
    }

    private static Rat pieces(Convex p, Convex q) {
        if (p.intersect(q).isPresent()) {
            return Rat.ZERO;
        }
        Rat best = p.vertices().getFirst().minus(q.vertices().getFirst()).square();
        best = best.min(cornersToFaces(p, q)).min(cornersToFaces(q, p));
        List<Vec3[]> others = edges(q);
        for (Vec3[] edge : edges(p)) {
            for (Vec3[] other : others) {
                best = best.min(edges(edge[0], edge[1], other[0], other[1]));
            }
        }
        return best;
    }

    private static List<Vec3[]> edges(Convex piece) {
        List<Vec3[]> edges = new ArrayList<>();
        for (Facet facet : piece.facets()) {
            int[] loop = facet.loop();
            for (int i = 0; i < loop.length; i++) {
                int j = loop[(i + 1) % loop.length];
                // Each edge is seen from both its faces, in opposite ways; one is enough.
                if (loop[i] < j) {
                    edges.add(new Vec3[]{piece.vertices().get(loop[i]), piece.vertices().get(j)});
                }
            }
        }
        return edges;
    }

    private static Rat cornersToFaces(Convex p, Convex q) {
        Rat best = p.vertices().getFirst().minus(q.vertices().getFirst()).square();
        for (Facet facet : q.facets()) {
            Vec3 normal = facet.plane().normal();
            for (Vec3 corner : p.vertices()) {
                Rat height = facet.plane().value(corner);
                if (height.signum() >= 0) {
                    Vec3 foot = corner.minus(normal.times(height.dividedBy(normal.square())));
                    if (onFace(q, facet, foot)) {
                        best = best.min(height.square().dividedBy(normal.square()));
                    }
                }
            }
        }
        return best;
    }

    private static boolean onFace(Convex piece, Facet facet, Vec3 point) {
        int[] loop = facet.loop();
        for (int i = 0; i < loop.length; i++) {
            Vec3 from = piece.vertices().get(loop[i]);
            Vec3 inward = facet.plane().normal().cross(piece.vertices().get(loop[(i + 1) % loop.length]).minus(from));
            if (inward.inner(point.minus(from)).signum() < 0) {
                return false;
            }
        }
        return true;
    }

    /** Between two stretches: where their lines come nearest if that is within both, else from an end of one. */
    private static Rat edges(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
        Vec3 first = b.minus(a);
        Vec3 second = d.minus(c);
        Vec3 across = first.cross(second);
        Rat best = toEdge(a, c, d).min(toEdge(b, c, d)).min(toEdge(c, a, b)).min(toEdge(d, a, b));
        if (across.isZero()) {
            return best;
        }
        Rat scale = across.square().inverse();
        Vec3 between = c.minus(a);
        Rat s = between.cross(second).inner(across).times(scale);
        Rat t = between.cross(first).inner(across).times(scale);
        boolean within = s.signum() >= 0 && t.signum() >= 0 && s.compareTo(Rat.ONE) <= 0 && t.compareTo(Rat.ONE) <= 0;
        return within ? best.min(between.inner(across).square().times(scale)) : best;
    }

    private static Rat toEdge(Vec3 point, Vec3 from, Vec3 to) {
        Vec3 way = to.minus(from);
        Rat share = point.minus(from).inner(way).dividedBy(way.square()).max(Rat.ZERO).min(Rat.ONE);
        return from.plus(way.times(share)).minus(point).square();
    }
}
