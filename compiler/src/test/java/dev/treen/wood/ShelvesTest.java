package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelvesTest {

    private static final Figures FIGURES = Figures.standard();
    private static final double MPA_PER_PSI = 4.4482216152605 / (25.4 * 25.4);

    /** Architectural Woodwork Standards 1st ed. (2009) 4.4.14.10: longest spans at L/144, whole inches. */
    @ParameterizedTest(name = "E {0} psi, {1} in, {2} lb/sq ft: {3} in (AWS 2009, 4.4.14.10)")
    @CsvSource({
            "1820000, 0.75, 40, 49", "1820000, 0.75, 50, 46", "1820000, 1, 40, 66", "1820000, 1, 50, 61",
            "950000, 0.75, 40, 40", "950000, 0.75, 50, 37", "950000, 1, 40, 53", "950000, 1, 50, 49"
    })
    void publishedSpanTable(double psi, double inches, double load, double printed) {
        assertThat(spanInches(psi, inches, load)).isEqualTo(printed);
    }

    static double spanInches(double psi, double thicknessIn, double poundsPerSquareFoot) {
        double widthMm = 250;
        double loadMpa = poundsPerSquareFoot / 144 * MPA_PER_PSI;
        Section board = Section.board(widthMm, thicknessIn * 25.4, psi * MPA_PER_PSI);
        return Math.floor(Shelves.longestSpanMm(board, loadMpa * widthMm, 144) / 25.4);
    }

    /** Second route: curvature from the bending moment, integrated twice along the shelf; seeded. */
    @Test
    void bendingAgreesWithIntegratedCurvature() {
        Random random = new Random(21);
        for (int i = 0; i < 50; i++) {
            double span = 300 + 900 * random.nextDouble();
            double even = 0.05 + 0.5 * random.nextDouble();
            double point = 50 + 300 * random.nextDouble();
            Section board = Section.board(200, 15 + 10 * random.nextDouble(), 8000 + 5000 * random.nextDouble());
            double byEven = Shelves.sag(
                    span, board, new Shelves.Load.Even(even), Shelves.Ends.RESTING, FIGURES)
                    .bendingMm();
            double byPoint = Shelves.sag(
                    span, board, new Shelves.Load.Middle(point), Shelves.Ends.RESTING, FIGURES)
                    .bendingMm();
            assertThat(byEven).isCloseTo(integrated(span, board, even, 0), within(byEven * 1e-4));
            assertThat(byPoint).isCloseTo(integrated(span, board, 0, point), within(byPoint * 1e-4));
        }
    }

    /** Sag at mid-span by the unit load method: the integral of M·m / (E·I), m the moment of a unit load there. */
    private static double integrated(double span, Section section, double even, double point) {
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double x = (i + 0.5) * span / 2 / steps;
            double moment = even * x * (span - x) / 2 + point * x / 2;
            sum += moment * (x / 2) * (span / 2 / steps);
        }
        return 2 * sum / section.stiffness();
    }

    /** Rule S-01 (derived from eq. 9-2): shear adds 0.96·(E/G)·(h/L)² of the bending under an even load. */
    @Test
    void shearIsASmallShare() {
        Section board = Section.board(250, 18, 10300);
        Shelves.Sag sag = Shelves.sag(800, board, new Shelves.Load.Even(0.292), Shelves.Ends.RESTING, FIGURES);
        double share = 0.96 * 15 * Math.pow(18.0 / 800, 2);
        assertThat(sag.shearMm() / sag.bendingMm()).isCloseTo(share, within(1e-9));
        assertThat(sag.laterMm()).isCloseTo(1.5 * sag.firstMm(), within(1e-12));
    }

    @Test
    void heldEndsSagLess() {
        Section board = Section.board(250, 18, 10300);
        for (Shelves.Load load : List.of(new Shelves.Load.Even(0.3), new Shelves.Load.Middle(200))) {
            double resting = Shelves.sag(800, board, load, Shelves.Ends.RESTING, FIGURES).bendingMm();
            double held = Shelves.sag(800, board, load, Shelves.Ends.HOUSED_AND_GLUED, FIGURES).bendingMm();
            assertThat(held).isBetween(resting / 4, resting);
        }
    }

    @Test
    void limitsAreThoseOfTheFile() {
        assertThat(Shelves.judge(1440, 10.1, FIGURES).grade()).isEqualTo(Verdict.Grade.ERROR);
        assertThat(Shelves.judge(1440, 9.9, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(Shelves.judge(384, 0.99, FIGURES)).isEqualTo(Verdict.FINE);
    }

    /** A board cut in two lies as stiff as the whole: the parallel axes must add up. */
    @Test
    void pieceByPieceIsTheWhole() {
        Section whole = Section.board(200, 30, 9000);
        Section stacked = new Section(List.of(
                new Section.Piece(200, 10, 5, 9000), new Section.Piece(200, 20, 20, 9000)));
        assertThat(stacked.stiffness()).isCloseTo(whole.stiffness(), within(whole.stiffness() * 1e-12));
    }

    @Test
    void modulusIsLoweredForKnotsAndLuck() {
        Species cherry = SpeciesTable.published().get("black_cherry").orElseThrow();
        assertThat(Shelves.modulusMpa(cherry, FIGURES)).hasValue(10300 * 0.8);
        assertThat(Shelves.modulusMpa(Species.declared("plum", 0.003, 0.002), FIGURES)).isEmpty();
    }

    @Test
    void tallAndShallowCasesWantFixing() {
        assertThat(Tipping.needsAnchor(700, 300, FIGURES)).isEqualTo(Verdict.FINE);
        assertThat(Tipping.needsAnchor(770, 300, FIGURES).grade()).isEqualTo(Verdict.Grade.NOTE);
        assertThat(Tipping.needsAnchor(700, 170, FIGURES).limit().orElseThrow().key())
                .isEqualTo("needs-anchor.ratio");
        assertThat(Tipping.isClothingStorage(686, 13.6, 90.6, FIGURES)).isTrue();
        assertThat(Tipping.isClothingStorage(685, 50, 200, FIGURES)).isFalse();
    }

    /** End grain: 75 % for screws (FPL-GTR-282 p. 8-11), the low end of 50 to 75 % for nails (p. 8-5). */
    @Test
    void endGrainHoldsLess() {
        for (PullOut.Fastener fastener : PullOut.Fastener.values()) {
            double side = PullOut.of(fastener, PullOut.Grain.SIDE, 0.5, 4, 25, FIGURES).ultimateN();
            double end = PullOut.of(fastener, PullOut.Grain.END, 0.5, 4, 25, FIGURES).ultimateN();
            assertThat(end / side)
                    .isCloseTo(fastener == PullOut.Fastener.WOOD_SCREW ? 0.75 : 0.5, within(1e-12));
        }
    }

    @Test
    void thinEdgesSplit() {
        assertThat(PullOut.edge(9.9, 4, FIGURES).grade()).isEqualTo(Verdict.Grade.WARNING);
        assertThat(PullOut.edge(10.1, 4, FIGURES)).isEqualTo(Verdict.FINE);
    }
}
