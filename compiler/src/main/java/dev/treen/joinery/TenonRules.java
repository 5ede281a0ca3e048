package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import java.util.List;
import java.util.Optional;

/** Settles the sizes of a tenon: as given, or by the proportions of the trade (rules of the trade J-10). */
final class TenonRules {
    private static final String NOYES = "Noyes, Handwork in Wood, no. 42";

    /** Widths of the usual mortise chisels and cutters: common practice, no source. */
    private static final List<Length> CHISELS_MM = List.of(3, 4, 5, 6, 8, 10, 12, 16, 20).stream().map(Length::ofMm)
            .toList();

    private static final List<Length> CHISELS_IN = List.of(2, 3, 4, 5, 6, 8, 10, 12).stream()
            .map(n -> Length.ofInches(n, 16))
            .toList();

    /** The least shoulder: common practice, no source. */
    private static final Length LEAST_SHOULDER = Length.ofMm(3);

    private final Meeting meeting;
    private final Joint joint;
    private final Side end;
    private final Surroundings surroundings;
    private final Axis thin;
    private final Axis across;
    private final TenonSizes.Form form;
    private final int beside;

    /** The groove of a panel in which the mortise stands, where there is one as thin as a tenon. */
    private final Optional<GrooveNear> groove;

    private TenonRules(Meeting meeting, Side end, Surroundings surroundings) {
        this.meeting = meeting;
        this.joint = meeting.joint();
        this.end = end;
        this.surroundings = surroundings;
        this.thin = Axes.of(meeting.left().placing().thickness().axis());
        this.across = Meeting.third(end.axis(), thin);
        Measure wood = meeting.left().along(thin);
        this.beside = beside(wood);
        this.groove = beside > 1
                ? Optional.empty()
                : GrooveNear.of(meeting.right(), end.opposite(), surroundings)
                        .filter(near -> near.within(meeting.left().box(), thin))
                        .filter(near -> near.wide().value().times(2).compareTo(wood.value()) <= 0);
        this.form = switch (joint.word("kind").orElse("")) {
            case "through" -> TenonSizes.Form.THROUGH;
            case "stub" -> groove.isPresent() ? TenonSizes.Form.IN_GROOVE : TenonSizes.Form.STUB;
            case "loose" -> TenonSizes.Form.LOOSE;
            default -> TenonSizes.Form.STOPPED;
        };
    }

    static TenonSizes of(Meeting meeting, Side end, Surroundings surroundings) {
        return new TenonRules(meeting, end, surroundings).settled();
    }

    private TenonSizes settled() {
        Measure wood = meeting.left().along(thin);
        Measure thick = joint.length("thick").orElseGet(() -> thick(wood));
        Measure reach = joint.length("long").orElseGet(() -> reach(thick));
        boolean bare = form == TenonSizes.Form.LOOSE || stubInGroove();
        Measure haunch = bare
                ? Measure.written("haunch", Length.ZERO, joint.at())
                : joint.length("haunch").orElseGet(() -> haunch(thick, reach));
        Measure low = shoulder(-1);
        Measure high = shoulder(1);
        Length width = meeting.left().along(across).value().minus(low.value()).minus(high.value());
        Length centre = groove.map(near -> near.middle(thin))
                .orElseGet(() -> Length.ofMm(meeting.left().box().centre().get(thin)));
        return new TenonSizes(
                form, end, across, thin, thick, reach, low, high, haunch, count(width, thick.value()), beside, centre);
    }

    private boolean stubInGroove() {
        return form == TenonSizes.Form.IN_GROOVE;
    }

    private int beside(Measure wood) {
        String said = joint.word("twin").orElse("auto");
        boolean thickWood = wood.value().toDoubleMm() >= Figures.standard().value("twin.from");
        boolean tenon = joint.kind().equals(MortiseTenon.KIND);
        return said.equals("two") || (tenon && said.equals("auto") && thickWood) ? 2 : 1;
    }

    private int count(Length width, Length thick) {
        boolean one = joint.word("split").filter("none"::equals).isPresent() || stubInGroove();
        // A tenon wider than six times its thickness is made as two (Port Townsend School of Woodworking, by report).
        return !one && width.compareTo(thick.times(6)) > 0 ? 2 : 1;
    }

    private Measure thick(Measure wood) {
        if (groove.isPresent()) {
            GrooveNear near = groove.get();
            return ruled("thick", near.wide().value(), "as thick as the groove in which it stands is wide",
                    "Fairham, Woodwork Joints, and " + NOYES, near.wide());
        }
        return ruled(
                "thick",
                share(wood, beside, surroundings),
                "the chisel nearest to a " + (beside > 1 ? "fifth" : "third") + " of the thickness",
                Ruled.PRACTICE,
                wood);
    }

    /** A third of the thickness of {@code wood}, as the nearest chisel is wide: for tongues as for tenons. */
    static Measure third(Measure wood, Surroundings surroundings) {
        return Ruled.of("thick", share(wood, 1, surroundings), "the chisel nearest to a third of the thickness",
                Ruled.PRACTICE, wood);
    }

    /** As thick as the chisel nearest to an even share, where so many lie beside each other in the wood; else that share. */
    private static Length share(Measure wood, int beside, Surroundings surroundings) {
        Length share = wood.value().dividedBy(2L * beside + 1);
        Length chisel = chisel(share, surroundings);
        return chisel.times(2L * beside - 1).compareTo(wood.value()) < 0 ? chisel : share;
    }

    private static Length chisel(Length share, Surroundings surroundings) {
        List<Length> chisels = surroundings.inches() ? CHISELS_IN : CHISELS_MM;
        Length value = chisels.getFirst();
        for (Length chisel : chisels) {
            if (chisel.minus(share).abs().compareTo(value.minus(share).abs()) < 0) {
                value = chisel;
            }
        }
        return value;
    }

    private Measure reach(Measure thick) {
        Measure wall = meeting.right().along(end.axis());
        return switch (form) {
            case THROUGH -> new Measure(wall.value(), joint.at(), wall.how().named("through"));
            case IN_GROOVE -> ruled("long", groove.orElseThrow().deep().value(), "as deep as the groove that it fills",
                    NOYES, groove.orElseThrow().deep());
            case STUB -> onMark("long", meeting.right().part().thickness().value().dividedBy(3),
                    "as deep as a groove would be: a third of the thickness, on a mark of the rule",
                    meeting.right().part().thickness());
            case STOPPED -> twoThirds(wall);
            case LOOSE -> {
                Measure most = twoThirds(wall);
                Length five = thick.value().times(5);
                yield most.value().compareTo(five) <= 0
                        ? most
                        : ruled("long", five, "five times its thickness into each part",
                                "Port Townsend School of Woodworking, by report", thick);
            }
        };
    }

    private Measure twoThirds(Measure wall) {
        return onMark("long", wall.value().times(2).dividedBy(3), "two thirds of what it enters, on a mark of the rule",
                wall);
    }

    private Measure onMark(String label, Length value, String text, Measure from) {
        return ruled(label, Ruled.onMark(value, surroundings), text, Ruled.PRACTICE, from);
    }

    private Measure haunch(Measure thick, Measure reach) {
        return groove.map(near -> ruled("haunch", near.deep().value().min(reach.value()),
                "as long as the groove is deep, which it fills", "Fairham, Woodwork Joints, haunched tenon",
                near.deep()))
                .orElseGet(() -> ruled("haunch", thick.value().min(reach.value()), "as long as the tenon is thick",
                        NOYES + ": the groove about as deep as wide", thick));
    }

    private Measure ruled(String label, Length value, String text, String source, Measure from) {
        return Ruled.at(label.equals("long") ? joint.at() : from.at(), label, value, text, source, List.of(from.how()));
    }

    /**
     * How far the tenon stays from an edge: little within the right part, a third of the width at its end; half of it in
     * a grooved frame, and the groove on its own edge.
     */
    private Measure shoulder(int sign) {
        Optional<Measure> given = joint.length("shoulder");
        if (given.isPresent()) {
            return given.get();
        }
        Measure width = meeting.left().along(across);
        if (stubInGroove()) {
            return ruled("shoulder", Length.ZERO, "it fills the groove over the whole width", NOYES, width);
        }
        boolean corner = TenonSizes.atEnd(meeting, across, sign);
        if (corner) {
            boolean frame = groove.isPresent();
            Length value = width.value().dividedBy(frame ? 2 : 3).roundDownTo(surroundings.markOfTheRule());
            return ruled("shoulder", value, frame
                    ? "half the width, at the end of a grooved frame"
                    : "a third of the width, at the end of what it enters", frame ? NOYES : Ruled.PRACTICE, width);
        }
        Optional<GrooveNear> own = GrooveNear.of(meeting.left(), Side.of(across, sign), surroundings)
                .filter(near -> near.deep().value().compareTo(LEAST_SHOULDER) > 0);
        return own.map(near -> ruled("shoulder", near.deep().value(), "the groove in its own edge", NOYES, near.deep()))
                .orElseGet(() -> ruled("shoulder", LEAST_SHOULDER.min(width.value().dividedBy(4)),
                        "enough to cover the mortise", Ruled.PRACTICE, width));
    }
}
