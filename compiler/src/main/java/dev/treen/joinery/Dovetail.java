package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dovetailed corner: the left part has the tails, the right one the pins (rules of the trade J-11, J-12). Its slopes are
 * exact where they are written as 1:n.
 */
final class Dovetail implements JointKind {
    static final String KIND = "dovetail";
    static final String THROUGH = "through";
    static final String SECRET = "secret";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Tails on the end of the left part hold between pins on the right one: it cannot be pulled apart along the"
                    + " tails, glue or none. Give the tails to the part that is pulled: the side of a drawer.",
            "joint dovetail left to front, right to front { tails 3; slope 1:8 }",
            List.of(
                    PropertySchema.optional(
                            "tails",
                            Shape.Plain.COUNT,
                            "tails about two and a half times as wide as the left part is thick, none over 44 mm",
                            "How many tails there are."),
                    PropertySchema.optional(
                            "slope",
                            Shape.Plain.ANGLE,
                            "1:8, in softwood 1:6",
                            "How far the tails spread, as `1:8` or an angle."),
                    PropertySchema.optional(
                            "pin",
                            new Shape.LengthOrAuto(),
                            "a third of the left part's thickness, not under 3 mm",
                            "How thick a pin is where it is thinnest, at its outer face."),
                    PropertySchema.optional(
                            "half_pin",
                            new Shape.LengthOrAuto(),
                            "as a pin, not under 4 mm",
                            "How thick the pins at both edges are where they are thinnest."),
                    PropertySchema.optional(
                            "cut",
                            new Shape.OneOf(List.of(THROUGH, "lapped", SECRET)),
                            THROUGH,
                            "Whether the tails come through the right part, stop behind a lap of it as in the front"
                                    + " of a drawer, or are hidden by laps of both parts that are mitred, so that only a"
                                    + " mitre shows."),
                    PropertySchema.optional(
                            "lap",
                            new Shape.LengthOrAuto(),
                            "none; lapped and secret: 6 mm, in thin wood a third of it",
                            "What the right part keeps before the tails; both parts, where they are secret."),
                    PropertySchema.optional(
                            "mitre",
                            Shape.Plain.LENGTH,
                            "none; secret: as wide as the lap, at both edges",
                            "How far down from the upper edge the corner is mitred instead: it hides a groove or a"
                                    + " moulding. Secret dovetails are mitred at both edges.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<BoxCorner> corner = BoxCorner.of(meeting);
        if (corner.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "Dovetails join the ends of two parts at a corner, written inside to inside: their ends meet along"
                            + " its inner edge."));
        }
        DovetailSizes sizes = DovetailSizes.of(corner.get(), meeting.joint(), surroundings);
        DovetailFaults faults = new DovetailFaults(meeting.joint(), sizes, surroundings.settings());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        return Effect.of(additions(sizes), sizes.figures(meeting.joint()), cuts(sizes, meeting.origin()))
                .saying(faults.weak());
    }

    private static List<Addition> additions(DovetailSizes sizes) {
        BoxCorner corner = sizes.corner();
        return List.of(
                new Addition(
                        corner.first().part().name(),
                        corner.outFirst(),
                        Mitre.named(sizes.reach(), "corner with " + corner.second().part().name())),
                new Addition(
                        corner.second().part().name(),
                        corner.outSecond(),
                        Mitre.named(corner.thicknessOfFirst(), "corner with " + corner.first().part().name())));
    }

    /** Sockets for the pins out of the first part, sockets for the tails out of the second. */
    private static List<Cut> cuts(DovetailSizes sizes, Origin origin) {
        BoxCorner corner = sizes.corner();
        String tailed = corner.first().part().name();
        String pinned = corner.second().part().name();
        Length deep = sizes.deep().value();
        Length lean = sizes.lean();
        List<Cut> cuts = new ArrayList<>();
        List<BoxCorner.Heights> pins = sizes.pins();
        for (int i = 0; i < pins.size(); i++) {
            BoxCorner.Heights pin = pins.get(i);
            // The outer pins are straight at the edges of the wall.
            BoxCorner.Heights inside = new BoxCorner.Heights(
                    i == 0 ? pin.from() : pin.from().minus(lean),
                    i == pins.size() - 1 ? pin.to() : pin.to().plus(lean));
            cuts.add(new Cut.Carve(tailed, corner.wedge(deep, sizes.through(), inside, pin, origin), origin));
        }
        for (BoxCorner.Heights tail : sizes.ends()) {
            cuts.add(new Cut.Carve(pinned, corner.wedge(deep, sizes.through(), tail.in(lean), tail, origin), origin));
        }
        if (sizes.secret()) {
            BoxCorner.Heights between = new BoxCorner.Heights(sizes.bottom(), sizes.top());
            cuts.add(new Cut.Carve(tailed, corner.lap(false, deep, sizes.through(), between, origin), origin));
            cuts.add(new Cut.Carve(pinned, corner.lap(true, deep, sizes.through(), between, origin), origin));
        }
        List.of(new BoxCorner.Heights(corner.low(), sizes.bottom()), new BoxCorner.Heights(sizes.top(), corner.high()))
                .stream()
                .filter(mitred -> mitred.from().compareTo(mitred.to()) < 0)
                .forEach(mitred -> {
                    cuts.add(new Cut.Carve(tailed, corner.half(false, mitred.from(), mitred.to(), origin), origin));
                    cuts.add(new Cut.Carve(pinned, corner.half(true, mitred.from(), mitred.to(), origin), origin));
                });
        return cuts;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        return DovetailWorks.of(statement);
    }
}
