package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import dev.treen.wood.PullOut;

/**
 * One screw or nail with its holes.
 *
 * @param form what it is
 * @param thick how thick it is: the shank of a screw
 * @param reach how long it is
 * @param sink how deep its head lies below the surface
 * @param cone how deep the countersink for its head is, below {@code sink}; zero for a head that lies flat
 * @param bore how wide the hole is that is bored for it in the right part; zero for none
 */
record Fastener(PullOut.Fastener form, Measure thick, Measure reach, Measure sink, Length cone,
        Measure bore) {

    boolean screw() {
        return form == PullOut.Fastener.WOOD_SCREW;
    }

    /** Whether a hole is bored for it. */
    boolean bored() {
        return bore.value().signum() > 0;
    }

    /** How wide the hole in the held part is: a screw's shank slips through, a nail goes in tight. */
    Length hole() {
        return screw() ? thick.value() : bore.value();
    }

    /** How wide its head is, where that is let in. */
    Length head() {
        return head(thick.value());
    }

    /** How wide the countersunk head of a screw is, and the room for one that is let in. */
    static Length head(Length shank) {
        return times(shank, Figures.standard().value("screw.head"));
    }

    /** How far its point reaches below the surface. */
    Length point() {
        return sink.value().plus(reach.value());
    }

    /**
     * How near it may come to an end or edge of a part: by the part's measure in that direction, 0 its length. Across the
     * thickness nothing is asked, since there the wood is thick enough or not.
     */
    Length keeps(boolean held, int measure, Length through) {
        if (measure == 2) {
            return Length.ZERO;
        }
        if (!screw()) {
            return measure == 1 ? through.dividedBy(2) : times(thick.value(), end().value());
        }
        String key = held ? "screw.held" : measure == 1 ? "screw.edge" : "screw.end";
        return times(thick.value(), Figures.standard().value(key));
    }

    private Figure end() {
        return Figures.standard().get(bored() ? "nail.end.bored" : "nail.end");
    }

    /** A length by a factor of the tables, on a hundredth of a millimetre. */
    static Length times(Length length, double factor) {
        return Length.nearest(length.toDoubleMm() * factor, Length.ofMm(1).dividedBy(100));
    }
}
