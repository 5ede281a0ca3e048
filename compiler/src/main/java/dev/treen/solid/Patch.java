package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;

/** A convex bit of a surface in the frame of its plane, with the cut that made it. */
record Patch(Poly poly, Origin origin) {

    static List<Patch> minus(List<Patch> patches, List<Patch> covers) {
        if (covers.isEmpty()) {
            return patches;
        }
        List<Patch> left = new ArrayList<>();
        for (Patch patch : patches) {
            List<Poly> rest = List.of(patch.poly());
            for (Patch cover : covers) {
                if (patch.poly().apart(cover.poly())) {
                    continue;
                }
                rest = rest.stream().flatMap(poly -> poly.minus(cover.poly()).stream()).toList();
            }
            rest.forEach(poly -> left.add(new Patch(poly, patch.origin())));
        }
        return left;
    }
}
