package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where a trench stops short of an edge, plain or with a dovetail in it.
 *
 * @param side the edge, where it has a name
 * @param ahead all of the right part up to the stop; absent where the trench does not run to that edge
 */
record HousingStop(Joint joint, Measure length, Optional<Side> side, Optional<Box> ahead) {
    /** How a project writes it. */
    static final PropertySchema SCHEMA = PropertySchema.optional(
            "stop",
            new Shape.LengthOrAuto(),
            "none: it runs through; `stop auto`: 10 mm, or 3/8 in",
            "How far the trench stays from an edge of the right part, with `from` and the edge's name;"
                    + " the left part is notched to hide its end.");

    /** The stop that a project asks for. */
    static Optional<HousingStop> of(Meeting meeting, Side face, Surroundings surroundings) {
        Joint joint = meeting.joint();
        return Optional.ofNullable(joint.settings().get(SCHEMA.name())).map(setting -> {
            Measure length = joint.length(SCHEMA.name()).orElseGet(() -> usual(setting, surroundings));
            Optional<Side> side = side(joint, "stop.from", Direction.FRONT);
            return new HousingStop(joint, length, side, side.flatMap(to -> ahead(meeting, face, to, length.value())));
        });
    }

    private static Measure usual(Setting setting, Surroundings surroundings) {
        return Ruled.at(setting.valueAt(), "stop", surroundings.inches() ? Length.ofInches(3, 8) : Length.ofMm(10),
                "what the front of a shelf hides", Ruled.PRACTICE, List.of());
    }

    /** The side that a word of the project names. */
    static Optional<Side> side(Joint joint, String word, Direction usual) {
        return joint.word(word)
                .map(Direction::named)
                .orElse(Optional.of(usual))
                .map(each -> Side.of(Axes.of(each.axis()), each.sign()));
    }

    private static Optional<Box> ahead(Meeting meeting, Side face, Side side, Length stop) {
        Axis along = side.axis();
        if (along == face.axis() || along == Axes.of(meeting.left().placing().thickness().axis())
                || stop.signum() <= 0) {
            return Optional.empty();
        }
        Box right = meeting.right().box();
        Box all = new Box(
                right.min().with(face.axis(), Groove.FAR.negate()), right.max().with(face.axis(), Groove.FAR));
        BigFraction at = right.coordinate(side).subtract(stop.mm().multiply(side.sign()));
        return Optional.of(side.sign() > 0
                ? new Box(all.min().with(along, at), all.max().with(along, Groove.FAR))
                : new Box(all.min().with(along, Groove.FAR.negate()), all.max().with(along, at)));
    }

    /** What of a trench that ran through lies before the stop, and is notched off the left part. */
    Optional<Box> notch(Box through) {
        return ahead.flatMap(each -> each.overlap(through));
    }

    /** The trench, cut short at the stop; all of it where the stop is at fault. */
    Box behind(Box through) {
        if (notch(through).isEmpty() || ahead.orElseThrow().contains(through)) {
            return through;
        }
        Side edge = side.orElseThrow();
        Box solid = ahead.orElseThrow();
        Axis axis = edge.axis();
        return edge.sign() > 0
                ? new Box(through.min(), through.max().with(axis, solid.min().get(axis)))
                : new Box(through.min().with(axis, solid.max().get(axis)), through.max());
    }

    /** A stop at an edge to which the trench does not run, or one that leaves nothing of it. */
    Optional<Finding> fault(Box through, Surroundings surroundings) {
        boolean noEdge = ahead.isEmpty();
        if (!noEdge && !ahead.orElseThrow().contains(through)) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                length.at(),
                noEdge
                        ? "The housing for `" + joint.left().name() + "` cannot stop at that edge"
                        : "The stop leaves no housing for `" + joint.left().name() + "`")
                .found(noEdge
                        ? "The housing does not run toward it; write `from front`, or another edge at its end."
                        : surroundings.settings().format().text(length.value()) + " is as long as the housing.")
                .about(joint.name())
                .build());
    }
}
