package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Setting;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Slope;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.Optional;

/** What is wrong with a sliding dovetail: what cannot be cut or slid home, and what would not hold. */
record SlidingDovetailFaults(SlidingDovetailSizes sizes, LengthFormat format) {
    /** Up to which slope the corners hold: Noyes, Handwork in Wood, no. 48. */
    private static final Slope STEEPEST = Slope.of(1, 5);

    private Joint joint() {
        return sizes.meeting().joint();
    }

    /** Why it cannot be cut, if it cannot. */
    Optional<Finding> impossible() {
        return tooDeep().or(this::wrongSide).or(this::wrongTaper).or(this::noNeck);
    }

    private Optional<Finding> tooDeep() {
        Length wall = sizes.meeting().right().along(sizes.face().axis()).value();
        if (sizes.deep().value().compareTo(wall) < 0) {
            return Optional.empty();
        }
        return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "deep",
                "The dovetail of `" + joint().left().name() + "` goes right through `" + joint().right().name() + "`")
                .found("It is " + format.text(sizes.deep().value()) + " deep in " + format.text(wall) + ".")
                .remedy(Faults.setting(joint(), "deep", "auto", "take a third: `deep auto`"))
                .build());
    }

    private Optional<Finding> wrongSide() {
        boolean wrong = sizes.leaning().stream().anyMatch(side -> side.axis() != sizes.thin());
        return wrong ? Optional.of(wrongWord("sides.from", "no face", sizes.thin())) : Optional.empty();
    }

    private Optional<Finding> wrongTaper() {
        boolean wrong = sizes.tapered() && sizes.narrow().filter(side -> side.axis() == sizes.along()).isEmpty();
        return wrong ? Optional.of(wrongWord("taper.from", "no end", sizes.along())) : Optional.empty();
    }

    private Finding wrongWord(String word, String what, Axis axis) {
        Direction low = Direction.of(Axes.number(axis), -1);
        return begun(JoineryFindings.DOES_NOT_FIT, word,
                "The dovetail of `" + joint().left().name() + "` has " + what + " on that side")
                .found("It lies between " + low.word() + " and " + low.opposite().word() + ".")
                .remedy(Faults.setting(joint(), word, low.word(), "write `from " + low.word() + "`"))
                .build();
    }

    private Optional<Finding> noNeck() {
        if (sizes.leastNeck().signum() > 0) {
            return Optional.empty();
        }
        boolean taper = sizes.neck().signum() > 0;
        return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, taper ? "taper" : "slope",
                "The " + (taper ? "taper" : "slope") + " leaves nothing of the dovetail of `" + joint().left().name()
                        + "`")
                .found(taper
                        ? "It takes " + format.text(sizes.taper().value()) + " of a neck of "
                                + format.text(sizes.neck()) + "."
                        : "It leans " + format.text(sizes.lean()) + " over its depth.")
                .remedy(taper
                        ? Faults.setting(joint(), "taper", "auto", "let Treen choose: `taper auto`")
                        : Remedy.choice("take a slope of 1:8, or a shallower trench"))
                .build());
    }

    /** Why it cannot be slid home, if it cannot. */
    Optional<Finding> stuck(Optional<HousingStop> stop, Box open) {
        Side low = Side.of(sizes.along(), -1);
        boolean in = sizes.reaches(open, low) || sizes.reaches(open, low.opposite());
        if (!in) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "stop",
                    "`" + joint().left().name() + "` cannot be slid into `" + joint().right().name() + "`")
                    .found(stop.isPresent()
                            ? "The trench is stopped at one end and the other does not reach an edge."
                            : "The trench reaches no edge of `" + joint().right().name() + "`.")
                    .because("A dovetail goes in from the side: one end of its trench has to be open.")
                    .remedy(Remedy.choice("let `" + joint().left().name() + "` reach an edge, or take a `housing`"))
                    .build());
        }
        Optional<Side> narrow = sizes.narrow().filter(side -> sizes.tapered());
        if (narrow.filter(side -> !sizes.reaches(open, side.opposite())).isEmpty()) {
            return Optional.empty();
        }
        Side better = narrow.orElseThrow().opposite();
        String word = Direction.of(Axes.number(better.axis()), better.sign()).word();
        return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "taper",
                "The tapered dovetail of `" + joint().left().name() + "` would have to go in wide end first")
                .found("It is narrow at the only end at which the trench is open.")
                .because("The narrow end goes in first and all of it closes at the last tap.")
                .remedy(joint().given("taper.from").isPresent()
                        ? Faults.setting(joint(), "taper.from", word, "let it narrow from " + word)
                        : Faults.setting(joint(), "taper", "auto from " + word, "let it narrow from " + word))
                .build());
    }

    /** A neck under half the wood, or a slope that crushes (rules of the trade J-f, Noyes). */
    Optional<Finding> weak() {
        Length wood = sizes.wood().value();
        boolean steep = sizes.slope().compareTo(STEEPEST) > 0;
        if (!steep && sizes.leastNeck().times(2).compareTo(wood) >= 0) {
            return Optional.empty();
        }
        return Optional.of(begun(JoineryFindings.TOO_FINE, "slope",
                steep
                        ? "The corners of the dovetail of `" + joint().left().name() + "` break off"
                        : "The neck of the dovetail of `" + joint().left().name() + "` is thin")
                .found("A slope of " + sizes.slope().text() + (sizes.tapered() ? " and the taper leave" : " leaves")
                        + " a neck of " + format.text(sizes.leastNeck()) + " of " + format.text(wood) + ".")
                .because("1:8 is usual, 1:5 the most (Noyes, Handwork in Wood, no. 48); a neck under half the wood"
                        + " breaks (common practice, no source).")
                .remedy(joint().given("slope").isPresent()
                        ? Faults.setting(joint(), "slope", "1:8", "write 1:8")
                        : Remedy.choice("take thicker stock, or a plain `housing`"))
                .build());
    }

    private Finding.Builder begun(FindingKind kind, String property, String headline) {
        return Faults.said(joint(), kind, joint().given(property).map(Setting::valueAt).orElseGet(joint()::at),
                headline);
    }
}
