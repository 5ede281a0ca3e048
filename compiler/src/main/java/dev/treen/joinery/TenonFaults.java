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

/** What is to be said of tenons that can be made and should not be made so (rules of the trade J-10). */
final class TenonFaults {
    /** What is left of the wood beside a mortise, at the least: common practice, no source. */
    private static final Length LEAST_CHEEK = Length.ofMm(3);

    private TenonFaults() {
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
    private static java.util.Optional<Finding> cheek(Meeting meeting, TenonSizes sizes, LengthFormat format) {
        Joint joint = meeting.joint();
        var tenon = sizes.tenons(meeting).getFirst();
        Length least = null;
        for (int sign : new int[]{-1, 1}) {
            Side side = Side.of(sizes.thin(), sign);
            Length beside = Length.ofMm(meeting.right().box().coordinate(side).subtract(tenon.coordinate(side))
                    .multiply(sign));
            least = least == null ? beside : least.min(beside);
        }
        if (least == null || least.compareTo(LEAST_CHEEK) >= 0) {
            return java.util.Optional.empty();
        }
        return java.util.Optional.of(said(
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

    private static Finding.Builder said(Joint joint, Measure at, String headline) {
        return Finding.of(JoineryFindings.TENON_PROPORTIONS, at.at(), headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    private static Remedy auto(Joint joint, String name) {
        return joint.given(name)
                .map(given -> Remedy.safe("write `auto`", new Edit(given.valueAt(), "auto")))
                .orElseGet(() -> Remedy.choice("leave out `" + name + "`"));
    }
}
