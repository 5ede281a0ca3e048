package dev.treen.joinery;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is to be said of tenons that can be made and should not be made so (rules of the trade J-10). */
final class TenonFaults {
    /** What is left of the wood beside a mortise, at the least: common practice, no source. */
    private static final Length LEAST_CHEEK = Length.ofMm(3);

    private TenonFaults() {
    }

    /** What makes the joint impossible. */
    static Optional<Finding> impossible(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Measure wood = meeting.left().along(sizes.thin());
        Measure width = meeting.left().along(sizes.across());
        Measure wall = meeting.right().along(sizes.end().axis());
        Length left = width.value().minus(sizes.low().value()).minus(sizes.high().value());
        boolean tooThick = sizes.takes().compareTo(wood.value()) > 0 || sizes.thick().value().signum() <= 0;
        boolean tooNarrow = left.signum() <= 0
                || left.compareTo(sizes.thick().value().times(sizes.count() - 1L)) <= 0;
        boolean tooLong = sizes.reach().value().compareTo(wall.value()) > 0 || sizes.reach().value().signum() <= 0;
        if (tooThick) {
            return Optional.of(fault(meeting.joint(), sizes.thick(), "tenon of `" + meeting.joint().left().name()
                    + "` is thicker than the wood",
                    "The wood is " + format.text(wood.value()) + " thick, the tenon "
                            + format.text(sizes.thick().value()) + "; a third of the wood is usual."));
        }
        if (tooNarrow) {
            return Optional.of(fault(meeting.joint(), sizes.low(), "shoulders leave no tenon on `"
                    + meeting.joint().left().name() + "`",
                    "It is " + format.text(width.value())
                            + " wide, and the shoulders take " + format.text(width.value().minus(left)) + "."));
        }
        if (tooLong) {
            return Optional.of(tooLong(meeting.joint(), sizes, wall, format));
        }
        return sizes.loose() ? LooseTenon.impossible(meeting, sizes, format) : Optional.empty();
    }

    private static Finding tooLong(Joint joint, TenonSizes sizes, Measure wall, LengthFormat format) {
        Finding.Builder finding = Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                sizes.reach().at(),
                "The tenon of `" + joint.left().name() + "` is longer than `" + joint.right().name() + "` is wide")
                .found("It is " + format.text(sizes.reach().value()) + " long and goes into "
                        + format.text(wall.value())
                        + " of wood: " + format.text(sizes.reach().value().minus(wall.value())) + " too long.")
                .because("It would stand out on the other side. `kind through` makes it as long as the wood is wide.")
                .related(wall.at(), "`" + joint.right().name() + "` is so wide there")
                .about(joint.left().name())
                .about(joint.name());
        joint.given("long").ifPresent(given -> finding.remedy(
                Remedy.choice("leave the length to Treen: `long auto`", new Edit(given.valueAt(), "auto"))));
        if (joint.given("long").isEmpty()) {
            finding.remedy(Faults.setting(joint, "kind", "through", "let it come through: `kind through`"))
                    .remedy(Remedy.choice("make `" + joint.right().name() + "` wider there, or the joint's other"
                            + " settings smaller"));
        }
        return finding.build();
    }

    private static Finding fault(Joint joint, Measure at, String what, String found) {
        return Finding.of(JoineryFindings.DOES_NOT_FIT, at.at(), "The " + what)
                .found(found)
                .about(joint.left().name())
                .about(joint.name())
                .build();
    }

    static List<Finding> proportions(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        List<Finding> findings = new ArrayList<>();
        Joint joint = meeting.joint();
        Measure wood = meeting.left().along(sizes.thin());
        if (sizes.thick().value().times(2).compareTo(wood.value()) > 0 && joint.given("thick").isPresent()) {
            findings.add(
                    said(joint, sizes.thick(), "The tenon of `" + joint.left().name() + "` is more than half its wood")
                            .found("It is " + format.text(sizes.thick().value()) + " of " + format.text(wood.value())
                                    + "; a third is usual.")
                            .because("What is left beside the mortise then breaks before the tenon does"
                                    + " (common practice, no source).")
                            .remedy(auto(joint, "thick"))
                            .build());
        }
        boolean stub = joint.word("kind").filter("stub"::equals).isPresent();
        if (!stub && sizes.reach().value().compareTo(sizes.thick().value().times(2)) < 0) {
            findings.add(said(joint, sizes.reach(), "The tenon of `" + joint.left().name() + "` is short")
                    .found("It is " + format.text(sizes.reach().value()) + " long and "
                            + format.text(sizes.thick().value()) + " thick; three times its thickness is usual.")
                    .because("Its cheeks carry the glue: short ones let the frame rack (Port Townsend School of"
                            + " Woodworking, by report).")
                    .remedy(Remedy.choice("let it come through, `kind through`, or make `" + joint.right().name()
                            + "` wider"))
                    .build());
        }
        cheek(meeting, sizes, format).ifPresent(findings::add);
        return findings;
    }

    /** The wood left beside the mortise on its thinner side. */
    private static Optional<Finding> cheek(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Joint joint = meeting.joint();
        Length least = null;
        for (var tenon : sizes.tenons(meeting)) {
            for (int sign : new int[]{-1, 1}) {
                Side side = Side.of(sizes.thin(), sign);
                Length beside = Length.ofMm(meeting.right().box().coordinate(side).subtract(tenon.coordinate(side))
                        .multiply(sign));
                least = least == null ? beside : least.min(beside);
            }
        }
        if (least == null || least.compareTo(LEAST_CHEEK) >= 0) {
            return Optional.empty();
        }
        return Optional.of(said(
                joint, sizes.thick(), "The mortise in `" + joint.right().name() + "` leaves hardly any wood beside it")
                .found(least.signum() > 0
                        ? "On its thin side " + format.text(least) + " stays; " + format.text(LEAST_CHEEK)
                                + " is wanted."
                        : "It comes out at the side.")
                .because("A thin cheek splits when the tenon is driven in (common practice, no source).")
                .remedy(Remedy
                        .choice("move the parts so that the tenon stands nearer to the middle, or make it thinner"))
                .build());
    }

    static Finding.Builder said(Joint joint, Measure at, String headline) {
        return Faults.said(joint, JoineryFindings.TENON_PROPORTIONS, at.at(), headline);
    }

    static Remedy auto(Joint joint, String name) {
        return joint.given(name)
                .map(given -> Remedy.safe("write `auto`", new Edit(given.valueAt(), "auto")))
                .orElseGet(() -> Remedy.choice("leave out `" + name + "`"));
    }
}
