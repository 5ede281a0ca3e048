package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.quantity.Slope;
import dev.treen.wood.Species;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The layout of a dovetailed corner (rules of the trade J-11, J-12): at the end of the tails
 * {@code tail = (height − 2 half-pins − (tails − 1) pins) / tails}; at the base line a tail is narrower by what the slope
 * leans over its length, on each side. Where a lid is cut free, the tails below and above the line are laid out each by
 * themselves, so that the line falls within a pin as wide as two half-pins and what is sawn away.
 *
 * @param counts how many tails, of a corner with a line below and above it
 * @param lap what is kept before the tails; of a secret dovetail by both walls
 * @param mitre how far from the upper edge the corner is mitred; of a secret dovetail from both edges
 * @param secret whether laps that are mitred at the outer corner hide the dovetails
 * @param line what is sawn out of the corner
 */
record DovetailSizes(
        BoxCorner corner, List<Integer> counts, Slope slope, Measure pin, Measure halfPin, Measure lap, Measure mitre,
        boolean secret, Optional<BoxCorner.Heights> line) {
    private static final String FAIRHAM = "Fairham, Woodwork Joints, Dovetail";
    /** No wall is so high; a count beyond it is one that was not meant. */
    static final int MOST = 1000;
    /** The widest usual tail: Noyes, Handwork in Wood, no. 48. */
    private static final Length WIDEST = Length.ofInches(7, 4);

    static DovetailSizes of(BoxCorner corner, Joint joint, Surroundings surroundings) {
        Measure pin = joint.length("pin").orElseGet(() -> usualPin(corner, surroundings));
        Measure half = joint.length("half_pin").orElseGet(() -> usualHalf(corner, pin));
        boolean secret = joint.word("cut").filter(Dovetail.SECRET::equals).isPresent();
        boolean through = joint.word("cut").filter(word -> !word.equals(Dovetail.THROUGH)).isEmpty();
        Measure lap = joint.length("lap")
                .orElseGet(() -> through ? none(corner, "lap") : usualLap(corner, surroundings));
        Measure mitre = joint.length("mitre").orElseGet(() -> secret ? asTheLap(lap) : none(corner, "mitre"));
        Slope slope = joint.slope("slope").orElseGet(() -> usualSlope(corner.first().part()));
        Length top = corner.high().minus(mitre.value());
        Optional<BoxCorner.Heights> line = corner.sawn(surroundings).filter(gone -> gone.to().compareTo(top) < 0);
        DovetailSizes bare = new DovetailSizes(corner, List.of(), slope, pin, half, lap, mitre, secret, line);
        return bare.with(joint.number("tails").map(DovetailSizes::whole).map(bare::shared).orElseGet(bare::usual));
    }

    private DovetailSizes with(List<Integer> tails) {
        return new DovetailSizes(corner, tails, slope, pin, halfPin, lap, mitre, secret, line);
    }

    /** The same with another number of tails. */
    DovetailSizes with(int tails) {
        return with(shared(tails));
    }

    /** How many tails there are in all. */
    int tails() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    /** Where tails are laid out: from edge to edge, or below and above the line. */
    private List<BoxCorner.Heights> bands() {
        return line.map(gone -> List.of(
                new BoxCorner.Heights(bottom(), gone.from()), new BoxCorner.Heights(gone.to(), top())))
                .orElseGet(() -> List.of(new BoxCorner.Heights(bottom(), top())));
    }

    private List<Integer> usual() {
        return bands().stream()
                .map(band -> usualTails(
                        band.to().minus(band.from()), corner.thicknessOfFirst().value(), pin.value(), halfPin.value()))
                .toList();
    }

    /** So many tails shared out below and above the line, by their heights. */
    private List<Integer> shared(int tails) {
        List<BoxCorner.Heights> bands = bands();
        if (bands.size() == 1 || tails < 2) {
            return List.of(tails);
        }
        double low = bands.getFirst().to().minus(bands.getFirst().from()).toDoubleMm();
        double high = bands.getLast().to().minus(bands.getLast().from()).toDoubleMm();
        int below = (int) Math.max(1, Math.min(tails - 1L, Math.round(tails * low / (low + high))));
        return List.of(below, tails - below);
    }

    /** Whether there are tails both below and above the line. */
    boolean holdsBoth() {
        return counts.size() == bands().size();
    }

    /** A count as written: none where it is no whole number. */
    static int whole(BigFraction number) {
        BigInteger found = Exact.isWhole(number) ? number.getNumerator() : BigInteger.ZERO;
        return found.min(BigInteger.valueOf(MOST + 1L)).max(BigInteger.ZERO).intValue();
    }

    private static Measure none(BoxCorner corner, String name) {
        return chosen(corner, name, Length.ZERO, "none", Ruled.PRACTICE, List.of());
    }

    private static Measure chosen(
            BoxCorner corner, String name, Length value, String text, String source, List<Derivation> from) {
        return Ruled.at(corner.first().part().nameAt(), name, value, text, source, from);
    }

    /** 1:6 in softwood, which crushes more, and 1:8 in hardwood. */
    static Slope usualSlope(Part part) {
        boolean soft = part.from()
                .flatMap(Woods::of)
                .filter(species -> species.kind() == Species.Kind.SOFTWOOD)
                .isPresent();
        return Slope.of(1, soft ? 6 : 8);
    }

    private static Measure usualPin(BoxCorner corner, Surroundings surroundings) {
        Measure wall = corner.thicknessOfFirst();
        Length value = wall.value().dividedBy(3).max(Length.ofMm(3)).roundUpTo(surroundings.markOfTheRule());
        return chosen(corner, "pin", value, "a third of the thickness, not under 3 mm", Ruled.PRACTICE,
                List.of(wall.how()));
    }

    private static Measure usualHalf(BoxCorner corner, Measure pin) {
        Length value = leastHalf(corner, pin.value());
        return chosen(corner, "half_pin", value, "as a pin, not under 4 mm", Ruled.PRACTICE, List.of(pin.how()));
    }

    private static Measure usualLap(BoxCorner corner, Surroundings surroundings) {
        Measure wall = corner.thicknessOfSecond();
        Length value = Length.ofMm(6).min(wall.value().dividedBy(3).roundUpTo(surroundings.markOfTheRule()));
        return chosen(corner, "lap", value, "6 mm, in thin wood a third of it", FAIRHAM, List.of(wall.how()));
    }

    private static Measure asTheLap(Measure lap) {
        return Ruled.of("mitre", lap.value(), "as wide as the lap", Ruled.PRACTICE, lap);
    }

    /** The least half-pin that does not break away (rules of the trade J-11). */
    static Length leastHalf(BoxCorner corner, Length pin) {
        return pin.max(corner.thicknessOfFirst().value().dividedBy(3)).max(Length.ofMm(4));
    }

    /** About two and a half times as wide as thick, and no wider than the widest usual tail. */
    private static int usualTails(Length height, Length thick, Length pin, Length half) {
        Length room = height.minus(half.times(2)).plus(pin);
        Length tail = thick.times(5).dividedBy(2).min(WIDEST);
        if (room.signum() <= 0 || tail.plus(pin).signum() <= 0) {
            return 1;
        }
        BigFraction many = room.ratioTo(tail.plus(pin)).add(BigFraction.of(1, 2));
        return Math.max(1, Math.min(MOST, many.getNumerator().divide(many.getDenominator()).intValue()));
    }

    /** How long the tails are: the other wall's thickness, less the lap. */
    Measure deep() {
        Measure wall = corner.thicknessOfSecond();
        if (lap.value().isZero()) {
            return wall;
        }
        Length value = wall.value().minus(lap.value());
        return new Measure(
                value,
                lap.at(),
                Derivation.combined("tails", Measure.datum(value), "−", wall.how().named("thickness"), lap.how()));
    }

    /** What a tail loses on each side between its end and the base line. */
    Length lean() {
        return slope.over(deep().value());
    }

    /** A tail at its end; of a corner with a line the thinner ones. */
    Length tail() {
        Length least = tail(0);
        for (int i = 1; i < counts.size(); i++) {
            least = least.min(tail(i));
        }
        return least;
    }

    private Length tail(int band) {
        BoxCorner.Heights room = bands().get(band);
        int tails = Math.max(1, counts.get(band));
        Length pins = pin.value().times(tails - 1L);
        return room.to().minus(room.from()).minus(halfPin.value().times(2)).minus(pins).dividedBy(tails);
    }

    /** A tail at the base line, where it is thinnest. */
    Length tailAtBase() {
        return tail().minus(lean().times(2));
    }

    /** How deep tails and pins go into the thickness of the first wall. */
    Length through() {
        Length wall = corner.thicknessOfFirst().value();
        return secret ? wall.minus(lap.value()) : wall;
    }

    /** What the first wall is lengthened by: as far as its tails go, or, mitred, to the outside. */
    Measure reach() {
        return secret ? corner.thicknessOfSecond() : deep();
    }

    /** Where the tails begin, above the mitred edge of a secret dovetail. */
    Length bottom() {
        return secret ? corner.low().plus(mitre.value()) : corner.low();
    }

    /** Where the tails end and a mitred shoulder begins. */
    Length top() {
        return corner.high().minus(mitre.value());
    }

    /** The tails at their ends, from the lowest. */
    List<BoxCorner.Heights> ends() {
        List<BoxCorner.Heights> ends = new ArrayList<>();
        for (int band = 0; band < counts.size(); band++) {
            Length first = bands().get(band).from().plus(halfPin.value());
            Length tail = tail(band);
            for (int i = 0; i < counts.get(band); i++) {
                Length from = first.plus(tail.plus(pin.value()).times(i));
                ends.add(new BoxCorner.Heights(from, from.plus(tail)));
            }
        }
        return ends;
    }

    /** The pins where they are thinnest, from the lowest; the outer two are the half-pins, and one holds the line. */
    List<BoxCorner.Heights> pins() {
        List<BoxCorner.Heights> pins = new ArrayList<>();
        Length from = bottom();
        for (BoxCorner.Heights tail : ends()) {
            pins.add(new BoxCorner.Heights(from, tail.from()));
            from = tail.to();
        }
        pins.add(new BoxCorner.Heights(from, top()));
        return pins;
    }

    /** The layout's lengths as the joint's figures. */
    List<Figure> figures(Joint joint) {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", deep(), true));
        figures.add(worked("tail", () -> tail()));
        figures.add(worked("tail_at_base", () -> tailAtBase()));
        figures.add(worked("pin_inside", () -> pin.value().plus(lean().times(2))));
        figures.add(new Figure("pin", pin, joint.given("pin").isEmpty()));
        figures.add(new Figure("half_pin", halfPin, joint.given("half_pin").isEmpty()));
        if (!lap.value().isZero()) {
            figures.add(new Figure("lap", lap, joint.given("lap").isEmpty()));
        }
        if (!mitre.value().isZero()) {
            figures.add(new Figure("mitre", mitre, joint.given("mitre").isEmpty()));
        }
        return figures;
    }

    private Figure worked(String name, Supplier<Length> length) {
        String text = tails() + (tails() == 1 ? " tail" : " tails") + " on "
                + "the height, slope " + slope.text();
        return new Figure(
                name,
                chosen(corner, name, length.get(), text, Ruled.PRACTICE, List.of(pin.how(), halfPin.how())),
                true);
    }
}
