package dev.treen.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads one length as a person writes it: {@code 9}, {@code 9mm}, {@code 1.2 m}, {@code 3/4in}, {@code 2 3/8 in},
 * {@code 5ft 3 1/2in}. It reads back whatever {@link LengthFormat} writes without a word for the remainder.
 */
public final class LengthText {
    private static final int LONGEST = 120;
    private static final String WHOLE = "[0-9]+";
    private static final String NUMBER = "[0-9]+(?:\\.[0-9]+)?";
    private static final Pattern SHAPE = Pattern.compile("(?<minus>-)?"
            + "(?:(?<feet>" + NUMBER + ") *ft(?: +|$))?"
            + "(?:(?:(?<whole>" + WHOLE + ") +)?(?<top>" + WHOLE + ")/(?<bottom>" + WHOLE + ")|(?<number>" + NUMBER
            + "))?"
            + " *(?<unit>[^ 0-9.,/-]*)");

    private LengthText() {
    }

    /**
     * The length a text stands for, exact.
     *
     * @param text what was written
     * @param bare the unit of a number without one; a unit of length
     * @return the length, or why there is none
     * @throws IllegalArgumentException if {@code bare} does not measure lengths
     */
    public static Outcome<Length> read(String text, Unit bare) {
        if (bare.dimension() != Dimension.LENGTH) {
            throw new IllegalArgumentException("a bare number needs a unit of length");
        }
        String line = text.strip();
        if (line.length() > LONGEST) {
            return new Refusal(Refusal.Kind.TOO_LONG, "a length is written in fewer characters").asOutcome();
        }
        Matcher found = SHAPE.matcher(line);
        if (!found.matches() || (found.group("feet") == null && !hasFigure(found))) {
            return NumberText.notANumber(line, "");
        }
        return size(found, bare).map(length -> found.group("minus") == null ? length : length.negate());
    }

    private static boolean hasFigure(Matcher found) {
        return found.group("top") != null || found.group("number") != null;
    }

    private static Outcome<Length> size(Matcher found, Unit bare) {
        String word = found.group("unit");
        if (found.group("feet") == null) {
            return unit(word, bare).then(unit -> figure(found).map(number -> lengthOf(unit, number)));
        }
        Outcome<Length> feet = NumberText.decimal(found.group("feet")).map(Length.FOOT::times);
        if (!hasFigure(found) && word.isEmpty()) {
            return feet;
        }
        // After feet only inches can follow; a bare number there would be one thing to the eye and another to Treen.
        return hasFigure(found) && word.equals(Unit.IN.spelling())
                ? feet.then(whole -> figure(found).map(number -> whole.plus(Length.ofInches(number))))
                : new Refusal(Refusal.Kind.UNKNOWN_UNIT, "feet are followed by inches, written with \"in\"")
                        .asOutcome();
    }

    private static Outcome<BigFraction> figure(Matcher found) {
        if (found.group("number") != null) {
            return NumberText.decimal(found.group("number"));
        }
        return found.group("whole") == null
                ? NumberText.fraction(found.group("top"), found.group("bottom"))
                : NumberText.mixed(found.group("whole"), found.group("top"), found.group("bottom"));
    }

    private static Outcome<Unit> unit(String word, Unit bare) {
        if (word.isEmpty()) {
            return Outcome.of(bare);
        }
        return Unit.spelled(word)
                .filter(unit -> unit.dimension() == Dimension.LENGTH)
                .<Outcome<Unit>>map(Outcome::of)
                .orElseGet(() -> new Refusal(Refusal.Kind.UNKNOWN_UNIT, "\"" + word + "\" is not a unit of length")
                        .asOutcome());
    }

    private static Length lengthOf(Unit unit, BigFraction number) {
        return Length.ofMm(unit.of(number).amount());
    }
}
