package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tenons from two sides that strike each other inside a leg: each loses the half of what both want, along the diagonal
 * (rules of the trade J-10: meeting tenons are mitred; Fairham).
 *
 * @param measure how far back from its tip a tenon is mitred
 * @param cuts the wedges that it loses
 */
record MeetingTenons(Measure measure, List<Cut> cuts) {
    /** The figure that tells of it. */
    static final String MITRED = "mitred";

    /** What the tenon of {@code meeting} loses to the others in the same part, if it strikes any. */
    static Optional<MeetingTenons> of(Meeting meeting, TenonSizes sizes, Surroundings surroundings) {
        List<Cut> cuts = new ArrayList<>();
        Length back = Length.ZERO;
        for (Meeting other : surroundings.tenonsInto(meeting.right().part())) {
            Optional<Side> end = other.face();
            if (other.equals(meeting) || end.isEmpty() || end.get().axis() == sizes.end().axis()
                    || other.left().measure(end.get().axis()) != 0) {
                continue;
            }
            TenonSizes others = TenonRules.of(other, end.get(), surroundings);
            for (Box own : sizes.tenons(meeting)) {
                for (Box strange : others.tenons(other)) {
                    if (own.contact(strange) instanceof BoxContact.Overlapping(Box shared)) {
                        cuts.add(new Cut.Carve(meeting.left().part().name(),
                                wedge(shared, sizes.end(), end.get(), meeting), meeting.origin()));
                        back = back.max(Length.ofMm(shared.extent(sizes.end().axis())));
                    }
                }
            }
        }
        return cuts.isEmpty() ? Optional.empty() : Optional.of(new MeetingTenons(measure(meeting.joint(), back), cuts));
    }

    /** The half of the shared box, cut along its diagonal, that lies at the tip of this tenon. */
    private static Convex wedge(Box shared, Side own, Side other, Meeting meeting) {
        Axis up = Meeting.third(own.axis(), other.axis());
        Vec3 tip = shared.min()
                .with(own.axis(), shared.coordinate(own))
                .with(other.axis(), shared.coordinate(other));
        Vec3 near = tip.with(other.axis(), shared.coordinate(other.opposite()));
        Vec3 start = near.with(own.axis(), shared.coordinate(own.opposite()));
        Vec3 along = Side.of(up, 1).unit().times(shared.extent(up));
        return Convex.prism(List.of(start, near, tip), along, meeting.origin());
    }

    private static Measure measure(Joint joint, Length back) {
        return Ruled.at(joint.at(), MITRED, back, "as far as the tenons would strike each other",
                "Fairham: meeting tenons are mitred", List.of());
    }
}
