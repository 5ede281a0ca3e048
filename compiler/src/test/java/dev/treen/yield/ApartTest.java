package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Parts that share no board; boards and parts invented, sums by hand. */
class ApartTest {
    private static final Settings SAW = Settings.kerf(1).steps(500);

    private static Stock board(String id, long length, long width) {
        return Stock.clear(id, length, width);
    }

    private static Piece part(String id, long length, long width, String... boards) {
        Piece piece = Piece.of(id, length, width, 1);
        return boards.length == 0 ? piece : piece.from(Set.of(boards));
    }

    /** By area the sheet would hold everything; but the leg is of ash, so both are needed, and that is proved. */
    @Test
    void boardsThatPartsInsistOnAreAllInTheBound() {
        var problem = new YieldProblem(
                List.of(board("sheet", 2000, 1000), board("ash", 1000, 100)),
                List.of(part("back", 500, 400, "sheet"), part("leg", 700, 60, "ash")),
                List.of(), SAW);
        Layout layout = Solved.of(problem);
        assertThat(layout.score()).isEqualTo(2000 * 1000 + 1000 * 100);
        assertThat(layout.bound().value()).isEqualTo(layout.score());
        assertThat(layout.proved()).isTrue();
        assertThat(layout.boards()).extracting(BoardLayout::stockId).containsExactly("sheet", "ash");
    }

    /** Size keeps parts apart too, a run and a part that may come from either bring them together. */
    @Test
    void groupsAreWhatSharesABoardOrARun() {
        List<Stock> boards = List.of(board("long", 2000, 100), board("wide", 500, 300), board("spare", 500, 300));
        List<Piece> parts = new ArrayList<>(List.of(part("rail", 1500, 80), part("panel", 400, 250)));
        assertThat(Apart.groups(new YieldProblem(boards, parts, List.of(), SAW)))
                .extracting(group -> group.stocks().stream().map(Stock::id).toList())
                .containsExactly(List.of("long"), List.of("wide", "spare"));
        assertThat(Apart.groups(new YieldProblem(boards, parts, List.of(new Run(List.of("rail", "panel"))), SAW)))
                .hasSize(1);
        parts.add(part("knob", 40, 40));
        assertThat(Apart.groups(new YieldProblem(boards, parts, List.of(), SAW))).hasSize(1);
    }

    /** Why it has no place is a question to all boards, so nothing is taken apart. */
    @Test
    void aPartThatFitsNowhereIsStillExplained() {
        var problem = new YieldProblem(
                List.of(board("ash", 1000, 100), board("oak", 1000, 100)),
                List.of(part("leg", 700, 60, "ash"), part("rail", 700, 60, "oak"), part("top", 1200, 60, "oak")),
                List.of(), SAW);
        assertThat(Apart.groups(problem)).hasSize(1);
        assertThat(Solved.of(problem).unplaced())
                .extracting(Unplaced::reason)
                .containsExactly(new Unplaced.Reason.TooLarge("oak", 200, 0, java.util.Optional.empty()));
    }

    /** Seeded racks: with every part of every group, once, and never worse than its bound; steps are not exceeded by much. */
    @Test
    void everyPartOfEveryGroupHasItsPlace() {
        for (int seed = 0; seed < 40; seed++) {
            var random = new Random(seed);
            var stocks = new ArrayList<Stock>();
            var pieces = new ArrayList<Piece>();
            for (int group = 0; group < 3; group++) {
                for (int b = 0; b < 3; b++) {
                    stocks.add(board("board " + group + b, 600 + random.nextInt(600), 90 + random.nextInt(90)));
                }
                for (int p = 0; p < 5; p++) {
                    pieces.add(part("part " + group + p, 100 + random.nextInt(300), 20 + random.nextInt(60),
                            "board " + group + 0, "board " + group + 1, "board " + group + 2));
                }
            }
            var problem = new YieldProblem(stocks, pieces, List.of(), SAW);
            assertThat(Apart.groups(problem)).as("seed %d", seed).hasSize(3);
            Layout layout = Solved.of(problem);
            assertThat(layout.complete()).as("seed %d", seed).isTrue();
            assertThat(layout.bound().value()).as("seed %d", seed).isLessThanOrEqualTo(layout.score());
            assertThat(layout).as("seed %d", seed).isEqualTo(Solved.of(problem));
        }
    }

    /** What is told on the way speaks of all groups: the last report of the last group has every board in it. */
    @Test
    void progressSpeaksOfAll() {
        var reports = new ArrayList<Progress.Report>();
        var problem = new YieldProblem(
                List.of(board("sheet", 2000, 1000), board("ash", 1000, 100)),
                List.of(part("back", 500, 400, "sheet"), part("leg", 700, 60, "ash")),
                List.of(), SAW);
        YieldSolver.solve(problem, reports::add, Cancel.never());
        assertThat(reports.getFirst().unplaced()).isEqualTo(1);
        assertThat(reports.getLast().unplaced()).isZero();
        assertThat(reports.getLast().score()).isEqualTo(2000 * 1000 + 1000 * 100);
    }
}
