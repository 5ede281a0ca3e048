package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.model.Board;
import dev.treen.plan.CutListCsv;
import dev.treen.plan.Plan;
import dev.treen.quantity.LengthFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/** What must be at hand before the work begins, as a table for a spreadsheet: boards, sheets, and what is used up. */
public final class ShoppingCsv {
    private ShoppingCsv() {
    }

    /** The table of {@code plan}. */
    public static String of(Plan plan) {
        StringBuilder out = new StringBuilder();
        CutListCsv.row(out, "what", "amount", "unit", "size", "note");
        Map<String, Board> boards = new LinkedHashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            boards.putIfAbsent(cut.board().name(), cut.board());
        }
        LengthFormat format = plan.format();
        boards.values().forEach(board -> CutListCsv.row(
                out,
                (board.sheet() ? "sheet" : "board") + Opening.wood(board).map(wood -> ", " + wood).orElse(""),
                "1",
                "",
                format.figure(board.length().value()) + " x " + format.figure(board.width().value()) + " x "
                        + format.text(board.thickness().value()),
                (board.offcut() ? "an offcut at hand: " : "") + board.name()));
        Supplies.of(plan.joined())
                .forEach(s -> CutListCsv.row(out, s.what(), s.amount(), s.unit(), "",
                        s.reckoned() + " (" + s.source() + ")"));
        return out.toString();
    }
}
