package dev.treen.wood;

/**
 * A solid panel in the grooves of its frame (rules M-05 to M-07, derived; limits in the data file). The frame's
 * own width hardly matters: its rails run along the grain.
 */
public final class Panels {

    private Panels() {
    }

    /** How a panel is kept from wandering. */
    public enum Hold {
        /** Not at all: it may be pushed hard to one side. */
        FREE,
        /** Pinned or glued for a short length at the middle of each rail: both edges share the movement. */
        MIDDLE,
        /** Glued along one edge: the other edge makes the whole movement. */
        ONE_EDGE
    }

    /**
     * A panel as it stands at the bench; all lengths in mm, across the panel's grain.
     *
     * @param openingMm between the frame's shoulders
     * @param grooveMm depth of each groove
     * @param panelMm width of the panel
     * @param hold how it is kept
     * @param coefficient how the panel's width moves
     * @param seasons its moisture
     */
    public record Panel(
            double openingMm,
            double grooveMm,
            double panelMm,
            Hold hold,
            Coefficient coefficient,
            Seasons seasons) {

        /** Room left beyond each edge at the bench, the panel lying in the middle. */
        public double gapMm() {
            return grooveMm - (panelMm - openingMm) / 2;
        }
    }

    /**
     * A panel at its wettest.
     *
     * @param gapMm room left beyond an edge; negative when the panel presses
     * @param gapAtBenchMm room beyond each edge at the bench
     * @param swelling growth of the whole panel from the bench
     * @param verdict against {@code panel-tight}
     */
    public record Tight(double gapMm, double gapAtBenchMm, Change swelling, Verdict verdict) {}

    /**
     * Whether a panel has room when wettest (M-05): {@code gap − swelling / 2} a side, or the whole swelling at the
     * free edge of a panel glued along the other.
     */
    public static Tight tight(Panel panel, Figures figures) {
        Change swelling = Movement.swelling(panel.panelMm(), panel.coefficient(), panel.seasons());
        double share = switch (panel.hold()) {
            case FREE, MIDDLE -> swelling.changeMm() / 2;
            case ONE_EDGE -> swelling.changeMm();
        };
        double gap = panel.gapMm() - share;
        Verdict verdict = Verdict.below(gap, figures.get("panel-tight.error"))
                .or(Verdict.below(gap, figures.get("panel-tight.warning")));
        return new Tight(gap, panel.gapMm(), swelling, verdict);
    }

    /**
     * A panel at its driest.
     *
     * @param coverMm how far the worse edge still reaches into its groove; negative when it is out
     * @param shrinking change of the whole panel from the bench; negative
     * @param verdict against {@code panel-loose}
     */
    public record Loose(double coverMm, Change shrinking, Verdict verdict) {}

    /**
     * Whether a panel stays in its grooves when driest (M-06). Free, it may lie against the bottom of one groove, so
     * the other covers {@code P − opening − groove}; pinned at the middle each covers half of {@code P − opening};
     * glued at one edge the other draws back by the whole shrinkage.
     */
    public static Loose loose(Panel panel, Figures figures) {
        Change shrinking = Movement.shrinking(panel.panelMm(), panel.coefficient(), panel.seasons());
        double over = shrinking.afterMm() - panel.openingMm();
        double cover = switch (panel.hold()) {
            case FREE -> over - panel.grooveMm();
            case MIDDLE -> over / 2;
            case ONE_EDGE -> panel.grooveMm() - panel.gapMm() + shrinking.changeMm();
        };
        Figure share = figures.get("panel-loose.warning.share");
        Verdict little = cover < share.value() * panel.grooveMm() ? Verdict.crossed(share) : Verdict.FINE;
        Verdict verdict = Verdict.atOrBelow(cover, figures.get("panel-loose.error"))
                .or(Verdict.below(cover, figures.get("panel-loose.warning")))
                .or(little);
        return new Loose(cover, shrinking, verdict);
    }

    /**
     * The widest panel that stays free.
     *
     * @param panelMm its width at the bench
     * @param gapMm the gap to leave beyond each edge at the bench: half the swelling and the clearance
     * @param clearanceMm what is left a side when wettest, for making and finish
     * @param swelling growth of that panel
     */
    public record Widest(double panelMm, double gapMm, double clearanceMm, Change swelling) {}

    /**
     * The widest safe panel at the bench (M-05): {@code (O + 2d − 2c) / (1 + strain)}; this is what a gap of
     * {@code auto} means.
     *
     * @param openingMm between the shoulders
     * @param grooveMm depth of each groove
     * @param clearanceMm room a side for making, such as the figure {@code panel.making}
     */
    public static Widest widest(
            double openingMm, double grooveMm, double clearanceMm, Coefficient coefficient, Seasons seasons) {
        double between = openingMm + 2 * grooveMm;
        double panel = (between - 2 * clearanceMm)
                / Movement.swelling(1, coefficient, seasons).afterMm();
        return new Widest(
                panel, (between - panel) / 2, clearanceMm, Movement.swelling(panel, coefficient, seasons));
    }

    /**
     * The gap a fielded panel's shoulder needs.
     *
     * @param neededMm gap at the bench that still shows a little when wettest
     * @param swelling growth of the whole panel
     * @param showsMm what is to be seen when wettest
     */
    public record Shoulder(double neededMm, Change swelling, double showsMm) {

        /**
         * How a gap of the drawing stands: an error if the shoulder strikes, a warning if less than the gap to be
         * seen is left.
         */
        public Verdict judge(double gapMm, Figures figures) {
            double left = gapMm - swelling.changeMm() / 2;
            return Verdict.below(left, figures.get("shoulder-tight.error"))
                    .or(Verdict.below(left, figures.get("shoulder-tight.warning")));
        }
    }

    /** The gap to leave beside the shoulder of a fielded panel (M-07): half the swelling and a little to be seen. */
    public static Shoulder shoulder(double panelMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change swelling = Movement.swelling(panelMm, coefficient, seasons);
        double shows = figures.value("shoulder-tight.warning");
        return new Shoulder(swelling.changeMm() / 2 + shows, swelling, shows);
    }
}
