package dev.treen.page;

import dev.treen.plan.CutListCsv;
import dev.treen.plan.Plan;
import dev.treen.quantity.LengthFormat;
import java.util.List;

/** What must be at hand before the work begins, as a table for a spreadsheet: boards, sheets, and what is used up. */
public final class ShoppingCsv {
    private ShoppingCsv() {
    }

    /** The table of {@code plan}. */
    public static String of(Plan plan) {
        StringBuilder out = new StringBuilder();
        CutListCsv.row(out, "what", "amount", "unit", "size", "note", "cost", "currency");
        Costs costs = Costs.of(plan);
        LengthFormat format = plan.format();
        costs.boards().forEach(board -> CutListCsv.row(
                out,
                (board.sheet() ? "sheet" : "board") + Opening.wood(board).map(wood -> ", " + wood).orElse(""),
                "1",
                "",
                format.figure(board.length().value()) + " x " + format.figure(board.width().value()) + " x "
                        + format.text(board.thickness().value()),
                (board.offcut() ? "an offcut at hand: " : "") + board.name(),
                Costs.plain(board),
                board.price().isPresent() ? costs.currency() : ""));
        if (costs.any()) {
            List<String> unknown = costs.unknown();
            CutListCsv.row(out, "boards and sheets together", "", "", "",
                    unknown.isEmpty() ? "" : "without " + String.join(", ", unknown) + ", whose price is not said",
                    costs.together(), costs.currency());
        }
        Supplies.of(plan.joined())
                .forEach(s -> CutListCsv.row(out, s.what(), s.amount(), s.unit(), "",
                        s.reckoned() + " (" + s.source() + ")", "", ""));
        return out.toString();
    }
}
