package dev.treen.drawing;

import dev.treen.quantity.Length;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
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

    /** The corners at the ends of openings in the side: an edge across the grain between two along it, with no wood inside. */
    private Set<Corner> find(Way way) {
        List<SurfaceEdge> along = new ArrayList<>();
        List<SurfaceEdge> across = new ArrayList<>();
        for (SurfaceEdge edge : part.edges()) {
            if (edge.isSmooth() || !on(way, edge)) {
                continue;
            }
            Corner from = corner(way, edge.from());
            Corner to = corner(way, edge.to());
            if (from.across().equals(to.across()) && inside(from.across(), way.upward())) {
                along.add(edge);
            } else if (from.along().equals(to.along()) && inside(from.along(), Measured.LENGTH)) {
                across.add(edge);
            }
        }
        Set<Corner> found = new HashSet<>();
        for (SurfaceEdge end : across) {
            if (along.stream().anyMatch(side -> opens(side, end.from(), end.to()))
                    && along.stream().anyMatch(side -> opens(side, end.to(), end.from()))) {
                found.addAll(List.of(corner(way, end.from()), corner(way, end.to())));
            }
        }
        return found;
    }

    /** Whether {@code edge} ends at {@code at}, and the wall below it looks the way that leads on to {@code on}. */
    private static boolean opens(SurfaceEdge edge, Vec3 at, Vec3 on) {
        Vec3 way = on.minus(at);
        return (edge.from().equals(at) || edge.to().equals(at))
                && edge.rims().stream().anyMatch(rim -> rim.plane().normal().dot(way).signum() > 0);
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
