package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Convex;
import dev.treen.solid.Round;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A peg through a mortise and its tenon whose hole in the tenon lies nearer to the shoulder, so that driving it draws the
 * joint shut (rules of the trade J-10d: Fairham, Woodwork Joints, Drawbore pinning).
 *
 * @param thick how thick the peg is
 * @param offset how much nearer to the shoulder the hole in the tenon lies; zero for a peg that only holds
 * @param from from the shoulder to the hole in the mortised part
 */
record TenonPeg(Measure thick, Measure offset, Measure from) {
    static Optional<TenonPeg> of(Meeting meeting, TenonSizes sizes, Surroundings surroundings) {
        Joint joint = meeting.joint();
        boolean asked = joint.settings().containsKey("peg");
        Optional<Measure> given = joint.length("peg");
        if (!asked || given.filter(peg -> peg.value().isZero()).isPresent()) {
            return Optional.empty();
        }
        Measure thick = given.orElseGet(() -> usual(sizes, surroundings));
        Measure offset = joint.length("offset").orElseGet(() -> offset(thick, surroundings));
        Measure from = joint.length("peg_from").orElseGet(() -> from(sizes, thick, surroundings));
        return Optional.of(new TenonPeg(thick, offset, from));
    }

    private static Measure usual(TenonSizes sizes, Surroundings surroundings) {
        Length step = surroundings.inches() ? Length.ofInches(1, 16) : Length.ofMm(1);
        Length value = sizes.thick().value().times(3).dividedBy(4).roundDownTo(step).max(step.times(2));
        return Ruled.of("peg", value, "three quarters of the tenon's thickness", Ruled.PRACTICE, sizes.thick());
    }

    private static Measure offset(Measure thick, Surroundings surroundings) {
        Length step = surroundings.inches() ? Length.ofInches(1, 64) : Length.ofMm(1).dividedBy(10);
        double share = Figures.standard().value("drawbore.offset");
        Length value = Length.nearest(thick.value().toDoubleMm() * share, step);
        return Ruled.of("offset", value, "a sixth of the peg, as in furniture; carpenters take nearly a third",
                Figures.standard().get("drawbore.offset").citation().source(), thick);
    }

    private static Measure from(TenonSizes sizes, Measure thick, Surroundings surroundings) {
        Length wanted = thick.value().times(2);
        Length value = wanted.min(sizes.reach().value().dividedBy(2)).roundDownTo(surroundings.markOfTheRule());
        return Ruled.of("peg_from", value, "two pegs from the shoulder, or the middle of a short tenon", Ruled.PRACTICE,
                thick);
    }

    List<Figure> figures(Joint joint) {
        return List.of(
                new Figure("peg", thick, joint.given("peg").isEmpty()),
                new Figure("offset", offset, joint.given("offset").isEmpty()),
                new Figure("peg_from", from, joint.given("peg_from").isEmpty()));
    }

    /** The peg before it is sawn off flush: so much longer that its pointed end comes out clear. */
    LoosePiece piece(Meeting meeting, TenonSizes sizes) {
        Length through = meeting.right().along(sizes.thin()).value();
        return LoosePiece.of(LoosePiece.Kind.PEG, through.plus(thick.value().times(3)), thick.value(), thick.value(),
                sizes.middles(meeting).size());
    }

    /** The hole through the mortised part, and the one through each tenon. */
    List<Cut> cuts(Meeting meeting, TenonSizes sizes) {
        List<Cut> cuts = new ArrayList<>();
        for (Length across : sizes.middles(meeting)) {
            cuts.add(new Cut.Bore(
                    meeting.right().part().name(), hole(meeting, sizes, across, from.value()), meeting.origin()));
            cuts.add(new Cut.Bore(
                    meeting.left().part().name(),
                    hole(meeting, sizes, across, from.value().minus(offset.value())),
                    meeting.origin()));
        }
        return cuts;
    }

    private Convex hole(Meeting meeting, TenonSizes sizes, Length across, Length in) {
        Axis thin = sizes.thin();
        var stile = meeting.right().box();
        Length shoulder = Length.ofMm(meeting.left().box().coordinate(sizes.end()));
        Vec3 start = Vec3.ZERO
                .with(thin, stile.min().get(thin))
                .with(sizes.across(), across.mm())
                .with(sizes.end().axis(), shoulder.plus(in.times(sizes.end().sign())).mm());
        return Round.rod(
                start,
                Side.of(thin, 1),
                stile.extent(thin),
                thick.value().dividedBy(2).mm(),
                meeting.joint().name());
    }

    /** What cannot be, and what should not be. */
    Optional<Finding> fault(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Joint joint = meeting.joint();
        Figures figures = Figures.standard();
        Length end = sizes.reach().value().minus(from.value().minus(offset.value()));
        Length near = from.value().minus(offset.value());
        double peg = thick.value().toDoubleMm();
        if (offset.value().toDoubleMm() > peg * figures.value("drawbore.offset.most") + 1e-9) {
            return Optional.of(TenonFaults.said(joint, offset, "The drawbored hole of `" + joint.left().name()
                    + "` is set back too far")
                    .found("It is set back " + format.text(offset.value()) + " for a peg of "
                            + format.text(thick.value()) + "; a third of the peg is the most.")
                    .because("The peg breaks, or tears out the end of the tenon (Fairham, Woodwork Joints: 1/8 in for a"
                            + " 3/8 in pin).")
                    .remedy(TenonFaults.auto(joint, "offset"))
                    .build());
        }
        boolean short_ = end.toDoubleMm() < peg * figures.value("drawbore.end");
        boolean close = near.toDoubleMm() < peg;
        if (!short_ && !close) {
            return Optional.empty();
        }
        return Optional.of(TenonFaults.said(joint, from, short_
                ? "The peg of `" + joint.left().name() + "` stands near the end of its tenon"
                : "The peg of `" + joint.left().name() + "` stands near the shoulder")
                .found(short_
                        ? "From its hole to the end are " + format.text(end) + "; two pegs, "
                                + format.text(thick.value().times(2)) + ", are wanted."
                        : "From the shoulder to its hole are " + format.text(near) + "; one peg is wanted.")
                .because("The wood between shears out when the peg draws (common practice, no source).")
                .remedy(Remedy.choice("take a thinner peg or a longer tenon, or set the peg with `peg_from`"))
                .build());
    }

    /** The work on it. */
    static List<Work> works(List<MadeJoint> statement) {
        List<String> rails = Fastening.named(statement, true);
        List<String> stiles = Fastening.named(statement, false);
        List<Work> works = new ArrayList<>();
        works.add(new Work(
                Work.Stage.AFTER_LENGTH,
                "Bore the mortised parts for the pegs, waste wood in the mortises",
                stiles,
                List.of(),
                "brace or drill with a sharp bit, square",
                List.of(
                        new Work.GaugeSetting("bit", Work.figure(statement, "peg")),
                        new Work.GaugeSetting("from the shoulder", Work.figure(statement, "peg_from"))),
                "the edge where the shoulder lies",
                "the hole is square to the face and clean on both sides",
                "Clamp the work; bore from both sides, or over waste wood."));
        works.add(new Work(
                Work.Stage.AFTER_LENGTH,
                "Push the joints together, prick the tenons through the holes, and bore them nearer to the shoulder",
                rails,
                stiles,
                "the same bit, marking awl",
                List.of(new Work.GaugeSetting("nearer", Work.figure(statement, "offset"))),
                "the prick mark of the hole",
                "a tapered steel pin draws the shoulder shut",
                "Clamp the tenon over waste wood."));
        works.add(new Work(
                Work.Stage.GLUE,
                "Drive the pegs, tapered at the point",
                Rebate.names(statement),
                List.of(),
                "mallet",
                List.of(),
                "",
                "the shoulders close as they go home; saw them off flush",
                "Wear eye protection."));
        return works;
    }
}
