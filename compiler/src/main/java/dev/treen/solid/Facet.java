package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A face of a convex piece, its corners as indexes into the piece's vertices, counter-clockwise from outside.
 *
 * <p>Where a cut divides a piece, the face between the halves is partly surface, where the cutter was, and partly seam.
 * Such a face keeps what cutters have laid open as paint, the oldest first, because a later cut may lay open the rest:
 * then each part of the face must still name the cut that made it.
 */
final class Facet {
    private final Plane plane;
    private final int[] loop;
    private final Origin origin;
    private final boolean seam;
    private final List<Paint> paints;
    private @Nullable List<Patch> patches;

    /**
     * The loop is handed over: the caller does not change it any more.
     *
     * @param origin what made the face where no paint lies
     * @param seam whether a part of the face may lie against another piece of the same solid
     */
    Facet(Plane plane, int[] loop, Origin origin, boolean seam, List<Paint> paints) {
        this.plane = plane;
        this.loop = loop;
        this.origin = origin;
        this.seam = seam;
        this.paints = paints;
    }

    /** A face that one cut made all of. */
    Facet(Plane plane, int[] loop, Origin origin) {
        this(plane, loop, origin, false, List.of());
    }

    Plane plane() {
        return plane;
    }

    /** The corners' indexes; not to be changed. */
    int[] loop() {
        return loop;
    }

    Origin origin() {
        return origin;
    }

    boolean seam() {
        return seam;
    }

    List<Paint> paints() {
        return paints;
    }

    Facet withLoop(int[] newLoop) {
        return new Facet(plane, newLoop, origin, seam, paints);
    }

    Facet withOrigin(Origin newOrigin) {
        return new Facet(plane, loop, newOrigin, seam, List.of());
    }

    /** The face after a cut along its plane that leaves no seam: what was not painted is that cut's work. */
    Facet laidOpen(Facet by) {
        return new Facet(plane, loop, by.origin, by.seam, joined(by.paints));
    }

    /** The face after a cutter has taken away what lay against a part of it. */
    Facet laidOpen(Paint paint) {
        return new Facet(plane, loop, origin, seam, joined(List.of(paint)));
    }

    private List<Paint> joined(List<Paint> more) {
        List<Paint> all = new ArrayList<>(paints);
        all.addAll(more);
        return List.copyOf(all);
    }

    Facet translate(Vec3 by) {
        return new Facet(plane.translate(by), loop, origin, seam, paints.stream().map(p -> p.translate(by)).toList());
    }

    Facet turn(Turn turn, int[] newLoop) {
        return new Facet(turn.apply(plane), newLoop, origin, seam, paints.stream().map(p -> p.turn(turn)).toList());
    }

    /**
     * The face in the frame of its plane, divided by what made it. Worked out once: a side that takes in many shelves has
     * many paints on one face, and is asked about with each of them.
     *
     * @param piece the piece whose corners its indexes mean, the same at every call
     */
    List<Patch> patches(Convex piece) {
        List<Patch> known = patches;
        if (known == null) {
            known = divided(piece, Frame.of(plane));
            patches = known;
        }
        return known;
    }

    private List<Patch> divided(Convex piece, Frame frame) {
        Poly whole = frame.flatten(piece, this);
        if (paints.stream().allMatch(paint -> paint.origin().equals(origin))) {
            return List.of(new Patch(whole, origin));
        }
        List<Patch> patches = new ArrayList<>();
        List<Poly> rest = List.of(whole);
        for (Paint paint : paints) {
            Poly painted = Poly.around(paint.corners().stream().map(frame::flatten).toList()).orElseThrow();
            List<Poly> left = new ArrayList<>();
            for (Poly poly : rest) {
                poly.intersect(painted).ifPresent(part -> patches.add(new Patch(part, paint.origin())));
                left.addAll(poly.minus(painted));
            }
            rest = left;
        }
        rest.forEach(poly -> patches.add(new Patch(poly, origin)));
        return patches;
    }
}
