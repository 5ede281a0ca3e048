package dev.treen.page;

import dev.treen.plan.Costs;
import dev.treen.plan.CutListCsv;
import dev.treen.plan.Plan;
import dev.treen.quantity.LengthFormat;
import java.util.Optional;

/** What must be at hand before the work begins, as a table for a spreadsheet: boards, sheets, and what is used up. */
public final class ShoppingCsv {
    private ShoppingCsv() {
    }

    /** The table of {@code plan}. */
    public static String of(Plan plan) {
        StringBuilder out = new StringBuilder();
        CutListCsv.row(out, "what", "amount", "unit", "size", "note", "cost", "cost at most", "currency");
        Costs costs = Costs.of(plan);
        LengthFormat format = plan.format();
        costs.boards().forEach(board -> row(
                out, costs.currency(), Costs.of(board),
                (board.sheet() ? "sheet" : "board") + Opening.wood(board).map(wood -> ", " + wood).orElse(""),
                "1",
                "",
                format.figure(board.length().value()) + " x " + format.figure(board.width().value()) + " x "
                        + format.text(board.thickness().value()),
                (board.offcut() ? "an offcut at hand: " : "") + board.name()));
        costs.supplies().forEach(each -> row(
                out, costs.currency(), Costs.of(each),
                plain(each.called()), each.amount(), each.unit(), "", each.reckoned() + " (" + each.source() + ")"));
        if (costs.any()) {
            row(out, costs.currency(), Optional.of(costs.together()), "together", "", "", "",
                    costs.unpriced().isEmpty()
                            ? "all priced"
                            : costs.priced() + " of " + costs.lines() + " priced; not said: "
                                    + plain(String.join("; ", costs.unpriced())));
        }
        return out.toString();
    }

    private static void row(StringBuilder out, String currency, Optional<Costs.Sum> cost, String what, String amount,
            String unit, String size, String note) {
        CutListCsv.row(out, what, amount, unit, size, note,
                cost.map(sum -> sum.least().toPlainString()).orElse(""),
                cost.map(sum -> sum.most().toPlainString()).orElse(""),
                cost.isPresent() ? currency : "");
    }

    private static String plain(String words) {
        return words.replace("`", "");
    }
}
