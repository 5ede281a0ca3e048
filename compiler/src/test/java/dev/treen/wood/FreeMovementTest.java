package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rules about room to move, checked by moving the pieces themselves rather than by the rules' own formulas. */
class FreeMovementTest {

    private static final Figures FIGURES = Figures.standard();
    private static final Coefficient CHERRY = Coefficient.given(0.00248, Citation.declared());

    /** Lays a panel in its frame season by season and measures gaps and covers; seeded. */
    @Test
    void panelsLaidInTheirFrames() {
        Random random = new Random(41);
        for (int i = 0; i < 1000; i++) {
            double opening = 50 + 400 * random.nextDouble();
            double groove = 3 + 9 * random.nextDouble();
            double width = opening + 2 * groove - 4 * random.nextDouble();
            Seasons seasons = new Seasons(
                    6 + 8 * random.nextDouble(), 6 + 8 * random.nextDouble(), 6 + 8 * random.nextDouble());
            double wet = width * (1 + 0.00248 * (seasons.wettest() - seasons.bench()));
            double dry = width * (1 + 0.00248 * (seasons.driest() - seasons.bench()));
            double room = opening + 2 * groove;

            assertThat(tight(opening, groove, width, Panels.Hold.FREE, seasons).gapMm())
                    .isCloseTo((room - wet) / 2, within(1e-9));
            assertThat(tight(opening, groove, width, Panels.Hold.MIDDLE, seasons).gapMm())
                    .isCloseTo((room - wet) / 2, within(1e-9));
            // Glued edge: it stays where it lay in the middle of the frame at the bench.
            double glued = (room - width) / 2;
            assertThat(tight(opening, groove, width, Panels.Hold.ONE_EDGE, seasons).gapMm())
                    .isCloseTo(room - (glued + wet), within(1e-9));

            // Pushed against the bottom of the left groove; the right shoulder stands at groove + opening.
            assertThat(loose(opening, groove, width, Panels.Hold.FREE, seasons).coverMm())
                    .isCloseTo(dry - (groove + opening), within(1e-9));
            assertThat(loose(opening, groove, width, Panels.Hold.MIDDLE, seasons).coverMm())
                    .isCloseTo(room / 2 + dry / 2 - (groove + opening), within(1e-9));
            assertThat(loose(opening, groove, width, Panels.Hold.ONE_EDGE, seasons).coverMm())
                    .isCloseTo(glued + dry - (groove + opening), within(1e-9));

            Panels.Widest widest = Panels.widest(opening, groove, 0.5, CHERRY, seasons);
            assertThat(tight(opening, groove, widest.panelMm(), Panels.Hold.FREE, seasons).gapMm())
                    .isCloseTo(0.5, within(1e-9));
            assertThat(widest.gapMm()).isCloseTo(0.5 + widest.swelling().changeMm() / 2, within(1e-9));
        }
    }

    private static Panels.Tight tight(double opening, double groove, double width, Panels.Hold hold, Seasons seasons) {
        return Panels.tight(new Panels.Panel(opening, groove, width, hold, CHERRY, seasons), FIGURES);
    }

    private static Panels.Loose loose(double opening, double groove, double width, Panels.Hold hold, Seasons seasons) {
        return Panels.loose(new Panels.Panel(opening, groove, width, hold, CHERRY, seasons), FIGURES);
    }

    /** The base of the tea caddy: 86.3 mm in grooves of 4 round an opening of 80, at 9 % in a kitchen of 35 to 65 %. */
    @Test
    void theCaddysBase() {
        Climate kitchen = new Climate.Range(35, 65, 18, 24);
        Seasons seasons = new Seasons(
                9,
                EquilibriumMoistureTest.percent(kitchen.wettest()),
                EquilibriumMoistureTest.percent(kitchen.driest()));
        Species cherry = SpeciesTable.published().get("black_cherry").orElseThrow();
        Coefficient flat = Coefficient.of(cherry.coefficients().orElseThrow(), Rings.Word.FLAT, Direction.WIDTH,
                FIGURES);
        Panels.Widest base = Panels.widest(80, 4, FIGURES.value("panel.making"), flat, seasons);
        assertThat(base.panelMm()).isCloseTo(86.3, within(0.05));
        assertThat(base.gapMm()).isCloseTo(0.83, within(0.005));
        assertThat(base.swelling().changeMm()).isCloseTo(0.66, within(0.005));
    }

    @Test
    void panelVerdicts() {
        Seasons seasons = new Seasons(9, 12, 7);
        assertThat(tight(80, 4, 85, Panels.Hold.FREE, seasons).verdict()).isEqualTo(Verdict.FINE);
        assertThat(tight(80, 4, 87, Panels.Hold.FREE, seasons).verdict().limit().orElseThrow().key())
                .isEqualTo("panel-tight.warning");
        assertThat(tight(80, 4, 88, Panels.Hold.FREE, seasons).verdict().grade()).isEqualTo(Verdict.Grade.ERROR);
        assertThat(loose(80, 4, 87, Panels.Hold.FREE, seasons).verdict()).isEqualTo(Verdict.FINE);
        assertThat(loose(80, 4, 85, Panels.Hold.FREE, seasons).verdict().grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(loose(80, 4, 84, Panels.Hold.FREE, seasons).verdict().grade()).isEqualTo(Verdict.Grade.ERROR);
        // A deep groove asks for a third of its depth (common practice, no source).
        assertThat(loose(80, 9, 92, Panels.Hold.FREE, seasons).verdict().limit().orElseThrow().key())
                .isEqualTo("panel-loose.warning.share");
        Panels.Shoulder shoulder = Panels.shoulder(314, CHERRY, seasons, FIGURES);
        assertThat(shoulder.judge(shoulder.neededMm() + 0.01, FIGURES)).isEqualTo(Verdict.FINE);
        assertThat(shoulder.judge(shoulder.neededMm() - 0.01, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(shoulder.judge(shoulder.neededMm() - 0.31, FIGURES).grade()).isEqualTo(Verdict.Grade.ERROR);
    }

    /** A peg stands still while the slot travels with the top; both ends must clear it in every season; seeded. */
    @Test
    void pegsInTheirSlots() {
        Random random = new Random(42);
        for (int i = 0; i < 500; i++) {
            double x = 20 + 400 * random.nextDouble();
            Seasons seasons = new Seasons(
                    6 + 8 * random.nextDouble(), 6 + 8 * random.nextDouble(), 6 + 8 * random.nextDouble());
            Slot slot = Breadboards.pegSlot(x, 8, CHERRY, seasons, FIGURES);
            assertThat(slot.inwardMm() + 8 + slot.outwardMm()).isCloseTo(slot.lengthMm(), within(1e-9));
            for (double moisture : new double[]{seasons.wettest(), seasons.driest()}) {
                double moved = x * 0.00248 * (moisture - seasons.bench());
                double inner = x - 4 - slot.inwardMm() + moved;
                double outer = x + 4 + slot.outwardMm() + moved;
                assertThat(x - 4 - inner).isGreaterThanOrEqualTo(0.25 - 1e-9);
                assertThat(outer - (x + 4)).isGreaterThanOrEqualTo(0.25 - 1e-9);
            }
        }
    }

    /** Moves the corners of two mitred members and measures the gap and the turn of the cut; seeded. */
    @Test
    void mitresByMovedPoints() {
        Random random = new Random(43);
        for (int i = 0; i < 500; i++) {
            double width = 15 + 80 * random.nextDouble();
            double phi = Math.toRadians(25 + 40 * random.nextDouble());
            double from = 6 + 8 * random.nextDouble();
            double to = 6 + 8 * random.nextDouble();
            Mitres.Opened opened = Mitres.opened(width, CHERRY, from, to, Math.toDegrees(phi), FIGURES);
            double strain = 0.00248 * (to - from);
            // The heel of one member in its own axes, toe at the origin.
            double along = width / Math.tan(phi);
            double across = width * (1 + strain);
            assertThat(opened.angleChangeDegrees())
                    .isCloseTo(Math.toDegrees(Math.atan2(across, along) - phi), within(1e-9));
            // Its distance from the line the two cuts shared, doubled for the mate.
            double off = Math.abs(along * Math.sin(phi) - across * Math.cos(phi));
            assertThat(opened.gapMm()).isCloseTo(2 * off, within(1e-9));
            assertThat(opened.open()).isEqualTo(strain < 0 ? Mitres.End.HEEL : Mitres.End.TOE);
        }
    }

    /** Moves points of a flat face about the pith and reads the hollow off them; seeded. */
    @Test
    void hollowsByMovedPoints() {
        Random random = new Random(44);
        for (int i = 0; i < 300; i++) {
            double width = 60 + 200 * random.nextDouble();
            double pith = 40 + 200 * random.nextDouble();
            double points = -6 + 5 * random.nextDouble();
            Coefficients pair = Coefficients.declared(0.00369, 0.00158);
            Cupping.Cup cup = Cupping.ofRings(width, pith, pair, 13, 13 + points);
            double[] middle = moved(0, pith, 0.00369 * points, 0.00158 * points);
            double[] edge = moved(width / 2, pith, 0.00369 * points, 0.00158 * points);
            assertThat(cup.depthMm()).isCloseTo(Math.abs(edge[1] - middle[1]), within(1e-9));
            // y points to the bark: on drying the edges rise above the middle there.
            assertThat(edge[1]).isGreaterThan(middle[1]);
            assertThat(cup.hollow()).isEqualTo(Cupping.Hollow.BARK_SIDE);
        }
    }

    private static double[] moved(double x, double y, double tangential, double radial) {
        double radius = Math.hypot(x, y) * (1 + radial);
        double angle = Math.atan2(x, y) * (1 + tangential) / (1 + radial);
        return new double[]{radius * Math.sin(angle), radius * Math.cos(angle)};
    }

    /** Table of rule M-12: 75 mm published (Fairham, Woodwork Joints), the rest common practice, no source. */
    @Test
    void crossGrainVerdicts() {
        Seasons three = new Seasons(9, 12, 9);
        assertThat(grade(60, three)).isEqualTo(Verdict.Grade.FINE);
        assertThat(grade(80, three)).isEqualTo(Verdict.Grade.WARNING);
        assertThat(grade(105, three)).isEqualTo(Verdict.Grade.ERROR);
        // Narrow, but in a place of great swings.
        assertThat(grade(74, new Seasons(7, 13, 7))).isEqualTo(Verdict.Grade.ERROR);
        assertThat(CrossGrain.glued(280, CHERRY, three, FIGURES).verdict().grade()).isEqualTo(Verdict.Grade.ERROR);
        assertThat(CrossGrain.restrained(CHERRY, new Seasons(13, 13, 6.5), FIGURES).grade())
                .isEqualTo(Verdict.Grade.WARNING);
        assertThat(CrossGrain.restrained(CHERRY, three, FIGURES)).isEqualTo(Verdict.FINE);
    }

    private static Verdict.Grade grade(double width, Seasons seasons) {
        return CrossGrain.glued(width, CHERRY, seasons, FIGURES).verdict().grade();
    }

    /** The examples that rules M-21, M-23 and M-25 carry in words (limits: common practice, no source). */
    @Test
    void examplesOfTheRules() {
        Seasons three = new Seasons(9, 12, 9);
        CrossGrain.Fight fight = CrossGrain.carcase(
                400, CHERRY, three, Coefficient.given(0.00180, Citation.declared()), three, FIGURES);
        assertThat(fight.differenceMm()).isCloseTo(0.82, within(0.005));
        assertThat(fight.verdict().grade()).isEqualTo(Verdict.Grade.WARNING);

        CrossGrain.Fixed batten = CrossGrain.fixedTwice(
                200, Coefficient.given(0.00274, Citation.declared()), three, FIGURES);
        assertThat(batten.movementMm()).isCloseTo(1.64, within(0.005));
        assertThat(batten.verdict().grade()).isEqualTo(Verdict.Grade.ERROR);

        assertThat(Boards.waitDays(40, FIGURES)).isCloseTo(25.6, within(1e-9));
        assertThat(Boards.settling(40, 14, 9, FIGURES).verdict().grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(Boards.settling(40, 10, 9, FIGURES).waitDays()).isZero();
    }

    @Test
    void verdictsOnRoomLeft() {
        Seasons seasons = new Seasons(8, 12, 7);
        Openings.DoorGap gap = Openings.door(400, CHERRY, seasons, FIGURES);
        assertThat(gap.judge(gap.neededMm(), FIGURES)).isEqualTo(Verdict.FINE);
        assertThat(gap.judge(gap.neededMm() - 0.6, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(gap.judge(gap.neededMm() - 1.1, FIGURES).grade()).isEqualTo(Verdict.Grade.ERROR);
        Drawers.Clearance above = Drawers.height(120, CHERRY, seasons, FIGURES);
        assertThat(above.judge(above.neededMm(), FIGURES)).isEqualTo(Verdict.FINE);
        assertThat(above.judge(above.growthMm() + 0.2, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(above.judge(above.growthMm() - 0.1, FIGURES).grade()).isEqualTo(Verdict.Grade.ERROR);
        assertThat(Drawers.openingClosesMm(40, 30, CHERRY, seasons)).isCloseTo(35 * 0.00248 * 4, within(1e-9));
        assertThat(Drawers.bottom(380, 5, CHERRY, seasons, FIGURES).verdict()).isEqualTo(Verdict.FINE);
        assertThat(Drawers.bottom(380, 0.5, CHERRY, seasons, FIGURES).verdict().grade())
                .isEqualTo(Verdict.Grade.ERROR);
        assertThat(Drawers.bottomSlot(380, 4, CHERRY, seasons, FIGURES).lengthMm())
                .isCloseTo(4 + 380 * 0.00248 * 5 + 0.5, within(1e-9));
        Tops.Button button = Tops.button(340, 6, CHERRY, seasons, FIGURES);
        assertThat(button.engagedDriestMm()).isCloseTo(6 - 340 * 0.00248, within(1e-9));
        assertThat(button.verdict()).isEqualTo(Verdict.FINE);
        assertThat(Tops.figureEight(500, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(Breadboards.glueZone(160, FIGURES).grade()).isEqualTo(Verdict.Grade.ERROR);
        assertThat(Breadboards.endRoom(300, CHERRY, seasons, FIGURES).roomMm())
                .isCloseTo(300 * 0.00248 * 4 + 0.5, within(1e-9));
    }
}
