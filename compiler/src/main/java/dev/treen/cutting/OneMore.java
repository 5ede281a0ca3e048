package dev.treen.cutting;

import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Price;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.yield.AtOnce;
import dev.treen.yield.BoardLayout;
import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Progress;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What one more board would save where every part has its place: each kind of board is tried once more, and laid out. */
final class OneMore {
    private static final long STEPS = 300;
    private static final int MOST_PARTS = 60;
    private static final int MOST_BOARDS = 6;

    /** Less is not worth another board: a fiftieth, as for moves; the figure is our own. */
    private static final double LEAST = 0.02;

    private final Joined joined;
    private final Rack rack;
    private final YieldProblem problem;

    OneMore(Joined joined, Rack rack, YieldProblem problem) {
        this.joined = joined;
        this.rack = rack;
        this.problem = problem;
    }

    private record Found(Layout layout, Set<String> leaves) {}

    /** A sentence where one more board of a kind saves more than it is; nothing otherwise. */
    Optional<String> saves(Layout now, Cancel cancel) {
        boolean worth = !joined.project().settings().layout().offcutsFirst() && now.complete()
                && now.boards().size() > 1 && problem.settings().steps() > 1
                && problem.pieces().size() <= MOST_PARTS;
        if (!worth) {
            return Optional.empty();
        }
        List<Supplier<Optional<Found>>> tasks = new ArrayList<>();
        for (Set<String> leaves : kinds()) {
            tasks.add(() -> !cancel.asked() && another(leaves, cancel) instanceof Layout layout && layout.complete()
                    ? Optional.of(new Found(layout, leaves)) : Optional.empty());
        }
        List<Optional<Found>> tried = AtOnce.all(tasks);
        if (cancel.asked()) {
            return Optional.empty();
        }
        Optional<Found> best = tried.stream()
                .flatMap(Optional::stream)
                .filter(found -> found.layout().score() < now.score())
                .min(Comparator.comparingLong(found -> found.layout().score()));
        return best.filter(found -> now.score() - found.layout().score() > LEAST * now.score())
                .map(found -> sentence(now, found));
    }

    private dev.treen.yield.Outcome another(Set<String> leaves, Cancel cancel) {
        List<Stock> stocks = problem.stocks().stream()
                .map(stock -> leaves.contains(stock.id()) ? stock.times(stock.count() + 1) : stock)
                .toList();
        return new Matching(rack).solve(
                new YieldProblem(stocks, problem.pieces(), problem.runs(), problem.settings().steps(STEPS)),
                Progress.none(), cancel);
    }

    /** The leaves of each board that is no leftover, boards of one size and one price once. */
    private List<Set<String>> kinds() {
        java.util.Map<Object, Set<String>> kinds = new java.util.LinkedHashMap<>();
        java.util.Map<Object, String> first = new java.util.HashMap<>();
        rack.leaves().forEach((id, leaf) -> {
            Board board = leaf.of().source();
            if (!board.offcut()) {
                Object kind = List.of(
                        board.length().value(), board.width().value(), board.thickness().value(),
                        board.price().map(price -> price.of(board)), board.defects().size(), board.species());
                if (first.computeIfAbsent(kind, each -> board.name()).equals(board.name())) {
                    kinds.computeIfAbsent(kind, each -> new LinkedHashSet<>()).add(id);
                }
            }
        });
        return kinds.values().stream().limit(MOST_BOARDS).toList();
    }

    private String sentence(Layout now, Found found) {
        Set<String> spared = new LinkedHashSet<>();
        now.boards().forEach(board -> spared.add(board.stockId()));
        found.layout().boards().stream().map(BoardLayout::stockId).forEach(spared::remove);
        String more = rack.leaf(found.leaves().iterator().next()).of().source().name();
        return "One more board like `" + more + "` would save " + amount(now.score() - found.layout().score())
                + (spared.isEmpty() ? "."
                        : ", itself counted: `" + String.join("`, `", spared) + "` would stay whole.");
    }

    private String amount(long score) {
        if (Price.of(joined.project().boards()).isPresent()) {
            String money = String.format(Locale.ROOT, "%.2f", score / 10_000.0);
            String currency = joined.project().settings().currency();
            return currency.isEmpty() ? money : currency + " " + money;
        }
        double mm2 = score / (double) Units.FINE;
        return joined.project().settings().format().imperial()
                ? DecimalText.write(mm2 / Math.pow(Length.FOOT.toDoubleMm(), 2), 2) + " square feet of board"
                : DecimalText.write(mm2 / 1e6, 3) + " m² of board";
    }
}
