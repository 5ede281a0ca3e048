package dev.treen.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Wood between two faces of a finished part that look away from each other, both square to one axis.
 *
 * @param thickness how much wood there is between them, in millimetres
 * @param one the cut that made the face on the higher side of the axis
 * @param other the cut that made the opposite face
 * @param place the box that the thin wood fills, which in an area that is no rectangle reaches a little farther
 */
public record ThinPlace(BigFraction thickness, Origin one, Origin other, Box place) {
    /** Far above what a double loses of a place in any workshop, far below anything that is cut. */
    private static final double SLACK = 1e-3;

    private record Facing(SurfaceFace face, Side side) {}

    /**
     * The places where less than {@code limit} of wood is left, made by at least one cut, over an area that reaches at
     * least {@code least} both ways. The part's own thickness is not among them, nor are wedges and points, whose faces
     * are not parallel.
     */
    public static List<ThinPlace> in(Solid solid, BigFraction limit, BigFraction least) {
        Map<Side, List<Facing>> facing = new HashMap<>();
        for (SurfaceFace face : solid.surface().faces()) {
            face.plane().side().ifPresent(side -> facing.computeIfAbsent(side, s -> new ArrayList<>())
                    .add(new Facing(face, side)));
        }
        List<ThinPlace> found = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            NavigableMap<Double, List<Facing>> lows = byPlace(facing.getOrDefault(Side.of(axis, -1), List.of()));
            for (Facing high : facing.getOrDefault(Side.of(axis, 1), List.of())) {
                // Whether a face lies near enough is decided exactly; this only leaves out what certainly does not.
                double place = high.face().plane().offsetRat().toDouble();
                lows.subMap(place - limit.doubleValue() - SLACK, true, place + SLACK, true).values().stream()
                        .flatMap(List::stream)
                        .forEach(low -> found.addAll(between(high, low, Rat.of(limit), Rat.of(least), solid)));
            }
        }
        return found;
    }

    /** Faces by where they lie along their axis. */
    private static NavigableMap<Double, List<Facing>> byPlace(List<Facing> lows) {
        NavigableMap<Double, List<Facing>> places = new TreeMap<>();
        lows.forEach(low -> places
                .computeIfAbsent(-low.face().plane().offsetRat().toDouble(), place -> new ArrayList<>())
                .add(low));
        return places;
    }

    private static List<ThinPlace> between(Facing high, Facing low, Rat limit, Rat least, Solid solid) {
        Plane above = high.face().plane();
        Rat wood = above.offsetRat().plus(low.face().plane().offsetRat());
        boolean cut = !high.face().origin().isStock() || !low.face().origin().isStock();
        if (!cut || wood.signum() <= 0 || !wood.lessThan(limit)) {
            return List.of();
        }
        // Square to an axis both planes share one frame, whatever their offsets.
        List<Poly> shared = new ArrayList<>();
        for (Poly one : high.face().region().polys()) {
            low.face().region().polys().forEach(other -> one.intersect(other).ifPresent(shared::add));
        }
        List<ThinPlace> found = new ArrayList<>();
        for (List<Poly> area : Clusters.of(shared)) {
            Region region = new Region(above, area);
            region.extent()
                    .filter(extent -> wide(extent, high.side().axis(), least))
                    .map(extent -> new ThinPlace(wood.toFraction(), high.face().origin(), low.face().origin(),
                            box(extent, high.side().axis(), wood)))
                    .filter(thin -> solid(thin.place(), region, solid))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static boolean wide(Region.Extent extent, Axis across, Rat least) {
        for (Axis axis : Axis.values()) {
            if (axis != across && Rat.of(extent.along(axis)).lessThan(least)) {
                return false;
            }
        }
        return true;
    }

    private static Box box(Region.Extent extent, Axis across, Rat wood) {
        BigFraction low = extent.min().at(across).minus(wood).toFraction();
        return new Box(extent.min().with(across, low), extent.max());
    }

    /** Whether it is wood all through in the middle of the area: another cut between them has thinner places of its own. */
    private static boolean solid(Box place, Region region, Solid solid) {
        List<Vec3> corners = region.pieces().getFirst();
        Vec3 sum = Vec3.ZERO;
        for (Vec3 corner : corners) {
            sum = sum.plus(corner);
        }
        Vec3 at = sum.times(Rat.of(1, corners.size()));
        Axis across = region.plane().side().orElseThrow().axis();
        return solid.contains(at.with(across, place.centre().get(across)));
    }
}
