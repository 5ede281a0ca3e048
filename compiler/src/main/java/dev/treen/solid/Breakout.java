package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A place where a cut opens a face of the part it is made in.
 *
 * <p>Every cut opens some face, a groove the one it is ploughed into; which of them were meant is the caller's knowledge.
 *
 * @param face the face of the uncut part
 * @param opening the area of that face which the cut takes away
 */
public record Breakout(SurfaceFace face, Region opening) {

    /** All faces of a part that a cut would open, in the order of the part's surface. */
    public static List<Breakout> of(Solid part, Convex cut) {
        List<Breakout> found = new ArrayList<>();
        for (SurfaceFace face : part.surface().faces()) {
            opening(face.plane(), cut)
                    .map(face.region()::intersect)
                    .filter(region -> !region.isEmpty())
                    .ifPresent(region -> found.add(new Breakout(face, region)));
        }
        return found;
    }

    /** The cut's cross-section by the face's plane, if the cut has volume just inside it. */
    private static Optional<Region> opening(Plane plane, Convex cut) {
        return cut.clip(plane, Origin.STOCK)
                .map(inner -> Solid.of(inner).section(plane))
                .filter(region -> !region.isEmpty());
    }
}
