package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.solid.Side;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;

/**
 * The room that a panel needs at one groove. Held in grooves on both sides of its grain, the widest safe panel is
 * {@code P = (O + Σd − 2c) / (1 + C·ΔM)} (rules of the trade M-05, derived), so a gap of {@code auto} is half of what it
 * grows and {@code c} for making. Along the grain, or where the other side is free, only {@code c} is left.
 *
 * @param opening the panel's seen measure toward this groove
 * @param deep of this groove
 * @param between the bottoms of this groove and the one opposite; 0 where the other side is free
 * @param measure which measure of the panel
 * @param clear what is left for making
 * @param clearSource who says so
 * @param inRow whether the panel is one board of a row, each of which enters the next (M-20)
 * @param hold how the panel is kept from wandering
 */
record PanelRoom(
        Measure opening,
        Measure deep,
        double between,
        int measure,
        double clear,
        String clearSource,
        boolean inRow,
        Hold hold,
        Nature nature,
        boolean inches) {
    /** How it is kept from wandering, as this groove has it. */
    private enum Hold {
        /** It takes half of the movement: the panel is free, or pinned at its middle. */
        SHARED,
        /** It is glued in here. */
        HERE,
        /** It is glued in on the other side and makes the whole movement here. */
        OPPOSITE;

        static Hold of(Joint joint, Side face) {
            return Groove.heldAt(joint)
                    .filter(side -> side.axis() == face.axis())
                    .map(side -> side == face ? HERE : OPPOSITE)
                    .orElse(SHARED);
        }
    }

    private static final Length FINEST = Length.ofMm(1).dividedBy(100);

    /** Finer than any figure shown: nature's numbers are brought to this before they are rounded up. */
    private static final Length NATURES = Length.ofMm(1).dividedBy(100_000);

    static PanelRoom of(Meeting meeting, Side face, Measure deep, Surroundings surroundings) {
        Figures figures = Figures.standard();
        Meeting.Placed panel = meeting.left();
        int measure = panel.measure(face.axis());
        Measure opening = panel.along(face.axis());
        Optional<Direction> slide = meeting.joint().word("slide").flatMap(Direction::named);
        boolean slides = slide.isPresent() && slide.get().axis() != Axes.number(face.axis());
        Figure usual = figures.get(slides ? "lid.side" : "panel.making");
        boolean stated = Making.stated(meeting.joint());
        Nature nature = surroundings.nature(panel.part());
        Optional<Meeting> opposite = surroundings.opposite(panel.part(), face);
        double between = opposite.map(other -> opening.value()
                .plus(deep.value())
                .plus(GrooveSizes.deep(other, face.opposite(), surroundings).value())
                .toDoubleMm())
                .orElse(0.0);
        return new PanelRoom(
                opening,
                deep,
                between,
                measure,
                stated ? made(meeting, deep, opposite, face, surroundings) : usual.value(),
                stated ? "the tolerances as stated, all at their worst" : usual.citation().source(),
                surroundings.inRow(meeting, face),
                Hold.of(meeting.joint(), face),
                nature,
                surroundings.inches());
    }

    /** What making may take on one side: half of the opening's, the panel's and both grooves' errors (F-06). */
    private static double made(
            Meeting meeting, Measure deep, Optional<Meeting> opposite, Side face, Surroundings surroundings) {
        Settings settings = surroundings.settings();
        Part panel = meeting.left().part();
        Length opening = meeting.left().along(face.axis()).value();
        double here = depth(deep.value(), meeting, settings);
        double there = opposite
                .map(other -> depth(GrooveSizes.deep(other, face.opposite(), surroundings).value(), other, settings))
                .orElse(here);
        return (Making.of(Making.Kind.LENGTH, opening, settings.tolerances(), settings).mm()
                + Making.of(Making.Kind.WIDTH, opening, panel.tolerances(), settings).mm()
                + here
                + there) / 2;
    }

    private static double depth(Length deep, Meeting meeting, Settings settings) {
        return Making.of(Making.Kind.DEPTH, deep, meeting.right().part().tolerances(), settings).mm();
    }

    /** Growth of the widest panel that may be put between the grooves' bottoms; nothing where it can give way. */
    private double growsAtMost() {
        if (inRow) {
            // Each joint of a row takes what one board grows: half from either side.
            return 2 * nature.swelling(measure, opening.value().toDoubleMm());
        }
        double room = between - (hold == Hold.OPPOSITE ? 1 : 2) * clear;
        return room <= 0 ? 0 : nature.swelling(measure, room / (1 + nature.swelling(measure, room) / room));
    }

    /** The gap between the panel's edge and the bottom of the groove. */
    Measure gap() {
        return hold == Hold.HERE ? none("gap") : room("gap", growsAtMost(), clear, "for making", clearSource);
    }

    /** The gap between the shoulder and the ploughed part (M-07), of a panel that is made with {@code gap}. */
    Measure shoulder(Measure gap) {
        if (hold == Hold.HERE) {
            return none("shoulder_gap");
        }
        double width = Math.max(0, between - (hold == Hold.OPPOSITE ? 1 : 2) * gap.value().toDoubleMm());
        double grows = inRow ? growsAtMost() : width == 0 ? 0 : nature.swelling(measure, width);
        Figure shows = Figures.standard().get("shoulder-tight.warning");
        return room("shoulder_gap", grows, shows.value(), "to be seen", shows.citation().source());
    }

    private Measure none(String label) {
        return Ruled.at(opening.at(), label, Length.ZERO, "glued along this edge", Ruled.PRACTICE, List.of());
    }

    private Measure room(String label, double grows, double extra, String what, String source) {
        Length value = up(Length.nearest(comesHere(grows) + extra, NATURES));
        Length making = Length.nearest(extra, FINEST);
        Derivation forMaking = new Derivation(
                what, Measure.datum(making), new Derivation.Standard(source), Optional.empty());
        Derivation how = Derivation.combined(label, Measure.datum(value), "+", swelling(grows), forMaking);
        return new Measure(value, opening.at(), how);
    }

    /** Up to 0.01 mm; in inches to 1/64, unless that would take more than a third of the groove. */
    private Length up(Length needed) {
        Length mark = needed.roundUpTo(Length.ofInches(1, 64));
        boolean sensible = inches && mark.times(3).compareTo(deep.value()) <= 0;
        return sensible ? mark : needed.roundUpTo(FINEST);
    }

    private double comesHere(double grows) {
        return hold == Hold.OPPOSITE ? grows : grows / 2;
    }

    private Derivation swelling(double grows) {
        Length half = Length.nearest(comesHere(grows), FINEST);
        if (grows == 0) {
            return Derivation.rule("swelling", Measure.datum(half), stillBecause(), "rules of the trade M-22",
                    List.of());
        }
        return Derivation.rule(
                "swelling",
                Measure.datum(half),
                (hold == Hold.OPPOSITE ? "all of " : "half of ") + DecimalText.write(grows, 2)
                        + " mm that it grows from "
                        + DecimalText.write(nature.seasons().bench(), 2) + " % to "
                        + DecimalText.write(nature.seasons().wettest(), 2) + " % moisture; "
                        + (nature.still()
                                ? "manufactured sheet"
                                : nature.wood() + ", "
                                        + DecimalText.write(nature.coefficient(measure).perPercent(), 5) + " per 1 %"),
                nature.sheet()
                        .map(s -> s.citation().source())
                        .orElseGet(() -> nature.coefficient(measure).citation().source()),
                List.of(opening.how().named("opening")));
    }

    private String stillBecause() {
        if (measure == 0) {
            return "along the grain wood hardly moves";
        }
        return nature.still() ? "a manufactured sheet hardly moves"
                : "free to move away on the other side, or no wetter";
    }
}
