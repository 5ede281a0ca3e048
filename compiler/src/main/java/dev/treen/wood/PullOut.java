package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * How hard a screw or nail is to pull out (rule S-04): means of tests, with a share of them to work with. Not a
 * structural design; loads over heads and on walls are for the local code and licensed practice.
 */
public final class PullOut {

    private PullOut() {
    }

    /** What holds. */
    public enum Fastener {
        /** A wood screw, by its threaded length. */
        WOOD_SCREW("F059", 2, "screw"),
        /** A plain nail, driven dry. */
        PLAIN_NAIL("F068", 2.5, "nail"),
        /** A ring-shanked nail. */
        RINGED_NAIL("F069", 2, "nail");

        private final String row;
        private final double power;
        private final String kind;

        Fastener(String row, double power, String kind) {
            this.row = row;
            this.power = power;
            this.kind = kind;
        }
    }

    /** The grain a fastener enters. */
    public enum Grain {
        /** Across the grain. */
        SIDE,
        /** Along the grain: weak, and not allowed where a structure relies on it. */
        END
    }

    /**
     * The pull a fastener bears.
     *
     * @param ultimateN mean force at which it comes out, in N
     * @param workingN force to work with, in N
     * @param coefficient number of the formula, for N and mm
     * @param power exponent of the specific gravity
     * @param citation where the formula comes from
     */
    public record Pull(double ultimateN, double workingN, double coefficient, double power, Citation citation) {}

    /**
     * The pull by {@code number · G^power · D · L}.
     *
     * @param specificGravity G, ovendry mass on the volume at 12 %
     * @param shankMm D
     * @param inWoodMm L, threaded length in the wood, or the nail's length in it
     */
    public static Pull of(
            Fastener fastener,
            Grain grain,
            double specificGravity,
            double shankMm,
            double inWoodMm,
            Figures figures) {
        Csv.Row row = Rows.of(fastener.row);
        double number = row.required("value");
        double side = number * Math.pow(specificGravity, fastener.power) * shankMm * inWoodMm;
        double ultimate = switch (grain) {
            case SIDE -> side;
            case END -> side * figures.value("pull-out.end-grain." + fastener.kind);
        };
        double working = ultimate * figures.value("pull-out.working." + fastener.kind);
        return new Pull(ultimate, working, number, fastener.power, Citation.of(row));
    }

    /** The specific gravity to reckon with: at 12 % where known, else on green volume, which is the safe side. */
    public static OptionalDouble specificGravity(Species species) {
        if (species.strength().isEmpty()) {
            return OptionalDouble.empty();
        }
        Strength strength = species.strength().get();
        return strength.specificGravity().isPresent()
                ? strength.specificGravity()
                : strength.basicSpecificGravity();
    }

    /** Whether an edge of this thickness takes a screw without splitting ({@code will-split}, rule S-05). */
    public static Verdict edge(double thicknessMm, double shankMm, Figures figures) {
        Figure times = figures.get("will-split.edge");
        return thicknessMm < times.value() * shankMm ? Verdict.crossed(times) : Verdict.FINE;
    }

    private static final class Rows {
        static final Csv FASTENERS = Csv.load("fasteners.csv");

        static Csv.Row of(String id) {
            return FASTENERS.rowsOf(id).getFirst();
        }
    }
}
