package dev.treen.cutting;

import static dev.treen.cutting.Units.down;
import static dev.treen.cutting.Units.up;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.LayoutWishes;
import dev.treen.model.Price;
import dev.treen.quantity.Length;
import dev.treen.yield.Blemish;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Run;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The boards of a project, leaf by leaf, as the solver's stocks; a flaw goes through all leaves of its board. */
final class Rack {
    /** A leftover this large is worth keeping (rules of the trade Y-15: common practice, no source). */
    private static final long USEFUL_LENGTH = 150L * Units.FINE;

    private static final long USEFUL_WIDTH = 40L * Units.FINE;

    /** A leaf of a board. */
    record Leaf(Leaves of, int number) {
        String name() {
            return BoardCut.leafName(of.board(), number, of.count());
        }
    }

    private final Joined joined;
    private final Wished wished;
    private final Blemishing blemishing;
    private final Map<String, Leaf> leaves = new LinkedHashMap<>();

    Rack(Joined joined, Wished wished) {
        this.joined = joined;
        this.wished = wished;
        this.blemishing = new Blemishing(joined);
        for (Board board : joined.project().boards()) {
            Leaves sawn = Leaves.of(board, joined);
            for (int number = 1; number <= sawn.count(); number++) {
                Leaf leaf = new Leaf(sawn, number);
                leaves.put(leaf.name(), leaf);
            }
        }
    }

    /** All leaves by the id of their stock, in the order of the project. */
    Map<String, Leaf> leaves() {
        return leaves;
    }

    Leaf leaf(String id) {
        Leaf leaf = leaves.get(id);
        if (leaf == null) {
            throw new IllegalStateException("the solver used a board that it was not given: " + id);
        }
        return leaf;
    }

    YieldProblem problem(long steps) {
        long ends = joined.project().boards().stream()
                .mapToLong(b -> up(b.allow().endWaste().value()))
                .min()
                .orElse(0);
        // One saw for all boards: the widest kerf, so that no board is promised more than it gives.
        long kerf = joined.project().boards().stream()
                .mapToLong(b -> up(b.allow().kerf().value()))
                .max()
                .orElse(0);
        LayoutWishes wishes = joined.project().settings().layout();
        long keepLength = wishes.keep().map(m -> up(m.get(0).value())).orElse(USEFUL_LENGTH);
        long keepWidth = wishes.keep().map(m -> up(m.get(1).value())).orElse(USEFUL_WIDTH);
        Settings settings = Settings.kerf(kerf).wasting(ends, 0).keeping(keepLength, keepWidth).steps(steps);
        List<Stock> stocks = new ArrayList<>();
        boolean priced = Price.of(joined.project().boards()).isPresent();
        leaves.forEach((id, leaf) -> {
            Stock stock = stock(id, leaf.of(), ends, wishes.offcutsFirst());
            stocks.add(priced ? stock.costing(cost(leaf)) : stock);
        });
        List<Piece> pieces = joined.parts().stream().map(this::piece).toList();
        return new YieldProblem(stocks, pieces, wished.runs().stream().map(Run::new).toList(), settings);
    }

    /**
     * What a leaf costs, in ten-thousandths of the money: its share of its board. Money weighs only where all boards have a
     * price; else boards weigh by their area, since money and area cannot be added.
     */
    private static long cost(Leaf leaf) {
        Board board = leaf.of().board();
        double price = board.price().map(p -> p.of(board)).orElse(0.0);
        return Math.max(1, Math.round(price * 10_000 / leaf.of().count()));
    }

    private Stock stock(String id, Leaves of, long ends, boolean offcutsFirst) {
        Board board = of.board();
        long length = down(board.length().value());
        long width = down(board.width().value());
        List<dev.treen.yield.Defect> defects = new ArrayList<>();
        List<Blemish> blemishes = new ArrayList<>();
        for (Defect each : board.defects()) {
            if (blemishing.taken(each)) {
                blemishes.add(blemishing.blemish(each, of.count()));
            } else {
                defects.add(defect(each));
            }
        }
        // The solver takes the same from all ends; what a board of its own gives up beyond that is a flaw.
        long more = up(board.allow().endWaste().value());
        if (more > ends) {
            defects.add(new dev.treen.yield.Defect.Strip(dev.treen.yield.Defect.Side.LEFT_END, more));
            defects.add(new dev.treen.yield.Defect.Strip(dev.treen.yield.Defect.Side.RIGHT_END, more));
        }
        return new Stock(id, length, width, defects, Math.max(1, length * width / Units.FINE), 1,
                offcutsFirst && board.offcut(), "", blemishes);
    }

    /** A flaw as large as it is, or less than two thousandths of a millimetre larger where it lies between whole units. */
    static dev.treen.yield.Defect defect(Defect defect) {
        return switch (defect) {
            case Defect.Disc d -> dev.treen.yield.Defect.Knot.round(
                    down(d.x()), down(d.y()), up(d.radius()) + between(d.x(), d.y()));
            case Defect.Line l -> new dev.treen.yield.Defect.Split(
                    down(l.x1()), down(l.y1()), down(l.x2()), down(l.y2()),
                    up(l.width()) + 2L * between(l.x1(), l.y1(), l.x2(), l.y2()));
            case Defect.Patch p -> {
                long x = down(p.x());
                long y = down(p.y());
                yield new dev.treen.yield.Defect.Box(
                        new Rect(x, y, up(p.x().plus(p.length())) - x, up(p.y().plus(p.width())) - y));
            }
        };
    }

    private static int between(Length... places) {
        return Arrays.stream(places).allMatch(each -> up(each) == down(each)) ? 0 : 1;
    }

    private Piece piece(FinishedPart part) {
        Set<String> from = new LinkedHashSet<>();
        leaves.forEach((id, leaf) -> {
            if (Leaves.mayComeFrom(part, leaf.of().board()) && leaf.of().gives(part)) {
                from.add(id);
            }
        });
        long length = up(part.roughLength().value());
        long width = up(part.roughWidth().value());
        return Piece.of(part.part().name(), length, width, 1)
                .from(from)
                .lying(blemishing.ways(part, !wished.runOf(part.part().name()).isEmpty()));
    }
}
