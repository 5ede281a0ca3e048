package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class EquilibriumMoistureTest {

    /**
     * All 342 values of Wood Handbook FPL-GTR-190 Table 4-2. The table prints one decimal (0.05) and was made from the
     * Fahrenheit form of the equation; the largest distance met is 0.056.
     */
    @ParameterizedTest(name = "{1} degF, {2} % RH: {3} % ({5})")
    @CsvFileSource(resources = "emc.csv", numLinesToSkip = 1)
    void printedTable(double ignored, double fahrenheit, double humidity, double printed, double column,
            String source) {
        assertThat(source).contains("Table 4-2");
        double celsius = (fahrenheit - 32) / 1.8;
        assertThat(percent(EquilibriumMoisture.at(celsius, humidity))).isCloseTo(printed, within(0.06));
        assertThat(percent(EquilibriumMoisture.at(celsius, humidity))).isCloseTo(column, within(0.0051));
    }

    /** The Fahrenheit set of the same equation is a second route (Wood Handbook eq. 4-5); seeded. */
    @Test
    void bothSetsOfCoefficientsAgree() {
        EquilibriumMoisture.Equation fahrenheit = EquilibriumMoisture.Equation.read("fahrenheit");
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            double t = -1 + 94 * random.nextDouble();
            double h = 5 + 90 * random.nextDouble();
            assertThat(percent(EquilibriumMoisture.at(t, h)))
                    .isCloseTo(fahrenheit.percent(t * 1.8 + 32, h), within(0.02));
        }
    }

    @ParameterizedTest
    @CsvSource({
            "20, 4.9, humidity", "20, 95.1, humidity", "-1.2, 50, temperature", "93.4, 50, temperature",
            "NaN, 50, temperature", "20, NaN, humidity", "20, 0, humidity", "20, 100, humidity"
    })
    void refusesWhatTheTableDoesNotCover(double temperature, double humidity, String what) {
        assertThat(EquilibriumMoisture.at(temperature, humidity))
                .isInstanceOfSatisfying(Emc.OutOfRange.class, refused -> {
                    assertThat(refused.what()).isEqualTo(what);
                    assertThat(refused.citation().source()).contains("Table 4-2");
                    assertThat(refused.from()).isLessThan(refused.to());
                });
    }

    /** 18 to 24 degC and 35 to 65 %: 6.88 and 12.06 % (rule M-01, by hand from the same equation). */
    @Test
    void extremesOfARange() {
        Climate kitchen = new Climate.Range(35, 65, 18, 24);
        assertThat(percent(kitchen.wettest())).isCloseTo(12.06, within(0.005));
        assertThat(percent(kitchen.driest())).isCloseTo(6.88, within(0.005));
        assertThat(new Climate.Range(65, 35, 24, 18).wettest()).isEqualTo(kitchen.wettest());
    }

    /** The corners bound every air within the range, to within a third of the printed table's rounding; seeded. */
    @Test
    void cornersBoundTheRange() {
        Random random = new Random(12);
        for (int i = 0; i < 500; i++) {
            Climate.Range range = new Climate.Range(
                    5 + 90 * random.nextDouble(),
                    5 + 90 * random.nextDouble(),
                    -1 + 94 * random.nextDouble(),
                    -1 + 94 * random.nextDouble());
            double wet = percent(range.wettest());
            double dry = percent(range.driest());
            for (int j = 0; j < 20; j++) {
                double within = percent(EquilibriumMoisture.at(
                        mix(range.temperatureFrom(), range.temperatureTo(), random.nextDouble()),
                        mix(range.humidityFrom(), range.humidityTo(), random.nextDouble())));
                assertThat(within).isBetween(dry - 0.03, wet + 0.03);
            }
        }
    }

    @Test
    void extremesOfMonths() {
        // Invented for a kitchen: dry and warm in January, damp in August.
        List<Air> months = List.of(
                new Air(21, 32), new Air(21, 34), new Air(20, 40), new Air(19, 48), new Air(20, 55), new Air(21, 60),
                new Air(23, 64), new Air(22, 66), new Air(20, 60), new Air(20, 52), new Air(20, 42), new Air(21, 35));
        Climate.Months year = new Climate.Months(months);
        assertThat(year.byMonth()).hasSize(12);
        assertThat(year.wettest()).isEqualTo(EquilibriumMoisture.at(22, 66));
        assertThat(year.driest()).isEqualTo(EquilibriumMoisture.at(21, 32));
    }

    @Test
    void oneMonthOutsideTheTablesRefusesTheYear() {
        List<Air> months = new java.util.ArrayList<>(java.util.Collections.nCopies(12, new Air(20, 50)));
        months.set(1, new Air(-8, 70));
        Climate.Months year = new Climate.Months(months);
        assertThat(year.wettest()).isInstanceOf(Emc.OutOfRange.class);
        assertThat(year.driest()).isInstanceOf(Emc.OutOfRange.class);
        assertThat(year.byMonth()).filteredOn(Emc.Moisture.class::isInstance).hasSize(11);
    }

    @Test
    void moistureMayBeGivenItself() {
        Climate shed = new Climate.Given(12, 18, Citation.declared());
        assertThat(percent(shed.wettest())).isEqualTo(18);
        assertThat(percent(shed.driest())).isEqualTo(12);
    }

    private static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }

    static double percent(Emc emc) {
        return ((Emc.Moisture) emc).percent();
    }
}
