package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import dev.treen.wood.Tops;
import dev.treen.wood.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Buttons under a table top: screwed to the top, their tongues in a groove of the apron, so that the top is held down and
 * can still move (rules of the trade M-09).
 */
final class Button implements JointKind {
    private static final JointSchema SCHEMA = JointSchema.into(
            "button",
            "Buttons hold the left part, a top, down on the right one, an apron or a leg frame, and let it move: they are"
                    + " screwed to the top, and their tongues stand in a groove of the apron.",
            "joint button top into apron_front, apron_back",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a third of the right part's thickness",
                            "How deep the groove for the tongues is."),
                    PropertySchema.optional(
                            "wide", new Shape.LengthOrAuto(), "6 mm or 1/4 in", "How wide that groove is."),
                    PropertySchema.optional(
                            "down",
                            new Shape.LengthOrAuto(),
                            "twice the width of the groove",
                            "From the upper edge of the right part to the groove."),
                    PropertySchema.optional(
                            "every", new Shape.LengthOrAuto(), "300 mm or 12 in", "How far the buttons stand apart.")));

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
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) != 2) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "Buttons want the wide face of the left part, a top, on an edge of the right one."));
        }
        boolean inches = surroundings.inches();
        Measure wood = meeting.right().part().thickness();
        Measure deep = meeting.joint().length("deep")
                .orElseGet(() -> Ruled.of("deep", wood.value().dividedBy(3).roundDownTo(surroundings.markOfTheRule()),
                        "a third of the thickness, on a mark of the rule", Ruled.PRACTICE, wood));
        Measure wide = meeting.joint().length("wide").orElseGet(() -> Ruled.of("wide",
                inches ? Length.ofInches(1, 4) : Length.ofMm(6), "the usual iron", Ruled.PRACTICE, wood));
        Measure down = meeting.joint().length("down").orElseGet(
                () -> Ruled.of("down", wide.value().times(2), "twice the width of the groove", Ruled.PRACTICE, wide));
        Measure every = meeting.joint().length("every").orElseGet(() -> Ruled.of("every",
                inches ? Length.ofInches(12, 1) : Length.ofMm(300), "a hand and a half apart", Ruled.PRACTICE, wood));
        Optional<Effect> nothing = Faults.ofNoSize(meeting.joint(), "deep", deep)
                .or(() -> Faults.ofNoSize(meeting.joint(), "wide", wide));
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Travel travel = travel(meeting, face.get(), deep, surroundings);
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("deep", deep, meeting.joint().given("deep").isEmpty()),
                new Figure("wide", wide, meeting.joint().given("wide").isEmpty()),
                new Figure("down", down, meeting.joint().given("down").isEmpty()),
                new Figure("every", every, meeting.joint().given("every").isEmpty()),
                new Figure("travel", travel.measure(), true)));
        return Effect.of(List.of(), figures, groove(meeting, face.get(), deep, wide, down))
                .saying(travel.fault(meeting, deep, surroundings.settings().format()).stream().toList())
                .taking(Hardware.Kind.BUTTON, count(meeting.right().part().length().value(), every.value()));
    }

    /** As far apart as wished along the rail, one at each end. */
    private static int count(Length rail, Length every) {
        return every.signum() > 0 ? (int) Math.floor(rail.toDoubleMm() / every.toDoubleMm()) + 1 : 1;
    }

    /** How far the top moves at this apron, and what is left of the tongue in its groove when driest. */
    private record Travel(Measure measure, Verdict verdict, double engagedMm) {
        Optional<Finding> fault(Meeting meeting, Measure deep, LengthFormat format) {
            if (verdict.grade() == Verdict.Grade.FINE) {
                return Optional.empty();
            }
            return Optional.of(Finding.of(
                    JoineryFindings.BUTTON_LETS_GO,
                    deep.at(),
                    "The buttons at `" + meeting.right().part().name() + "` let go of `" + meeting.left().part().name()
                            + "` in dry air")
                    .found("The top moves " + format.text(measure.value())
                            + " there from the dampest to the driest season;"
                            + " of a tongue in a groove " + format.text(deep.value()) + " deep "
                            + format.text(Length.nearest(engagedMm, Length.ofMm(1).dividedBy(10))) + " stays in.")
                    .because("A button that comes out lets the top lift (derived from its movement; the least hold is"
                            + " common practice, no source).")
                    .remedy(Remedy.choice("make the groove deeper, or the top of quartered wood"))
                    .about(meeting.left().part().name())
                    .about(meeting.right().part().name())
                    .about(meeting.joint().name())
                    .build());
        }
    }

    private static Travel travel(Meeting meeting, Side face, Measure deep, Surroundings surroundings) {
        Nature nature = surroundings.nature(meeting.left().part());
        Axis across = across(meeting, face);
        Box top = meeting.left().box();
        Box apron = meeting.right().box();
        double middle = (top.min().get(across).doubleValue() + top.max().get(across).doubleValue()) / 2;
        double low = Math.abs(apron.min().get(across).doubleValue() - middle);
        double high = Math.abs(apron.max().get(across).doubleValue() - middle);
        double distance = nature.still() ? 0 : Math.max(low, high);
        double moves = Movement.swelling(distance, nature.across(), nature.seasons()).changeMm()
                - Movement.shrinking(distance, nature.across(), nature.seasons()).changeMm();
        Length travel = Length.nearest(moves, Length.ofMm(1).dividedBy(100));
        Measure measure = Ruled.at(meeting.joint().at(), "travel", travel,
                "between the seasons, " + Math.round(distance) + " mm from the middle of the top; "
                        + nature.wood(),
                nature.across().citation().source(), List.of());
        boolean along = meeting.right().measure(across) != 0;
        Tops.Button button = Tops.button(
                along ? distance : 0, deep.value().toDoubleMm(), nature.across(), nature.seasons(), Figures.standard());
        return new Travel(measure, button.verdict(), button.engagedDriestMm());
    }

    /** The axis across the top's grain, in the plane of the top. */
    private static Axis across(Meeting meeting, Side face) {
        Axis length = Axes.of(meeting.left().placing().length().axis());
        return Meeting.third(length, face.axis());
    }

    /** The groove, on the face of the apron that looks to the middle of the top; it ends at the apron's shoulders. */
    private static List<Cut> groove(Meeting meeting, Side face, Measure deep, Measure wide, Measure down) {
        Box apron = meeting.right().box();
        Axis thin = Axes.of(meeting.right().placing().thickness().axis());
        if (thin == face.axis()) {
            return List.of();
        }
        Box top = meeting.left().box();
        boolean towardHigh = Length.ofMm(apron.centre().get(thin)).compareTo(Length.ofMm(top.centre().get(thin))) < 0;
        Length edge = Length.ofMm(apron.coordinate(face.opposite()));
        Length near = edge.plus(down.value().times(face.sign()));
        Length far = near.plus(wide.value().times(face.sign()));
        Box band = TenonSizes.between(apron, face.axis(), near.min(far).mm(), near.max(far).mm());
        Length inside = Length.ofMm(towardHigh ? apron.max().get(thin) : apron.min().get(thin));
        Length bottom = towardHigh ? inside.minus(deep.value()) : inside.plus(deep.value());
        Box space = TenonSizes.between(band, thin, inside.min(bottom).mm(), inside.max(bottom).mm());
        return List.of(new Cut.Hollow(meeting.right().part().name(), space, meeting.origin()));
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> aprons = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<String> tops = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        Work groove = new Work(
                Work.Stage.ALONG_STRIP,
                "Plough the groove for the buttons",
                aprons,
                List.of(),
                "plough plane, or a cutter against a fence",
                List.of(
                        new Work.GaugeSetting("fence", Work.figure(statement, "down")),
                        new Work.GaugeSetting("iron", Work.figure(statement, "wide")),
                        new Work.GaugeSetting("depth", Work.figure(statement, "deep"))),
                "the inside face, the fence on the upper edge",
                "a tongue goes in without force",
                "Clamp the work; keep the other hand behind the iron.");
        Work buttons = new Work(
                Work.Stage.FIT,
                "Screw the buttons under the top, their tongues in the grooves",
                tops,
                aprons,
                "drill with a stop, screwdriver",
                List.of(new Work.GaugeSetting("apart", Work.figure(statement, "every"))),
                "the middle of the top, which stays where it is",
                "each tongue keeps room to go deeper, and the top can be pushed by hand",
                "Set the stop so that no screw comes through the top.");
        return List.of(groove, buttons);
    }
}
