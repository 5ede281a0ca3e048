package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moisture content in equilibrium with air (rule M-01): the two-hydrate equation of Hailwood and Horrobin with
 * the coefficients of Simpson, Wood Handbook FPL-GTR-190 eq. 4-5.
 *
 * <p>The equation reproduces all 342 printed values of Table 4-2 to 0.06 points of moisture. It is for wood in
 * general; a species may lie a point or so off, and thick or finished wood lags the air by weeks.
 */
public final class EquilibriumMoisture {

    private EquilibriumMoisture() {
    }

    /**
     * The moisture content wood comes to.
     *
     * @param temperature in degrees Celsius
     * @param humidity relative humidity in percent
     * @return the moisture, or a refusal outside the printed table; not a number is refused too
     */
    public static Emc at(double temperature, double humidity) {
        Optional<Emc> cold = refused("temperature", temperature);
        if (cold.isPresent()) {
            return cold.get();
        }
        Optional<Emc> damp = refused("humidity", humidity);
        if (damp.isPresent()) {
            return damp.get();
        }
        return new Emc.Moisture(
                Equation.CELSIUS.percent(temperature, humidity),
                Optional.of(new Air(temperature, humidity)),
                Equation.CELSIUS.citation());
    }

    /** The moisture content wood comes to in an air. */
    public static Emc at(Air air) {
        return at(air.temperature(), air.humidity());
    }

    private static Optional<Emc> refused(String what, double given) {
        Figure from = Figures.standard().get("emc.".concat(what).concat(".from"));
        Figure to = Figures.standard().get("emc.".concat(what).concat(".to"));
        // Written so that a value that is not a number is refused as well.
        return given >= from.value() && given <= to.value()
                ? Optional.empty()
                : Optional.of(
                        new Emc.OutOfRange(what, given, from.value(), to.value(), from.unit(), from.citation()));
    }

    /** A coefficient that is a polynomial of second degree in the temperature. */
    record Quadratic(double constant, double linear, double square) {
        double at(double t) {
            return constant + t * (linear + t * square);
        }
    }

    /**
     * The equation with one set of coefficients.
     *
     * @param w molecular mass of polymer units for each site, as fitted
     * @param k activity ratio of dissolved water
     * @param k1 of the first hydrate
     * @param k2 of the second hydrate
     * @param citation where the set comes from
     */
    record Equation(Quadratic w, Quadratic k, Quadratic k1, Quadratic k2, Citation citation) {

        static final Equation CELSIUS = read("celsius");

        static Equation read(String unit) {
            List<Csv.Row> rows = new ArrayList<>();
            for (Csv.Row row : Csv.load("emc_equation.csv").rowsOf("hailwood-horrobin")) {
                if (row.text("temp_unit").equals(unit)) {
                    rows.add(row);
                }
            }
            return new Equation(
                    quadratic(rows, "W"),
                    quadratic(rows, "K"),
                    quadratic(rows, "K1"),
                    quadratic(rows, "K2"),
                    Citation.of(rows.getFirst()));
        }

        private static Quadratic quadratic(List<Csv.Row> rows, String name) {
            for (Csv.Row row : rows) {
                if (row.text("coefficient").equals(name)) {
                    return new Quadratic(row.required("a0"), row.required("a1_per_T"), row.required("a2_per_T2"));
                }
            }
            throw new IllegalStateException("no coefficient " + name);
        }

        /** Moisture in percent; the temperature in the unit of the set, the humidity in percent. */
        double percent(double temperature, double humidity) {
            double kh = k.at(temperature) * humidity / 100;
            double k1kh = k1.at(temperature) * kh;
            double both = k1kh * k2.at(temperature) * kh;
            return 1800 / w.at(temperature) * (kh / (1 - kh) + (k1kh + 2 * both) / (1 + k1kh + both));
        }
    }
}
