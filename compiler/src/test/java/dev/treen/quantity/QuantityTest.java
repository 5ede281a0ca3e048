package dev.treen.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {
    private static final Quantity LENGTH = Quantity.of(Length.ofMm(6));
    private static final Quantity COUNT = Quantity.number(3);

    @ParameterizedTest
    @CsvSource({
            "LENGTH, LENGTH, AREA",
            "LENGTH, AREA, VOLUME",
            "NUMBER, MONEY, MONEY",
            "NUMBER, NUMBER, NUMBER",
            "NUMBER, ANGLE, ANGLE",
            "AREA, AREA,",
            "VOLUME, LENGTH,",
            "MASS, LENGTH,",
            "ANGLE, ANGLE,",
            "TEMPERATURE, NUMBER,"
    })
    void productsThatHaveANameAreAllowedEitherWayRound(Dimension a, Dimension b, Dimension product) {
        assertThat(a.product(b)).isEqualTo(Optional.ofNullable(product));
        assertThat(b.product(a)).isEqualTo(a.product(b));
    }

    @ParameterizedTest
    @CsvSource({
            "AREA, LENGTH, LENGTH",
            "VOLUME, LENGTH, AREA",
            "VOLUME, AREA, LENGTH",
            "LENGTH, LENGTH, NUMBER",
            "MONEY, MONEY, NUMBER",
            "MASS, NUMBER, MASS",
            "LENGTH, AREA,",
            "NUMBER, LENGTH,",
            "MONEY, AREA,",
            "TEMPERATURE, TEMPERATURE,"
    })
    void quotientsUndoProducts(Dimension a, Dimension b, Dimension quotient) {
        assertThat(a.quotient(b)).isEqualTo(Optional.ofNullable(quotient));
    }

    @Test
    void whateverMultipliesDividesBack() {
        for (Dimension a : Dimension.values()) {
            for (Dimension b : Dimension.values()) {
                a.product(b).ifPresent(product -> assertThat(product.quotient(b)).contains(a));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void onlyLikeAddsToLikeAndTemperaturesDoNotAdd(Dimension a) {
        assertThat(a.phrase()).matches("an? [a-z ]+");
        for (Dimension b : Dimension.values()) {
            assertThat(a.sum(b).isPresent()).isEqualTo(a == b && a != Dimension.TEMPERATURE);
        }
    }

    @Test
    void aLengthAddedToACountIsRefusedInWords() {
        assertThat(COUNT.plus(LENGTH).refusal())
                .contains(new Refusal(Refusal.Kind.MISMATCH, "a length cannot be added to a number"));
        assertThat(LENGTH.minus(COUNT).refusal().map(Refusal::text)).contains("a number cannot be taken from a length");
        assertThat(COUNT.dividedBy(LENGTH).refusal().map(Refusal::text))
                .contains("a number cannot be divided by a length");
    }

    @Test
    void arithmeticKeepsKindAndExactness() {
        assertThat(LENGTH.dividedBy(COUNT).then(q -> q.times(COUNT)).found()).contains(LENGTH);
        assertThat(LENGTH.times(LENGTH).then(q -> q.dividedBy(LENGTH)).found()).contains(LENGTH);
        assertThat(LENGTH.plus(LENGTH).then(q -> q.dividedBy(LENGTH)).found()).contains(Quantity.number(2));
        assertThat(LENGTH.negate().then(Quantity::abs).found()).contains(LENGTH);
        assertThat(LENGTH.compareWith(LENGTH).found()).contains(0);
        assertThat(LENGTH.compareWith(COUNT).refusal()).isPresent();
    }

    @ParameterizedTest
    @EnumSource
    void divisionByZeroIsRefusedForEveryKind(Dimension dimension) {
        Quantity zero = new Quantity(BigFraction.ZERO, dimension);
        for (Dimension other : Dimension.values()) {
            assertThat(new Quantity(BigFraction.ONE, other).dividedBy(zero).found()).isEmpty();
        }
        assertThat(LENGTH.dividedBy(Quantity.number(0)).refusal().map(Refusal::kind))
                .contains(Refusal.Kind.DIVISION_BY_ZERO);
    }

    @Test
    void roundingToAStep() {
        Quantity seven = Quantity.of(Length.ofMm(7));
        Quantity five = Quantity.of(Length.ofMm(5));
        assertThat(seven.roundTo(five).found()).contains(five);
        assertThat(seven.roundDownTo(five).found()).contains(five);
        assertThat(seven.roundUpTo(five).found()).contains(Quantity.of(Length.ofMm(10)));
        assertThat(seven.roundTo(COUNT).refusal().map(Refusal::kind)).contains(Refusal.Kind.MISMATCH);
        assertThat(seven.roundTo(Quantity.of(Length.ZERO)).refusal().map(Refusal::kind))
                .contains(Refusal.Kind.STEP_NOT_POSITIVE);
    }

    @Test
    void squaringForEverIsRefusedBeforeItHangs() {
        Outcome<Quantity> value = Outcome.of(Quantity.number(BigFraction.of(10, 3)));
        for (int i = 0; i < 100; i++) {
            value = value.then(q -> q.times(q));
        }
        assertThat(value.refusal().map(Refusal::kind)).contains(Refusal.Kind.TOO_LARGE);
    }

    @Test
    void aTemperatureHasNoOpposite() {
        Quantity warm = Unit.DEGC.of(BigFraction.of(21));
        assertThat(warm.negate().refusal()).isPresent();
        assertThat(warm.abs().found()).contains(warm);
        assertThat(warm.plus(warm).refusal()).isPresent();
    }

    @Test
    void aQuantityIsAskedForWhatItIs() {
        assertThat(LENGTH.asLength()).contains(Length.ofMm(6));
        assertThat(LENGTH.asNumber()).isEmpty();
        assertThat(COUNT.asWhole()).hasValue(3);
        assertThat(Quantity.number(BigFraction.of(1, 2)).asWhole()).isEmpty();
        assertThat(Quantity.number(1L << 31).asWhole()).isEmpty();
        assertThat(Quantity.number(-1L << 31).asWhole()).hasValue(Integer.MIN_VALUE);
        assertThat(Quantity.of(Angle.RIGHT).asAngle()).contains(Angle.RIGHT);
    }
}
