package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Vec3;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two wedges in the end of a through tenon, which spread it in a mortise that is longer on the outside (rules of the trade
 * J-10).
 *
 * @param flare how much longer the mortise is on the outside, at each end
 * @param kerf from each edge of the tenon to the saw cut that takes the wedge
 */
record TenonWedges(Measure flare, Measure kerf) {
    /** What the saw takes in which a wedge is driven (common practice, no source). */
    private static final Length SAW = Length.ofMm(1);

    static Optional<TenonWedges> of(Meeting meeting, TenonSizes sizes, Surroundings surroundings) {
        Joint joint = meeting.joint();
        if (joint.word("wedges").filter("two"::equals).isEmpty()) {
            return Optional.empty();
        }
        Measure flare = joint.length("flare").orElseGet(() -> {
            Length value = sizes.reach().value()
                    .dividedBy(Math.round(1 / Figures.standard().value("wedge.flare")))
                    .roundDownTo(surroundings.markOfTheRule())
                    .max(surroundings.markOfTheRule());
            return ruled(joint, "flare", value, "a sixteenth of the tenon's length, on a mark of the rule",
                    Figures.standard().get("wedge.flare").citation().source(), sizes.reach());
        });
        Length kerf = surroundings.inches() ? Length.ofInches(3, 16) : Length.ofMm(5);
        return Optional.of(new TenonWedges(flare, ruled(joint, "kerf", kerf, "3/16 in from the edge",
                "Fairham, Woodwork Joints, fox wedging", flare)));
    }

    private static Measure ruled(
            Joint joint, String label, Length value, String text, String source, Measure from) {
        return Ruled.at(joint.at(), label, value, text, source, List.of(from.how()));
    }

    List<Figure> figures(Joint joint) {
        return List.of(new Figure("flare", flare, joint.given("flare").isEmpty()), new Figure("kerf", kerf, true));
    }

    /** Two for each tenon: as long as it, as wide as it is thick, at the head as thick as the flare and its saw cut. */
    LoosePiece piece(Meeting meeting, TenonSizes sizes) {
        return LoosePiece.of(
                LoosePiece.Kind.WEDGE,
                sizes.reach().value(),
                sizes.thick().value(),
                flare.value().plus(SAW),
                2 * sizes.tenons(meeting).size());
    }

    /** What is taken from each end of the mortise beyond the tenon: nothing inside, the flare outside. */
    List<Cut> cuts(Meeting meeting, TenonSizes sizes) {
        List<Cut> cuts = new ArrayList<>();
        for (Box tenon : sizes.tenons(meeting)) {
            for (int sign : new int[]{-1, 1}) {
                cuts.add(new Cut.Carve(
                        meeting.right().part().name(), spread(tenon, meeting, sizes, sign), meeting.origin()));
            }
        }
        return cuts;
    }

    private Convex spread(Box tenon, Meeting meeting, TenonSizes sizes, int sign) {
        Axis across = sizes.across();
        Axis in = sizes.end().axis();
        Vec3 corner = sign > 0 ? tenon.max() : tenon.min();
        Vec3 base = corner.with(sizes.thin(), tenon.min().get(sizes.thin()));
        Vec3 inside = base.with(in, tenon.coordinate(sizes.end().opposite()));
        Vec3 outside = base.with(in, tenon.coordinate(sizes.end()));
        Vec3 wide = outside.plus(Vec3.along(across, flare.value().times(sign)));
        return Convex.prism(
                List.of(inside, outside, wide),
                Vec3.along(sizes.thin(), tenon.extent(sizes.thin())),
                meeting.origin());
    }

    /** What makes wedges impossible. */
    Optional<Finding> impossible(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Joint joint = meeting.joint();
        if (!sizes.through()) {
            return Optional.of(Finding.of(JoineryFindings.DOES_NOT_FIT,
                    joint.given("wedges").map(s -> s.valueAt()).orElse(joint.at()),
                    "Wedges want a tenon that comes through")
                    .found("In a mortise that ends in the wood they cannot be driven when the joint is together.")
                    .about(joint.name())
                    .remedy(Faults.setting(joint, "kind", "through", "let it come through: `kind through`"))
                    .build());
        }
        Length least = sizes.tenons(meeting).stream()
                .map(tenon -> Length.ofMm(tenon.extent(sizes.across())))
                .reduce(Length::min)
                .orElse(Length.ZERO);
        if (flare.value().signum() <= 0) {
            return Optional.of(Finding.of(JoineryFindings.DOES_NOT_FIT, flare.at(),
                    "Without a flare the wedges of `" + joint.left().name() + "` have no room")
                    .found("They spread the tenon outward; the mortise has to be wider there.")
                    .about(joint.name())
                    .remedy(Faults.setting(joint, "flare", "auto", "let Treen choose: `flare auto`"))
                    .build());
        }
        return kerf.value().times(3).compareTo(least) > 0
                ? Optional.of(Finding.of(JoineryFindings.DOES_NOT_FIT, joint.at(),
                        "The tenon of `" + joint.left().name() + "` is too narrow for two wedges")
                        .found("It is " + format.text(least) + " wide, and each saw cut lies "
                                + format.text(kerf.value())
                                + " from its edge.")
                        .about(joint.name())
                        .build())
                : Optional.empty();
    }

    /** Wedges that press across the grain, or near an end, split the mortised part. */
    Optional<Finding> fault(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Joint joint = meeting.joint();
        String stile = joint.right().name();
        if (meeting.right().measure(sizes.across()) != 0) {
            return Optional.of(splits(joint, "The wedges press across the grain of `" + stile + "`")
                    .found("They spread the tenon toward its edges, not toward its ends.")
                    .because("Wedges split wood across its grain (common practice, no source).")
                    .remedy(Remedy.choice("leave out the wedges, or turn the tenon"))
                    .build());
        }
        Length least = least(meeting, sizes);
        Length wanted = Fastener.times(sizes.thick().value(), Figures.standard().value("wedge.end"));
        return least.compareTo(wanted) >= 0
                ? Optional.empty()
                : Optional.of(splits(joint, "The wedges press near the end of `" + stile + "`")
                        .found("From the mortise to the end are " + format.text(least) + "; "
                                + format.text(wanted) + " are wanted.")
                        .because("The end splits out (common practice, no source); horns left on until the glue has"
                                + " set help while they are driven (Fairham: 1 to 3 in).")
                        .remedy(Remedy.choice("leave out the wedges, or set the tenon farther from the end"))
                        .build());
    }

    private Length least(Meeting meeting, TenonSizes sizes) {
        Axis across = sizes.across();
        Box stile = meeting.right().box();
        Length low = null;
        for (Box tenon : sizes.tenons(meeting)) {
            Length below = Length.ofMm(tenon.min().get(across)).minus(Length.ofMm(stile.min().get(across)));
            Length above = Length.ofMm(stile.max().get(across)).minus(Length.ofMm(tenon.max().get(across)));
            Length both = below.min(above).minus(flare.value());
            low = low == null ? both : low.min(both);
        }
        return low == null ? Length.ZERO : low;
    }

    private static Finding.Builder splits(Joint joint, String headline) {
        return Finding.of(
                JoineryFindings.WEDGE_SPLITS,
                joint.given("wedges").map(s -> s.valueAt()).orElse(joint.at()),
                headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    /** The work on them. */
    static List<Work> works(List<MadeJoint> statement) {
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Lengthen the mortises on the outside for the wedges",
                        Fastening.named(statement, false),
                        List.of(),
                        "mortise chisel",
                        List.of(new Work.GaugeSetting("longer at each end", Work.figure(statement, "flare"))),
                        "the outside, sloping to nothing inside",
                        "the inside keeps the size of the tenon",
                        "Clamp the work."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the tenons for the wedges",
                        Fastening.named(statement, true),
                        List.of(),
                        "tenon saw",
                        List.of(new Work.GaugeSetting("from each edge", Work.figure(statement, "kerf"))),
                        "the end",
                        "the cuts stop short of the shoulder",
                        ""),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the wedges and drive them by turns, evenly",
                        Rebate.names(statement),
                        List.of(),
                        "hammer",
                        List.of(),
                        "",
                        "the sound changes when they are home; clean them off when the glue has set",
                        "Wear eye protection."));
    }
}
