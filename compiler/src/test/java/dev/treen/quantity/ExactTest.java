package dev.treen.quantity;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ExactTest {
    @Test
    void orderAndWholeStepsAgreeWithJavasDecimals() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            BigDecimal a = new BigDecimal(random.nextInt(-3000, 3000)).movePointLeft(random.nextInt(4));
            BigDecimal b = new BigDecimal(random.nextInt(-3000, 3000)).movePointLeft(random.nextInt(4));
            assertThat(Exact.compare(of(a), of(b))).isEqualTo(a.compareTo(b));
            assertThat(Exact.floor(of(a))).isEqualTo(whole(a, RoundingMode.FLOOR));
            assertThat(Exact.ceiling(of(a))).isEqualTo(whole(a, RoundingMode.CEILING));
            assertThat(Exact.nearest(of(a))).isEqualTo(whole(a, RoundingMode.HALF_UP));
            assertThat(Exact.isWhole(of(a))).isEqualTo(a.stripTrailingZeros().scale() <= 0);
        }
    }

    @Test
    void aSignBelowTheLineChangesNothing() {
        BigFraction below = BigFraction.of(7, -2);
        assertThat(Exact.floor(below)).isEqualTo(-4);
        assertThat(Exact.compare(below, BigFraction.of(-3))).isEqualTo(-1);
        assertThat(Exact.compare(below, BigFraction.of(-7, 2))).isZero();
        assertThat(Exact.isWhole(BigFraction.of(4, -2))).isTrue();
    }

    @Test
    void twoNegativesAreNeverComparedByTheLibrary() {
        // Version 1.2 says that −2 is more than −1. Exact.compare stands in for it everywhere.
        noClasses()
                .should()
                .callMethod(BigFraction.class, "compareTo", BigFraction.class)
                .because("it orders two negative fractions the wrong way round; use Exact.compare")
                .check(new ClassFileImporter().importPackages("dev.treen"));
    }

    private static BigInteger whole(BigDecimal value, RoundingMode mode) {
        return value.setScale(0, mode).toBigInteger();
    }

    private static BigFraction of(BigDecimal value) {
        return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }
}
