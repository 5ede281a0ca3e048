package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A batten across a wide board, lid or door: one screw in the middle holds, the others stand in slots, so that it keeps the
 * board flat and lets it move (rules of the trade J-23 and M-25).
 */
public final class Batten implements JointKind {
    /** The word of the language. */
    public static final String KIND = "batten";

    /** What a batten is not asked: its middle is fixed, and the other screws have slots. */
    private static final Set<String> SETTLED = Set.of("slots", "fixed");

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a batten, lies across the grain of the right one and keeps it flat: screwed in the middle, and"
                    + " beside it in slots, so that the board can move. It is never glued.",
            "joint batten cleat into lid { gauge 6 }",
            properties());

    private static List<PropertySchema> properties() {
        return Screw.properties().stream().filter(property -> !SETTLED.contains(property.name())).toList();
    }

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean fastens() {
        return true;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        boolean lies = face.isPresent() && meeting.right().measure(face.get().axis()) == 2
                && meeting.left().measure(face.get().axis()) != 0;
        if (!lies) {
            return Effect.only(Groove.meetsWrongly(meeting, "A batten lies on the wide face of a board."));
        }
        Axis along = Axes.of(meeting.left().placing().length().axis());
        if (meeting.right().measure(along) != 1) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A batten lies across the grain of the board; along it, it keeps nothing flat."));
        }
        Effect screwed = Fastening.make(meeting, surroundings, FastenerSizes::screw);
        if (!screwed.isMade()) {
            return screwed;
        }
        List<Finding> findings = new ArrayList<>(screwed.findings());
        LengthFormat format = surroundings.settings().format();
        standsOut(meeting, along, surroundings, format).ifPresent(findings::add);
        screwed.fasteners().filter(set -> !set.fast()).ifPresent(set -> findings.add(unheld(meeting)));
        return screwed.saying(findings);
    }

    /** Dry boards shrink past the ends of their battens. */
    private static Optional<Finding> standsOut(
            Meeting meeting, Axis along, Surroundings surroundings, LengthFormat format) {
        BoxContact contact = meeting.contact();
        if (!(contact instanceof BoxContact.FaceToFace)) {
            return Optional.empty();
        }
        Nature nature = surroundings.nature(meeting.right().part());
        double half = meeting.right().along(along).value().toDoubleMm() / 2;
        Length shrinks = Length.nearest(nature.shrinking(1, half), Length.ofMm(1).dividedBy(100));
        Length least = null;
        for (int sign : new int[]{-1, 1}) {
            Side side = Side.of(along, sign);
            Length back = Length.ofMm(meeting.right().box().coordinate(side)
                    .subtract(meeting.left().box().coordinate(side)))
                    .times(sign);
            least = least == null ? back : least.min(back);
        }
        if (least == null || least.compareTo(shrinks) >= 0) {
            return Optional.empty();
        }
        String board = meeting.joint().right().name();
        return Optional.of(Faults.said(
                meeting.joint(), JoineryFindings.BATTEN_STANDS_OUT, meeting.joint().left().length().at(),
                "`" + meeting.joint().left().name() + "` stands out of `" + board + "` when that is dry")
                .found((least.signum() < 0
                        ? "It is longer than the board by " + format.text(least.negate()) + " at one end"
                        : "It stays back by " + format.text(least)) + "; the board shrinks by " + format.text(shrinks)
                        + " on each side.")
                .because(
                        "Its ends catch hands and cloth, or keep a lid from its opening (derived from the movement; that"
                                + " battens are shorter than the lid is common practice, no source).")
                .remedy(Remedy.choice("make it shorter by " + format.text(shrinks.minus(least)) + " at each end"))
                .build());
    }

    private static Finding unheld(Meeting meeting) {
        var joint = meeting.joint();
        return Faults.said(
                joint,
                JoineryFindings.DOES_NOT_FIT,
                joint.given("count").map(setting -> setting.valueAt()).orElse(joint.at()),
                "All screws of `" + joint.left().name() + "` stand in slots, and nothing keeps it in its place")
                .found("One in the middle holds; with an even number there is none.")
                .remedy(Faults.setting(joint, "count", "3", "take an odd number: `count 3`"))
                .build();
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        return new Screw().works(statement);
    }
}
