package dev.treen.cutting;

import static dev.treen.cutting.Units.length;
import static dev.treen.cutting.Units.rectangle;

import dev.treen.yield.BoardLayout;
import dev.treen.yield.CutTree;
import dev.treen.yield.CutTree.Cut;
import dev.treen.yield.CutTree.Direction;
import dev.treen.yield.CutTree.OffcutLeaf;
import dev.treen.yield.CutTree.PieceLeaf;
import dev.treen.yield.CutTree.WasteLeaf;
import dev.treen.yield.Lying;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a board's tree of cuts as the work at the bench: first what frees strips and parts, then what parts the strips. */
final class Sawing {
    /** Beyond this a board is crosscut before it is ripped, so that its crook is lost in pieces (Y-13; figure our own). */
    static final long LONGEST_STRIP = 1200L * Units.FINE;

    private final long kerf;
    private final Stock stock;
    private final Map<String, Piece> pieces;
    private final Rack rack;
    private final List<BoardCut.OnBoard> parts = new ArrayList<>();
    private final List<Rectangle> offcuts = new ArrayList<>();
    private final List<BoardCut.SawCut> cuts = new ArrayList<>();
    private final List<Cut> strips = new ArrayList<>();

    private Sawing(YieldProblem problem, Stock stock, Rack rack) {
        this.rack = rack;
        this.kerf = problem.settings().kerf();
        this.stock = stock;
        this.pieces = problem.pieces().stream().collect(Collectors.toMap(Piece::id, piece -> piece));
    }

    static BoardCut of(BoardLayout layout, Rack rack, YieldProblem problem) {
        Rack.Leaf leaf = rack.leaf(layout.stockId());
        Stock stock = problem.stocks().stream()
                .filter(each -> each.id().equals(layout.stockId()))
                .findFirst()
                .orElseThrow();
        Sawing sawing = new Sawing(problem, stock, rack);
        sawing.free(RipOnce.of(layout.tree(), LONGEST_STRIP));
        sawing.strips.sort(
                Comparator.comparingLong((Cut each) -> each.area().x()).thenComparingLong(each -> each.area().y()));
        List<Strip> strips = new ArrayList<>();
        for (Cut each : sawing.strips) {
            int number = strips.size() + 1;
            int before = sawing.parts.size();
            sawing.walk(each, number);
            List<String> names = sawing.parts.subList(before, sawing.parts.size()).stream()
                    .map(BoardCut.OnBoard::name)
                    .toList();
            strips.add(new Strip(number, rectangle(each.area()), names));
        }
        sawing.offcuts.sort(Comparator.comparing(Rectangle::x).thenComparing(Rectangle::y));
        sawing.parts.sort(Comparator.comparing((BoardCut.OnBoard each) -> each.area().x())
                .thenComparing(each -> each.area().y()));
        return new BoardCut(
                leaf.of().source(),
                leaf.of().board(),
                leaf.number(),
                leaf.of().count(),
                leaf.of().thickness(),
                sawing.parts,
                strips,
                sawing.cuts,
                sawing.offcuts);
    }

    /**
     * Everything but strips, which are put aside: all that can be crosscut, then all that can be ripped, and so on, because
     * each change asks for another saw or fence. The turns are as few as can be, since a cut waits only for those that free
     * its piece.
     */
    private void free(CutTree from) {
        Deque<CutTree> turned = new ArrayDeque<>(List.of(from));
        Direction direction = from instanceof Cut cut ? cut.direction() : Direction.ACROSS;
        while (!turned.isEmpty()) {
            turned = allOf(direction, turned);
            direction = direction == Direction.ALONG ? Direction.ACROSS : Direction.ALONG;
        }
    }

    /** Saws what can be sawn in one direction; what is left to be sawn in the other. */
    private Deque<CutTree> allOf(Direction direction, Deque<CutTree> pieces) {
        Deque<CutTree> turned = new ArrayDeque<>();
        while (!pieces.isEmpty()) {
            CutTree next = pieces.removeFirst();
            if (!(next instanceof Cut cut)) {
                leaf(next);
            } else if (strip(cut)) {
                strips.add(cut);
            } else if (cut.direction() == direction) {
                cut(cut, BoardCut.SawCut.NO_STRIP);
                pieces.addFirst(cut.second());
                pieces.addFirst(cut.first());
            } else {
                turned.addLast(cut);
            }
        }
        return turned;
    }

    private void walk(CutTree from, int strip) {
        CutTree node = from;
        while (node instanceof Cut cut) {
            cut(cut, strip);
            walk(cut.first(), strip);
            node = cut.second();
        }
        leaf(node);
    }

    /** Where a saw only shaves an end or edge, it takes less than its kerf. */
    private void cut(Cut cut, int strip) {
        boolean along = cut.direction() == Direction.ALONG;
        Rect area = cut.area();
        long begin = along ? area.y() : area.x();
        long end = begin + (along ? area.width() : area.length());
        long from = Math.max(begin, cut.position());
        long to = Math.min(end, cut.position() + kerf);
        cuts.add(new BoardCut.SawCut(
                cuts.size() + 1, along, length(from), length(to - from), rectangle(area), strip));
    }

    private void leaf(CutTree leaf) {
        switch (leaf) {
            case PieceLeaf part -> parts.add(onBoard(part));
            case OffcutLeaf offcut -> offcuts.add(rectangle(offcut.area()));
            case WasteLeaf _ -> {
            }
            case Cut _ -> throw new IllegalStateException("a cut is no leaf");
        }
    }

    private BoardCut.OnBoard onBoard(PieceLeaf part) {
        List<String> flaws = Lying.under(stock, part.area()).stream()
                .map(each -> each.kind().substring(0, each.kind().indexOf(' ')))
                .distinct()
                .toList();
        Piece piece = pieces.get(part.pieceId());
        List<Piece.Way> right = flaws.isEmpty() || piece == null ? List.of() : Lying.ways(stock, piece, part.area());
        String lay = piece == null || right.isEmpty() || right.size() == piece.ways().size() ? ""
                : right.getFirst().name();
        return new BoardCut.OnBoard(
                rack.blank(part.pieceId()), rectangle(part.area()), flaws,
                part.turned() ? BoardCut.OnBoard.ACROSS : lay);
    }

    private boolean strip(Cut cut) {
        return cut.area().length() <= LONGEST_STRIP && crosscutParts(cut).filter(count -> count > 1).isPresent();
    }

    /** How many parts crosscuts alone take from it; nothing where it is ripped as well, or not all are ready parts. */
    private Optional<Integer> crosscutParts(CutTree from) {
        int count = 0;
        CutTree node = from;
        while (node instanceof Cut cut) {
            Optional<Integer> first = cut.direction() == Direction.ACROSS ? crosscutParts(cut.first())
                    : Optional.empty();
            if (first.isEmpty()) {
                return Optional.empty();
            }
            count += first.get();
            node = cut.second();
        }
        if (node instanceof PieceLeaf part && !rack.blank(part.pieceId()).plain()) {
            return Optional.empty();
        }
        return Optional.of(node instanceof PieceLeaf ? count + 1 : count);
    }
}
