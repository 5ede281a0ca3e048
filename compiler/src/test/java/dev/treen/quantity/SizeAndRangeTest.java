package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Sizes of a made-up tea caddy, and ranges of lengths and other quantities. */
class SizeAndRangeTest {
    private static final Size FRONT = new Size(mm(178), Length.ofMm(BigFraction.of(863, 10)), mm(9));

    @Test
    void aSizeGivesItsMeasuresByName() {
        assertThat(Size.NAMES).allSatisfy(name -> assertThat(FRONT.measure(name)).isPresent());
        assertThat(FRONT.measure("length")).contains(mm(178));
        assertThat(FRONT.measure("thickness")).contains(mm(9));
        assertThat(FRONT.measure("Length")).isEmpty();
    }

    @Test
    void aSizeIsWrittenInTheOrderInWhichItIsRead() {
        assertThat(FRONT.text(LengthFormat.millimetres())).isEqualTo("178 x 86.3 x 9 mm");
        assertThat(FRONT.text(LengthFormat.inches())).isEqualTo("7+ x 3 13/32- x 11/32+ in");
    }

    @Test
    void allowancesMakeASizeLarger() {
        Size rough = FRONT.plus(mm(3), mm(2), mm(1));
        assertThat(rough.length()).isEqualTo(mm(181));
        assertThat(rough.holds(FRONT)).isTrue();
        assertThat(FRONT.holds(rough)).isFalse();
        assertThat(FRONT.withLength(mm(1)).withWidth(mm(2)).withThickness(mm(3)))
                .isEqualTo(new Size(mm(1), mm(2), mm(3)));
    }

    @Test
    void aSizeWithNothingInOneDirectionIsNotReal() {
        assertThat(FRONT.isReal()).isTrue();
        assertThat(FRONT.withWidth(Length.ZERO).isReal()).isFalse();
        assertThat(FRONT.withThickness(mm(-1)).isReal()).isFalse();
    }

    @Test
    void areaAndVolumeAreExact() {
        assertThat(FRONT.faceArea().amount()).isEqualTo(BigFraction.of(178 * 863, 10));
        assertThat(FRONT.volume()).isEqualTo(new Quantity(BigFraction.of(178 * 863 * 9, 10), Dimension.VOLUME));
    }

    @Test
    void aLengthRangeKnowsWhatItHolds() {
        LengthRange range = LengthRange.between(mm(9), mm(6));
        assertThat(range.contains(mm(6))).isTrue();
        assertThat(range.contains(mm(9))).isTrue();
        assertThat(range.contains(mm(10))).isFalse();
        assertThat(range.span()).isEqualTo(mm(3));
        assertThat(range.middle()).isEqualTo(Length.ofMm(BigFraction.of(15, 2)));
        assertThat(range.clamp(mm(20))).isEqualTo(mm(9));
        assertThat(range.clamp(mm(1))).isEqualTo(mm(6));
        assertThat(range.meets(LengthRange.only(mm(9)))).isTrue();
        assertThat(range.meets(range.plus(mm(4)))).isFalse();
    }

    @Test
    void aReversedRangeIsRefusedToAUserAndAMistakeOfTheProgram() {
        assertThat(LengthRange.of(mm(9), mm(6)).refusal().map(Refusal::kind)).contains(Refusal.Kind.REVERSED_RANGE);
        assertThat(LengthRange.of(mm(6), mm(6)).found()).contains(LengthRange.only(mm(6)));
        assertThatThrownBy(() -> new LengthRange(mm(9), mm(6))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRangeOfQuantitiesIsOfOneKind() {
        Quantity six = Quantity.of(mm(6));
        Quantity nine = Quantity.of(mm(9));
        QuantityRange range = QuantityRange.of(six, nine).found().orElseThrow();
        assertThat(range.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(range.contains(Quantity.of(mm(7)))).isTrue();
        assertThat(range.contains(Quantity.number(7))).isFalse();
        assertThat(range.asLengths()).contains(LengthRange.between(mm(6), mm(9)));
        assertThat(QuantityRange.of(nine, six).refusal().map(Refusal::kind)).contains(Refusal.Kind.REVERSED_RANGE);
        assertThat(QuantityRange.of(six, Quantity.number(9)).refusal().map(Refusal::text))
                .contains("a range cannot run from a length to a number");
        Quantity low = Unit.DEGC.of(BigFraction.of(-5));
        Quantity high = Unit.DEGF.of(BigFraction.of(80));
        assertThat(QuantityRange.of(low, high).found().flatMap(QuantityRange::asLengths)).isEmpty();
        assertThatThrownBy(() -> new QuantityRange(nine, six)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Length mm(long mm) {
        return Length.ofMm(mm);
    }
}
