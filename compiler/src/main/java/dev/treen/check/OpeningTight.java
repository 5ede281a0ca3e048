package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Making;
import dev.treen.model.Joint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A door, drawer or lid that has no room left in its opening in the dampest season (rules of the trade M-11, M-13 and
 * M-14, derived: an error below nothing; warnings below 0.3 or 0.5 mm, common practice without a source).
 */
final class OpeningTight implements Check {
    static final FindingKind DOOR = FindingKind.error("door-binds", "A door binds in damp air");
    static final FindingKind DRAWER = FindingKind.error("drawer-sticks", "A drawer sticks in damp air");
    static final FindingKind LID = FindingKind.error("lid-jams", "A lid jams in damp air");

    @Override
    public List<FindingKind> kinds() {
        return List.of(DOOR, DRAWER, LID);
    }

    @Override
    public List<Finding> run(Joined joined) {
        if (joined.joints().stream().noneMatch(made -> Loose.in(made.joint()))) {
            return List.of();
        }
        List<Clearance> rooms = Clearances.of(joined);
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            if (Loose.in(made.joint())) {
                rooms.stream()
                        .filter(room -> room.at().equals(Panels.figure(made, "gap").at()))
                        .filter(room -> room.of().part().is(made.joint().left()))
                        .filter(room -> tight(room, made.joint()))
                        .min((a, b) -> Double.compare(left(a), left(b)))
                        .filter(room -> told.add(made.joint().left().name()))
                        .ifPresent(room -> findings.add(finding(room, made.joint(), rooms, joined)));
            }
        }
        return findings;
    }

    private static FindingKind kind(Joint joint) {
        return joint.word("runs").isPresent() ? DRAWER : joint.word("hinge").isPresent() ? DOOR : LID;
    }

    private static double left(Clearance room) {
        return room.benchMm() - room.swellingMm();
    }

    private static boolean tight(Clearance room, Joint joint) {
        boolean stated = Making.stated(room.made().joint()) && room.tightest().mm() < -PanelTight.SAME;
        return stated || left(room) < Loose.least(joint) - PanelTight.SAME;
    }

    private static Finding finding(Clearance room, Joint joint, List<Clearance> rooms, Joined joined) {
        Settings settings = joined.project().settings();
        String name = joint.left().name();
        FindingKind kind = kind(joint);
        String does = kind.equals(DRAWER) ? "stick" : kind.equals(DOOR) ? "bind" : "jam";
        boolean binds = left(room) < -PanelTight.SAME;
        Length enough = enough(joint, rooms, settings);
        String figure = Amounts.written(enough, settings);
        Finding.Builder finding = Finding.of(
                kind,
                room.at(),
                binds ? "`" + name + "` will " + does + " in damp air" : "`" + name + "` may " + does + " in damp air")
                .severity(binds ? Severity.ERROR : Severity.WARNING)
                .label("room on each side")
                .found("It grows " + Amounts.fine(room.swellingMm(), settings) + " to this side; there is "
                        + Amounts.fine(room.benchMm(), settings) + ": "
                        + (binds
                                ? Amounts.fine(-left(room), settings) + " too little."
                                : "only " + Amounts.fine(left(room), settings) + " is left, and making may take "
                                        + Amounts.fine(room.worstMm(), settings) + " of it."))
                .because("It is " + room.nature().wood() + ", made at "
                        + Amounts.moisture(room.nature().seasons().bench()) + " moisture, and comes to "
                        + Amounts.moisture(room.nature().seasons().wettest()) + " " + Year.when(room.nature(), true)
                        + Silences.phrase(room.nature()) + " (" + room.nature().across().citation().source() + ").")
                .about(name)
                .about(joint.name())
                .number("gap", room.benchMm())
                .number("swelling", room.swellingMm())
                .number("left", left(room))
                .number("needed", enough.toDoubleMm());
        joint.left().from().ifPresent(b -> finding.related(b.nameAt(), "the board: its moisture and species"));
        room.nature().air().ifPresent(air -> finding.related(air.humidityAt(), "the air that it has to stand"));
        joint.given("gap").ifPresent(given -> {
            finding.remedy(Remedy.safe("set the gap to " + figure, new Edit(given.valueAt(), figure)));
            finding.remedy(Remedy.choice("let Treen choose it: `gap auto`", new Edit(given.valueAt(), "auto")));
        });
        return finding.build();
    }

    /** One figure that serves all sides of the statement. */
    private static Length enough(Joint joint, List<Clearance> rooms, Settings settings) {
        Optional<Clearance> most = rooms.stream()
                .filter(room -> room.of().part().is(joint.left()))
                .max((a, b) -> Double.compare(a.swellingMm(), b.swellingMm()));
        double clear = Making.stated(joint)
                ? most.map(Clearance::worstMm).orElse(0.0)
                : Loose.clear(joint).value();
        double needed = most.map(Clearance::swellingMm).orElse(0.0) + Math.max(clear, Loose.least(joint));
        Length exact = Length.nearest(needed, Length.ofMm(1).dividedBy(100_000));
        return settings.units() == Unit.IN
                ? exact.roundUpTo(Length.ofInches(1, 64))
                : exact.roundUpTo(Length.ofMm(1).dividedBy(100));
    }
}
