package dev.treen.plan;

import dev.treen.cutting.Moves;
import dev.treen.cutting.Rectangle;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What moved in the layout since the plan before, in words. */
public final class MovesText {
    private static final int MANY = 30;

    private MovesText() {
    }

    /** One paragraph a line; none where all lies as it lay, or where there was no plan before. */
    public static List<String> of(Moves moves, LengthFormat format) {
        if (moves.none()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        String stay = moves.stayed() == 0 ? "nothing lies where it was"
                : moves.stayed() == 1 ? "1 part lies where it was" : moves.stayed() + " parts lie where they were";
        lines.add("Since the last plan: " + stay + "."
                + (moves.anew() ? " All is laid out anew: no layout that moves less takes nearly as little wood." : "")
                + (moves.more() > 0 ? " A layout made anew would take " + share(moves.more()) + " % less wood." : ""));
        moves.moved().stream().limit(MANY).forEach(move -> lines.add(
                "`" + move.part() + "` moves from " + place(move.fromBoard(), move.from(), format) + " to "
                        + place(move.toBoard(), move.to(), format) + "."));
        if (moves.moved().size() > MANY) {
            lines.add("And " + (moves.moved().size() - MANY) + " more move.");
        }
        named(lines, "Of another size at its old place: ", moves.resized());
        named(lines, "New: ", moves.added());
        named(lines, "No longer on a board: ", moves.gone());
        named(lines, "Cut already, but the old place does not fit any more: ", moves.lost());
        return lines;
    }

    private static void named(List<String> lines, String what, List<String> parts) {
        if (!parts.isEmpty()) {
            lines.add(what + parts.stream().limit(MANY).map(part -> "`" + part + "`").collect(Collectors.joining(", "))
                    + (parts.size() > MANY ? " and " + (parts.size() - MANY) + " more." : "."));
        }
    }

    private static String place(String board, Rectangle area, LengthFormat format) {
        return "`" + board + "` at " + format.text(area.x()) + ", " + format.text(area.y());
    }

    // What is saved of the layout that stays, and not of the cheaper one.
    private static String share(double more) {
        return DecimalText.write(100 * more / (1 + more), 1);
    }
}
