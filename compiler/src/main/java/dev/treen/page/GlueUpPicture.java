package dev.treen.page;

import dev.treen.cutting.Blank;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Glued;
import dev.treen.drawing.Svg;
import dev.treen.order.Operation;
import dev.treen.plan.Plan;
import java.util.List;
import java.util.Optional;

/** The end grain of the staves of a part as they are laid: how wide each is, and how its growth rings lie. */
final class GlueUpPicture {
    private static final double WIDE = 92;
    private static final double LETTERS = 3.2;
    private static final double GAP = 5;

    /** From here on rings stand so upright that no side of a stave is hollow (angles as the language has them). */
    private static final double UPRIGHT = 60;

    private static final double SLANTED = 30;

    /** Thinner staves could not be told by their rings. */
    private static final double LEAST = 7;

    private GlueUpPicture() {
    }

    /** The glue-ups that {@code operation} works on; nothing where it works on none. */
    static Optional<String> of(Plan plan, Operation operation, String title) {
        List<Glued> all = plan.cutting().glued().stream()
                .filter(each -> operation.parts().contains(each.part()))
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Svg svg = new Svg();
        double y = 0;
        for (Glued glued : all) {
            y = drawn(svg, plan, glued, y) + GAP;
        }
        return Optional
                .of(svg.printed(WIDE, y, title, String.join("; ", all.stream().map(each -> told(each)).toList())));
    }

    private static String told(Glued glued) {
        return "end grain of " + glued.staves().size() + " staves of " + glued.part()
                + (glued.hearts().isEmpty() ? ", leaves of one piece"
                        : ", heart sides "
                                + String.join(", ", glued.hearts().stream().map(Glued.Heart::word).toList()));
    }

    private static double drawn(Svg svg, Plan plan, Glued glued, double top) {
        double whole = glued.staves().stream().mapToDouble(each -> each.toDoubleMm()).sum();
        double scale = (WIDE - 1) / whole;
        double high = Math.max(LEAST, glued.thickness().toDoubleMm() * scale);
        svg.text(0.5, top + LETTERS, "start", glued.part() + ", end grain", "font-size", Svg.number(LETTERS),
                "font-weight", "bold");
        double y = top + LETTERS + 2.5;
        double x = 0.5;
        for (int i = 0; i < glued.staves().size(); i++) {
            double wide = glued.staves().get(i).toDoubleMm() * scale;
            svg.rect(x, y, wide, high, "fill", "#ece6da", "stroke", "#000000", "stroke-width", "0.5");
            boolean down = !glued.hearts().isEmpty() && glued.hearts().get(i) == Glued.Heart.DOWN;
            boolean mirrored = glued.hearts().isEmpty() && i % 2 == 1;
            rings(svg, degrees(plan, glued, i + 1), x, y, wide, high, down, mirrored);
            String below = (i + 1) + ": " + plan.format().figure(glued.staves().get(i));
            svg.text(x + wide / 2, y + high + LETTERS + 1, "middle", below, "font-size",
                    Svg.number(Svg.fitting(below, wide + 6, LETTERS)));
            x += wide;
        }
        return y + high + LETTERS + 2;
    }

    /** How the rings of the board lie that a stave comes from, or of its part where it comes from none. */
    private static double degrees(Plan plan, Glued glued, int stave) {
        return plan.cutting().boardOf(new Blank.Member(glued.part(), stave))
                .map(BoardCut::source)
                .map(board -> board.rings().degrees())
                .orElse(0.0);
    }

    // Flat rings as arcs that are hollow towards the heart, upright ones as lines across, those between as slanted lines.
    private static void rings(
            Svg svg, double degrees, double x, double y, double wide, double high, boolean down, boolean mirrored) {
        if (degrees < SLANTED) {
            for (int i = 1; i <= 3; i++) {
                double deep = high * (0.2 + 0.2 * i);
                double reach = wide * (0.16 + 0.1 * i);
                double from = down ? y + high : y;
                double control = down ? from - 2 * deep : from + 2 * deep;
                double middle = x + wide / 2;
                svg.path("M" + Svg.number(middle - reach) + " " + Svg.number(from) + "Q" + Svg.number(middle) + " "
                        + Svg.number(Math.clamp(control, y - 2 * high, y + 3 * high)) + " "
                        + Svg.number(middle + reach) + " " + Svg.number(from), "fill", "none", "stroke", "#000000",
                        "stroke-width", "0.25");
            }
            return;
        }
        double lean = degrees >= UPRIGHT ? high * 0.15 : high;
        double slant = down != mirrored ? -lean : lean;
        int lines = Math.max(2, (int) (wide / 4));
        for (int i = 1; i <= lines; i++) {
            double foot = x + wide * i / (lines + 1);
            double head = Math.clamp(foot + slant, x, x + wide);
            svg.line(foot, y + high, head, y, "stroke-width", "0.25");
        }
    }
}
