package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.Span;
import java.util.Optional;

/** What is to be said of dowels: what cannot be bored, and what should not be (rules of the trade J-15). */
record DowelFaults(DowelSizes sizes, LengthFormat format) {
    /** What stays behind a hole, at the least: common practice, no source. */
    private static final Length LEAST_BEHIND = Length.ofMm(3);

    /** Holes that run into each other, come out, or are wider than the wood. */
    Optional<Finding> impossible() {
        Joint joint = sizes.joint();
        Length wood = sizes.seat().wood();
        if (sizes.count() < 1 || sizes.count() > Spots.MOST) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("count"), "So many dowels cannot be bored")
                    .found("A whole number from 1 to " + Spots.MOST + " is wanted.")
                    .remedy(auto("count"))
                    .build());
        }
        if (sizes.thick().value().compareTo(wood) >= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, sizes.thick().at(), "The dowels are thicker than the"
                    + " wood")
                    .found("They are " + text(sizes.thick().value()) + " thick, the wood " + text(wood) + ".")
                    .remedy(auto("thick"))
                    .build());
        }
        if (sizes.count() > 1 && sizes.apart().compareTo(sizes.thick().value()) <= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("count"), "The holes for the dowels run into each"
                    + " other")
                    .found("There are " + sizes.count() + " over " + text(sizes.seat().length()) + ", "
                            + text(sizes.apart()) + " from middle to middle, and " + text(sizes.thick().value())
                            + " thick.")
                    .remedy(auto("count"))
                    .build());
        }
        if (sizes.dowel().value().signum() <= 0 || sizes.deepLeft().value().signum() <= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, sizes.deep().at(), "The holes leave no dowel")
                    .found("They are " + text(sizes.deep().value()) + " and " + text(sizes.deepLeft().value())
                            + " deep; the dowel is 3 mm shorter than both.")
                    .remedy(auto(joint.given("long").isPresent() ? "long" : "deep"))
                    .build());
        }
        return through(false).or(() -> through(true));
    }

    private Optional<Finding> through(boolean left) {
        Meeting.Placed part = left ? sizes.seat().meeting().left() : sizes.seat().meeting().right();
        Measure deep = left ? sizes.deepLeft() : sizes.deep();
        Length wood = part.along(sizes.seat().face().axis()).value();
        if (deep.value().compareTo(wood) < 0) {
            return Optional.empty();
        }
        return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, deep.at(), "The dowels come out of `"
                + part.part().name() + "` on the other side")
                .found("The holes are " + text(deep.value()) + " deep in " + text(wood) + ".")
                .remedy(auto(sizes.joint().given("long").isPresent() && left ? "long" : "deep"))
                .build());
    }

    /** One dowel, a dowel too thick for its wood, or little wood behind a hole. */
    Optional<Finding> weak() {
        Length wood = sizes.seat().wood();
        Length thick = sizes.thick().value();
        if (thick.times(2).compareTo(wood) > 0) {
            return Optional.of(begun(JoineryFindings.DOWEL_PROPORTIONS, sizes.thick().at(), "The dowels are too thick"
                    + " for the wood")
                    .found("They are " + text(thick) + " thick in " + text(wood) + ": " + text(
                            wood.minus(thick).dividedBy(2)) + " stays beside them.")
                    .because("Up to half the wood is usual (WOOD magazine, dowel tips); with less than half a dowel"
                            + " beside it the wood splits (common practice, no source).")
                    .remedy(sizes.joint().given("thick").isPresent()
                            ? auto("thick")
                            : Remedy.choice("take thicker stock, or another joint"))
                    .build());
        }
        if (sizes.count() == 1) {
            return Optional.of(begun(JoineryFindings.DOWEL_PROPORTIONS, at("count"), "One dowel does not keep `"
                    + sizes.joint().left().name() + "` from turning")
                    .found("The joint is " + text(sizes.seat().length()) + " long.")
                    .because("Two keep it in its place (common practice, no source).")
                    .remedy(sizes.joint().given("count").isPresent()
                            && sizes.seat().length().compareTo(thick.times(5)) >= 0
                                    ? Faults.setting(sizes.joint(), "count", "2", "bore for two")
                                    : Remedy.choice("take thinner dowels, and two of them"))
                    .build());
        }
        return behind(false).or(() -> behind(true));
    }

    private Optional<Finding> behind(boolean left) {
        Meeting.Placed part = left ? sizes.seat().meeting().left() : sizes.seat().meeting().right();
        Measure deep = left ? sizes.deepLeft() : sizes.deep();
        Length stays = part.along(sizes.seat().face().axis()).value().minus(deep.value());
        if (stays.compareTo(LEAST_BEHIND) >= 0) {
            return Optional.empty();
        }
        return Optional.of(begun(JoineryFindings.DOWEL_PROPORTIONS, deep.at(), "The holes leave hardly any of `"
                + part.part().name() + "` behind them")
                .found("Behind " + text(deep.value()) + " of hole stays " + text(stays) + ".")
                .because("The point of the bit comes through, or the dowel shows as a bump (common practice, no"
                        + " source).")
                .remedy(sizes.joint().given(left ? "long" : "deep").isPresent()
                        ? auto(left ? "long" : "deep")
                        : Remedy.choice("take thicker stock, or another joint"))
                .build());
    }

    private Finding.Builder begun(FindingKind kind, Span at, String headline) {
        Joint joint = sizes.joint();
        return Finding.of(kind, at, headline).about(joint.left().name()).about(joint.right().name())
                .about(joint.name());
    }

    private Span at(String property) {
        return sizes.joint().given(property).map(Setting::valueAt).orElseGet(sizes.joint()::at);
    }

    private Remedy auto(String property) {
        return Faults.setting(sizes.joint(), property, "auto", "leave it to Treen: `" + property + " auto`");
    }

    private String text(Length length) {
        return format.text(length);
    }
}
