package dev.treen.wood;

/** How moisture opens a mitre (rules M-15 and M-16, derived). */
public final class Mitres {

    private Mitres() {
    }

    /** The end of a mitre that opens. */
    public enum End {
        /** The inside corner, when the wood dries. */
        HEEL,
        /** The outside corner, when it swells. */
        TOE,
        /** Neither. */
        NONE
    }

    /**
     * An opened mitre.
     *
     * @param gapMm at the open end
     * @param open which end that is
     * @param angleChangeDegrees change of each member's cut, exact; negative on drying
     * @param change of the member's width, or of its thickness in a box corner
     * @param verdict against {@code mitre-opens}
     */
    public record Opened(double gapMm, End open, double angleChangeDegrees, Change change, Verdict verdict) {}

    /**
     * A mitre between two like members, when its wood goes from one moisture to another.
     *
     * <p>With the toe at the origin the cut runs to the heel at {@code (w·cot φ, w)}; swelling by ε takes the heel to
     * {@code (w·cot φ, w(1 + ε))}, so {@code tan φ' = (1 + ε)·tan φ} and the gap at the open end is
     * {@code w·ε·2·cos φ}, which is √2·w·ε at 45°.
     *
     * @param widthMm of a flat frame's member, or the wall's thickness in a box corner (M-16)
     * @param coefficient of that size
     * @param mitreDegrees angle of the cut to the outer edge, 45 in a square frame
     */
    public static Opened opened(
            double widthMm,
            Coefficient coefficient,
            double fromPercent,
            double toPercent,
            double mitreDegrees,
            Figures figures) {
        Change change = Movement.change(widthMm, coefficient, fromPercent, toPercent);
        double phi = Math.toRadians(mitreDegrees);
        double strain = Movement.change(1, coefficient, fromPercent, toPercent).changeMm();
        double gap = Math.abs(change.changeMm()) * 2 * Math.cos(phi);
        double turned = Math.toDegrees(Math.atan((1 + strain) * Math.tan(phi))) - mitreDegrees;
        End open = change.changeMm() < 0 ? End.HEEL : change.changeMm() > 0 ? End.TOE : End.NONE;
        Verdict verdict = Verdict.above(gap, figures.get("mitre-opens.error"))
                .or(Verdict.above(gap, figures.get("mitre-opens.warning")));
        return new Opened(gap, open, turned, change, verdict);
    }

    /** The season that opens a square mitre most. */
    public static Opened worst(double widthMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Opened wet = opened(widthMm, coefficient, seasons.bench(), seasons.wettest(), 45, figures);
        Opened dry = opened(widthMm, coefficient, seasons.bench(), seasons.driest(), 45, figures);
        return dry.gapMm() >= wet.gapMm() ? dry : wet;
    }

    /**
     * The widest member of a square flat frame whose mitres stay within a gap, in mm; infinite where nothing moves.
     *
     * @param gapMm the gap allowed, such as the figure {@code mitre-opens.warning}
     */
    public static double widestMemberMm(double gapMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return gapMm / worst(1, coefficient, seasons, figures).gapMm();
    }
}
