package dev.treen.drawing;

import dev.treen.quantity.Length;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.Vec3;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where mortises and stopped grooves open on the four long sides of a part. Who chops one wants to see its mouth, even where
 * its figures are those of another that is seen already.
 */
final class Mouths {
    private final Laid part;
    private final Map<Way, Set<Corner>> corners = new EnumMap<>(Way.class);

    /** A corner of a mouth: how far from the left end, and from the face edge or the face side. */
    private record Corner(Length along, Length across) {}

    private Mouths(Laid part) {
        this.part = part;
        for (Way way : List.of(Way.FRONT, Way.BELOW, Way.ABOVE, Way.BACK)) {
            corners.put(way, find(way));
        }
    }

    static Mouths of(Laid part) {
        return new Mouths(part);
    }

    /** Whether {@code way} shows a mouth that none of the {@code chosen} ways shows; a through one is seen from both sides. */
    boolean wants(Way way, Set<Way> chosen) {
        Set<Corner> unseen = new HashSet<>(corners.getOrDefault(way, Set.of()));
        if (chosen.contains(opposite(way))) {
            unseen.removeAll(corners.getOrDefault(opposite(way), Set.of()));
        }
        return !chosen.contains(way) && !unseen.isEmpty();
    }

    private static Way opposite(Way way) {
        return switch (way) {
            case FRONT -> Way.BACK;
            case BACK -> Way.FRONT;
            case ABOVE -> Way.BELOW;
            case BELOW -> Way.ABOVE;
            case LEFT -> Way.RIGHT;
            case RIGHT -> Way.LEFT;
        };
    }

    /** Points on the side at which an edge along the grain meets one across it, both inside the rim. */
    private Set<Corner> find(Way way) {
        Set<Corner> along = new HashSet<>();
        Set<Corner> across = new HashSet<>();
        for (SurfaceEdge edge : part.edges()) {
            if (edge.isSmooth() || !on(way, edge)) {
                continue;
            }
            Corner from = corner(way, edge.from());
            Corner to = corner(way, edge.to());
            if (from.across().equals(to.across()) && inside(from.across(), way.upward())) {
                along.addAll(List.of(from, to));
            } else if (from.along().equals(to.along()) && inside(from.along(), Measured.LENGTH)) {
                across.addAll(List.of(from, to));
            }
        }
        along.retainAll(across);
        return along;
    }

    private boolean on(Way way, SurfaceEdge edge) {
        Measured depth = way.upward() == Measured.WIDTH ? Measured.THICKNESS : Measured.WIDTH;
        Length at = way == Way.FRONT || way == Way.BELOW ? Length.ZERO : part.all(depth);
        return part.measure(depth, edge.from()).equals(at) && part.measure(depth, edge.to()).equals(at);
    }

    private Corner corner(Way way, Vec3 point) {
        return new Corner(part.measure(Measured.LENGTH, point), part.measure(way.upward(), point));
    }

    private boolean inside(Length at, Measured measured) {
        return !at.isZero() && !at.equals(part.all(measured));
    }
}
