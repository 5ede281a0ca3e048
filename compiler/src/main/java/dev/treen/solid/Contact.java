package dev.treen.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An area where a face of one solid lies against a face of another.
 *
 * @param region the common area; its plane's normal points out of the first solid into the second
 * @param first the origin of the first solid's face
 * @param second the origin of the second solid's face
 */
public record Contact(Region region, Origin first, Origin second) {

    private record Key(Plane plane, Origin first, Origin second) {}

    private record Facing(Convex piece, Facet facet) {}

    /** All areas of contact, one for each plane and pair of origins; touching along an edge or at a point is none. */
    public static List<Contact> between(Solid a, Solid b) {
        if (a.isEmpty() || b.isEmpty() || a.span().apart(b.span())) {
            return List.of();
        }
        Map<Plane, List<Facing>> facing = new HashMap<>();
        for (Convex piece : b.near(a.span())) {
            piece.facets().forEach(facet -> facing.computeIfAbsent(facet.plane(), p -> new ArrayList<>(1))
                    .add(new Facing(piece, facet)));
        }
        Map<Key, List<Poly>> found = new LinkedHashMap<>();
        for (Convex piece : a.near(b.span())) {
            for (Facet facet : piece.facets()) {
                for (Facing other : facing.getOrDefault(facet.plane().flip(), List.of())) {
                    meet(facet.plane(), facet.patches(piece), other.facet().patches(other.piece()), found);
                }
            }
        }
        List<Contact> contacts = new ArrayList<>(found.size());
        found.forEach((key, polys) -> contacts
                .add(new Contact(new Region(key.plane(), polys), key.first(), key.second())));
        return contacts;
    }

    /** Whether some face of one lies against a face of the other with an area; stops at the first. */
    public static boolean touch(Solid a, Solid b) {
        if (a.isEmpty() || b.isEmpty() || a.span().apart(b.span())) {
            return false;
        }
        for (Convex first : a.near(b.span())) {
            for (Convex second : b.near(first.span())) {
                if (touch(first, second)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean touch(Convex first, Convex second) {
        for (Facet facet : first.facets()) {
            for (Facet other : second.facets()) {
                if (facet.plane().equals(other.plane().flip())) {
                    Frame frame = Frame.of(facet.plane());
                    if (frame.flatten(first, facet).intersect(frame.flatten(second, other)).isPresent()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static void meet(Plane plane, List<Patch> first, List<Patch> second, Map<Key, List<Poly>> found) {
        for (Patch a : first) {
            for (Patch b : second) {
                a.poly().intersect(b.poly()).ifPresent(
                        poly -> found.computeIfAbsent(new Key(plane, a.origin(), b.origin()), k -> new ArrayList<>(1))
                                .add(poly));
            }
        }
    }

    /** The total area of contact in square millimetres, to double precision; exactly zero when no faces meet. */
    public static double area(Solid a, Solid b) {
        return between(a, b).stream().mapToDouble(contact -> contact.region().area()).sum();
    }

    /**
     * Two parts and where they touch.
     *
     * @param first the name of the part that comes first in the collection asked about
     * @param second the name of the other part
     * @param contacts their areas of contact, at least one
     */
    public record Pair(String first, String second, List<Contact> contacts) {
        /** Takes its own copy of the contacts. */
        public Pair {
            contacts = List.copyOf(contacts);
        }
    }

    /** All pairs of parts whose faces lie against each other, in the order of the collection. */
    public static List<Pair> among(List<Placed> parts) {
        List<Placed> real = parts.stream().filter(part -> !part.solid().isEmpty()).toList();
        List<Pair> found = new ArrayList<>();
        for (BoxTree.Pair pair : new BoxTree(real.stream().map(part -> part.solid().span()).toList()).pairs()) {
            Placed first = real.get(pair.first());
            Placed second = real.get(pair.second());
            List<Contact> contacts = between(first.solid(), second.solid());
            if (!contacts.isEmpty()) {
                found.add(new Pair(first.name(), second.name(), contacts));
            }
        }
        return found;
    }
}
