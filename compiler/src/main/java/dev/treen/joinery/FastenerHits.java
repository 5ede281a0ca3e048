package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Convex;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Screws and nails that come into what another joint has cut: a groove, a mortise, the hole of another screw. */
final class FastenerHits {
    private final Driven driven;
    private final Fastener fastener;
    private final Spots spots;
    private final LengthFormat format;

    FastenerHits(Driven driven, Fastener fastener, Spots spots, LengthFormat format) {
        this.driven = driven;
        this.fastener = fastener;
        this.spots = spots;
        this.format = format;
    }

    /** One finding for each of the two parts, at its first hit. */
    List<Finding> all(Surroundings surroundings) {
        List<Finding> findings = new ArrayList<>();
        hit(driven.meeting().left(), true, surroundings).ifPresent(findings::add);
        hit(driven.meeting().right(), false, surroundings).ifPresent(findings::add);
        return findings;
    }

    private Optional<Finding> hit(Meeting.Placed part, boolean held, Surroundings surroundings) {
        List<Surroundings.Made> others = surroundings.cuts(part.part()).stream()
                .filter(made -> !ofThisPair(made.by()))
                .toList();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        Map<Length, List<Convex>> bodies = new LinkedHashMap<>();
        spots.at().forEach(along -> bodies.put(along, bodies(held, along, surroundings)));
        for (Surroundings.Made made : others) {
            for (Map.Entry<Length, List<Convex>> spot : bodies.entrySet()) {
                if (spot.getValue().stream().anyMatch(body -> meets(body, made.cut()))) {
                    return Optional.of(finding(part, made.by().joint(), spot.getKey()));
                }
            }
        }
        return Optional.empty();
    }

    /** A housing, a rebate, a mitre of the same two parts is what is fastened. */
    private boolean ofThisPair(Meeting by) {
        Joint mine = driven.meeting().joint();
        boolean alike = by.joint().left().is(mine.left()) && by.joint().right().is(mine.right());
        boolean turned = by.joint().left().is(mine.right()) && by.joint().right().is(mine.left());
        boolean same = alike || turned;
        return same && JointKinds.named(by.joint().kind()).filter(JointKind::fastens).isEmpty();
    }

    private List<Convex> bodies(boolean held, Length along, Surroundings surroundings) {
        if (!held) {
            return List.of(Bores.body(driven, fastener, along));
        }
        List<Convex> holes = Bores.held(driven, fastener, along, Slots.of(driven, along, surroundings));
        return holes.isEmpty() ? List.of(Bores.shank(driven, fastener, along)) : holes;
    }

    private static boolean meets(Convex body, Cut cut) {
        return switch (cut) {
            case Cut.Hollow hollow -> body.intersect(Convex.box(hollow.space(), hollow.origin())).isPresent();
            case Cut.Slice slice -> body.clip(slice.plane().flip(), slice.origin()).isPresent();
            case Cut.Carve carve -> body.intersect(carve.body()).isPresent();
            case Cut.RoundHole hole -> body.intersect(hole.rod()).isPresent();
            case Cut.Bore bore -> body.intersect(bore.body()).isPresent();
            // Where it stops is settled with all other joints; to be near its line is near enough to be told.
            case Cut.Stopped stopped -> body.intersect(Convex.box(stopped.space(), stopped.origin())).isPresent();
        };
    }

    private Finding finding(Meeting.Placed part, Joint other, Length along) {
        Joint joint = driven.meeting().joint();
        String what = fastener.screw() ? "screw" : "nail";
        Length from = along.minus(Length.ofMm(driven.low().get(driven.row())));
        String mate = other.left().is(part.part()) ? other.right().name() : other.left().name();
        return Faults.said(
                joint,
                JoineryFindings.HITS_CUT,
                joint.given("end").map(setting -> setting.valueAt()).orElse(joint.at()),
                "A " + what + " in `" + part.part().name() + "` comes into its " + other.kind().replace('_', ' ')
                        + " with `" + mate + "`")
                .found("It is the one " + format.text(from) + " from where `" + joint.left().name() + "` and `"
                        + joint.right().name() + "` begin to meet.")
                .because("It spoils what is to fit or to move there, and holds less.")
                .related(other.at(), "the joint that it comes into")
                .remedy(Remedy.choice("move it with `end` or `count`, or take shorter ones"))
                .build();
    }
}
