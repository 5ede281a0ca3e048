package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.wood.Drawers;
import dev.treen.wood.Figures;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A drawer's solid bottom, held in the groove of the front and running under the back, draws in as it dries (rule of the
 * trade M-10, derived; how it is held: Noyes, Handwork in Wood, ch. VIII; 2 mm common practice without a source).
 */
final class DrawerBottomShort implements Check {
    static final FindingKind SHORT = FindingKind.warning("drawer-bottom-short",
            "A drawer's bottom drops from its back");

    @Override
    public List<FindingKind> kinds() {
        return List.of(SHORT);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        Placement placement = Placement.of(joined);
        List<Finding> findings = new ArrayList<>();
        for (Meeting.Placed part : placement.parts()) {
            heldAt(part, placement)
                    .flatMap(held -> under(part, held, placement))
                    .flatMap(under -> judged(under, settings))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** The one side across the grain at which a level panel lies in a groove. */
    private static Optional<Side> heldAt(Meeting.Placed part, Placement placement) {
        if (Placement.axis(part, 2) != Axis.Z) {
            return Optional.empty();
        }
        List<Side> sides = new ArrayList<>();
        for (MadeJoint made : placement.joints(part.part().name())) {
            Optional<Side> side = made.joint().left().is(part.part()) && made.joint().kind().equals(Groove.KIND)
                    ? made.meeting().face()
                    : Optional.empty();
            side.filter(s -> part.measure(s.axis()) == 1 && !sides.contains(s)).ifPresent(sides::add);
        }
        return sides.size() == 1 ? Optional.of(sides.getFirst()) : Optional.empty();
    }

    /**
     * A bottom under its back.
     *
     * @param lapMm how far it reaches past the inside of the back
     */
    private record Under(Meeting.Placed bottom, Meeting.Placed back, Side free, double lapMm) {}

    /** The part that stands on the panel's top face near its free edge. */
    private static Optional<Under> under(Meeting.Placed bottom, Side held, Placement placement) {
        Side free = held.opposite();
        for (Meeting.Placed part : placement.parts()) {
            boolean above = part.box().min().get(Axis.Z).equals(bottom.box().max().get(Axis.Z));
            boolean along = Placement.axis(part, 2) == free.axis() && part.measure(Placement.axis(bottom, 0)) == 0;
            if (above && along) {
                double lap = bottom.box()
                        .coordinate(free)
                        .subtract(part.box().coordinate(free.opposite()))
                        .doubleValue() * free.sign();
                return Optional.of(new Under(bottom, part, free, lap));
            }
        }
        return Optional.empty();
    }

    private static Optional<Finding> judged(Under under, Settings settings) {
        Part part = under.bottom().part();
        Nature nature = Nature.of(part, settings);
        Drawers.Bottom bottom = Drawers.bottom(
                part.width().value().toDoubleMm(), under.lapMm(), nature.across(), nature.seasons(),
                Figures.standard());
        if (nature.still() || bottom.verdict().grade() == Verdict.Grade.FINE) {
            return Optional.empty();
        }
        double missing = Figures.standard().value("drawer-bottom.warning") - bottom.overlapLeftMm();
        Length wider = part.width().value().plus(Length
                .nearest(missing * (1 + missing / under.bottom().part().width().value().toDoubleMm()),
                        Length.ofMm(1).dividedBy(1000))
                .roundUpTo(Amounts.step(settings)));
        boolean drops = bottom.verdict().grade() == Verdict.Grade.ERROR;
        Finding.Builder finding = Finding.of(
                SHORT, part.width().at(), "`" + part.name() + "` " + (drops ? "drops" : "nearly drops")
                        + " from under `" + under.back().part().name() + "` in dry air")
                .severity(drops ? Severity.ERROR : Severity.WARNING)
                .label("front to back")
                .found("It reaches " + Amounts.fine(under.lapMm(), settings)
                        + " past the inside of the back, and draws in "
                        + Amounts.fine(bottom.drawsInMm(), settings) + "; 2 mm should be left.")
                .because("It is " + nature.wood() + ", made at " + Amounts.moisture(nature.seasons().bench())
                        + ", and comes to " + Amounts.moisture(nature.seasons().driest()) + " moisture"
                        + Silences.phrase(nature) + ". Fixed at the front only, it moves at the back.")
                .related(under.back().part().nameAt(), "the back")
                .about(part.name())
                .number("lap", under.lapMm())
                .number("draws", bottom.drawsInMm());
        String figure = Amounts.written(wider, settings);
        finding.remedy(under.free().sign() > 0
                ? Remedy.choice("make it " + figure + " wide", new Edit(part.width().at(), figure))
                : Remedy.choice("make it " + figure + " wide, and let it stand out at the back"));
        return Optional.of(finding.build());
    }
}
