package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.Slope;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with a layout of dovetails: what cannot be cut at all, and what would not hold. */
record DovetailFaults(Joint joint, DovetailSizes sizes, Settings settings) {
    /** Thinner than this a slope holds nothing (common practice, no source). */
    private static final Length THINNEST = Length.ofMm(6);
    /** The thinnest lap of furniture practice: 3/32 in (rules of the trade J-12). */
    private static final Length THINNEST_LAP = Length.ofInches(3, 32);
    /** Up to which slope the corners of tails hold: Noyes, Handwork in Wood, no. 48. */
    private static final Slope STEEPEST = Slope.of(1, 5);
    private static final Length LEAST_TAIL = Length.ofMm(5);
    private static final Length LEAST_PIN = Length.ofMm(3);

    /** Why it cannot be cut, if it cannot. */
    Optional<Finding> impossible() {
        BoxCorner corner = sizes.corner();
        if (sizes.tails() < 1 || sizes.tails() > DovetailSizes.MOST) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("tails"), "A corner cannot have so many tails")
                    .found("Write a whole number from 1 up, or `auto`.")
                    .remedy(set("tails", "auto", "let Treen choose"))
                    .build());
        }
        if (!sizes.holdsBoth()) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("tails"),
                    "One tail cannot hold both the box and its lid")
                    .found("The lid is cut free between its tails: there is at least one below the line and one above.")
                    .remedy(set("tails", "auto", "let Treen choose"))
                    .build());
        }
        boolean lapped = sizes.lap().value().signum() > 0;
        if (sizes.deep().value().signum() <= 0 || sizes.through().signum() <= 0 || noLap()) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("lap"),
                    noLap() ? "Secret dovetails are hidden by a lap" : "The lap leaves no room for tails")
                    .found(text(sizes.lap().value()) + " of lap in "
                            + text(corner.thicknessOfSecond().value()) + " of `" + joint.right().name() + "`.")
                    .remedy(set("lap", "auto", "let Treen choose the lap"))
                    .build());
        }
        if (sizes.secret() && !corner.thicknessOfFirst().value().equals(corner.thicknessOfSecond().value())) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, at("cut"),
                    "Secret dovetails want both parts of one thickness")
                    .found("`" + joint.left().name() + "` is " + text(corner.thicknessOfFirst().value()) + " thick, `"
                            + joint.right().name() + "` " + text(corner.thicknessOfSecond().value()) + ".")
                    .because("Their laps meet in a mitre from the inner corner to the outer one.")
                    .remedy(set("cut", "lapped", "hide them on one side only: `cut lapped`"))
                    .build());
        }
        if (lapped && !sizes.secret() && sizes.mitre().value().signum() > 0) {
            return Optional.of(begun(
                    JoineryFindings.DOES_NOT_FIT, at("mitre"), "Lapped dovetails cannot have a mitred shoulder here")
                    .found("The mitre runs to the outer corner, the lapped tails stop before it.")
                    .because("The lap hides a groove by itself.")
                    .build());
        }
        if (sizes.pin().value().signum() <= 0 || sizes.halfPin().value().signum() <= 0
                || sizes.tailAtBase().signum() <= 0) {
            return Optional.of(noRoom());
        }
        return Optional.empty();
    }

    private boolean noLap() {
        return sizes.secret() && sizes.lap().value().signum() <= 0;
    }

    private Finding noRoom() {
        return begun(
                JoineryFindings.DOES_NOT_FIT,
                at("tails"),
                "There is no room for " + tails() + " between `" + joint.left().name() + "` and `"
                        + joint.right().name() + "`")
                .found(text(sizes.top().minus(sizes.bottom())) + " of height leaves each tail "
                        + text(sizes.tailAtBase().max(Length.ZERO)) + " at the base line.")
                .because("Pins take their room first, and a slope of " + sizes.slope().text()
                        + " makes each tail narrower by " + text(sizes.lean()) + " on each side.")
                .remedy(set("tails", "auto", "let Treen choose how many"))
                .build();
    }

    /** What would break or not hold. */
    List<Finding> weak() {
        List<Finding> findings = new ArrayList<>();
        BoxCorner corner = sizes.corner();
        Length thin = corner.thicknessOfFirst().value().min(corner.thicknessOfSecond().value());
        if (thin.compareTo(THINNEST) < 0) {
            findings.add(begun(JoineryFindings.TOO_FINE, joint.at(), "Dovetails do not hold in wood so thin")
                    .found("In " + text(thin) + " a slope of " + sizes.slope().text() + " leans "
                            + text(sizes.slope().over(thin)) + ".")
                    .because("The slope is what holds; under " + text(THINNEST)
                            + " it crushes (common practice, no source).")
                    .remedy(Remedy.choice("mitre the corner and key it, or use wood of " + text(THINNEST) + " or more"))
                    .build());
        }
        Length leastTail = LEAST_TAIL.max(corner.thicknessOfFirst().value().dividedBy(2));
        thin(findings, "tails", "tails at the base line", sizes.tailAtBase(), leastTail,
                "a thinner tail breaks across its root", fewer(leastTail));
        thin(findings, "pin", "pins", sizes.pin().value(), LEAST_PIN,
                "neither saw nor chisel goes between the tails", plain(LEAST_PIN));
        Length half = DovetailSizes.leastHalf(corner, sizes.pin().value());
        thin(findings, "half_pin", "half-pins at the edges", sizes.halfPin().value(), half,
                "a thinner one splits off when the joint is tapped home", plain(half));
        if (sizes.lap().value().signum() > 0) {
            thin(findings, "lap", "laps before the tails", sizes.lap().value(), THINNEST_LAP,
                    "the chisel comes through a thinner one", "auto");
        }
        if (sizes.slope().compareTo(STEEPEST) > 0) {
            findings.add(begun(JoineryFindings.TOO_FINE, at("slope"), "Tails so steep break off at their corners")
                    .found("A slope of " + sizes.slope().text() + "; " + STEEPEST.text() + " is the steepest used.")
                    .because("The grain runs out at the corners of the tails (Noyes, Handwork in Wood, no. 48; Fairham"
                            + " allows 1:6).")
                    .remedy(set("slope", DovetailSizes.usualSlope(joint.left()).text(), "use the usual slope"))
                    .build());
        }
        return findings;
    }

    private void thin(
            List<Finding> findings, String property, String what, Length has, Length least, String why, String better) {
        if (has.compareTo(least) >= 0) {
            return;
        }
        findings.add(begun(JoineryFindings.TOO_FINE, at(property), "The " + what + " are too thin")
                .found("They have " + text(has) + "; " + text(least) + " is the least that works.")
                .because("At the bench " + why + " (common practice, no source).")
                .number("has", has.toDoubleMm())
                .number("least", least.toDoubleMm())
                .remedy(set(property, better, "write `" + property + " " + better + "`"))
                .build());
    }

    /** The greatest number of tails that are thick enough at the base line, or Treen's choice. */
    private String fewer(Length least) {
        for (int tails = sizes.tails() - 1; tails >= 1; tails--) {
            DovetailSizes fewer = sizes.with(tails);
            if (fewer.holdsBoth() && fewer.tailAtBase().compareTo(least) >= 0) {
                return Integer.toString(tails);
            }
        }
        return "auto";
    }

    private Finding.Builder begun(FindingKind kind, Span at, String headline) {
        return Finding.of(kind, at, headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    private Span at(String property) {
        return joint.given(property).map(s -> s.valueAt()).orElseGet(joint::at);
    }

    private Remedy set(String property, String value, String text) {
        return Faults.setting(joint, property, value, text);
    }

    private String tails() {
        return sizes.tails() == 1 ? "one tail" : sizes.tails() + " tails";
    }

    private String text(Length length) {
        return settings.format().text(length);
    }

    /** A length as a project writes it, up to the next half millimetre. */
    private static String plain(Length length) {
        return Faults.written(length);
    }
}
