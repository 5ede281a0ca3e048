package dev.treen.solid;

import java.util.List;

/**
 * A part of a face's plane that a certain cut has laid open.
 *
 * @param corners the outline of the cutter's face there, convex, either way round
 * @param origin the cut
 */
record Paint(List<Vec3> corners, Origin origin) {

    static Paint by(Convex cutter, Facet facet) {
        return new Paint(cutter.face(facet).corners(), facet.origin());
    }

    Paint translate(Vec3 by) {
        return new Paint(corners.stream().map(by::plus).toList(), origin);
    }

    Paint turn(Turn turn) {
        return new Paint(corners.stream().map(turn::apply).toList(), origin);
    }
}
