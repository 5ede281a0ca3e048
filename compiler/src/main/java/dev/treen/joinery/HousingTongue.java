package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * The tongue of a rebated housing: the left part's end is rebated on one face, and what stays goes into a narrower trench.
 * The shoulder hides the trench's edge, and at the corner of a box it leaves wood between the trench and the end.
 *
 * @param through the trench as if the whole end went in
 * @param shoulder how far the end is rebated
 * @param from the face that is rebated
 */
record HousingTongue(Meeting meeting, Box through, Measure shoulder, Side from) {
    /** How a project writes it. */
    static final PropertySchema SCHEMA = PropertySchema.optional(
            "shoulder",
            new Shape.LengthOrAuto(),
            "none: the whole end goes in; `shoulder auto`: half the left part's thickness, from the face toward the"
                    + " end of the right part at a corner, else from the upper face",
            "How far the end of the left part is rebated, with `from` and the name of the face; the tongue that stays goes"
                    + " into a trench as narrow.");
    private static final Length LEAST = Length.ofMm(3);

    /** The tongue that a project asks for. */
    static Optional<HousingTongue> of(Meeting meeting, Box through, Surroundings surroundings) {
        Joint joint = meeting.joint();
        boolean asked = joint.settings().containsKey(SCHEMA.name());
        Optional<Measure> given = joint.length(SCHEMA.name());
        if (!asked || given.filter(each -> each.value().isZero()).isPresent()) {
            return Optional.empty();
        }
        Measure wood = wood(meeting);
        Measure shoulder = given.orElseGet(() -> Ruled.onMark(
                SCHEMA.name(), wood.value().dividedBy(2), "half the thickness, on a mark of the rule", Ruled.PRACTICE,
                wood, surroundings));
        Side usual = usualFace(meeting);
        Direction direction = Direction.of(Axes.number(usual.axis()), usual.sign());
        return Optional.of(new HousingTongue(
                meeting, through, shoulder, HousingStop.side(joint, "shoulder.from", direction).orElse(usual)));
    }

    private static Measure wood(Meeting meeting) {
        return meeting.left().along(thin(meeting));
    }

    private static Axis thin(Meeting meeting) {
        return Axes.of(meeting.left().placing().thickness().axis());
    }

    /** At a corner the outer face, so that wood stays before the trench; else the upper one, which leaves the lower whole. */
    private static Side usualFace(Meeting meeting) {
        Axis thin = thin(meeting);
        Length low = Length.ofMm(meeting.left().box().min().get(thin).subtract(meeting.right().box().min().get(thin)));
        Length high = Length.ofMm(meeting.right().box().max().get(thin).subtract(meeting.left().box().max().get(thin)));
        boolean corner = low.min(high).compareTo(wood(meeting).value()) <= 0;
        boolean upright = thin != Axis.Z;
        return Side.of(thin, (corner || upright) && low.compareTo(high) < 0 ? -1 : 1);
    }

    /** How thick the tongue is. */
    Measure thick() {
        Measure wood = wood(meeting);
        Length value = wood.value().minus(shoulder.value());
        return new Measure(
                value,
                shoulder.at(),
                Derivation.combined("tongue", Measure.datum(value), "−", wood.how().named("thickness"),
                        shoulder.how()));
    }

    /** The trench for the tongue alone. */
    Box trench(Box whole) {
        Axis thin = from.axis();
        Length low = Length.ofMm(whole.min().get(thin)).plus(from.sign() < 0 ? shoulder.value() : Length.ZERO);
        Length high = Length.ofMm(whole.max().get(thin)).minus(from.sign() > 0 ? shoulder.value() : Length.ZERO);
        return TenonSizes.between(whole, thin, low.mm(), high.mm());
    }

    /** What is rebated away. */
    Box waste() {
        Axis thin = from.axis();
        Length face = Length.ofMm(through.coordinate(from));
        Length inner = face.minus(shoulder.value().times(from.sign()));
        return TenonSizes.between(through, thin, inner.min(face).mm(), inner.max(face).mm());
    }

    List<Figure> figures() {
        return List.of(
                new Figure("shoulder", shoulder, meeting.joint().given("shoulder").isEmpty()),
                new Figure("tongue", thick(), true));
    }

    /** A shoulder on a face that is none, or one that leaves no tongue. */
    Optional<Finding> impossible(LengthFormat format) {
        Joint joint = meeting.joint();
        Axis thin = thin(meeting);
        if (from.axis() != thin) {
            Direction better = Direction.of(Axes.number(thin), usualFace(meeting).sign());
            Span at = Optional.ofNullable(joint.settings().get("shoulder.from"))
                    .map(Setting::valueAt)
                    .orElseGet(joint::at);
            return Optional.of(Faults.said(joint, JoineryFindings.DOES_NOT_FIT, at,
                    "`" + joint.left().name() + "` has no face on that side to be rebated")
                    .found("Its faces look " + better.word() + " and " + better.opposite().word() + ".")
                    .remedy(Faults.setting(joint, "shoulder.from", better.word(), "rebate it from " + better.word()))
                    .build());
        }
        if (thick().value().signum() > 0) {
            return Optional.empty();
        }
        return Optional.of(Faults.said(joint, JoineryFindings.DOES_NOT_FIT, shoulder.at(),
                "The shoulder leaves no tongue on `" + joint.left().name() + "`")
                .found("It takes " + format.text(shoulder.value()) + " of " + format.text(wood(meeting).value()) + ".")
                .because("The tongue is what goes into the housing and holds.")
                .remedy(Faults.setting(joint, "shoulder", "auto", "rebate half the thickness: `shoulder auto`"))
                .build());
    }

    /** A tongue that breaks off at its shoulder. */
    Optional<Finding> weak(LengthFormat format) {
        Joint joint = meeting.joint();
        Length least = LEAST.max(wood(meeting).value().dividedBy(3));
        if (thick().value().compareTo(least) >= 0) {
            return Optional.empty();
        }
        return Optional.of(Faults.said(joint, JoineryFindings.TOO_FINE, shoulder.at(),
                "The tongue of `" + joint.left().name() + "` is thin")
                .found("Its shoulder leaves " + format.text(thick().value()) + " of "
                        + format.text(wood(meeting).value()) + "; " + format.text(least) + " is the least that works.")
                .because(
                        "It breaks off at the shoulder: a third of the thickness and 3 mm have to stay (common practice,"
                                + " no source).")
                .remedy(Faults.setting(joint, "shoulder", "auto", "rebate half the thickness: `shoulder auto`"))
                .build());
    }
}
