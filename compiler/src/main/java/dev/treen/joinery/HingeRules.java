package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.wood.FastenerTable;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Settles the sizes of hinges: as given, or by the proportions of the trade (rules of the trade J-20). */
final class HingeRules {
    private static final String NOYES = "Noyes, Handwork in Wood, Hinging";

    private final HingePlace place;
    private final Joint joint;
    private final Surroundings surroundings;

    private HingeRules(HingePlace place, Surroundings surroundings) {
        this.place = place;
        this.joint = place.meeting().joint();
        this.surroundings = surroundings;
    }

    static HingeSizes of(HingePlace place, Surroundings surroundings) {
        return new HingeRules(place, surroundings).settled();
    }

    private HingeSizes settled() {
        Length line = place.line();
        Measure reach = joint.length("long").orElseGet(() -> reach(line));
        Measure knuckle = joint.length("knuckle").orElseGet(() -> share("knuckle", "hinge.knuckle", reach, 3));
        Measure wide = joint.length("wide").orElseGet(() -> wide(reach));
        Measure set = joint.length("set").orElseGet(() -> ruled("set", Length.ZERO,
                "the middle of the pin in the face, so that it opens all the way", Ruled.PRACTICE, List.of()));
        Measure end = joint.length("end").orElseGet(() -> ruled(
                "end", reach.value().min(line.minus(reach.value().times(2)).dividedBy(2).max(Length.ZERO)),
                "its own length in from each end", NOYES, List.of(reach.how())));
        Measure deepHung = deep(knuckle, place.meeting().left());
        Measure deepFixed = deep(knuckle, place.meeting().right());
        Measure screws = joint.length("screws").orElseGet(() -> screws(deepHung, deepFixed));
        int count = joint.number("count").map(n -> n.intValue()).orElseGet(() -> count(line));
        return new HingeSizes(place, reach, wide, knuckle, deepHung, deepFixed, set, end, screws, count);
    }

    private static int count(Length line) {
        return line.toDoubleMm() > Figures.standard().value("hinge.three.from") ? 3 : 2;
    }

    private Measure reach(Length line) {
        Length wood = place.meeting().left().part().thickness().value()
                .min(place.meeting().right().part().thickness().value());
        // Half its knuckle, a twentieth of its length, goes into a sixth of the wood at the most.
        Length most = line.dividedBy(6).min(wood.times(10).dividedBy(3));
        Length value = null;
        for (BigFraction size : FastenerTable.hingeLengths(surroundings.inches())) {
            Length each = surroundings.inches() ? Length.ofInches(size) : Length.ofMm(size);
            value = value == null || each.compareTo(most) <= 0 ? each : value;
        }
        return ruled("long", value == null ? most : value,
                "the longest usual hinge up to a sixth of the line and ten thirds of the thickness", Ruled.PRACTICE,
                List.of());
    }

    private Measure share(String label, String key, Measure of, long leastMm) {
        Length value = Length.nearest(
                of.value().toDoubleMm() * Figures.standard().value(key), surroundings.markOfTheRule())
                .max(Length.ofMm(leastMm));
        return ruled(label, value, Figures.standard().get(key).meaning(), Ruled.PRACTICE, List.of(of.how()));
    }

    /** A leaf as wide as is usual for its length, that leaves wood beside it. */
    private Measure wide(Measure reach) {
        Measure usual = share("wide", "hinge.leaf", reach, 5);
        Length most = place.surface(true).min(place.surface(false)).minus(beside());
        return most.compareTo(usual.value()) >= 0 || most.signum() <= 0
                ? usual
                : ruled("wide", most, "what leaves 3 mm of wood beside the leaf", Ruled.PRACTICE, List.of());
    }

    /** Half the knuckle, or all of it in one part; less what room there is between both. */
    private Measure deep(Measure knuckle, Meeting.Placed part) {
        Optional<Measure> given = joint.length("deep");
        Optional<String> only = joint.word("only");
        boolean other = only.filter(name -> !name.equals(part.part().name())).isPresent();
        if (other) {
            return ruled("deep", Length.ZERO, "the other part takes the whole hinge", NOYES, List.of());
        }
        if (given.isPresent()) {
            return given.get();
        }
        Length room = knuckle.value().minus(place.gap()).max(Length.ZERO);
        return ruled("deep", only.isPresent() ? room : room.dividedBy(2),
                only.isPresent()
                        ? "the whole knuckle, less the room between both"
                        : "half the knuckle in each part, less the room between both",
                NOYES, List.of(knuckle.how()));
    }

    /** The longest usual ones that leave 2 mm of wood under their points, in both parts. */
    private Measure screws(Measure deepHung, Measure deepFixed) {
        Length room = place.behind(true).minus(deepHung.value()).min(place.behind(false).minus(deepFixed.value()));
        Length most = room.minus(Length.nearest(Figures.standard().value("screw.behind"), Length.ofMm(1)));
        Length value = null;
        for (BigFraction size : FastenerTable.screwLengths(surroundings.inches())) {
            Length each = surroundings.inches() ? Length.ofInches(size) : Length.ofMm(size);
            boolean fits = each.compareTo(most) <= 0
                    && each.toDoubleMm() <= Figures.standard().value("hinge.screw");
            value = fits ? each : value;
        }
        return ruled("screws", value == null ? most.max(Length.ZERO) : value,
                "the longest usual ones that leave 2 mm of wood under their points", Ruled.PRACTICE, List.of());
    }

    /** So much wood stays beside a leaf. */
    static Length beside() {
        return Length.nearest(Figures.standard().value("hinge.beside"), Length.ofMm(1));
    }

    private Measure ruled(String label, Length value, String text, String source, List<Derivation> from) {
        return Ruled.at(joint.at(), label, value, text, source, from);
    }
}
