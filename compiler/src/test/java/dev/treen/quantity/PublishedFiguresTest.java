package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.quantity.LengthFormat.FractionalInches;
import dev.treen.quantity.LengthFormat.Remainder;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Checks against the outside: each row of the three files names its source in the column of that name. */
class PublishedFiguresTest {
    private static final int ITEM = 2;
    private static final int VALUE = 3;

    @ParameterizedTest(name = "{0} {3}")
    @CsvFileSource(resources = "worked-examples.csv", numLinesToSkip = 1)
    void workedExamples(ArgumentsAccessor row) {
        Map<String, BigFraction> in = inputs(row.getString(4));
        String expected = row.getString(7);
        switch (row.getString(1)) {
            case "fraction" -> assertThat(fraction(row.getString(5), in)).isEqualTo(expected);
            case "units" -> assertThat(millimetres(in).doubleValue())
                    .isCloseTo(Double.parseDouble(expected), within(row.getDouble(9)));
            case "board-feet" -> assertThat(boardFeet(in).doubleValue())
                    .isCloseTo(Double.parseDouble(expected), within(row.getDouble(9)));
            default -> throw new AssertionError("no check for " + row.getString(1));
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @CsvFileSource(resources = "definitions.csv", numLinesToSkip = 1)
    void definitions(ArgumentsAccessor row) {
        String item = row.getString(ITEM) + " in " + row.getString(4);
        switch (item) {
            case "inch in mm" -> exactly(Length.INCH.mm(), row);
            case "foot in mm" -> exactly(Length.FOOT.mm(), row);
            case "pound mass in kg" -> exactly(
                    Unit.KG.in(Unit.LB.of(BigFraction.ONE)).orElseThrow(), row);
            case "degree F to C in degC" -> {
                assertThat(row.getString(VALUE)).isEqualTo("(F-32)*5/9");
                assertThat(Unit.DEGF.of(BigFraction.of(77)).amount()).isEqualTo(BigFraction.of((77 - 32) * 5, 9));
            }
            case "board foot in in3" -> exactly(
                    OutputUnit.BOARD_FOOT.of(BigFraction.ONE).amount().divide(Length.INCH.mm().pow(3)), row);
            case "board foot in L" -> exactly(boardFootIn(OutputUnit.LITRE), row);
            case "board foot in m3" -> exactly(boardFootIn(OutputUnit.CUBIC_METRE), row);
            case "cubic metre in board feet" -> assertThat(
                    DecimalText.write(boardFootIn(OutputUnit.CUBIC_METRE).reciprocal(), 3))
                    .isEqualTo(row.getString(VALUE));
            default -> throw new AssertionError("no check for " + item);
        }
    }

    /** American Softwood Lumber Standard PS 20: sizes given in inches and in millimetres to a tenth. */
    @ParameterizedTest(name = "{0} {2}")
    @CsvFileSource(resources = "softwood-sizes.csv", numLinesToSkip = 1)
    void softwoodSizesInBothSystems(ArgumentsAccessor row) {
        isWithinHalfATenth(read(row.getString(5) + " in"), row.getString(6));
        Matcher green = Pattern.compile("green (.* in) \\((.*) mm\\)").matcher(row.getString(7));
        assertThat(green.matches()).isTrue();
        Length fraction = read(green.group(1));
        isWithinHalfATenth(fraction, green.group(2));
        assertThat(new FractionalInches(32).text(fraction)).isEqualTo(green.group(1));
        assertThat(new FractionalInches(32).text(read(green.group(2) + " mm"))).isEqualTo(green.group(1));
    }

    // The table breaks its ties now up, now down (19.05 is printed as 19.0), so a tie may differ by the half.
    private static void isWithinHalfATenth(Length exact, String printedMm) {
        assertThat(exact.minus(read(printedMm + " mm")).abs())
                .isLessThanOrEqualTo(Length.ofMm(BigFraction.of(1, 20)));
    }

    private static String fraction(String formula, Map<String, BigFraction> in) {
        Remainder remainder = formula.startsWith("hl(") ? Remainder.HEAVY_LIGHT : Remainder.SILENT;
        return new FractionalInches(in.get("den").intValue(), false, remainder).figure(Length.ofMm(in.get("mm")));
    }

    private static BigFraction millimetres(Map<String, BigFraction> in) {
        return in.containsKey("total_in")
                ? Length.ofInches(in.get("total_in")).dividedBy(3).times(3).mm()
                : Length.ofInches(in.get("num").divide(in.get("den"))).mm();
    }

    private static BigFraction boardFeet(Map<String, BigFraction> in) {
        if (in.containsKey("m3")) {
            return OutputUnit.BOARD_FOOT.in(OutputUnit.CUBIC_METRE.of(in.get("m3"))).orElseThrow();
        }
        return BoardMeasure.boardFeet(in.containsKey("L_ft")
                ? new Size(Length.FOOT.times(in.get("L_ft")), Length.ofInches(in.get("w_in")),
                        Length.ofInches(in.get("t_in")))
                : new Size(Length.ofMm(in.get("l_mm")), Length.ofMm(in.get("w_mm")), Length.ofMm(in.get("t_mm"))));
    }

    private static BigFraction boardFootIn(OutputUnit unit) {
        return unit.in(OutputUnit.BOARD_FOOT.of(BigFraction.ONE)).orElseThrow();
    }

    private static void exactly(BigFraction value, ArgumentsAccessor row) {
        assertThat(DecimalText.exact(value)).isEqualTo(row.getString(VALUE));
    }

    private static Length read(String text) {
        return LengthText.read(text, Unit.MM).found().orElseThrow();
    }

    private static Map<String, BigFraction> inputs(String column) {
        return Arrays.stream(column.split("; "))
                .map(entry -> entry.split("="))
                .collect(Collectors.toMap(
                        entry -> entry[0], entry -> NumberText.decimal(entry[1]).found().orElseThrow()));
    }
}
