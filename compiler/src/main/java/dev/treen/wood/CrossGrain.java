package dev.treen.wood;

/** Parts whose grain crosses, glued or fixed to one another (rules M-12, M-21 and M-25). */
public final class CrossGrain {

    private CrossGrain() {
    }

    /**
     * A rigid joint across the grain.
     *
     * @param widthMm glued width across the grain of the part that moves
     * @param mismatchMm the greater of what it would grow and what it would shrink, were it free
     * @param worst that change
     * @param verdict against {@code cross-grain-glue}, by width and by mismatch
     */
    public record Glued(double widthMm, double mismatchMm, Change worst, Verdict verdict) {}

    /**
     * A joint glued over {@code widthMm} across the grain (M-12). The strain does not depend on the width but the shear
     * at the ends of the joint does, so practice limits both the width and the mismatch.
     */
    public static Glued glued(double widthMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change worst = worst(widthMm, coefficient, seasons);
        double mismatch = Math.abs(worst.changeMm());
        Verdict verdict = Verdict.above(widthMm, figures.get("cross-grain-glue.width.error"))
                .or(Verdict.above(mismatch, figures.get("cross-grain-glue.mismatch.error")))
                .or(Verdict.above(widthMm, figures.get("cross-grain-glue.width.warning")))
                .or(Verdict.above(mismatch, figures.get("cross-grain-glue.mismatch.warning")));
        return new Glued(widthMm, mismatch, worst, verdict);
    }

    /**
     * The widest joint that may be glued rigidly, in mm, by the mismatch alone; infinite where nothing moves.
     *
     * @param mismatchMm the mismatch allowed, such as the figure {@code cross-grain-glue.mismatch.error}
     */
    public static double widestGluedMm(double mismatchMm, Coefficient coefficient, Seasons seasons) {
        return mismatchMm / Math.abs(worst(1, coefficient, seasons).changeMm());
    }

    /** Whether drying that is held back altogether cracks even clear wood (from memory: Hoadley). */
    public static Verdict restrained(Coefficient coefficient, Seasons seasons, Figures figures) {
        double percent = -100 * Movement.shrinking(1, coefficient, seasons).changeMm();
        return Verdict.above(percent, figures.get("cross-grain-glue.restrained"));
    }

    private static Change worst(double widthMm, Coefficient coefficient, Seasons seasons) {
        Change swelling = Movement.swelling(widthMm, coefficient, seasons);
        Change shrinking = Movement.shrinking(widthMm, coefficient, seasons);
        return swelling.changeMm() >= -shrinking.changeMm() ? swelling : shrinking;
    }

    /**
     * Two fixed lines across the grain of one part.
     *
     * @param movementMm how far the wood between them would move
     * @param worst that change
     * @param slotEaseMm add this to the movement and the shank for the slot that frees one of the lines
     * @param verdict against {@code two-fixed-lines}
     */
    public record Fixed(double movementMm, Change worst, double slotEaseMm, Verdict verdict) {}

    /** A part fixed along two lines {@code apartMm} apart across its grain (M-25). */
    public static Fixed fixedTwice(double apartMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change worst = worst(apartMm, coefficient, seasons);
        double movement = Math.abs(worst.changeMm());
        return new Fixed(
                movement,
                worst,
                figures.value("two-fixed-lines.ease"),
                Verdict.above(movement, figures.get("two-fixed-lines.error")));
    }

    /**
     * Two parts of a carcase joined along a common size.
     *
     * @param differenceMm the greatest difference of their movement, at the wettest or the driest
     * @param verdict against {@code carcase-fights}
     */
    public record Fight(double differenceMm, Verdict verdict) {}

    /**
     * Parts of the same grain run but different movement, joined over {@code widthMm} (M-21):
     * {@code w·|C1 − C2|·ΔM} where both start and end alike.
     */
    public static Fight carcase(
            double widthMm,
            Coefficient one,
            Seasons oneSeasons,
            Coefficient other,
            Seasons otherSeasons,
            Figures figures) {
        double wet = Movement.swelling(widthMm, one, oneSeasons).changeMm()
                - Movement.swelling(widthMm, other, otherSeasons).changeMm();
        double dry = Movement.shrinking(widthMm, one, oneSeasons).changeMm()
                - Movement.shrinking(widthMm, other, otherSeasons).changeMm();
        double difference = Math.max(Math.abs(wet), Math.abs(dry));
        return new Fight(difference, Verdict.above(difference, figures.get("carcase-fights.warning")));
    }
}
