package dev.treen.wood;

/** How much glue, pressure and finish a job takes (rules ). */
public final class Consumables {

    private Consumables() {
    }

    /** Glue in ml for an area in mm² at a film in mm, both faces together and nothing spilt. */
    public static double glueMl(double areaMm2, double filmMm) {
        return areaMm2 * filmMm / 1000;
    }

    /** Glue to set out in ml, with the standard film and the factor for spill and both faces. */
    public static double glueToMixMl(double areaMm2, Figures figures) {
        return glueMl(areaMm2, figures.value("glue.film")) * figures.value("glue.spill");
    }

    /** Clamping force in N over an area in mm² at a pressure in MPa. */
    public static double clampingN(double areaMm2, double pressureMpa) {
        return areaMm2 * pressureMpa;
    }

    /** Finish in litres for an area in m², so many coats, at the label's rate in m² a litre. */
    public static double finishLitres(double areaM2, int coats, double m2PerLitre) {
        return areaM2 * coats / m2PerLitre;
    }
}
