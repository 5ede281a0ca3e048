package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Box;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A tenon that is a piece by itself: both parts are mortised, and neither is longer for it. */
final class LooseTenon {
    /** The figure that says how long the piece is. */
    static final String PIECE = "piece";

    private LooseTenon() {
    }

    static Length behind() {
        return Length.nearest(Figures.standard().value("loose.behind"), Length.ofMm(1).dividedBy(2));
    }

    /** How long the piece is. */
    static Figure piece(TenonSizes sizes) {
        Length value = sizes.reach().value().times(2);
        return new Figure(PIECE, Ruled.of(PIECE, value, "into both parts", "", sizes.reach()), true);
    }

    /** The pieces: one for each mortise, alike where there are two. */
    static List<LoosePiece> pieces(Meeting meeting, TenonSizes sizes) {
        List<Box> tenons = sizes.tenons(meeting);
        return tenons.stream()
                .limit(1)
                .map(tenon -> LoosePiece.of(
                        LoosePiece.Kind.TENON,
                        sizes.reach().value().times(2),
                        Length.ofMm(tenon.extent(sizes.across())),
                        sizes.thick().value(),
                        tenons.size()))
                .toList();
    }

    /** A mortise in each part, a little deeper than the piece reaches, where there is wood. */
    static List<Cut> cuts(Meeting meeting, TenonSizes sizes) {
        List<Cut> cuts = new ArrayList<>();
        Length wall = meeting.right().along(sizes.end().axis()).value().minus(sizes.reach().value());
        for (Box tenon : sizes.tenons(meeting)) {
            Box base = slice(tenon, sizes);
            cuts.add(new Cut.Hollow(
                    meeting.right().part().name(),
                    base.join(Rebate.step(base, sizes.end(), sizes.reach().value().plus(behind().min(wall))
                            .minus(Length.ofMm(base.extent(sizes.end().axis()))))),
                    meeting.origin()));
            cuts.add(new Cut.Hollow(
                    meeting.left().part().name(),
                    Rebate.step(base, sizes.end().opposite(), sizes.reach().value().plus(behind())),
                    meeting.origin()));
        }
        return cuts;
    }

    /** A thin slice of the tenon at the shoulder. */
    private static Box slice(Box tenon, TenonSizes sizes) {
        var axis = sizes.end().axis();
        Length shoulder = Length.ofMm(tenon.coordinate(sizes.end().opposite()));
        Length out = shoulder.plus(sizes.reach().value().dividedBy(2).times(sizes.end().sign()));
        return TenonSizes.between(tenon, axis, shoulder.min(out).mm(), shoulder.max(out).mm());
    }

    /** A rail too short for a mortise in each end. */
    static Optional<Finding> impossible(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Measure rail = meeting.left().along(sizes.end().axis());
        Length deep = sizes.reach().value().plus(behind());
        return deep.times(2).compareTo(rail.value()) <= 0
                ? Optional.empty()
                : Optional.of(Finding.of(
                        JoineryFindings.DOES_NOT_FIT,
                        sizes.reach().at(),
                        "The mortises in the ends of `" + meeting.joint().left().name() + "` would meet")
                        .found("They are " + format.text(deep) + " deep, and it is " + format.text(rail.value())
                                + " long.")
                        .related(rail.at(), "`" + meeting.joint().left().name() + "` is so long")
                        .about(meeting.joint().left().name())
                        .about(meeting.joint().name())
                        .build());
    }
}
