package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Slope;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A housing whose shelf is dovetailed into it and slides in from an edge (rules of the trade J-13). */
final class SlidingDovetail implements JointKind {
    private static final String KIND = "sliding_dovetail";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The end of the left part is a dovetail that slides into a trench of its shape across the right one: a shelf"
                    + " that ties its sides together, a batten that keeps a lid flat. It goes in from an edge, so one end"
                    + " of the trench stays open.",
            "joint sliding_dovetail shelf into side { stop 10 from front }",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a third of the right part's thickness",
                            "How deep the trench is."),
                    PropertySchema.optional(
                            "slope",
                            Shape.Plain.ANGLE,
                            "1:8, in softwood 1:6",
                            "How far a side of the dovetail leans, as `1:8` or an angle."),
                    PropertySchema.optional(
                            "sides",
                            new Shape.OneOf(List.of("one", "both")),
                            "one",
                            "Whether one side of the dovetail leans, on the low side of the left part, or both."),
                    Housing.STOP));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    /**
     * Where the dovetail is and how it leans.
     *
     * @param trench what a plain housing would take
     */
    private record Sizes(Meeting meeting, Side face, Measure deep, Slope slope, boolean both, Box trench) {
        Axis thin() {
            return Axes.of(meeting.left().placing().thickness().axis());
        }

        Axis along() {
            return Meeting.third(face.axis(), thin());
        }

        Length lean() {
            return slope.over(deep.value());
        }

        /** The dovetail where it is thinnest. */
        Length neck() {
            return meeting.left().along(thin()).value().minus(lean().times(both ? 2 : 1));
        }

        /** A spot in the section: so far over the low face of the left part, so deep. */
        private Vec3 spot(Length over, Length in, Length at) {
            Box left = meeting.left().box();
            return left.min()
                    .with(thin(), Length.ofMm(left.min().get(thin())).plus(over).mm())
                    .with(face.axis(), Length.ofMm(left.coordinate(face)).plus(in.times(face.sign())).mm())
                    .with(along(), at.mm());
        }

        private Convex prism(List<Length[]> section, Box between) {
            Length from = Length.ofMm(between.min().get(along()));
            Length run = Length.ofMm(between.extent(along()));
            return Convex.prism(
                    section.stream().map(spot -> spot(spot[0], spot[1], from)).toList(),
                    Vec3.along(along(), run.mm()),
                    meeting.origin());
        }

        /** The dovetail, over the stretch of a box. */
        Convex tail(Box between) {
            Length wide = meeting.left().along(thin()).value();
            Length high = both ? wide.minus(lean()) : wide;
            return prism(
                    List.of(
                            new Length[]{lean(), Length.ZERO},
                            new Length[]{high, Length.ZERO},
                            new Length[]{wide, deep.value()},
                            new Length[]{Length.ZERO, deep.value()}),
                    between);
        }

        /** What is pared off the left part on its leaning sides. */
        List<Convex> pared() {
            Length wide = meeting.left().along(thin()).value();
            List<Convex> pared = new ArrayList<>();
            pared.add(prism(
                    List.of(
                            new Length[]{Length.ZERO, Length.ZERO},
                            new Length[]{lean(), Length.ZERO},
                            new Length[]{Length.ZERO, deep.value()}),
                    trench));
            if (both) {
                pared.add(prism(
                        List.of(
                                new Length[]{wide, Length.ZERO},
                                new Length[]{wide.minus(lean()), Length.ZERO},
                                new Length[]{wide, deep.value()}),
                        trench));
            }
            return pared;
        }
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) != 0) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A sliding dovetail wants the end of the left part against the face of the right one."));
        }
        Joint joint = meeting.joint();
        Measure wall = meeting.right().along(face.get().axis());
        Measure deep = joint.length("deep").orElseGet(() -> Ruled.third("deep", wall, surroundings));
        Optional<Effect> nothing = Faults.ofNoSize(joint, "deep", deep);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Sizes sizes = new Sizes(
                meeting,
                face.get(),
                deep,
                joint.slope("slope").orElseGet(() -> DovetailSizes.usualSlope(meeting.left().part())),
                joint.word("sides").filter("both"::equals).isPresent(),
                Rebate.step(meeting.left().box(), face.get(), deep.value()));
        LengthFormat format = surroundings.settings().format();
        Optional<Finding> impossible = impossible(sizes, format);
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        Optional<Measure> stop = joint.length("stop");
        Optional<Box> ahead = stop.flatMap(each -> Housing.ahead(meeting, face.get(), each.value()));
        if (stop.isPresent() && (ahead.isEmpty() || ahead.get().contains(sizes.trench()))) {
            return Effect.only(Housing.wrongStop(joint, stop.get(), ahead.isEmpty(), surroundings));
        }
        Optional<Box> notch = ahead.flatMap(each -> each.overlap(sizes.trench()));
        Box open = notch.isPresent()
                ? Housing.behind(sizes.trench(), ahead.orElseThrow(), Housing.stopSide(joint).orElseThrow())
                : sizes.trench();
        if (!reachesAnEdge(sizes, open)) {
            return Effect.only(cannotSlide(sizes, stop));
        }
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        face.get(),
                        Mitre.named(deep, "dovetail in " + meeting.right().part().name()))),
                figures(sizes, stop),
                cuts(sizes, notch, open))
                .saying(weak(sizes, format).stream().toList());
    }

    private static List<Figure> figures(Sizes sizes, Optional<Measure> stop) {
        Joint joint = sizes.meeting().joint();
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", sizes.deep(), joint.given("deep").isEmpty()));
        Measure wood = sizes.meeting().left().along(sizes.thin());
        figures.add(new Figure(
                "neck",
                Ruled.at(wood.at(), "neck", sizes.neck(),
                        "the thickness less a slope of " + sizes.slope().text() + " on "
                                + (sizes.both() ? "both sides" : "one side"),
                        "from the shape", List.of(wood.how(), sizes.deep().how())),
                true));
        stop.ifPresent(each -> figures.add(new Figure("stop", each, false)));
        return figures;
    }

    private static List<Cut> cuts(Sizes sizes, Optional<Box> notch, Box open) {
        Meeting meeting = sizes.meeting();
        String left = meeting.left().part().name();
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Carve(meeting.right().part().name(), sizes.tail(open), meeting.origin()));
        sizes.pared().forEach(waste -> cuts.add(new Cut.Carve(left, waste, meeting.origin())));
        notch.ifPresent(box -> cuts.add(new Cut.Hollow(left, box, meeting.origin())));
        return cuts;
    }

    private static boolean reachesAnEdge(Sizes sizes, Box open) {
        Box right = sizes.meeting().right().box();
        Axis along = sizes.along();
        return Length.ofMm(open.min().get(along)).compareTo(Length.ofMm(right.min().get(along))) <= 0
                || Length.ofMm(open.max().get(along)).compareTo(Length.ofMm(right.max().get(along))) >= 0;
    }

    private static Optional<Finding> impossible(Sizes sizes, LengthFormat format) {
        Joint joint = sizes.meeting().joint();
        Length wall = sizes.meeting().right().along(sizes.face().axis()).value();
        if (sizes.deep().value().compareTo(wall) >= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, joint, "deep",
                    "The dovetail of `" + joint.left().name() + "` goes right through `" + joint.right().name() + "`")
                    .found("It is " + format.text(sizes.deep().value()) + " deep in " + format.text(wall) + ".")
                    .remedy(Faults.setting(joint, "deep", "auto", "take a third: `deep auto`"))
                    .build());
        }
        return sizes.neck().signum() > 0
                ? Optional.empty()
                : Optional.of(begun(JoineryFindings.DOES_NOT_FIT, joint, "slope",
                        "The slope leaves nothing of the dovetail of `" + joint.left().name() + "`")
                        .found("It leans " + format.text(sizes.lean()) + " over its depth.")
                        .remedy(Remedy.choice("take a slope of 1:8, or a shallower trench"))
                        .build());
    }

    private static Finding cannotSlide(Sizes sizes, Optional<Measure> stop) {
        Joint joint = sizes.meeting().joint();
        return begun(JoineryFindings.DOES_NOT_FIT, joint, "stop",
                "`" + joint.left().name() + "` cannot be slid into `" + joint.right().name() + "`")
                .found(stop.isPresent()
                        ? "The trench is stopped at one end and the other does not reach an edge."
                        : "The trench reaches no edge of `" + joint.right().name() + "`.")
                .because("A dovetail goes in from the side: one end of its trench has to be open.")
                .remedy(Remedy.choice("let `" + joint.left().name() + "` reach an edge, or take a `housing`"))
                .build();
    }

    /** A neck under half the wood, or a slope that crushes (rules of the trade J-f, Noyes). */
    private static Optional<Finding> weak(Sizes sizes, LengthFormat format) {
        Joint joint = sizes.meeting().joint();
        Length wood = sizes.meeting().left().along(sizes.thin()).value();
        boolean steep = sizes.slope().compareTo(Slope.of(1, 5)) > 0;
        if (!steep && sizes.neck().times(2).compareTo(wood) >= 0) {
            return Optional.empty();
        }
        return Optional.of(begun(JoineryFindings.TOO_FINE, joint, "slope",
                steep
                        ? "The corners of the dovetail of `" + joint.left().name() + "` break off"
                        : "The neck of the dovetail of `" + joint.left().name() + "` is thin")
                .found("A slope of " + sizes.slope().text() + " leaves a neck of " + format.text(sizes.neck()) + " of "
                        + format.text(wood) + ".")
                .because("1:8 is usual, 1:5 the most (Noyes, Handwork in Wood, no. 48); a neck under half the wood"
                        + " breaks (common practice, no source).")
                .remedy(joint.given("slope").isPresent()
                        ? Faults.setting(joint, "slope", "1:8", "write 1:8")
                        : Remedy.choice("take thicker stock, or a plain `housing`"))
                .build());
    }

    private static Finding.Builder begun(FindingKind kind, Joint joint, String property, String headline) {
        return Finding.of(kind, joint.given(property).map(Setting::valueAt).orElseGet(joint::at), headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> entering = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> receiving = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        Work.GaugeSetting deep = new Work.GaugeSetting("depth", Work.figure(statement, "deep"));
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the sides of the dovetailed trenches against a bevelled block and clear them",
                        receiving,
                        List.of(),
                        "bevel, block, fine saw, chisel and router plane, or a dovetail cutter",
                        List.of(deep),
                        "the face side; the trench a hair narrower toward its closed end",
                        "the bottom is flat; both sides lean as the block",
                        "Clamp the side before paring; keep both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Plane the dovetails on the ends to the trenches as cut, the last quarter tapered (Fairham)",
                        entering,
                        receiving,
                        "shoulder plane or dovetail plane, bevel, chisel",
                        List.of(deep, new Work.GaugeSetting("neck", Work.figure(statement, "neck"))),
                        "the shoulder",
                        "it slides by hand to the last quarter, and taps home",
                        "Pare away from the fingers."),
                new Work(
                        Work.Stage.GLUE,
                        "Slide the dovetails home, with glue on the last 50 mm at the front only",
                        Rebate.names(statement),
                        List.of(),
                        "glue brush, mallet and block",
                        List.of(),
                        "",
                        "shoulders closed, diagonals equal",
                        "Read the glue's label; long dovetails seize when glue swells them."));
    }
}
