package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
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
 * @param shoulderSides the sides of the panel on which shoulders are cut: one, or both on a board of a row
 * @param opening the panel's seen measure toward this groove
 */
record GrooveSizes(
        Joint joint,
        Measure wide,
        Measure deep,
        Measure gap,
        Optional<Measure> shoulderGap,
        Measure up,
        List<Side> shoulderSides,
        Measure opening) {

    /** What plough planes and cutters are usually sold in: common practice, no source. */
    private static final List<Length> MM_IRONS = List.of(12, 10, 8, 6, 5, 4, 3).stream().map(Length::ofMm).toList();

    private static final List<Length> INCH_IRONS = List.of(8, 6, 5, 4, 3, 2).stream()
            .map(sixteenths -> Length.ofInches(sixteenths, 16))
            .toList();

    static GrooveSizes of(Meeting meeting, Side face, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Axis thick = Axes.of(meeting.left().placing().thickness().axis());
        boolean middle = surroundings.inRow(meeting, face)
                && meeting.left().part().thickness().value().equals(meeting.right().part().thickness().value());
        Measure wide = wide(meeting, middle, surroundings);
        Measure deep = deep(meeting, face, surroundings);
        PanelRoom room = PanelRoom.of(meeting, face, deep, surroundings);
        Measure gap = joint.length("gap").orElseGet(room::gap);
        boolean shouldered = wide.value().compareTo(meeting.left().part().thickness().value()) < 0;
        List<Side> sides = !shouldered
                ? List.of()
                : middle ? List.of(Side.of(thick, -1), Side.of(thick, 1))
                        : List.of(shoulderSide(joint, meeting, thick));
        Optional<Measure> shoulderGap = shouldered
                ? joint.length("shoulder_gap").or(() -> Optional.of(room.shoulder(gap)))
                : Optional.empty();
        return new GrooveSizes(
                joint, wide, deep, gap, shoulderGap, up(meeting, thick, wide.value(), sides), sides,
                meeting.left().along(face.axis()));
    }

    private static Measure wide(Meeting meeting, boolean middle, Surroundings surroundings) {
        return meeting.joint().length("wide").orElseGet(() -> {
            Measure thickness = meeting.left().part().thickness();
            // The tongue of a board in a row is a third of it (Fairham, Woodwork Joints).
            Length most = middle ? thickness.value().dividedBy(3) : thickness.value();
            Optional<Length> iron = (surroundings.inches() ? INCH_IRONS : MM_IRONS)
                    .stream()
                    .filter(width -> width.compareTo(most) <= 0)
                    .findFirst();
            Length value = iron.orElse(most);
            return Ruled.of("wide", value, (iron.isPresent() ? "the widest usual iron up to " : "")
                    + (middle ? "a third of the board" : "the panel's thickness"), Ruled.PRACTICE, thickness);
        });
    }

    /** The depth of the groove, as given or a third of the ploughed part's thickness. */
    static Measure deep(Meeting meeting, Side face, Surroundings surroundings) {
        return meeting.joint().length("deep").orElseGet(() -> {
            Measure wall = meeting.right().along(face.axis());
            return Ruled.third("deep", wall, surroundings);
        });
    }

    /** The side away from the edge of the ploughed part that is nearest to the panel, unless the project says another. */
    private static Side shoulderSide(Joint joint, Meeting meeting, Axis thick) {
        Optional<Side> said = joint.word("shoulder")
                .flatMap(Direction::named)
                .filter(d -> d.axis() == Axes.number(thick))
                .map(d -> Side.of(thick, d.sign()));
        return said.orElseGet(() -> Side.of(thick, below(meeting).compareTo(above(meeting)) <= 0 ? 1 : -1));
    }

    /** From the ploughed part's lower edge (left, front or bottom one, as the panel lies) to the panel. */
    static Length below(Meeting meeting) {
        Axis thick = Axes.of(meeting.left().placing().thickness().axis());
        return Length.ofMm(meeting.left()
                .box()
                .min()
                .get(thick)
                .subtract(meeting.right().box().min().get(thick)));
    }

    /** From the panel to the ploughed part's upper edge. */
    static Length above(Meeting meeting) {
        Axis thick = Axes.of(meeting.left().placing().thickness().axis());
        return Length.ofMm(meeting.right()
                .box()
                .max()
                .get(thick)
                .subtract(meeting.left().box().max().get(thick)));
    }

    private static Measure up(Meeting meeting, Axis thick, Length wide, List<Side> shoulders) {
        Box panel = meeting.left().box();
        Box wall = meeting.right().box();
        Box tongue = tongue(panel, thick, wide, shoulders);
        BigFraction below = tongue.min().get(thick).subtract(wall.min().get(thick));
        BigFraction above = wall.max().get(thick).subtract(tongue.max().get(thick));
        Length up = Length.ofMm(below).min(Length.ofMm(above));
        return Ruled.at(meeting.left().placing().span(), "up", up,
                "from the nearest edge of " + meeting.right().part().name() + " to the groove",
                "from the places of both parts", List.of());
    }

    private static Box tongue(Box panel, Axis thick, Length wide, List<Side> shoulders) {
        // Of no width it cannot be made, which its own joint says; its neighbours still ask where it would lie.
        if (shoulders.isEmpty() || wide.signum() <= 0) {
            return panel;
        }
        if (shoulders.size() == 2) {
            BigFraction beside = panel.extent(thick).subtract(wide.mm()).divide(2);
            return new Box(
                    panel.min().with(thick, panel.min().get(thick).add(beside)),
                    panel.max().with(thick, panel.max().get(thick).subtract(beside)));
        }
        Side side = shoulders.getFirst();
        return side.sign() > 0
                ? new Box(panel.min(), panel.max().with(thick, panel.min().get(thick).add(wide.mm())))
                : new Box(panel.min().with(thick, panel.max().get(thick).subtract(wide.mm())), panel.max());
    }

    /** The part of the panel's box that goes into the groove. */
    Box tongue(Box panel, Axis thick) {
        return tongue(panel, thick, wide.value(), shoulderSides);
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
        figures.add(new Figure("opening", opening, false));
        return figures;
    }
}
