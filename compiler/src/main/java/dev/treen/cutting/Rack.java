package dev.treen.cutting;

import static dev.treen.cutting.Units.down;
import static dev.treen.cutting.Units.up;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.model.GlueUp;
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
import java.util.HashMap;
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
    private final Division division;
    private final Map<String, Leaf> leaves = new LinkedHashMap<>();
    private final Map<String, Blank> blanks = new LinkedHashMap<>();
    private final Map<String, FinishedPart> parts = new HashMap<>();
    private final Map<List<Object>, Set<String>> giving = new HashMap<>();

    Rack(Joined joined, Wished wished, Blemishing blemishing, Division division) {
        this.joined = joined;
        this.wished = wished;
        this.blemishing = blemishing;
        this.division = division;
        for (Board board : joined.project().boards()) {
            for (Ripped ripped : Ripped.of(board)) {
                Leaves sawn = Leaves.of(ripped, division.leaves(ripped.piece().name()));
                for (int number = 1; number <= sawn.count(); number++) {
                    Leaf leaf = new Leaf(sawn, number);
                    leaves.put(leaf.name(), leaf);
                }
            }
        }
        joined.made().forEach(part -> parts.put(part.part().name(), part));
        joined.made().forEach(part -> blanks(part).forEach(blank -> blanks.putIfAbsent(blank.name(), blank)));
    }

    private List<Blank> blanks(FinishedPart part) {
        String name = part.part().name();
        Glued glued = division.glued().get(name);
        if (glued != null) {
            return glued.blanks();
        }
        List<String> pair = wished.pairOf(name);
        return List.of(pair.isEmpty() ? Blank.of(name)
                : new Blank(pair.stream().map(each -> new Blank.Member(each, Blank.Member.WHOLE)).toList()));
    }

    /** How boards and wide parts are divided. */
    Division division() {
        return division;
    }

    /** All that is sawn out, by the id of its piece, in the order of the project. */
    Map<String, Blank> blanks() {
        return blanks;
    }

    Blank blank(String id) {
        Blank blank = blanks.get(id);
        if (blank == null) {
            throw new IllegalStateException("the solver laid out what it was not given: " + id);
        }
        return blank;
    }

    /** Ids of pieces that come from one board, whichever it is. */
    List<List<String>> matched() {
        List<List<String>> groups = new ArrayList<>();
        wished.matched().forEach(group -> groups.add(ids(group)));
        division.glued().values().stream()
                .filter(glued -> glued.asked().match() == GlueUp.Match.BOARD)
                .filter(glued -> wished.matched().stream().noneMatch(group -> group.contains(glued.part())))
                .sorted(java.util.Comparator.comparing(Glued::part))
                .forEach(glued -> groups.add(ids(List.of(glued.part()))));
        return groups.stream().filter(group -> group.size() > 1).toList();
    }

    private List<String> ids(List<String> parts) {
        return blanks.values().stream()
                .filter(blank -> blank.parts().stream().anyMatch(parts::contains))
                .map(Blank::name)
                .toList();
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
        Settings settings = Settings.kerf(kerf).wasting(ends, 0).keeping(keepLength, keepWidth)
                .plain(wishes.plain(), Sawing.LONGEST_STRIP)
                .steps(steps);
        List<Stock> stocks = new ArrayList<>();
        boolean priced = Price.of(joined.project().boards()).isPresent();
        leaves.forEach((id, leaf) -> {
            Stock stock = stock(id, leaf.of(), ends, wishes.offcutsFirst());
            stocks.add(priced ? stock.costing(cost(leaf)) : stock);
        });
        List<Piece> pieces = blanks.values().stream().map(this::piece).toList();
        return new YieldProblem(stocks, pieces, wished.runs().stream().map(Run::new).toList(), settings);
    }

    /**
     * What a leaf costs, in ten-thousandths of the money: its share of its board. Money weighs only where all boards have a
     * price; else boards weigh by their area, since money and area cannot be added.
     */
    private static long cost(Leaf leaf) {
        return Math.max(1, cost(leaf.of().board()) / leaf.of().count());
    }

    private static long cost(Board board) {
        return Math.round(board.price().map(p -> p.of(board)).orElse(0.0) * 10_000);
    }

    private static long area(Board board) {
        return down(board.length().value()) * down(board.width().value()) / Units.FINE;
    }

    /** What a whole board weighs in the objective. */
    long weight(Board board) {
        return Price.of(joined.project().boards()).isPresent() ? cost(board) : area(board);
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
        return new Stock(id, length, width, defects, Math.max(1, area(board) / of.count()), 1,
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

    /** A piece as it is sawn out: how long and wide, and how thick what becomes of it has to be. */
    private record Size(Length length, Length width, Length thickness) {
        Size max(Size other) {
            return new Size(length.max(other.length), width.max(other.width), thickness.max(other.thickness));
        }
    }

    private FinishedPart part(String name) {
        FinishedPart part = parts.get(name);
        if (part == null) {
            throw new IllegalStateException("a piece of a part that is not there: " + name);
        }
        return part;
    }

    private Size size(Blank.Member member) {
        FinishedPart part = part(member.part());
        Glued glued = division.glued().get(member.part());
        return glued == null || member.stave() == Blank.Member.WHOLE
                ? new Size(part.roughLength().value(), part.roughWidth().value(), Staving.thickness(part))
                : new Size(glued.roughLength(), glued.roughWidth(member.stave()), glued.thickness());
    }

    private Size size(Blank blank) {
        return blank.members().stream().map(this::size).reduce(Size::max).orElseThrow();
    }

    /** The face of what is sawn out, in square millimetres. */
    double area(Blank blank) {
        Size size = size(blank);
        return size.length.toDoubleMm() * size.width.toDoubleMm();
    }

    private Piece piece(Blank blank) {
        Size size = size(blank);
        List<FinishedPart> parts = blank.parts().stream().map(this::part).toList();
        Piece piece = Piece.of(blank.name(), up(size.length), up(size.width), 1).from(giving(blank));
        if (blank.plain()) {
            boolean inRun = !wished.runOf(blank.name()).isEmpty();
            Piece lying = piece.lying(blemishing.ways(parts.getFirst(), inRun));
            Set<String> from = giving(blank);
            boolean turns = !inRun && !from.isEmpty()
                    && from.stream().allMatch(id -> parts.getFirst().part().turnsOn(leaf(id).of().source()));
            return turns ? lying.turning() : lying;
        }
        Blank.Member first = blank.members().getFirst();
        Glued glued = division.glued().get(first.part());
        return blank.resawn() || glued == null ? piece
                : piece.lying(blemishing.ways(parts.getFirst(), glued, first.stave()));
    }

    /** The leaves that may give a piece, for each set of them that any piece has; in the order of the project. */
    List<Set<String>> giving() {
        return blanks.values().stream().map(this::giving).distinct().toList();
    }

    private Set<String> giving(Blank blank) {
        List<List<String>> named = blank.parts().stream()
                .map(part -> part(part).part().sources().stream().map(Board::name).toList())
                .filter(names -> !names.isEmpty())
                .distinct()
                .toList();
        Length thickness = size(blank).thickness;
        return giving.computeIfAbsent(
                List.of(named, thickness, blank.members().size(), blank.plain()),
                key -> giving(named, thickness, blank));
    }

    private Set<String> giving(List<List<String>> named, Length thick, Blank blank) {
        Set<String> from = new LinkedHashSet<>();
        leaves.forEach((id, leaf) -> {
            boolean may = named.stream().allMatch(names -> names.contains(leaf.of().source().name()));
            boolean solid = blank.plain() || !leaf.of().board().sheet();
            if (may && solid && leaf.of().gives(thick, blank.members().size())) {
                from.add(id);
            }
        });
        return Set.copyOf(from);
    }
}
