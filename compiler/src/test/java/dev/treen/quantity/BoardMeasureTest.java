package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoardMeasureTest {
    @ParameterizedTest
    // Noyes, Handwork in Wood: inch boards in feet and twelfths of a foot, board measure.
    @CsvSource({"14, 11, 12, 10", "5, 9, 3, 9", "23, 13, 24, 11", "12, 6, 6, 0"})
    void inchBoardsComeToThePublishedFeet(long feetLong, long inchesWide, long feet, long twelfths) {
        Size board = new Size(Length.FOOT.times(feetLong), Length.INCH.times(inchesWide), Length.INCH);
        assertThat(BoardMeasure.boardFeet(board)).isEqualTo(BigFraction.of(feet * 12 + twelfths, 12));
    }

    @Test
    void thinHardwoodIsSoldAsIfItWereAnInch() {
        // Noyes, Handwork in Wood: a thickness under one inch counts as one inch.
        Size thin = new Size(Length.FOOT, Length.FOOT, Length.ofInches(1, 2));
        assertThat(BoardMeasure.boardFeet(thin)).isEqualTo(BigFraction.of(1, 2));
        assertThat(BoardMeasure.boardFeetSold(thin)).isEqualTo(BigFraction.ONE);
        assertThat(BoardMeasure.surfaceFeet(thin)).isEqualTo(BigFraction.ONE);
        Size thick = thin.withThickness(Length.ofInches(5, 4));
        assertThat(BoardMeasure.boardFeetSold(thick)).isEqualTo(BigFraction.of(5, 4));
    }

    @Test
    void aTallyIsWrittenInWholeFeet() {
        // Common practice, no source.
        assertThat(BoardMeasure.tally(BigFraction.of(77, 6))).isEqualTo(BigInteger.valueOf(13));
        assertThat(BoardMeasure.tally(BigFraction.of(5, 2))).isEqualTo(BigInteger.valueOf(3));
    }

    @Test
    void aHoppusFootHoldsTheAgreedAmountOfWood() {
        // 0.03605 m³, as an archived page of the timber trade gives it.
        Quantity foot = OutputUnit.HOPPUS_FOOT.of(BigFraction.ONE);
        assertThat(OutputUnit.CUBIC_METRE.in(foot).orElseThrow().doubleValue()).isCloseTo(0.03605, within(5e-6));
    }

    @Test
    void hoppusFeetOfARoundLogAgreeWithItsTrueVolume() {
        Length girth = Length.ofInches(60, 1);
        Length length = Length.FOOT.times(10);
        BigFraction hoppus = BoardMeasure.hoppusFeet(girth, length);
        assertThat(hoppus).isEqualTo(BigFraction.of(125, 8)); // 15 in squared, over 144, by 10 ft
        // Geometry: a circle of girth g has the area g² / 4π.
        double cubicFeet = 5.0 * 5.0 / (4 * Math.PI) * 10;
        assertThat(OutputUnit.CUBIC_FOOT.in(OutputUnit.HOPPUS_FOOT.of(hoppus)).orElseThrow().doubleValue())
                .isCloseTo(cubicFeet, within(cubicFeet * 1e-7));
    }

    @Test
    void aVolumeMakesARunOfASection() {
        Quantity litre = OutputUnit.LITRE.of(BigFraction.ONE);
        assertThat(BoardMeasure.runningLength(litre, Length.ofMm(100), Length.ofMm(20))).contains(Length.ofMm(500));
        assertThat(BoardMeasure.runningLength(litre, Length.ZERO, Length.ofMm(20))).isEmpty();
        assertThat(BoardMeasure.runningLength(Quantity.number(1), Length.INCH, Length.INCH)).isEmpty();
        Size board = new Size(Length.ofMm(500), Length.ofMm(100), Length.ofMm(20));
        assertThat(BoardMeasure.cubicMetres(board)).isEqualTo(BigFraction.of(1, 1000));
    }

    @Test
    void outputUnitsWriteOnlyWhatTheyMeasure() {
        Size board = new Size(Length.ofMm(900), Length.ofMm(140), Length.ofMm(27));
        assertThat(OutputUnit.BOARD_FOOT.text(board.volume(), 2)).contains("1.44 board ft");
        assertThat(OutputUnit.SQUARE_METRE.text(board.faceArea(), 3)).contains("0.126 m²");
        assertThat(OutputUnit.SQUARE_METRE.text(board.volume(), 3)).isEmpty();
        for (OutputUnit unit : OutputUnit.values()) {
            assertThat(unit.in(unit.of(BigFraction.of(7, 3)))).contains(BigFraction.of(7, 3));
        }
    }
}
