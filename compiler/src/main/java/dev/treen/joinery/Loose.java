package dev.treen.joinery;

import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.solid.Side;
import dev.treen.wood.Figure;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What doors, drawers and lids have in common: they lie loose in an opening and grow toward its sides (rules of the trade
 * M-11, M-13 and M-14, F-01).
 */
public final class Loose {
    private static final Set<String> KINDS = Set.of(Inset.KIND, Lip.KIND);
    private static final Length FINEST = Length.ofMm(1).dividedBy(100);
    private static final Length NATURES = Length.ofMm(1).dividedBy(100_000);

    private Loose() {
    }

    /** Whether the left part of {@code joint} lies loose in the opening that the right ones make. */
    public static boolean in(Joint joint) {
        return KINDS.contains(joint.kind());
    }

    /** The room to leave on {@code side}, as large as the dampest season wants it. */
    static Measure gap(Meeting meeting, Side side, Surroundings surroundings) {
        Measure opening = meeting.left().along(side.axis());
        int measure = meeting.left().measure(side.axis());
        Figure clear = clear(meeting.joint());
        boolean stands = stands(meeting.joint(), side);
        double share = share(meeting.joint(), side);
        boolean stated = share > 0 && Making.stated(meeting.joint());
        double room = stands ? 0 : stated ? stated(meeting, side, share, surroundings) : clear.value();
        Nature nature = surroundings.nature(meeting.left().part());
        // The part is smaller than the opening by what is taken off; its growth hardly differs for that.
        double grows = share * nature.swelling(measure, opening.value().toDoubleMm());
        Length needed = Length.nearest(grows + room, NATURES);
        Length value = surroundings.inches()
                ? needed.roundUpTo(Length.ofInches(1, 64))
                : needed.roundUpTo(FINEST);
        return Ruled.at(opening.at(), "gap", value, stands
                ? "it stands on this side"
                : DecimalText.write(grows, 2)
                        + " mm that it grows to this side in the dampest season, and "
                        + DecimalText.write(room, 2) + (stated ? " mm that making may take" : " mm to be free"),
                stated ? "the tolerances as stated, all at their worst" : clear.citation().source(),
                List.of(opening.how().named("opening")));
    }

    /** What the errors of the opening and of what lies in it may take on one side, and no less than has to be left. */
    private static double stated(Meeting meeting, Side side, double share, Surroundings surroundings) {
        Settings settings = surroundings.settings();
        Length opening = meeting.left().along(side.axis()).value();
        Making.Kind kind = meeting.left().measure(side.axis()) == 0 ? Making.Kind.LENGTH : Making.Kind.WIDTH;
        double both = Making.of(Making.Kind.LENGTH, opening, settings.tolerances(), settings).mm()
                + Making.of(kind, opening, meeting.left().part().tolerances(), settings).mm();
        return Math.max(least(meeting.joint()), share < 1 ? both / 2 : both);
    }

    /** The least that may be left in the dampest season before it is told, in mm. */
    public static double least(Joint joint) {
        String figure = joint.word("runs").isPresent()
                ? "drawer-sticks.warning"
                : joint.word("hinge").isPresent() ? "door-binds.warning" : "lid.side";
        return Figures.standard().value(figure);
    }

    /** The room that is to be left in the dampest season. */
    public static Figure clear(Joint joint) {
        if (joint.kind().equals(Lip.KIND)) {
            return Figures.standard().get("lid.lip");
        }
        return Figures.standard().get(joint.word("runs").isPresent() ? "drawer.run" : "door.gap");
    }

    /** Whether the part stands on this side, as a drawer does on its lower edge. */
    static boolean stands(Joint joint, Side side) {
        return joint.word("runs").isPresent() && side == Side.BOTTOM;
    }

    /**
     * How much of the part's growth comes out at one side: all of it opposite to the hinge and above a drawer, none on the
     * hinge and below, else half.
     */
    public static double share(Joint joint, Side side) {
        Optional<Side> hinge = joint.word("hinge").flatMap(Direction::named)
                .map(d -> Side.of(Axes.of(d.axis()), d.sign()));
        Stream<Side> fixed = joint.word("runs").isPresent()
                ? Stream.concat(hinge.stream(), Stream.of(Side.BOTTOM))
                : hinge.stream();
        return fixed.filter(still -> still.axis() == side.axis())
                .findFirst()
                .map(still -> still == side ? 0.0 : 1.0)
                .orElse(0.5);
    }
}
