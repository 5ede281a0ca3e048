package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Allowances;
import dev.treen.model.Board;
import dev.treen.model.Defect;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.yield.BoardLayout;
import dev.treen.yield.CutTree;
import dev.treen.yield.Layout;
import dev.treen.yield.Outcome;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import dev.treen.yield.Unplaced;
import dev.treen.yield.YieldProblem;
import dev.treen.yield.YieldSolver;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lays all rough parts out on the boards of a project. */
public final class Cutter {
    /** The solver counts in thousandths of a millimetre: parts are rounded up to them and boards down. */
    private static final int FINE = 1000;

    private static final long USEFUL_LENGTH = 150L * FINE;
    private static final long USEFUL_WIDTH = 40L * FINE;

    private final Joined joined;
    private final Map<String, Leaves> leaves = new LinkedHashMap<>();
    private final Map<String, Integer> leafOf = new LinkedHashMap<>();
    private final Map<String, Leaves> stockOf = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Cutter(Joined joined) {
        this.joined = joined;
    }

    /** The layout of {@code joined}'s parts on its boards. */
    public static Cutting cut(Joined joined) {
        return new Cutter(joined).run();
    }

    private Cutting run() {
        List<Stock> stocks = stocks();
        if (stocks.isEmpty() || joined.parts().isEmpty()) {
            if (!joined.parts().isEmpty()) {
                findings.add(Finding.of(
                        CuttingFindings.NO_BOARDS,
                        joined.project().settings().at().endPoint(),
                        "The project names no boards, so there is no cutting layout")
                        .build());
            }
            return new Cutting(List.of(), List.of(), 0, 0, 0, false, "", findings);
        }
        Allowances allow = joined.project().settings().allow();
        Settings settings = Settings.kerf(up(allow.kerf().value()))
                .wasting(up(allow.endWaste().value()), 0)
                .keeping(USEFUL_LENGTH, USEFUL_WIDTH);
        Outcome outcome = YieldSolver.solve(new YieldProblem(stocks, pieces(), List.of(), settings));
        return switch (outcome) {
            case Layout layout -> cutting(layout);
            case Outcome.Refusal refusal -> refused(refusal);
        };
    }

    private static long up(Length length) {
        return Exact.ceiling(length.mm().multiply(FINE)).longValueExact();
    }

    private static long down(Length length) {
        return Exact.floor(length.mm().multiply(FINE)).longValueExact();
    }

    private static Length length(long units) {
        return Length.ofMm(BigFraction.of(units).divide(FINE));
    }

    private List<Stock> stocks() {
        List<Stock> stocks = new ArrayList<>();
        for (Board board : joined.project().boards()) {
            Leaves sawn = Leaves.of(board, joined);
            leaves.put(board.name(), sawn);
            long length = down(board.length().value());
            long width = down(board.width().value());
            for (int leaf = 1; leaf <= sawn.count(); leaf++) {
                String id = board.name() + "#" + leaf;
                leafOf.put(id, leaf);
                stockOf.put(id, sawn);
                stocks.add(new Stock(id, length, width, defects(board), length * width / FINE, 1, false, ""));
            }
        }
        return stocks;
    }

    private static List<dev.treen.yield.Defect> defects(Board board) {
        List<dev.treen.yield.Defect> defects = new ArrayList<>();
        for (Defect each : board.defects()) {
            defects.add(switch (each) {
                case Defect.Disc d -> dev.treen.yield.Defect.Knot.round(down(d.x()), down(d.y()), up(d.radius()) + 1);
                case Defect.Line l -> new dev.treen.yield.Defect.Split(
                        down(l.x1()), down(l.y1()), down(l.x2()), down(l.y2()), up(l.width()));
                case Defect.Patch p -> new dev.treen.yield.Defect.Box(
                        new Rect(down(p.x()), down(p.y()), up(p.length()), up(p.width())));
            });
        }
        return defects;
    }

    private List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (FinishedPart part : joined.parts()) {
            Set<String> from = new LinkedHashSet<>();
            stockOf.forEach((id, sawn) -> {
                boolean named = part.part().from().map(b -> b.name().equals(sawn.board().name())).orElse(true);
                if (named && sawn.thickEnoughFor(part)) {
                    from.add(id);
                }
            });
            long length = up(part.roughLength().value());
            long width = up(part.roughWidth().value());
            pieces.add(Piece.of(part.part().name(), length, width, 1).from(from));
        }
        return pieces;
    }

    private Cutting cutting(Layout layout) {
        List<BoardCut> boards = new ArrayList<>();
        double area = 0;
        double used = 0;
        for (BoardLayout each : layout.boards()) {
            BoardCut cut = boardCut(each);
            boards.add(cut);
            used += cut.board().length().value().toDoubleMm() * cut.board().width().value().toDoubleMm();
            for (BoardCut.OnBoard part : cut.parts()) {
                area += part.area().length().toDoubleMm() * part.area().width().toDoubleMm();
            }
        }
        List<String> unplaced = new ArrayList<>();
        for (Unplaced each : layout.unplaced()) {
            unplaced.add(each.pieceId());
            findings.add(noRoom(each));
        }
        return new Cutting(
                boards, unplaced, area, used, layout.gap(), layout.proved(), layout.bound().how(), findings);
    }

    private BoardCut boardCut(BoardLayout layout) {
        Leaves sawn = stockOf.get(layout.stockId());
        if (sawn == null) {
            throw new IllegalStateException("the solver used a board that it was not given: " + layout.stockId());
        }
        List<BoardCut.OnBoard> parts = layout.placements().stream()
                .map(p -> new BoardCut.OnBoard(p.pieceId(), rectangle(p.area())))
                .toList();
        List<BoardCut.SawCut> cuts = layout.steps().stream()
                .map(s -> new BoardCut.SawCut(
                        s.number(),
                        s.direction() == CutTree.Direction.ALONG,
                        length(s.position()),
                        rectangle(s.from())))
                .toList();
        return new BoardCut(
                sawn.board(),
                leafOf.getOrDefault(layout.stockId(), 1),
                sawn.count(),
                sawn.thickness(),
                parts,
                cuts,
                layout.offcuts().stream().map(Cutter::rectangle).toList());
    }

    private static Rectangle rectangle(Rect rect) {
        return new Rectangle(length(rect.x()), length(rect.y()), length(rect.length()), length(rect.width()));
    }

    private Finding noRoom(Unplaced unplaced) {
        Optional<FinishedPart> part = joined.part(unplaced.pieceId());
        LengthFormat format = joined.project().settings().format();
        Finding.Builder finding = Finding.of(
                CuttingFindings.NO_ROOM,
                part.map(p -> p.part().nameAt())
                        .orElse(joined.project().settings().at()),
                "There is no room for `" + unplaced.pieceId() + "` on the boards")
                .found(part.map(p -> "Rough it is " + p.rough().text(format) + ". ").orElse("")
                        + reason(unplaced.reason(), format))
                .because(
                        "Parts are laid out at their rough size, clear of flaws, along the grain, so that every cut runs"
                                + " from edge to edge.")
                .about(unplaced.pieceId());
        return finding.remedy(Remedy.choice("make it smaller, or add a board")).build();
    }

    private static String reason(Unplaced.Reason reason, LengthFormat format) {
        return switch (reason) {
            case Unplaced.Reason.NoStockAccepted none -> "No board is thick enough for it.";
            case Unplaced.Reason.TooLarge(String stock, long tooLong, long tooWide, var other) ->
                "On `" + board(stock) + "` it is "
                        + (tooLong > 0 ? format.text(length(tooLong)) + " too long" : "")
                        + (tooLong > 0 && tooWide > 0 ? " and " : "")
                        + (tooWide > 0 ? format.text(length(tooWide)) + " too wide" : "") + ".";
            case Unplaced.Reason.DefectInTheWay(String stock, var defect, long shorter, long narrower) ->
                "On `" + board(stock) + "` a flaw stands in the way; it would have to be "
                        + format.text(length(shorter)) + " shorter or " + format.text(length(narrower))
                        + " narrower.";
            case Unplaced.Reason.NoRoom(String more, boolean certain) ->
                (certain ? "It is certain that not all parts fit" : "No place was found for it beside the others")
                        + "; one more board like `" + board(more) + "` would hold it.";
            case Unplaced.Reason.NotWorthIt none -> "Other parts took its place.";
        };
    }

    private static String board(String stock) {
        int mark = stock.lastIndexOf('#');
        return mark < 0 ? stock : stock.substring(0, mark);
    }

    private Cutting refused(Outcome.Refusal refusal) {
        for (Outcome.Fault fault : refusal.faults()) {
            findings.add(Finding.of(
                    CuttingFindings.NO_ROOM,
                    joined.project().settings().at(),
                    "The boards cannot be laid out: " + fault.where())
                    .build());
        }
        return new Cutting(List.of(), List.of(), 0, 0, 0, false, "", findings);
    }
}
