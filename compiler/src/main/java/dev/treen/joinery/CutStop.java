package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Origin;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far a groove or a rebate stays from the finished ends of the part it is cut in (rules of the trade J-05c): so far
 * that it does not show, and near enough for the corner of what lies in it to enter.
 *
 * @param length how far
 * @param along the axis along which the cut runs
 * @param end the only end at which it stops; absent for both
 */
record CutStop(Measure length, Axis along, Optional<Side> end) {

    /** The stop that a project asks for. */
    static Optional<CutStop> of(Meeting meeting, Side face, Measure deep) {
        Joint joint = meeting.joint();
        Optional<Setting> setting = Optional.ofNullable(joint.settings().get("stop"));
        Axis along = Rebate.running(meeting, face);
        return setting.map(each -> new CutStop(
                joint.length("stop").orElseGet(() -> usual(meeting, face, deep, each)), along, end(joint)));
    }

    private static Optional<Side> end(Joint joint) {
        return joint.word("stop.from").flatMap(Direction::named).map(d -> Side.of(Axes.of(d.axis()), d.sign()));
    }

    /** What the neighbour is thick, less what the corner goes into it. */
    private static Measure usual(Meeting meeting, Side face, Measure deep, Setting setting) {
        Measure wall = meeting.right().along(face.axis());
        Length value = wall.value().minus(deep.value()).max(Length.ZERO);
        return Ruled.at(setting.valueAt(), "stop", value,
                "the wall less the cut, so that the corner of what lies in it still enters",
                "from the corner of two walls of one thickness", List.of(wall.how(), deep.how()));
    }

    /** A stop that leaves no cut, or at an end that the cut does not run to. */
    Optional<Finding> fault(Meeting meeting, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Length room = meeting.right().along(along).value();
        boolean noEnd = end.filter(side -> side.axis() != along).isPresent();
        boolean none = length.value().times(end.isPresent() ? 1 : 2).compareTo(room) >= 0;
        if (!noEnd && !none && length.value().signum() >= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                length.at(),
                noEnd
                        ? "The " + joint.kind() + " for `" + joint.left().name() + "` does not run to that end"
                        : "The stop leaves no " + joint.kind() + " for `" + joint.left().name() + "`")
                .found(noEnd
                        ? "It runs from " + Direction.of(Axes.number(along), -1).surface() + " to "
                                + Direction.of(Axes.number(along), 1).surface() + "."
                        : surroundings.settings().format().text(length.value()) + " of "
                                + surroundings.settings().format().text(room) + ".")
                .remedy(Faults.setting(joint, "stop", "auto", "stop it at both ends by the wall: `stop auto`"))
                .about(joint.left().name())
                .about(joint.name())
                .build());
    }

    private Optional<Length> at(int sign, Length value) {
        return end.isEmpty() || end.get().sign() == sign ? Optional.of(value) : Optional.empty();
    }

    /**
     * The cut between its stops, and the corners of what lies in it that would strike them. Left to Treen it goes as far as
     * the left part does and keeps the same gap there, so that nothing is to be notched.
     */
    List<Cut> cuts(Meeting meeting, Box trench, Length gap, Origin origin) {
        String right = meeting.right().part().name();
        String left = meeting.left().part().name();
        if (meeting.joint().given("stop").isEmpty()) {
            Length past = gap.negate();
            return List.of(new Cut.Stopped(right, trench, along, left, at(-1, past), at(1, past), true, origin));
        }
        Optional<Length> low = at(-1, length.value());
        Optional<Length> high = at(1, length.value());
        return List.of(
                new Cut.Stopped(right, trench, along, right, low, high, true, origin),
                new Cut.Stopped(left, trench, along, right, low, high, false, origin));
    }

    /** What a stopped cut takes, once the finished box of its part is known. */
    static Stream<Cut> hollows(Cut.Stopped cut, Box ends) {
        Optional<BigFraction> low = cut.low().map(stop -> ends.min().get(cut.along()).add(stop.mm()));
        Optional<BigFraction> high = cut.high().map(stop -> ends.max().get(cut.along()).subtract(stop.mm()));
        BigFraction far = Groove.FAR;
        List<Box> spaces = new ArrayList<>();
        if (cut.within()) {
            spaces.add(TenonSizes.between(cut.space(), cut.along(), low.orElse(far.negate()), high.orElse(far)));
        } else {
            low.ifPresent(at -> spaces.add(TenonSizes.between(cut.space(), cut.along(), far.negate(), at)));
            high.ifPresent(at -> spaces.add(TenonSizes.between(cut.space(), cut.along(), at, far)));
        }
        return spaces.stream().map(space -> new Cut.Hollow(cut.part(), space, cut.origin()));
    }
}
