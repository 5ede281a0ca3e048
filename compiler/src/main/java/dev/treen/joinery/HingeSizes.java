package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * Hinges with two leaves, let in where a lid or door meets its case (rules of the trade J-20).
 *
 * @param place where they go
 * @param reach how long a hinge is
 * @param wide from the middle of the pin to the edge of a leaf
 * @param knuckle how thick the hinge is round its pin, which is what it is with its leaves closed
 * @param deepHung how deep it is let into the lid or door
 * @param deepFixed how deep into the other part
 * @param set how far the middle of the pin stands out of the face
 * @param end from each end of the line on which both meet to the nearest hinge
 * @param screws how long its screws are
 * @param count how many hinges
 */
record HingeSizes(
        HingePlace place,
        Measure reach,
        Measure wide,
        Measure knuckle,
        Measure deepHung,
        Measure deepFixed,
        Measure set,
        Measure end,
        Measure screws,
        int count) {

    /** How far a leaf lies on the wood. */
    Length lies() {
        return wide.value().minus(set.value());
    }

    /** How deep a leaf is let into one of the two parts. */
    Measure deep(boolean ofHung) {
        return ofHung ? deepHung : deepFixed;
    }

    /** Where the hinges begin along the line. */
    List<Length> starts() {
        Length first = Length.ofMm(place.low().get(place.row())).plus(end.value());
        Length between = place.line().minus(end.value().times(2)).minus(reach.value());
        List<Length> starts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            starts.add(count == 1
                    ? Length.ofMm(place.low().get(place.row())).plus(place.line().minus(reach.value()).dividedBy(2))
                    : first.plus(between.times(i).dividedBy(count - 1L)));
        }
        return starts;
    }

    /** The recesses of one of the two parts. */
    List<Box> recesses(boolean ofHung) {
        Measure deep = deep(ofHung);
        List<Box> boxes = new ArrayList<>();
        if (deep.value().signum() <= 0) {
            return boxes;
        }
        Side surface = ofHung ? place.closing() : place.closing().opposite();
        Length top = Length.ofMm(place.body(ofHung).coordinate(surface));
        Length bottom = top.minus(deep.value().times(surface.sign()));
        Length in = place.face().minus(lies().times(place.pin().sign()));
        for (Length start : starts()) {
            Vec3 one = Vec3.ZERO.with(place.row(), start.mm()).with(place.closing().axis(), top.min(bottom).mm())
                    .with(place.pin().axis(), place.face().min(in).mm());
            Vec3 other = Vec3.ZERO.with(place.row(), start.plus(reach.value()).mm())
                    .with(place.closing().axis(), top.max(bottom).mm())
                    .with(place.pin().axis(), place.face().max(in).mm());
            boxes.add(new Box(one, other));
        }
        return boxes;
    }

    /** A hollow for the fingers in the middle of the free edge, in half the thickness, under the lid. */
    Box notch() {
        Figures figures = Figures.standard();
        Length half = Length.nearest(figures.value("lid.notch.wide"), Length.ofMm(1)).dividedBy(2);
        Length deep = Length.nearest(figures.value("lid.notch.deep"), Length.ofMm(1));
        Length middle = Length.ofMm(place.hung().centre().get(place.row()));
        Box band = TenonSizes.between(place.hung(), place.row(), middle.minus(half).mm(), middle.plus(half).mm());
        Length edge = Length.ofMm(place.hung().coordinate(place.pin().opposite()));
        Length in = edge.plus(deep.times(place.pin().sign()));
        Box strip = TenonSizes.between(band, place.pin().axis(), edge.min(in).mm(), edge.max(in).mm());
        Length under = Length.ofMm(place.hung().coordinate(place.closing()));
        Length halfOfIt = Length.ofMm(place.hung().extent(place.closing().axis())).dividedBy(2);
        Length up = under.minus(halfOfIt.times(place.closing().sign()));
        return TenonSizes.between(strip, place.closing().axis(), under.min(up).mm(), under.max(up).mm());
    }
}
