package dev.treen.cutting;

import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.yield.AtOnce;
import dev.treen.yield.BoardLayout;
import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Progress;
import dev.treen.yield.Unplaced;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Chooses how boards are resawn and wide parts divided. It begins with the likeliest way and takes another where all parts
 * have their place that way, or where that saves more wood than its saw cuts are worth; each is laid out.
 */
final class Dividing {
    private static final int MOST_WAYS = 24;
    private static final long STEPS = 300;

    /** With other staves an offcut has to be larger by this share, and by as much again for each stave more but the first. */
    private static final double LARGER = 0.1;

    /** One way to divide some boards or some parts. */
    private record Option(Map<String, Integer> leaves, Map<String, Glued> glued) {}

    /** A way that was laid out: {@code total} is the weight of its boards with the labour of its resaw cuts. */
    private record Tried(List<Integer> picked, Rack rack, int unplaced, double total, double bound, long offcut) {}

    /**
     * What is chosen.
     *
     * @param rack the boards, divided so
     * @param ways how many there are in all
     * @param others no other way weighs less, with its labour; only where all were tried
     */
    record Chosen(Rack rack, long ways, Optional<Double> others) {}

    private final Joined joined;
    private final Wished wished;
    private final Blemishing blemishing;
    private final EarlierLayout earlier;
    private final List<List<Option>> choices = new ArrayList<>();
    private final Map<List<Integer>, Tried> tried = new HashMap<>();

    Dividing(Joined joined, Wished wished, EarlierLayout earlier, Set<String> made) {
        this.joined = joined;
        this.wished = wished;
        this.blemishing = new Blemishing(joined);
        this.earlier = earlier;
        new BoardChoices(joined, earlier, made).all().forEach(counts -> choices.add(counts.stream()
                .map(each -> new Option(each, Map.of()))
                .toList()));
        new StaveChoices(joined, earlier, made).all().forEach(glued -> choices.add(glued.stream()
                .map(each -> new Option(Map.of(), each))
                .toList()));
    }

    /** All that the choice depends on. */
    Object input() {
        return List.copyOf(choices);
    }

    /** The likeliest way. */
    Rack first() {
        return rack(choices.stream().map(each -> 0).toList());
    }

    private Rack rack(List<Integer> picked) {
        Map<String, Integer> leaves = new HashMap<>();
        Map<String, Glued> glued = new HashMap<>();
        for (int i = 0; i < picked.size(); i++) {
            Option option = choices.get(i).get(picked.get(i));
            leaves.putAll(option.leaves());
            glued.putAll(option.glued());
        }
        return new Rack(joined, wished, blemishing, new Division(leaves, glued));
    }

    private long ways() {
        double ways = 1;
        for (List<Option> each : choices) {
            ways *= each.size();
        }
        return (long) Math.min(ways, 1e9);
    }

    /** The best way found. {@code glance} only asks whether there is one with a place for every part. */
    Chosen best(Rack first, boolean glance, Cancel cancel) {
        long ways = ways();
        if (ways == 1 || first.leaves().isEmpty()) {
            return new Chosen(first, 1, Optional.empty());
        }
        List<Integer> start = choices.stream().map(each -> 0).toList();
        long steps = glance ? 1 : STEPS;
        Tried best = tried(List.of(start), steps, Cancel.never()).getFirst();
        if (glance && best.unplaced() == 0) {
            return chosen(best, ways);
        }
        boolean better = true;
        while (better && tried.size() < MOST_WAYS && !cancel.asked()) {
            better = false;
            List<List<Integer>> untried = (ways <= MOST_WAYS ? every() : neighbours(best.picked())).stream()
                    .filter(next -> !tried.containsKey(next))
                    .limit(MOST_WAYS - tried.size())
                    .toList();
            for (List<List<Integer>> some : glance ? untried.stream().map(List::of).toList() : List.of(untried)) {
                if (glance && best.unplaced() == 0) {
                    break;
                }
                for (Tried other : tried(some, steps, cancel)) {
                    better |= better(other, best);
                    best = better(other, best) ? other : best;
                }
            }
        }
        return chosen(best, ways);
    }

    private Chosen chosen(Tried best, long ways) {
        Optional<Double> bound = tried.size() < ways ? Optional.empty()
                : tried.values().stream().filter(each -> !each.picked().equals(best.picked())).map(Tried::bound)
                        .min(Double::compare);
        return new Chosen(best.rack(), ways, bound);
    }

    private List<List<Integer>> every() {
        List<List<Integer>> all = List.of(List.of());
        for (List<Option> choice : choices) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> begun : all) {
                for (int i = 0; i < choice.size(); i++) {
                    List<Integer> more = new ArrayList<>(begun);
                    more.add(i);
                    longer.add(List.copyOf(more));
                }
            }
            all = longer;
        }
        return all;
    }

    /** All that differ in one choice. */
    private List<List<Integer>> neighbours(List<Integer> picked) {
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 0; i < choices.size() && all.size() < MOST_WAYS * 2; i++) {
            for (int option = 0; option < choices.get(i).size(); option++) {
                List<Integer> other = new ArrayList<>(picked);
                other.set(i, option);
                all.add(List.copyOf(other));
            }
        }
        return all;
    }

    private boolean better(Tried a, Tried b) {
        if (a.unplaced() != b.unplaced()) {
            return a.unplaced() < b.unplaced();
        }
        double steady = earlier.boards().isEmpty() ? 0 : joined.project().settings().layout().steady();
        if (Math.abs(a.total() - b.total()) > 1e-9 * b.total()) {
            return a.total() < b.total() * (1 - steady);
        }
        int more = Math.max(1, staves(a) - staves(b));
        return earlier.boards().isEmpty() && a.offcut() > (1 + LARGER * more) * b.offcut();
    }

    private static int staves(Tried way) {
        return way.rack().division().glued().values().stream().mapToInt(glued -> glued.staves().size()).sum();
    }

    /** Some ways, laid out at once; those that a stop came before are left out. */
    private List<Tried> tried(List<List<Integer>> some, long steps, Cancel cancel) {
        List<Supplier<Optional<Tried>>> tasks = new ArrayList<>();
        for (List<Integer> picked : some) {
            tasks.add(() -> cancel.asked() ? Optional.empty() : Optional.of(laidOut(picked, steps)));
        }
        List<Tried> found = AtOnce.all(tasks).stream().flatMap(Optional::stream).toList();
        found.forEach(each -> tried.put(each.picked(), each));
        return found;
    }

    private Tried laidOut(List<Integer> picked, long steps) {
        Rack rack = rack(picked);
        return layout(rack, steps)
                .map(layout -> {
                    double labour = labour(rack, layout);
                    return new Tried(
                            picked, rack, layout.unplaced().size(), layout.score() + labour,
                            never(layout) ? Double.MAX_VALUE : bound(rack, layout),
                            Matching.offcut(layout));
                })
                .orElseGet(() -> new Tried(picked, rack, Integer.MAX_VALUE, Double.MAX_VALUE, 0, 0));
    }

    /** Whether it is certain that not all parts have a place. */
    private static boolean never(Layout layout) {
        return layout.unplaced().stream().anyMatch(each -> switch (each.reason()) {
            case Unplaced.Reason.NoStockAccepted() -> true;
            case Unplaced.Reason.TooLarge large -> true;
            case Unplaced.Reason.DefectInTheWay flaw -> true;
            case Unplaced.Reason.NoRoom full -> full.certain();
            case Unplaced.Reason.NotWorthIt() -> false;
        });
    }

    private Optional<Layout> layout(Rack rack, long steps) {
        return new Matching(rack).solve(rack.problem(steps), Progress.none(), Cancel.never()) instanceof Layout layout
                ? Optional.of(layout) : Optional.empty();
    }

    /** What no layout of boards divided so weighs less than, its resaw cuts counted in. */
    double bound(Rack rack, Layout layout) {
        double taken = layout.bound().value();
        return taken + least(rack, taken);
    }

    /**
     * What resaw cuts weigh at the least where leaves of this weight are taken: n leaves have n - 1 cuts between them, and the
     * boards that parts cannot do without are sawn through.
     */
    private double least(Rack rack, double taken) {
        int fewest = rack.leaves().values().stream().mapToInt(leaf -> leaf.of().count()).min().orElse(1);
        double cheapest = rack.leaves().values().stream()
                .mapToDouble(leaf -> rack.weight(leaf.of().board()) / face(leaf.of().board()))
                .min()
                .orElse(0);
        double blanks = rack.blanks().values().stream()
                .mapToDouble(blank -> (blank.members().size() - 1) * rack.area(blank) * cheapest)
                .sum();
        return joined.project().settings().layout().labour()
                * (Math.max((fewest - 1) * taken, needed(rack)) + blanks);
    }

    /**
     * The cuts through boards that some part needs. Each part needs one of the boards that may give it; of parts that have no
     * board in common each needs one of its own, so the fewest boards that may give a part are looked at first.
     */
    private static double needed(Rack rack) {
        List<Set<String>> giving = rack.giving().stream()
                .filter(from -> !from.isEmpty())
                .sorted(Comparator.comparingInt(Set::size))
                .toList();
        Set<String> looked = new HashSet<>();
        double sum = 0;
        for (Set<String> leaves : giving) {
            Map<String, Double> cuts = new HashMap<>();
            for (String id : leaves) {
                Leaves of = rack.leaf(id).of();
                cuts.put(of.board().name(), (of.count() - 1) * (double) rack.weight(of.board()));
            }
            if (cuts.keySet().stream().noneMatch(looked::contains)) {
                looked.addAll(cuts.keySet());
                sum += cuts.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
            }
        }
        return sum;
    }

    private static double face(Board board) {
        return board.length().value().toDoubleMm() * board.width().value().toDoubleMm();
    }

    /** What the resaw cuts of a layout weigh: a share of each board that is sawn through, once for each cut. */
    double labour(Rack rack, Layout layout) {
        double share = joined.project().settings().layout().labour();
        Map<String, Double> boards = new LinkedHashMap<>();
        double blanks = 0;
        for (BoardLayout cut : layout.boards()) {
            Leaves leaves = rack.leaf(cut.stockId()).of();
            Board board = leaves.board();
            boards.put(board.name(), (leaves.count() - 1) * (double) rack.weight(board));
            for (BoardLayout.Placement piece : cut.placements()) {
                int more = rack.blank(piece.pieceId()).members().size() - 1;
                blanks += more * piece.area().area() / (double) Units.FINE / Units.FINE / face(board)
                        * rack.weight(board);
            }
        }
        return share * (boards.values().stream().mapToDouble(Double::doubleValue).sum() + blanks);
    }
}
