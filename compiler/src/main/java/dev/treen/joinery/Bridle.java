package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.List;
import java.util.Optional;

/** A bridle: a fork that straddles a tongue, at a corner or along a rail (rules of the trade J-08, J-09). */
final class Bridle implements JointKind {
    private static final JointSchema SCHEMA = JointSchema.into(
            "bridle",
            "A fork straddles a tongue as wide as the whole part, so that two broad cheeks are glued. At a corner the left"
                    + " part has the tongue and the right one an open slot; at a tee the end of the left part is the fork"
                    + " and sits astride the right one.",
            "joint bridle rail into stile { thick 8 }",
            List.of(PropertySchema.optional(
                    "thick",
                    new Shape.LengthOrAuto(),
                    "the usual chisel nearest to a third of the left part's thickness",
                    "How thick the tongue is, and how wide the slot.")));

    /** What stays beside the slot, at the least: common practice, no source. */
    private static final Length LEAST_CHEEK = Length.ofMm(3);

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    /** A bridle's tongue and fork. */
    private record Sizes(Lap lap, Measure thick) {
        /** Whether the left part has the tongue: at a corner. */
        boolean leftHasTongue() {
            return lap.where() == Lap.Where.CORNER;
        }

        Meeting.Placed tongue() {
            return leftHasTongue() ? lap.meeting().left() : lap.meeting().right();
        }

        Meeting.Placed fork() {
            return leftHasTongue() ? lap.meeting().right() : lap.meeting().left();
        }

        Length low() {
            return lap.low().plus(lap.high()).minus(thick.value()).dividedBy(2);
        }

        Length high() {
            return low().plus(thick.value());
        }

        /** The thinner of the fork's two cheeks. */
        Length cheek() {
            Length below = low().minus(Length.ofMm(fork().box().min().get(lap.through())));
            return below.min(Length.ofMm(fork().box().max().get(lap.through())).minus(high()));
        }

        List<Cut> cuts() {
            String thinned = tongue().part().name();
            return List.of(
                    new Cut.Hollow(fork().part().name(), lap.between(low(), high()), lap.meeting().origin()),
                    new Cut.Hollow(thinned, lap.beyond(low(), -1), lap.meeting().origin()),
                    new Cut.Hollow(thinned, lap.beyond(high(), 1), lap.meeting().origin()));
        }
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Lap> lap = Lap.of(meeting);
        if (lap.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A bridle wants the end of the left part at an edge of the right one, square to it."));
        }
        Measure wood = meeting.left().along(lap.get().through());
        Measure thick = meeting.joint().length("thick").orElseGet(() -> TenonRules.third(wood, surroundings));
        Optional<Effect> nothing = Faults.ofNoSize(meeting.joint(), "thick", thick);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Sizes sizes = new Sizes(lap.get(), thick);
        LengthFormat format = surroundings.settings().format();
        if (sizes.low().compareTo(lap.get().low()) <= 0) {
            return Effect.only(noCheeks(sizes, format));
        }
        return Effect.of(
                lap.get().additions(),
                List.of(new Figure("thick", thick, meeting.joint().given("thick").isEmpty()), lap.get().reach()),
                sizes.cuts())
                .saying(proportions(sizes, format).stream().toList());
    }

    private static Finding noCheeks(Sizes sizes, LengthFormat format) {
        Joint joint = sizes.lap().meeting().joint();
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                sizes.thick().at(),
                "The slot of the bridle in `" + sizes.fork().part().name() + "` leaves no cheeks")
                .found("It is " + format.text(sizes.thick().value()) + " wide; the parts share "
                        + format.text(sizes.lap().high().minus(sizes.lap().low())) + ".")
                .remedy(Faults.setting(joint, "thick", "auto", "take about a third: `thick auto`"))
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name())
                .build();
    }

    /** A tongue over half its wood, or cheeks under 3 mm. */
    private static Optional<Finding> proportions(Sizes sizes, LengthFormat format) {
        Joint joint = sizes.lap().meeting().joint();
        Length wood = sizes.fork().along(sizes.lap().through()).value();
        boolean fat = sizes.thick().value().times(2).compareTo(wood) > 0 && joint.given("thick").isPresent();
        boolean thin = sizes.cheek().compareTo(LEAST_CHEEK) < 0;
        if (!fat && !thin) {
            return Optional.empty();
        }
        Finding.Builder finding = Finding.of(
                JoineryFindings.TENON_PROPORTIONS,
                sizes.thick().at(),
                "The cheeks of the bridle in `" + sizes.fork().part().name() + "` are thin")
                .found("Beside a slot of " + format.text(sizes.thick().value()) + " stays "
                        + format.text(sizes.cheek()) + " of " + format.text(wood) + ".")
                .because("Thirds are usual (Fairham, Woodwork Joints); a cheek under 3 mm bends away from the glue"
                        + " (common practice, no source).")
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
        finding.remedy(joint.given("thick").isPresent()
                ? Faults.setting(joint, "thick", "auto", "take about a third: `thick auto`")
                : Remedy.choice("make it a `halving`, which leaves half of each"));
        return Optional.of(finding.build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> tongues = statement.stream().flatMap(made -> named(made, true).stream()).distinct().toList();
        List<String> forks = statement.stream().flatMap(made -> named(made, false).stream()).distinct().toList();
        Work.GaugeSetting thick = new Work.GaugeSetting("mortise gauge", Work.figure(statement, "thick"));
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the cheeks of the forks inside the lines and chop out the slots",
                        forks,
                        List.of(),
                        "mortise gauge, tenon saw, chisel",
                        List.of(thick),
                        "the face side; ends left 6 mm long until the joint is glued (Fairham)",
                        "the slot is square through, the chisel meets itself half-way",
                        "Clamp the work; keep both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the tongues to fit the slots as cut",
                        tongues,
                        forks,
                        "the same mortise gauge, tenon saw, shoulder plane",
                        List.of(thick),
                        "the face side, with the gauge as it was set for the slots",
                        "it goes in by hand pressure and the shoulders close",
                        "Pare away from the fingers."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the bridles, clamp across the shoulders and then through the cheeks",
                        Rebate.names(statement),
                        List.of(),
                        "clamps and blocks, glue brush",
                        List.of(),
                        "",
                        "shoulders closed, diagonals equal, no winding",
                        "Read the glue's label."));
    }

    private static Optional<String> named(MadeJoint made, boolean tongue) {
        return Lap.of(made.meeting()).map(lap -> {
            Sizes sizes = new Sizes(lap, lap.reach().measure());
            return (tongue ? sizes.tongue() : sizes.fork()).part().name();
        });
    }
}
