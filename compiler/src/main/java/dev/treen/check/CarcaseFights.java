package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Settings;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.wood.CrossGrain;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two parts whose grain runs alike, but which move differently, fast to each other over a width (rule of the trade M-21,
 * derived; 0.5 mm is common practice without a source).
 */
final class CarcaseFights implements Check {
    static final FindingKind FIGHTS = FindingKind.warning("carcase-fights", "Joined parts move differently");

    @Override
    public List<FindingKind> kinds() {
        return List.of(FIGHTS);
    }

    @Override
    public List<Finding> run(Joined joined) {
        List<Finding> findings = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            if (made.holdsFast()) {
                over(made.meeting()).flatMap(over -> judged(made, over, joined)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** How far, and along which axis, both lie across their grain. */
    private record Over(Axis axis, double mm) {}

    private static Optional<Over> over(Meeting meeting) {
        return switch (meeting.contact()) {
            case BoxContact.FaceToFace(var side, var min, var max) -> {
                Optional<Over> most = Optional.empty();
                for (Axis axis : Axis.values()) {
                    double mm = max.get(axis).subtract(min.get(axis)).doubleValue();
                    if (axis != side.axis() && bothAcross(meeting, axis)
                            && mm > most.map(Over::mm).orElse(0.0)) {
                        most = Optional.of(new Over(axis, mm));
                    }
                }
                yield most;
            }
            case BoxContact.Edge edge -> bothAcross(meeting, edge.along())
                    ? Optional.of(new Over(
                            edge.along(),
                            edge.to().get(edge.along()).subtract(edge.from().get(edge.along())).doubleValue()))
                    : Optional.empty();
            case BoxContact.Corner corner -> Optional.empty();
            case BoxContact.Apart apart -> Optional.empty();
            case BoxContact.Overlapping shared -> Optional.empty();
        };
    }

    private static boolean bothAcross(Meeting meeting, Axis axis) {
        return meeting.left().measure(axis) != 0 && meeting.right().measure(axis) != 0;
    }

    private static Optional<Finding> judged(MadeJoint made, Over over, Joined joined) {
        Settings settings = joined.project().settings();
        Meeting.Placed left = made.meeting().left();
        Meeting.Placed right = made.meeting().right();
        Nature one = joined.nature(left.part());
        Nature other = joined.nature(right.part());
        if (one.still() || other.still()) {
            return Optional.empty();
        }
        CrossGrain.Fight fight = CrossGrain.carcase(
                over.mm(),
                one.coefficient(left.measure(over.axis())),
                one.seasons(),
                other.coefficient(right.measure(over.axis())),
                other.seasons(),
                Figures.standard());
        if (fight.verdict().grade() == Verdict.Grade.FINE) {
            return Optional.empty();
        }
        String a = left.part().name();
        String b = right.part().name();
        return Optional.of(Finding.of(
                FIGHTS, made.joint().at(), "`" + a + "` and `" + b + "` move differently where they are joined")
                .found("Over " + Amounts.fine(over.mm(), settings) + " they come to differ by "
                        + Amounts.fine(fight.differenceMm(), settings) + "; over "
                        + Amounts.limit("carcase-fights.warning", settings) + " shows or tears.")
                .because("`" + a + "` is " + one.wood() + " at " + Amounts.moisture(one.seasons().bench()) + ", `" + b
                        + "` " + other.wood() + " at " + Amounts.moisture(other.seasons().bench()) + " when made.")
                .related(left.part().nameAt(), "this one")
                .related(right.part().nameAt(), "and this one")
                .about(a)
                .about(b)
                .about(made.joint().name())
                .number("difference", fight.differenceMm())
                .remedy(Remedy.choice("take both from one kind of wood, with like rings and of like moisture"))
                .remedy(Remedy.choice("glue the front " + Amounts.limit("cross-grain-glue.front.low", settings) + " to "
                        + Amounts.limit("cross-grain-glue.front.high", settings) + " only, and let the rest slide"))
                .build());
    }
}
