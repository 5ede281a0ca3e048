package dev.treen.wood;

import java.util.List;
import java.util.Optional;

/**
 * The air a piece lives in, through the year. Seasonal means are meant, not one damp day: thick or finished
 * wood lags by weeks (common practice, no source).
 */
public sealed interface Climate {

    /** The greatest moisture content the wood comes to, or why it cannot be told. */
    Emc wettest();

    /** The least moisture content the wood comes to, or why it cannot be told. */
    Emc driest();

    /**
     * Ranges of humidity and temperature that may meet in any way. Moisture falls as temperature rises, so the
     * wettest wood is at the greatest humidity and the least temperature, the driest at the opposite corner. (Below
     * 4 °C the equation turns the other way by less than 0.03 points, which is less than its own error.)
     *
     * @param humidityFrom least relative humidity in percent
     * @param humidityTo greatest relative humidity in percent
     * @param temperatureFrom least temperature in degrees Celsius
     * @param temperatureTo greatest temperature in degrees Celsius
     */
    record Range(double humidityFrom, double humidityTo, double temperatureFrom, double temperatureTo)
            implements Climate {
        @Override
        public Emc wettest() {
            return EquilibriumMoisture.at(
                    Math.min(temperatureFrom, temperatureTo), Math.max(humidityFrom, humidityTo));
        }

        @Override
        public Emc driest() {
            return EquilibriumMoisture.at(
                    Math.max(temperatureFrom, temperatureTo), Math.min(humidityFrom, humidityTo));
        }
    }

    /**
     * The mean air of each month, January first.
     *
     * @param months twelve airs
     */
    record Months(List<Air> months) implements Climate {
        /**
         * @throws IllegalArgumentException if there are not twelve: the caller checks what a user wrote
         */
        public Months {
            months = List.copyOf(months);
            if (months.size() != 12) {
                throw new IllegalArgumentException("twelve months wanted, not " + months.size());
            }
        }

        @Override
        public Emc wettest() {
            return extreme(1);
        }

        @Override
        public Emc driest() {
            return extreme(-1);
        }

        /** The moisture of each month, January first; a month outside the tables is a refusal in its place. */
        public List<Emc> byMonth() {
            return months.stream().map(EquilibriumMoisture::at).toList();
        }

        /** The month that is farthest in one direction; the first refusal if any month is refused. */
        private Emc extreme(int sign) {
            Optional<Emc.Moisture> best = Optional.empty();
            for (Emc emc : byMonth()) {
                switch (emc) {
                    case Emc.OutOfRange refused -> {
                        return refused;
                    }
                    case Emc.Moisture month -> {
                        if (best.isEmpty() || sign * (month.percent() - best.get().percent()) > 0) {
                            best = Optional.of(month);
                        }
                    }
                }
            }
            return best.orElseThrow();
        }
    }

    /**
     * A climate given by the moisture content of the wood itself, as measured or taken from a table.
     *
     * @param driestPercent least moisture content in percent
     * @param wettestPercent greatest moisture content in percent
     * @param citation who says so
     */
    record Given(double driestPercent, double wettestPercent, Citation citation) implements Climate {
        @Override
        public Emc wettest() {
            return new Emc.Moisture(Math.max(driestPercent, wettestPercent), Optional.empty(), citation);
        }

        @Override
        public Emc driest() {
            return new Emc.Moisture(Math.min(driestPercent, wettestPercent), Optional.empty(), citation);
        }
    }
}
