package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.quantity.Unit;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The numbers of one groove, given or chosen.
 *
 * @param wide of the groove, and thickness of the tongue
 * @param deep of the groove
 * @param gap between the panel and the groove's bottom at the bench
 * @param shoulderGap between the shoulder and the ploughed part; absent where the panel is no thicker than the groove
 * @param up from the nearest edge of the ploughed part to the groove
 * @param shoulderSide the side of the panel on which the shoulder is cut
 */
record GrooveSizes(
        Joint joint,
        Measure wide,
        Measure deep,
        Measure gap,
        Optional<Measure> shoulderGap,
        Measure up,
        Optional<Side> shoulderSide) {

    /** For making, on each side (common practice, no source). */
    static final double FOR_MAKING = 0.5;

    /** For making, at a shoulder (common practice, no source). */
    static final double FOR_SHOULDER = 0.3;

    private static final Length FINEST = Length.ofMm(1).dividedBy(100);

    static GrooveSizes of(Meeting meeting, Side face, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Meeting.Placed panel = meeting.left();
        Axis thick = Axes.of(panel.placing().thickness().axis());
        Measure wall = meeting.right().along(face.axis());
        Measure thickness = panel.part().thickness();
        Measure wide = joint.length("wide").orElseGet(() -> Mitre.named(thickness, "wide"));
        boolean inches = surroundings.settings().units() == Unit.IN;
        Measure deep = joint.length("deep").orElseGet(() -> third(wall, inches));
        boolean across = panel.measure(face.axis()) == 1;
        boolean held = surroundings.heldOpposite(panel.part(), face);
        Nature nature = surroundings.nature(panel.part());
        Measure opening = panel.along(face.axis());
        double swelling = across && held ? swelling(opening.value(), deep.value(), nature) : 0;
        Measure gap = joint.length("gap")
                .orElseGet(() -> room("gap", swelling, FOR_MAKING, "making", opening, nature, inches));
        boolean shouldered = wide.value().compareTo(thickness.value()) < 0;
        Optional<Side> side = shouldered ? Optional.of(shoulderSide(joint, meeting, thick)) : Optional.empty();
        Optional<Measure> shoulderGap = side.map(s -> joint.length("shoulder_gap")
                .orElseGet(() -> room("shoulder_gap", swelling, FOR_SHOULDER, "a clear shoulder", opening, nature,
                        inches)));
        Measure up = up(meeting, thick, wide.value(), side);
        return new GrooveSizes(joint, wide, deep, gap, shoulderGap, up, side);
    }

    /**
     * The swelling on each of two held sides: the widest safe panel is (O + 2d − 2c)/(1 + C·ΔM) (rules of the trade M-05,
     * derived), so half of what it grows has to be left free.
     */
    private static double swelling(Length opening, Length deep, Nature nature) {
        double widest = (opening.toDoubleMm() + 2 * deep.toDoubleMm() - 2 * FOR_MAKING) / (1 + nature.swelling());
        return Math.max(0, widest * nature.swelling() / 2);
    }

    private static Measure room(
            String label, double swelling, double extra, String what, Measure opening, Nature nature, boolean inches) {
        Length step = inches ? Length.ofInches(1, 64) : FINEST;
        Length grows = Length.nearest(swelling, FINEST);
        Length making = Length.nearest(extra, FINEST);
        Length value = Length.nearest(swelling + extra, Length.ofMm(1).dividedBy(100_000)).roundUpTo(step);
        Derivation growing = Derivation.rule(
                "swelling",
                Measure.datum(grows),
                swelling == 0
                        ? "nothing along the grain, or free to move at the other side"
                        : "half of what the panel grows from " + percent(nature.seasons().bench()) + " to "
                                + percent(nature.seasons().wettest()) + " moisture; " + nature.wood() + ", "
                                + DecimalText.write(nature.across().perPercent(), 5) + " per 1 %",
                swelling == 0 ? "rules of the trade M-22" : nature.across().citation().source(),
                List.of(opening.how()));
        Derivation for_ = new Derivation(
                "for " + what,
                Measure.datum(making),
                new Derivation.Standard("common practice, no source"),
                Optional.empty());
        return new Measure(
                value,
                opening.at(),
                Derivation.combined(label, Measure.datum(value), "+", growing, for_));
    }

    private static String percent(double value) {
        return DecimalText.write(value, 2) + " %";
    }

    private static Measure third(Measure wall, boolean inches) {
        Length step = inches ? Length.ofInches(1, 32) : Length.ofMm(1).dividedBy(2);
        Length deep = wall.value().dividedBy(3).roundDownTo(step).max(step);
        return new Measure(
                deep,
                wall.at(),
                Derivation.rule(
                        "deep",
                        Measure.datum(deep),
                        "a third of the thickness, on a mark of the rule",
                        "common practice, no source",
                        List.of(wall.how())));
    }

    /** The side away from the edge of the ploughed part that is nearest to the panel, unless the project says another. */
    private static Side shoulderSide(Joint joint, Meeting meeting, Axis thick) {
        Optional<Side> said = joint.word("shoulder")
                .flatMap(Direction::named)
                .filter(d -> d.axis() == Axes.number(thick))
                .map(d -> Side.of(thick, d.sign()));
        return said.orElseGet(() -> Side.of(thick, lowEdgeIsNearer(meeting, thick) ? 1 : -1));
    }

    private static boolean lowEdgeIsNearer(Meeting meeting, Axis thick) {
        Box panel = meeting.left().box();
        Box wall = meeting.right().box();
        BigFraction below = panel.min().get(thick).subtract(wall.min().get(thick));
        BigFraction above = wall.max().get(thick).subtract(panel.max().get(thick));
        return Length.ofMm(below).compareTo(Length.ofMm(above)) <= 0;
    }

    private static Measure up(Meeting meeting, Axis thick, Length wide, Optional<Side> shoulder) {
        Box panel = meeting.left().box();
        Box wall = meeting.right().box();
        Box tongue = tongue(panel, wide, shoulder);
        BigFraction below = tongue.min().get(thick).subtract(wall.min().get(thick));
        BigFraction above = wall.max().get(thick).subtract(tongue.max().get(thick));
        Length up = Length.ofMm(below).min(Length.ofMm(above));
        return new Measure(
                up,
                meeting.left().placing().span(),
                Derivation.rule(
                        "up",
                        Measure.datum(up),
                        "from the nearest edge of " + meeting.right().part().name() + " to the groove",
                        "from the places of both parts",
                        List.of()));
    }

    private static Box tongue(Box panel, Length wide, Optional<Side> shoulder) {
        if (shoulder.isEmpty()) {
            return panel;
        }
        Side side = shoulder.get();
        Axis thick = side.axis();
        return side.sign() > 0
                ? new Box(panel.min(), panel.max().with(thick, panel.min().get(thick).add(wide.mm())))
                : new Box(panel.min().with(thick, panel.max().get(thick).subtract(wide.mm())), panel.max());
    }

    /** The part of the panel's box that goes into the groove. */
    Box tongue(Box panel) {
        return tongue(panel, wide.value(), shoulderSide);
    }

    /** What the groove adds to the panel on its side: deep − gap. */
    Measure adds() {
        Length value = deep.value().minus(gap.value());
        Derivation how = Derivation.combined(
                "",
                Measure.datum(value),
                "−",
                deep.how().named("groove"),
                gap.how().named("gap"));
        return new Measure(value, joint.at(), how);
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("wide", wide, joint.given("wide").isEmpty()));
        figures.add(new Figure("deep", deep, joint.given("deep").isEmpty()));
        figures.add(new Figure("gap", gap, joint.given("gap").isEmpty()));
        shoulderGap.ifPresent(m -> {
            figures.add(new Figure("shoulder_gap", m, joint.given("shoulder_gap").isEmpty()));
            Length tongue = deep.value().minus(gap.value()).plus(m.value());
            figures.add(new Figure(
                    "tongue",
                    new Measure(
                            tongue,
                            joint.at(),
                            Derivation.combined(
                                    "tongue", Measure.datum(tongue), "+", adds().how(), m.how().named("shoulder gap"))),
                    true));
        });
        figures.add(new Figure("up", up, true));
        return figures;
    }
}
