package dev.treen.wood;

import java.util.Locale;
import java.util.Optional;

/**
 * How the growth rings lie: their angle to the wide face, 0° in a flat-sawn board, 90° in a quartered one.
 */
public sealed interface Rings {

    /** The angle to compute with, in degrees from 0 to 90. */
    double degrees(Figures figures);

    /**
     * A word of the trade. Flat covers 0 to 30° and counts as 0, rift 30 to 60° and counts as 45, quarter 60 to
     * 90° and counts as 60: the end of each range that does not flatter (common practice, no source).
     */
    enum Word implements Rings {
        /** Rings about parallel to the wide face. */
        FLAT,
        /** Rings slanting. */
        RIFT,
        /** Rings about upright on the wide face. */
        QUARTER;

        @Override
        public double degrees(Figures figures) {
            return figures.value("rings.".concat(word()));
        }

        /** The word as the language writes it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The word of this spelling. */
        public static Optional<Word> of(String word) {
            for (Word known : values()) {
                if (known.word().equals(word)) {
                    return Optional.of(known);
                }
            }
            return Optional.empty();
        }

        /** The word for a measured angle in degrees. */
        public static Word of(double degrees, Figures figures) {
            double folded = fold(degrees);
            return folded <= figures.value("rings.flat.to")
                    ? FLAT
                    : folded <= figures.value("rings.rift.to") ? RIFT : QUARTER;
        }
    }

    /**
     * A measured angle.
     *
     * @param measured in degrees; an angle past 90 leans the other way and moves the wood alike
     */
    record Angle(double measured) implements Rings {
        @Override
        public double degrees(Figures figures) {
            return fold(measured);
        }
    }

    private static double fold(double degrees) {
        double within = Math.abs(degrees) % 180;
        return within > 90 ? 180 - within : within;
    }
}
