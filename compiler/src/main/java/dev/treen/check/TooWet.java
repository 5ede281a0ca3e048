package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.quantity.DecimalText;
import dev.treen.wood.Figures;
import dev.treen.wood.Species;
import java.util.List;

/**
 * A board wetter than its fibres can hold is green: nothing that is computed of movement holds for it. The saturation of
 * most woods is near 30 % (Wood Handbook ch. 4).
 */
final class TooWet implements Check {
    static final FindingKind TOO_WET = FindingKind.error("moisture-out-of-range",
            "A board is wetter than wood that can be worked");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOO_WET);
    }

    @Override
    public List<Finding> run(Joined joined) {
        return joined.project().boards().stream()
                .filter(board -> board.moisture().orElse(0.0) > saturation(board))
                .map(TooWet::finding)
                .toList();
    }

    private static double saturation(Board board) {
        return Woods.of(board)
                .flatMap(Species::coefficients)
                .map(coefficients -> coefficients.fibreSaturation())
                .orElseGet(() -> Figures.standard().value("movement.fibre-saturation"));
    }

    private static Finding finding(Board board) {
        double moisture = board.moisture().orElseThrow();
        String limit = DecimalText.write(saturation(board), 1);
        return Finding.of(TOO_WET, board.moistureAt(), "`" + board.name() + "` is as wet as green wood")
                .label("measured moisture")
                .found(Amounts.moisture(moisture) + "; figures from 0 to " + limit + " % can be used.")
                .because("Above " + limit + " % the fibres are full of water and wood does not move; it shrinks when it"
                        + " comes below (Wood Handbook ch. 4). What is made of it now will not keep its shape.")
                .about(board.name())
                .number("moisture", moisture)
                .number("limit", saturation(board))
                .remedy(Remedy.choice("dry it in stick until the meter shows what the room asks for, and write that"))
                .build();
    }
}
