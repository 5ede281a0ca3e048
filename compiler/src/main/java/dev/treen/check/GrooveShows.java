package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.model.Direction;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where a groove that runs through shows at a corner (rules of the trade J-05c, derived): at the end of a butted part
 * that runs past the other, and at the end of a rebated part whose groove is deeper than its rebate. A mitre hides it.
 */
final class GrooveShows implements Check {
    static final FindingKind SHOWS = FindingKind.warning("groove-shows", "A groove shows at a corner");

    @Override
    public List<FindingKind> kinds() {
        return List.of(SHOWS);
    }

    /**
     * An end at which a part stands open.
     *
     * @param side the end
     * @param hidden grooves to this depth are covered
     * @param corner the joint
     */
    private record End(Side side, Length hidden, MadeJoint corner) {}

    private record Told(String panel, String part) {}

    @Override
    public List<Finding> run(Joined joined) {
        Map<String, List<End>> ends = ends(joined.joints());
        List<Finding> findings = new ArrayList<>();
        Settings settings = joined.project().settings();
        Set<Told> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                String part = made.joint().right().name();
                ends.getOrDefault(part, List.of()).stream()
                        .filter(end -> running(made.meeting()).filter(axis -> axis == end.side().axis()).isPresent())
                        .filter(end -> !stopped(made, end.side()))
                        .filter(end -> Panels.figure(made, "deep").value().compareTo(end.hidden()) > 0)
                        .findFirst()
                        .filter(end -> told.add(new Told(made.joint().left().name(), part)))
                        .ifPresent(end -> findings.add(finding(made, end, settings)));
            }
        }
        return findings;
    }

    /** Whether a groove stops before that end. */
    private static boolean stopped(MadeJoint made, Side end) {
        Optional<Direction> from = made.joint().word("stop.from").flatMap(Direction::named);
        return made.figure("stop").filter(figure -> !figure.measure().value().isZero()).isPresent()
                && from.map(way -> Side.of(end.axis(), way.sign()) == end).orElse(true);
    }

    /** The axis along which a groove runs. */
    private static Optional<Axis> running(Meeting meeting) {
        Axis thick = thick(meeting.left());
        return meeting.face().map(Side::axis).filter(axis -> axis != thick).map(axis -> Meeting.third(axis, thick));
    }

    private static Axis thick(Meeting.Placed part) {
        for (Axis axis : Axis.values()) {
            if (part.measure(axis) == 2) {
                return axis;
            }
        }
        throw new IllegalStateException("a placed part has a thickness");
    }

    private static Map<String, List<End>> ends(List<MadeJoint> joints) {
        Map<String, List<End>> ends = new HashMap<>();
        for (MadeJoint made : joints) {
            Meeting meeting = made.meeting();
            if (meeting.edge().isPresent()) {
                String left = made.joint().left().name();
                String right = made.joint().right().name();
                switch (made.joint().kind()) {
                    case "butt", "dowel" -> {
                        boolean leftRuns = made.figure("over_right").isPresent();
                        (leftRuns ? meeting.endOfLeft() : meeting.endOfRight()).ifPresent(side -> ends
                                .computeIfAbsent(leftRuns ? left : right, part -> new ArrayList<>())
                                .add(new End(side, Length.ZERO, made)));
                    }
                    case "rebate" -> meeting.endOfRight().ifPresent(side -> ends
                            .computeIfAbsent(right, part -> new ArrayList<>())
                            .add(new End(side, Panels.figure(made, "deep").value(), made)));
                    // Tails and pins, or fingers, fill the corner in turn: one of the two parts shows it.
                    case "dovetail", "finger" -> {
                        if (made.joint().word("cut").filter("lapped"::equals).isEmpty()) {
                            meeting.endOfLeft().ifPresent(side -> ends
                                    .computeIfAbsent(left, part -> new ArrayList<>())
                                    .add(new End(side, Length.ZERO, made)));
                        }
                    }
                    default -> {
                    }
                }
            }
        }
        return ends;
    }

    /** Whether both parts come to the outside in turn. */
    private static boolean shared(End end) {
        return end.corner().joint().kind().equals("dovetail") || end.corner().joint().kind().equals("finger");
    }

    private static Finding finding(MadeJoint made, End end, Settings settings) {
        String panel = made.joint().left().name();
        String part = made.joint().right().name();
        Length deep = Panels.figure(made, "deep").value();
        Length thickness = made.meeting()
                .face()
                .map(side -> made.meeting().right().along(side.axis()).value())
                .orElse(deep);
        return Finding.of(
                SHOWS,
                made.joint().at(),
                shared(end)
                        ? "The groove for `" + panel + "` shows at the corner of `" + end.corner().joint().left().name()
                                + "` and `" + end.corner().joint().right().name() + "`"
                        : "The groove for `" + panel + "` shows at the end of `" + part + "`")
                .found("It is " + Amounts.text(deep, settings) + " deep and runs through; the "
                        + end.corner().joint().kind() + " covers "
                        + (end.hidden().isZero() ? "none of it." : Amounts.text(end.hidden(), settings) + " of it."))
                .because("A hole in the end grain is seen at the corner (derived from the corner's geometry).")
                .related(end.corner().joint().at(), "the corner at which it shows")
                .about(panel)
                .about(part)
                .about(made.joint().name())
                .remedy(Remedy.choice("stop the groove "
                        + Amounts.text(thickness.minus(deep).max(Length.ZERO), settings)
                        + " short of the end, `stop auto`, which the panel's corner still reaches, or plug the hole"))
                .remedy(Remedy.choice("mitre the corner: a mitre hides every groove"))
                .build();
    }
}
