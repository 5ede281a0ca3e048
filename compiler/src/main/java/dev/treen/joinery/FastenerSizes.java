package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.wood.FastenerTable;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import dev.treen.wood.PullOut;
import dev.treen.wood.Species;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The sizes of screws and nails: as given, or by the rules of the trade J-18 and J-19. */
final class FastenerSizes {
    private static final Length HUNDREDTH = Length.ofMm(1).dividedBy(100);

    private final Driven driven;
    private final Surroundings surroundings;
    private final Joint joint;

    private FastenerSizes(Driven driven, Surroundings surroundings) {
        this.driven = driven;
        this.surroundings = surroundings;
        this.joint = driven.meeting().joint();
    }

    static Fastener screw(Driven driven, Surroundings surroundings) {
        FastenerSizes sizes = new FastenerSizes(driven, surroundings);
        Measure thick = sizes.joint.length("thick").or(sizes::gauge).orElseGet(sizes::shank);
        Measure sink = sizes.joint.length("sink").orElseGet(() -> sizes.none("sink"));
        Measure reach = sizes.joint.length("long").orElseGet(() -> sizes.reach(
                sink.value(), FastenerTable.screwLengths(surroundings.inches())));
        Measure bore = sizes.joint.length("bore").orElseGet(() -> sizes.pilot(thick));
        return new Fastener(PullOut.Fastener.WOOD_SCREW, thick, reach, sink, sizes.cone(thick.value()), bore);
    }

    static Fastener nail(Driven driven, Surroundings surroundings) {
        FastenerSizes sizes = new FastenerSizes(driven, surroundings);
        boolean ringed = sizes.joint.word("kind").filter("ringed"::equals).isPresent();
        Measure thick = sizes.joint.length("thick").orElseGet(sizes::wire);
        Measure reach = sizes.joint.length("long").orElseGet(() -> sizes.reach(
                Length.ZERO, FastenerTable.nailLengths(surroundings.inches())));
        Measure bore = sizes.joint.word("bore").filter("none"::equals).isPresent()
                ? sizes.none("bore")
                : sizes.joint.length("bore").orElseGet(() -> sizes.nailHole(thick));
        return new Fastener(
                ringed ? PullOut.Fastener.RINGED_NAIL : PullOut.Fastener.PLAIN_NAIL,
                thick,
                reach,
                sizes.none("sink"),
                Length.ZERO,
                bore);
    }

    /** How deep a countersunk head lies: half of what it is wider than its shank, by the tangent of half its angle. */
    private Length cone(Length shank) {
        if (joint.word("head").filter("round"::equals).isPresent()) {
            return Length.ZERO;
        }
        double angle = Figures.standard()
                .value(surroundings.inches() ? "screw.countersink.inch" : "screw.countersink");
        double deep = Fastener.head(shank).minus(shank).toDoubleMm() / 2 / Math.tan(Math.toRadians(angle / 2));
        return Length.nearest(deep, HUNDREDTH);
    }

    private Measure none(String label) {
        return Measure.written(label, Length.ZERO, joint.at());
    }

    private Measure ruled(String label, Length value, String text, String source, List<Derivation> from) {
        return Ruled.at(joint.at(), label, value, text, source, from);
    }

    /** The shank of a screw whose number is given. */
    private Optional<Measure> gauge() {
        return joint.number("gauge")
                .flatMap(number -> FastenerTable.gauge(number.intValue()))
                .map(gauge -> ruled(
                        "thick",
                        Length.nearest(gauge.shankMm(), HUNDREDTH),
                        "the shank of a no. " + gauge.gauge() + " screw",
                        gauge.citation().source(),
                        List.of()));
    }

    /** The thickest usual screw for the edge it enters, or for the thinner of the two parts. */
    private Measure shank() {
        Measure wood = driven.thin().map(axis -> driven.meeting().right().part().thickness())
                .orElseGet(() -> thinner(
                        driven.meeting().left().part().thickness(), driven.meeting().right().part().thickness()));
        var gauge = FastenerTable.forEdge(wood.value().toDoubleMm());
        return ruled(
                "thick",
                Length.nearest(gauge.shankMm(), HUNDREDTH),
                "a no. " + gauge.gauge() + " screw, the thickest usual one for wood of this thickness",
                Ruled.PRACTICE,
                List.of(wood.how()));
    }

    private static Measure thinner(Measure one, Measure other) {
        return other.value().compareTo(one.value()) < 0 ? other : one;
    }

    /** Three times what it holds, of the usual lengths, and never through the right part. */
    private Measure reach(Length sink, List<BigFraction> usual) {
        Length holds = driven.through().minus(sink);
        Length most = holds.plus(driven.depth()).minus(
                Length.nearest(Figures.standard().value("screw.behind"), Length.ofMm(1)));
        Length wanted = holds.times(3);
        Length value = null;
        for (BigFraction size : usual) {
            Length each = surroundings.inches() ? Length.ofInches(size) : Length.ofMm(size);
            boolean fits = each.compareTo(holds) > 0 && each.compareTo(most) <= 0;
            if (fits && (value == null || value.compareTo(wanted) < 0)) {
                value = each;
            }
        }
        if (value == null) {
            value = most.compareTo(holds) > 0 ? most : holds.plus(driven.depth().dividedBy(2));
        }
        return ruled(
                "long",
                value,
                value.compareTo(wanted) >= 0
                        ? "a usual length, three times what it holds"
                        : "the longest usual length that does not come through",
                Figures.standard().get("screw.grip.share").citation().source(),
                List.of(driven.meeting().left().along(driven.into().axis()).how()));
    }

    private Measure pilot(Measure thick) {
        var hole = FastenerTable.pilot(thick.value().toDoubleMm(), softwood(driven.meeting().right().part()));
        return ruled("bore", toBit(hole.mm()), hole.words(), hole.citation().source(), List.of(thick.how()));
    }

    /** The nearest bit: a tenth of a millimetre or 1/64 in. */
    private Length toBit(double mm) {
        return Length.nearest(
                mm, surroundings.inches() ? Length.ofInches(1, 64) : Length.ofMm(1).dividedBy(10));
    }

    /** The thickest usual nail that splits neither the piece it holds nor the edge it enters. */
    private Measure wire() {
        Measure held = driven.meeting().left().part().thickness();
        double most = held.value().toDoubleMm() * split(driven.meeting().left().part()).value();
        if (driven.thin().isPresent()) {
            // Half the edge lies on each side of it; bored, a nail keeps 5 times its thickness from the end.
            most = Math.min(most, driven.meeting().right().part().thickness().value().toDoubleMm() / 2
                    / Figures.standard().value("nail.end.bored"));
        }
        List<BigFraction> usual = FastenerTable.nailDiametersMm();
        double limit = most;
        BigFraction value = usual.stream()
                .filter(each -> each.doubleValue() <= limit)
                .reduce((a, b) -> b)
                .orElse(usual.getFirst());
        return ruled(
                "thick",
                Length.ofMm(value),
                "the thickest usual one up to " + DecimalText.write(most, 2)
                        + " mm: a sixth of hardwood, a quarter of softwood, a tenth of an edge",
                Ruled.PRACTICE,
                List.of(held.how()));
    }

    /** The thickest nail, as a share of the wood's thickness, that is driven without boring. */
    static Figure split(Part part) {
        return Figures.standard().get(softwood(part) ? "nail.split.softwood" : "nail.split.hardwood");
    }

    /** A hole for a nail where the wood would split: near an end, or in thin wood. */
    private Measure nailHole(Measure thick) {
        boolean split = false;
        for (boolean held : new boolean[]{true, false}) {
            var part = held ? driven.meeting().left() : driven.meeting().right();
            double most = part.part().thickness().value().toDoubleMm() * split(part.part()).value();
            split |= thick.value().toDoubleMm() > most;
            split |= nearEnd(held, thick.value());
        }
        return split
                ? ruled(
                        "bore",
                        toBit(thick.value().toDoubleMm() * Figures.standard().value("nail.bore")),
                        "three quarters of the nail: it stands near an end, or in thin wood",
                        Ruled.PRACTICE,
                        List.of(thick.how()))
                : none("bore");
    }

    /** Whether the surface over which both meet keeps the nails near an end. */
    private boolean nearEnd(boolean held, Length thick) {
        var part = held ? driven.meeting().left() : driven.meeting().right();
        var box = held ? driven.held() : driven.entered();
        Length keeps = Fastener.times(thick, Figures.standard().value("nail.end"));
        var axis = Axes.of(part.placing().length().axis());
        if (axis == driven.into().axis()) {
            return false;
        }
        Length low = Length.ofMm(driven.low().get(axis)).minus(Length.ofMm(box.min().get(axis)));
        Length high = Length.ofMm(box.max().get(axis)).minus(Length.ofMm(driven.high().get(axis)));
        Length inside = axis == driven.row()
                ? joint.length("end").map(Measure::value).orElse(driven.span(axis).dividedBy(2).min(keeps))
                : driven.span(axis).dividedBy(2);
        return low.plus(inside).compareTo(keeps) < 0 || high.plus(inside).compareTo(keeps) < 0;
    }

    /** Whether a part is of softwood; what is not known is taken as hardwood, which splits more easily. */
    static boolean softwood(Part part) {
        return part.from()
                .flatMap(Woods::of)
                .filter(species -> species.kind() == Species.Kind.SOFTWOOD)
                .isPresent();
    }
}
