package dev.treen.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a convex piece by a plane.
 *
 * <p>Every corner is first given its exact signed value on the plane. Faces are then clipped corner by corner, and the
 * edges they leave on the plane are chained, against their direction, into the outline of the new face. As no test is
 * rounded, no case is "nearly" on the plane.
 */
final class ConvexCut {

    /** Both sides of a cut; a side without volume is absent. */
    record Halves(@Nullable Convex inside, @Nullable Convex outside) {}

    private final Convex piece;
    private final Rat[] values;
    private final int[] signs;
    private final Map<Long, Vec3> crossings = new HashMap<>();
    private int above;
    private int below;

    private ConvexCut(Convex piece, Plane plane) {
        this.piece = piece;
        int count = piece.vertices().size();
        values = new Rat[count];
        signs = new int[count];
        for (int i = 0; i < count; i++) {
            values[i] = plane.value(piece.vertices().get(i));
            signs[i] = values[i].signum();
            above += signs[i] > 0 ? 1 : 0;
            below += signs[i] < 0 ? 1 : 0;
        }
    }

    /**
     * The part of the piece on the material side of a face, or null when that has no volume; the new face takes after the
     * given one.
     */
    static @Nullable Convex inside(Convex piece, Facet by) {
        ConvexCut cut = new ConvexCut(piece, by.plane());
        if (cut.below == 0) {
            return null;
        }
        return cut.above == 0 ? cut.laidOpen(by) : cut.side(-1, by);
    }

    /**
     * Divides the piece along a cutter's face. Both halves have a seam there; that of the outer half is a surface where the
     * cutter's face was, which the paints tell.
     */
    static Halves split(Convex piece, Facet by, List<Paint> paints) {
        ConvexCut cut = new ConvexCut(piece, by.plane());
        if (cut.below == 0) {
            return new Halves(null, piece);
        }
        if (cut.above == 0) {
            return new Halves(piece, null);
        }
        Facet inner = new Facet(by.plane(), by.loop(), by.origin(), true, List.of());
        Facet outer = new Facet(by.plane().flip(), by.loop(), by.origin(), true, paints);
        return new Halves(cut.side(-1, inner), cut.side(1, outer));
    }

    /** The piece itself, where a seam that lies on the plane becomes a face made by this cut. */
    private Convex laidOpen(Facet by) {
        if (values.length - below < 3
                || piece.facets().stream().noneMatch(f -> f.seam() && f.plane().equals(by.plane()))) {
            return piece;
        }
        return piece.withFacets(piece.facets().stream()
                .map(f -> f.seam() && f.plane().equals(by.plane()) ? f.laidOpen(by) : f)
                .toList());
    }

    private Convex side(int keep, Facet by) {
        List<Vec3> vertices = new ArrayList<>();
        List<Facet> facets = new ArrayList<>();
        Map<Long, Integer> numbers = new HashMap<>();
        int[] next = new int[values.length + piece.edgeCount()];
        for (Facet facet : piece.facets()) {
            int[] loop = clip(facet.loop(), keep, vertices, numbers, next);
            if (loop.length > 0) {
                facets.add(facet.withLoop(loop));
            }
        }
        facets.add(by.withLoop(chain(next)));
        return new Convex(vertices, facets);
    }

    /** The new face's outline; {@code next} holds, for each corner on the plane, the following one plus one. */
    private static int[] chain(int[] next) {
        int start = 0;
        while (next[start] == 0) {
            start++;
        }
        int[] loop = new int[next.length];
        int size = 0;
        int at = start;
        do {
            loop[size++] = at;
            at = next[at] - 1;
        } while (at != start);
        return Arrays.copyOf(loop, size);
    }

    /** Clips one face; returns its new loop, empty when nothing of it is left, and notes its edge on the plane. */
    private int[] clip(
            int[] loop, int keep, List<Vec3> vertices, Map<Long, Integer> numbers, int[] next) {
        int[] result = new int[loop.length + 2];
        boolean[] onPlane = new boolean[loop.length + 2];
        int size = 0;
        boolean some = false;
        for (int i = 0; i < loop.length; i++) {
            int here = loop[i];
            int there = loop[i + 1 == loop.length ? 0 : i + 1];
            if (signs[here] != -keep) {
                onPlane[size] = signs[here] == 0;
                some |= signs[here] == keep;
                result[size++] = number((long) here * signs.length + here, piece.vertices().get(here), vertices,
                        numbers);
            }
            if (signs[here] * signs[there] < 0) {
                onPlane[size] = true;
                long key = key(here, there);
                Vec3 point = crossings.computeIfAbsent(key, k -> crossing(here, there));
                result[size++] = number(key, point, vertices, numbers);
            }
        }
        if (!some) {
            return new int[0];
        }
        for (int i = 0; i < size; i++) {
            int j = i + 1 == size ? 0 : i + 1;
            if (onPlane[i] && onPlane[j]) {
                next[result[j]] = result[i] + 1;
            }
        }
        return Arrays.copyOf(result, size);
    }

    private long key(int a, int b) {
        return (long) Math.min(a, b) * signs.length + Math.max(a, b);
    }

    private Vec3 crossing(int a, int b) {
        Vec3 from = piece.vertices().get(a);
        Vec3 to = piece.vertices().get(b);
        Rat share = values[a].dividedBy(values[a].minus(values[b]));
        return from.plus(to.minus(from).times(share));
    }

    private static int number(long key, Vec3 point, List<Vec3> vertices, Map<Long, Integer> numbers) {
        return numbers.computeIfAbsent(
                key,
                k -> {
                    vertices.add(point);
                    return vertices.size() - 1;
                });
    }
}
