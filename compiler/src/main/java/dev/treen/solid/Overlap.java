package dev.treen.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Material that two parts both claim.
 *
 * @param first the name of the part that comes first in the collection asked about
 * @param second the name of the other part
 * @param shared the body both fill; never empty
 */
public record Overlap(String first, String second, Solid shared) {

    /** The shared volume in cubic millimetres. */
    public BigFraction volume() {
        return shared.volume();
    }

    /** The smallest box around the shared body. */
    public Box bounds() {
        return shared.bounds().orElseThrow();
    }

    /**
     * All pairs of parts that share volume, in the order of the collection. Parts that only touch are not among them. The
     * work grows near linearly with the number of parts.
     */
    public static List<Overlap> among(Collection<Placed> parts) {
        List<Placed> real = parts.stream().filter(part -> !part.solid().isEmpty()).toList();
        List<Overlap> found = new ArrayList<>();
        for (BoxTree.Pair pair : new BoxTree(real.stream().map(part -> part.solid().span()).toList()).pairs()) {
            Placed first = real.get(pair.first());
            Placed second = real.get(pair.second());
            Solid shared = first.solid().intersect(second.solid());
            if (!shared.isEmpty()) {
                found.add(new Overlap(first.name(), second.name(), shared));
            }
        }
        return found;
    }
}
