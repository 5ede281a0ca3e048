package dev.treen.solid;

import java.util.List;

/** Places on a plane that are free of material and closed in by it all round. */
public final class Holes {
    private Holes() {
    }

    /**
     * The holes in the union of some areas, one region each. What is open to the outside through a gap of any width is no
     * hole; two holes that touch at a point only are two.
     *
     * @param plane the plane on which they lie, whose way of looking the holes take
     * @param material areas on that plane or its flip
     */
    public static List<Region> in(Plane plane, List<Region> material) {
        List<Patch> filled = material.stream()
                .flatMap(region -> region.polys().stream())
                .map(poly -> new Patch(poly, Origin.STOCK))
                .toList();
        if (filled.isEmpty()) {
            return List.of();
        }
        Poly window = window(filled);
        List<Poly> free = Patch.minus(List.of(new Patch(window, Origin.STOCK)), filled).stream()
                .map(Patch::poly)
                .toList();
        Vec2 outside = window.corners().getFirst();
        return Clusters.of(free).stream()
                .filter(area -> area.stream().noneMatch(poly -> poly.corners().contains(outside)))
                .map(area -> new Region(plane, area))
                .toList();
    }

    /** A rectangle with some room round all of them. */
    private static Poly window(List<Patch> filled) {
        Vec2 first = filled.getFirst().poly().corners().getFirst();
        Rat lowU = first.u;
        Rat highU = first.u;
        Rat lowV = first.v;
        Rat highV = first.v;
        for (Patch patch : filled) {
            for (Vec2 corner : patch.poly().corners()) {
                lowU = lowU.min(corner.u);
                highU = highU.max(corner.u);
                lowV = lowV.min(corner.v);
                highV = highV.max(corner.v);
            }
        }
        lowU = lowU.minus(Rat.ONE);
        lowV = lowV.minus(Rat.ONE);
        highU = highU.plus(Rat.ONE);
        highV = highV.plus(Rat.ONE);
        return new Poly(List.of(new Vec2(lowU, lowV), new Vec2(highU, lowV), new Vec2(highU, highV),
                new Vec2(lowU, highV)));
    }
}
