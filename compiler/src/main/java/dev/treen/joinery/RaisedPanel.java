package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A raised panel: its edge is bevelled from a tongue that lies in the groove up to the field in its middle. The tongue is
 * straight as far as the shoulder gap, so that the panel does not wedge when it grows (rules of the trade M-07).
 *
 * @param raise how wide the bevel is
 */
record RaisedPanel(Meeting meeting, Side face, GrooveSizes sizes, Measure raise) {

    static Optional<RaisedPanel> of(Meeting meeting, Side face, GrooveSizes sizes) {
        Joint joint = meeting.joint();
        return Optional.ofNullable(joint.settings().get("raise"))
                .map(setting -> new RaisedPanel(
                        meeting, face, sizes, joint.length("raise").orElseGet(() -> usual(meeting, sizes, setting))));
    }

    /** Three times as wide as it rises: common practice, no source. */
    private static Measure usual(Meeting meeting, GrooveSizes sizes, Setting setting) {
        Measure wood = meeting.left().part().thickness();
        Length value = wood.value().minus(sizes.wide().value()).max(Length.ZERO).times(3);
        return Ruled.at(setting.valueAt(), "raise", value, "three times as wide as it rises", Ruled.PRACTICE,
                List.of(wood.how(), sizes.wide().how()));
    }

    Figure figure() {
        return new Figure("raise", raise, meeting.joint().given("raise").isEmpty());
    }

    private Axis thick() {
        return Axes.of(meeting.left().placing().thickness().axis());
    }

    /** A panel no thicker than its groove, or one that the bevels leave no field. */
    Optional<Finding> fault(LengthFormat format) {
        Joint joint = meeting.joint();
        Length wide = meeting.left().along(face.axis()).value();
        boolean flat = sizes.shoulderSides().isEmpty();
        boolean none = raise.value().times(2).compareTo(wide) >= 0;
        if (!flat && !none && raise.value().signum() > 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                raise.at(),
                flat
                        ? "`" + joint.left().name() + "` is no thicker than its groove and cannot be raised"
                        : "The bevels leave no field on `" + joint.left().name() + "`")
                .found(flat
                        ? "It is " + format.text(meeting.left().part().thickness().value()) + " thick, the groove "
                                + format.text(sizes.wide().value()) + " wide."
                        : "A bevel is " + format.text(raise.value()) + " wide on a panel of " + format.text(wide) + ".")
                .remedy(Faults.setting(
                        joint, flat ? "wide" : "raise",
                        flat ? Faults.written(meeting.left().part().thickness().value().dividedBy(2)) : "auto",
                        flat ? "plough a narrower groove" : "let Treen choose: `raise auto`"))
                .about(joint.left().name())
                .about(joint.name())
                .build());
    }

    /** What is planed off between the tongue and the field, on each side that has a shoulder. */
    List<Cut> bevels() {
        boolean sound = raise.value().signum() > 0
                && raise.value().times(2).compareTo(meeting.left().along(face.axis()).value()) < 0;
        return sound ? sizes.shoulderSides().stream().<Cut>map(this::bevel).toList() : List.of();
    }

    private Cut bevel(Side side) {
        Box panel = meeting.left().box();
        Box tongue = sizes.tongue(panel, thick());
        BigFraction back = sizes.shoulderGap().map(gap -> gap.value().mm()).orElse(BigFraction.ZERO);
        BigFraction edge = panel.coordinate(face).subtract(back.multiply(face.sign()));
        BigFraction field = edge.subtract(raise.value().mm().multiply(face.sign()));
        Axis run = Meeting.third(face.axis(), thick());
        Vec3 foot = panel.min().with(run, Groove.FAR.negate()).with(face.axis(), edge)
                .with(thick(), tongue.coordinate(side));
        Vec3 top = foot.with(thick(), panel.coordinate(side));
        Convex waste = Convex.prism(
                List.of(foot, top, top.with(face.axis(), field)),
                Vec3.along(run, Groove.FAR.multiply(2)),
                meeting.origin());
        return new Cut.Carve(meeting.left().part().name(), waste, meeting.origin());
    }
}
