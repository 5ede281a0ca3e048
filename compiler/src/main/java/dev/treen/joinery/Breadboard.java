package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Round;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.wood.Breadboards;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A breadboard end: a board across the end of a top keeps it flat; tenons hold it, the middle one glued, the others pegged
 * in slots so that the top can move (rules of the trade M-08, J-22).
 */
final class Breadboard implements JointKind {
    /** Twice as far as a peg is thick from the outer mortises to the end: common practice, no source. */
    private static final Length LEAST_END = Length.ofMm(12);

    private static final Length FINE = Length.ofMm(1).dividedBy(100);

    private static final JointSchema SCHEMA = JointSchema.into(
            "breadboard",
            "The left part, a top, goes with a tongue and tenons into the right one, a board across its end that keeps it"
                    + " flat. Only the middle tenon is glued; the others are pegged in slots.",
            "joint breadboard top into end_left",
            List.of(
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the usual chisel nearest to a third of the top's thickness",
                            "How thick tongue and tenons are."),
                    PropertySchema.optional(
                            "long",
                            new Shape.LengthOrAuto(),
                            "two thirds of the right part's width",
                            "How far the tenons reach in."),
                    PropertySchema.optional(
                            "tongue", new Shape.LengthOrAuto(), "as deep as it is thick", "How far the tongue between"
                                    + " the tenons reaches in."),
                    PropertySchema.optional(
                            "peg", new Shape.LengthOrAuto(), "6 mm or 1/4 in", "How thick the pegs are.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public boolean holdsFast() {
        return false;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> end = meeting.face();
        if (end.isEmpty() || meeting.left().measure(end.get().axis()) != 0
                || meeting.right().measure(end.get().axis()) != 1) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A breadboard end wants the end of the left part, a top, on the edge of the right one."));
        }
        Joint joint = meeting.joint();
        Optional<Effect> nothing = Stream.of("thick", "long", "tongue", "peg")
                .flatMap(name -> joint.length(name).flatMap(size -> Faults.ofNoSize(joint, name, size)).stream())
                .findFirst();
        if (nothing.isPresent()) {
            return nothing.get();
        }
        TenonSizes tenon = TenonRules.of(meeting, end.get(), surroundings);
        Measure wall = meeting.right().along(end.get().axis());
        if (tenon.reach().value().compareTo(wall.value()) >= 0) {
            return Effect.only(tooLong(meeting.joint(), tenon.reach(), wall, surroundings));
        }
        Measure tongue = meeting.joint().length("tongue").orElseGet(() -> new Measure(
                tenon.thick().value(), tenon.thick().at(), tenon.thick().how().named("tongue")));
        Sizes sizes = sizes(meeting, tenon, tongue.value(), surroundings);
        List<Figure> figures = List.of(
                new Figure("thick", tenon.thick(), meeting.joint().given("thick").isEmpty()),
                new Figure("long", tenon.reach(), meeting.joint().given("long").isEmpty()),
                new Figure("tongue", tongue, meeting.joint().given("tongue").isEmpty()),
                new Figure("end_room", sizes.room(), true),
                new Figure("peg", sizes.peg(), meeting.joint().given("peg").isEmpty()),
                new Figure("slot", sizes.slot(), true));
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        end.get(),
                        Mitre.named(tenon.reach(), "tenons in " + meeting.right().part().name()))),
                figures,
                cuts(meeting, sizes))
                .taking(List.of(pegs(meeting, sizes)))
                .saying(faults(meeting, sizes, surroundings));
    }

    private static Finding tooLong(Joint joint, Measure reach, Measure wall, Surroundings surroundings) {
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                reach.at(),
                "The tenons of `" + joint.left().name() + "` come through `" + joint.right().name() + "`")
                .found("They are " + surroundings.settings().format().text(reach.value()) + " long, and it is "
                        + surroundings.settings().format().text(wall.value()) + " wide.")
                .about(joint.left().name())
                .about(joint.name())
                .build();
    }

    /** Where everything stands: the tenons, the tongue, and the room beside each tenon. */
    private record Sizes(
            TenonSizes tenon, List<Box> tenons, Box tongue, List<Length> rooms, Measure room, Measure peg,
            Measure slot) {

        /** The tenons that move. */
        List<Box> outer() {
            List<Box> outer = new ArrayList<>(tenons);
            outer.remove(tenons.size() / 2);
            return outer;
        }
    }

    private static Sizes sizes(Meeting meeting, TenonSizes tenon, Length deep, Surroundings surroundings) {
        Box top = meeting.left().box();
        Axis across = tenon.across();
        Length width = meeting.left().along(across).value();
        // Three tenons serve up to about half a metre, five beyond: common practice, no source.
        int count = width.compareTo(Length.ofMm(500)) <= 0 ? 3 : 5;
        Length step = width.dividedBy(count);
        Length low = Length.ofMm(top.min().get(across));
        Box slab = thin(Rebate.step(top, tenon.end(), tenon.reach().value()), top, tenon);
        List<Box> tenons = new ArrayList<>();
        List<Length> rooms = new ArrayList<>();
        Nature nature = surroundings.nature(meeting.left().part());
        for (int i = 0; i < count; i++) {
            Length from = low.plus(step.times(i)).plus(step.dividedBy(4));
            tenons.add(TenonSizes.between(slab, across, from.mm(), from.plus(step.dividedBy(2)).mm()));
            Length edge = step.times(Math.abs(2L * i - (count - 1))).dividedBy(2).plus(step.dividedBy(4));
            rooms.add(i == count / 2 ? Length.ZERO : room(edge, nature));
        }
        Box tongue = TenonSizes.between(
                thin(Rebate.step(top, tenon.end(), deep), top, tenon),
                across,
                tenons.getFirst().min().get(across),
                tenons.getLast().max().get(across));
        Length outer = step.times(count - 1L).dividedBy(2);
        Measure peg = peg(meeting, surroundings);
        return new Sizes(
                tenon, tenons, tongue, rooms,
                measure("end_room", rooms.getFirst(), meeting, nature, "beyond the outer tenon"
                        + " for the growth of the top, and for making"),
                peg,
                slot(outer, peg.value(), meeting, nature, surroundings));
    }

    private static Measure peg(Meeting meeting, Surroundings surroundings) {
        return meeting.joint().length("peg").orElseGet(() -> Ruled.at(
                meeting.joint().at(), "peg", surroundings.inches() ? Length.ofInches(1, 4) : Length.ofMm(6),
                "the usual peg", Ruled.PRACTICE, List.of()));
    }

    /** Before they are sawn off flush: so much longer that their pointed ends come out clear. */
    private static LoosePiece pegs(Meeting meeting, Sizes sizes) {
        Length thick = sizes.peg().value();
        Length through = meeting.right().along(sizes.tenon().thin()).value();
        return LoosePiece.of(LoosePiece.Kind.PEG, through.plus(thick.times(3)), thick, thick, sizes.outer().size());
    }

    private static Box thin(Box slab, Box top, TenonSizes tenon) {
        Length middle = Length.ofMm(top.min().get(tenon.thin())).plus(Length.ofMm(top.max().get(tenon.thin())))
                .dividedBy(2);
        Length half = tenon.thick().value().dividedBy(2);
        return TenonSizes.between(slab, tenon.thin(), middle.minus(half).mm(), middle.plus(half).mm());
    }

    private static Length room(Length edge, Nature nature) {
        double room = nature.still()
                ? 0
                : Breadboards.endRoom(edge.toDoubleMm(), nature.across(), nature.seasons(), Figures.standard())
                        .roomMm();
        return Length.nearest(room, FINE.dividedBy(10)).roundUpTo(FINE);
    }

    private static Measure slot(Length distance, Length peg, Meeting meeting, Nature nature,
            Surroundings surroundings) {
        double length = nature.still()
                ? peg.toDoubleMm()
                : Breadboards.pegSlot(
                        distance.toDoubleMm(), peg.toDoubleMm(), nature.across(), nature.seasons(), Figures.standard())
                        .lengthMm();
        return measure("slot", Length.nearest(length, FINE.dividedBy(10)).roundUpTo(FINE), meeting, nature,
                "a peg of " + surroundings.settings().format().text(peg) + " and the travel of the outer tenon");
    }

    private static Measure measure(String label, Length value, Meeting meeting, Nature nature, String text) {
        return Ruled.at(meeting.joint().at(), label, value, text + "; " + nature.wood(),
                nature.across().citation().source(), List.of());
    }

    private static List<Cut> cuts(Meeting meeting, Sizes sizes) {
        String top = meeting.left().part().name();
        String end = meeting.right().part().name();
        List<Box> kept = new ArrayList<>(sizes.tenons());
        kept.add(sizes.tongue());
        List<Cut> cuts = new ArrayList<>();
        Box slab = Rebate.step(meeting.left().box(), sizes.tenon().end(), sizes.tenon().reach().value());
        Boxes.without(slab, kept).forEach(waste -> cuts.add(new Cut.Hollow(top, waste, meeting.origin())));
        for (int i = 0; i < sizes.tenons().size(); i++) {
            cuts.add(new Cut.Hollow(end, wider(sizes.tenons().get(i), sizes.tenon().across(), sizes.rooms().get(i)),
                    meeting.origin()));
        }
        cuts.add(new Cut.Hollow(
                end, wider(sizes.tongue(), sizes.tenon().across(), sizes.rooms().getFirst()), meeting.origin()));
        sizes.outer().forEach(tenon -> cuts.add(new Cut.Bore(end, hole(meeting, sizes, tenon), meeting.origin())));
        return cuts;
    }

    /** Through the end board, over the middle of a tenon. */
    private static Convex hole(Meeting meeting, Sizes sizes, Box tenon) {
        Axis thin = sizes.tenon().thin();
        Box end = meeting.right().box();
        Vec3 start = tenon.min().plus(tenon.max()).times(BigFraction.of(1, 2)).with(thin, end.min().get(thin));
        return Round.rod(start, Side.of(thin, 1), end.extent(thin), sizes.peg().value().dividedBy(2).mm(),
                meeting.joint().name());
    }

    private static Box wider(Box box, Axis across, Length room) {
        return TenonSizes.between(
                box,
                across,
                Length.ofMm(box.min().get(across)).minus(room).mm(),
                Length.ofMm(box.max().get(across)).plus(room).mm());
    }

    private static List<Finding> faults(Meeting meeting, Sizes sizes, Surroundings surroundings) {
        Axis across = sizes.tenon().across();
        Box outer = wider(sizes.tongue(), across, sizes.rooms().getFirst());
        Length low = Length.ofMm(outer.min().get(across)).minus(Length.ofMm(meeting.right().box().min().get(across)));
        Length high = Length.ofMm(meeting.right().box().max().get(across)).minus(Length.ofMm(outer.max().get(across)));
        if (low.min(high).compareTo(LEAST_END) >= 0) {
            return List.of();
        }
        return List.of(Finding.of(
                JoineryFindings.TENON_PROPORTIONS,
                meeting.joint().at(),
                "The outer mortise runs too near to the end of `" + meeting.right().part().name() + "`")
                .found(surroundings.settings().format().text(low.min(high)) + " stays to the end, and "
                        + surroundings.settings().format().text(LEAST_END) + " is wanted; the top grows by "
                        + surroundings.settings().format().text(sizes.room().value()) + " into it.")
                .because("The short grain at the end splits off (common practice, no source).")
                .remedy(Remedy.choice("make the top of quartered wood, or leave the end board longer"))
                .about(meeting.right().part().name())
                .about(meeting.joint().name())
                .build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> tops = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> ends = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        Work.GaugeSetting thick = new Work.GaugeSetting("mortise gauge", Work.figure(statement, "thick"));
        Work groove = new Work(
                Work.Stage.AFTER_LENGTH,
                "Plough the stopped groove and chop the mortises of the end boards, the outer ones longer on both sides",
                ends,
                List.of(),
                "mortise gauge, plough or router, mortise chisel",
                List.of(thick, new Work.GaugeSetting("end room", Work.figure(statement, "end_room"))),
                "the face side",
                "the outer mortises are longer than their tenons by the end room on each side",
                "Clamp the work; keep the free hand behind the edge.");
        Work tenons = new Work(
                Work.Stage.AFTER_LENGTH,
                "Cut the tongue and the tenons across the ends of the top",
                tops,
                ends,
                "the same mortise gauge, rebate plane, saw",
                List.of(thick, new Work.GaugeSetting("tenon", Work.figure(statement, "long"))),
                "the face side, with the gauge as it was set",
                "the end board goes on by hand and closes in the middle first",
                "Pare away from the fingers.");
        Work holes = new Work(
                Work.Stage.AFTER_LENGTH,
                "Bore the end boards for the pegs, over the middle of each tenon but the middle one",
                ends,
                List.of(),
                "brace or drill with a sharp bit, square",
                List.of(
                        new Work.GaugeSetting("bit", Work.figure(statement, "peg")),
                        new Work.GaugeSetting("from the shoulder", Work.figure(statement, "long").dividedBy(2))),
                "the edge where the shoulder lies",
                "the hole is square to the face and clean on both sides",
                "Clamp the work; bore from both sides, or over waste wood.");
        Work slots = new Work(
                Work.Stage.AFTER_LENGTH,
                "Push the end boards on, mark the holes on the tenons, take them off and cut the marked holes out to slots"
                        + " along the shoulder",
                tops,
                ends,
                "the same bit, marking awl, chisel",
                List.of(new Work.GaugeSetting("slot", Work.figure(statement, "slot"))),
                "the marks of the holes",
                "a peg moves from end to end of its slot, and has no play toward the shoulder",
                "Clamp the tenon over waste wood.");
        Work pegs = new Work(
                Work.Stage.GLUE,
                "Glue the middle tenon only, and peg the others through their slots",
                Rebate.names(statement),
                List.of(),
                "clamps, mallet",
                List.of(),
                "",
                "no glue on the outer tenons; the pegs, with a touch of glue in the far face alone, go home by light taps",
                "Read the glue's label.");
        return List.of(groove, tenons, holes, slots, LoosePiece.making(statement, LoosePiece.Kind.PEG), pegs);
    }
}
