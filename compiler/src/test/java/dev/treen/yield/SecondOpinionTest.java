package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * A general-purpose solver (the CP-SAT solver of OR-Tools) on the same small problems: never better than a proved optimum,
 * never beyond a bound. Problems are made from seeds.
 */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class SecondOpinionTest {

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    private static CpSolver exact(CpModel model) {
        var solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxTimeInSeconds(60);
        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return solver;
    }

    @Test
    void railsFromBarsOfSeveralLengths() {
        for (int seed = 0; seed < 12; seed++) {
            var random = new Random(seed);
            var stocks = new ArrayList<Stock>();
            for (int b = 0; b < 6; b++) {
                long length = 100L + random.nextInt(150);
                stocks.add(Stock.clear("bar" + b, length, 10).costing(length + random.nextInt(40)));
            }
            var pieces = new ArrayList<Piece>();
            for (int p = 0; p < 8; p++) {
                pieces.add(Piece.of("rail" + p, 30 + random.nextInt(60), 10, 1));
            }
            int kerf = random.nextInt(4);
            var layout = Solved.of(new YieldProblem(stocks, pieces, List.of(), Settings.kerf(kerf).steps(4_000)));
            if (layout.complete()) {
                long best = leastCost(stocks, pieces, kerf);
                assertThat(layout.bound().value()).as("seed %d", seed).isLessThanOrEqualTo(best);
                assertThat(layout.score()).as("seed %d", seed).isGreaterThanOrEqualTo(best);
                assertThat((double) layout.score()).as("seed %d", seed).isLessThanOrEqualTo(best * 1.02);
                if (layout.proved()) {
                    assertThat(layout.score()).as("seed %d", seed).isEqualTo(best);
                }
            }
        }
    }

    private static long leastCost(List<Stock> bars, List<Piece> rails, int kerf) {
        var model = new CpModel();
        var taken = new BoolVar[bars.size()];
        var from = new BoolVar[rails.size()][bars.size()];
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int b = 0; b < taken.length; b++) {
            taken[b] = model.newBoolVar("taken" + b);
            cost.addTerm(taken[b], bars.get(b).cost());
        }
        for (int p = 0; p < from.length; p++) {
            for (int b = 0; b < taken.length; b++) {
                from[p][b] = model.newBoolVar("from" + p + "_" + b);
            }
            model.addExactlyOne(from[p]);
        }
        for (int b = 0; b < taken.length; b++) {
            LinearExprBuilder used = LinearExpr.newBuilder();
            for (int p = 0; p < from.length; p++) {
                used.addTerm(from[p][b], rails.get(p).length() + kerf);
            }
            model.addLessOrEqual(used, LinearExpr.term(taken[b], bars.get(b).length() + kerf));
        }
        model.minimize(cost);
        return Math.round(exact(model).objectiveValue());
    }

    // Without the rule that cuts go from edge to edge the other solver may find more, never less.
    @Test
    void panelsOfMostValueFromOneSheet() {
        for (int seed = 0; seed < 8; seed++) {
            var random = new Random(100 + seed);
            var pieces = new ArrayList<Piece>();
            for (int p = 0; p < 8; p++) {
                pieces.add(Piece.of("panel" + p, 8 + random.nextInt(20), 8 + random.nextInt(20), 1)
                        .worth(50 + random.nextInt(300)));
            }
            var problem = new YieldProblem(
                    List.of(Stock.clear("sheet", 40, 40)), pieces, List.of(),
                    Settings.kerf(1).aiming(Objective.MOST_VALUE).steps(20_000));
            var layout = Solved.of(problem);
            assertThat(layout.proved()).as("seed %d", seed).isTrue();
            assertThat(layout.score()).as("seed %d", seed).isLessThanOrEqualTo(mostValue(pieces, 40, 1));
        }
    }

    private static long mostValue(List<Piece> panels, int side, int kerf) {
        var model = new CpModel();
        LinearExprBuilder value = LinearExpr.newBuilder();
        var plane = model.addNoOverlap2D();
        for (Piece panel : panels) {
            BoolVar cut = model.newBoolVar(panel.id());
            IntVar x = model.newIntVar(0, side - panel.length(), "x" + panel.id());
            IntVar y = model.newIntVar(0, side - panel.width(), "y" + panel.id());
            IntervalVar along = model.newOptionalFixedSizeIntervalVar(x, panel.length() + kerf, cut, "l" + panel.id());
            IntervalVar across = model.newOptionalFixedSizeIntervalVar(y, panel.width() + kerf, cut, "w" + panel.id());
            plane.addRectangle(along, across);
            value.addTerm(cut, panel.value());
        }
        model.maximize(value);
        return Math.round(exact(model).objectiveValue());
    }

    // Parts as wide as their boards lie one behind the other, so that the fewest boards are those of the lengths.
    @Test
    void theFewestBoardsForParts() {
        for (int seed = 0; seed < 10; seed++) {
            var random = new Random(200 + seed);
            var pieces = new ArrayList<Piece>();
            for (int p = 0; p < 9; p++) {
                pieces.add(Piece.of("part" + p, 25 + random.nextInt(45), 6 + random.nextInt(5), 1));
            }
            var stock = Stock.clear("board", 100, 10).costing(1).times(9);
            var layout = Solved.of(new YieldProblem(List.of(stock), pieces, List.of(), Settings.kerf(0).steps(4_000)));
            var bars = new ArrayList<Stock>();
            for (int b = 0; b < 9; b++) {
                bars.add(Stock.clear("bar" + b, 100, 10).costing(1));
            }
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(leastCost(bars, pieces, 0));
            assertThat(layout.bound().value()).as("seed %d", seed).isLessThanOrEqualTo(layout.score());
        }
    }
}
