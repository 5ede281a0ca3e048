package dev.treen.wood;

/**
 * A change of a size with moisture, and the numbers that led to it.
 *
 * @param sizeMm the size before, in mm
 * @param fromPercent moisture content before
 * @param toPercent moisture content after
 * @param coefficient how much the size moves
 * @param method which formula was used
 * @param changeMm the growth in mm; negative is shrinkage
 */
public record Change(
        double sizeMm, double fromPercent, double toPercent, Coefficient coefficient, Method method, double changeMm) {

    /** The formula behind a change. */
    public enum Method {
        /** In proportion to moisture. */
        LINEAR("M-02", "size × C × (to − from)", "Wood Handbook FPL-GTR-190 eq. 13-2"),
        /** From total shrinkage, where moisture leaves the range of the other. */
        FROM_GREEN(
                "M-02b",
                "size × (to − from) / (fibre saturation × 100 / S − fibre saturation + from)",
                "Wood Handbook FPL-GTR-190 eq. 13-3 (form from memory)");

        private final String rule;
        private final String formula;
        private final String source;

        Method(String rule, String formula, String source) {
            this.rule = rule;
            this.formula = formula;
            this.source = source;
        }

        /** The number of the rule. */
        public String rule() {
            return rule;
        }

        /** The formula in words and signs; C is the coefficient, S the total shrinkage in percent. */
        public String formula() {
            return formula;
        }

        /** The document the formula is from. */
        public String source() {
            return source;
        }
    }

    /** The size after, in mm. */
    public double afterMm() {
        return sizeMm + changeMm;
    }
}
