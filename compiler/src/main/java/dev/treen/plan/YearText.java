package dev.treen.plan;

import dev.treen.check.RoomYear;
import dev.treen.quantity.LengthFormat;
import java.util.Locale;

/** The room of a panel, door or lid through the year in words and signs, the same wherever it is shown. */
public final class YearText {
    private static final int WIDEST = 32;

    private YearText() {
    }

    /** The curve as bars, its two ends, and what else would do. */
    public static String of(RoomYear year, LengthFormat format) {
        StringBuilder out = new StringBuilder();
        out.append("room of ").append(year.part()).append(" on each side through the year, made as drawn: ")
                .append(mm(year.benchMm(), format)).append(" at the bench\n");
        double most = year.points().stream().mapToDouble(RoomYear.Point::mm).max().orElse(0);
        int widest = year.points().stream().mapToInt(point -> point.when().length()).max().orElse(0);
        for (RoomYear.Point point : year.points()) {
            int bar = most <= 0 ? 0 : (int) Math.round(Math.max(0, point.mm()) / most * WIDEST);
            out.append("  ").append(" ".repeat(widest - point.when().length())).append(point.when()).append("  ")
                    .append(padded(mm(point.mm(), format))).append("  ").append("#".repeat(bar)).append('\n');
        }
        out.append(ends(year, format)).append('\n');
        if (!year.largest().isEmpty()) {
            out.append("making may take or give ").append(mm(year.makingMm(), format)).append(", as a rule ")
                    .append(mm(year.likelyMm(), format)).append("; most from:\n");
            year.largest().forEach(each -> out.append("  ").append(each).append('\n'));
        }
        if (!year.needs().isEmpty()) {
            out.append("a gap that stands the dampest season:\n");
            year.needs().forEach(need -> out.append("  ").append(padded(mm(need.gapMm(), format))).append("  ")
                    .append(need.what()).append('\n'));
        }
        return out.toString().stripTrailing();
    }

    /** Both ends of the room in one line. */
    public static String ends(RoomYear year, LengthFormat format) {
        return "tightest " + mm(year.tightest().mm(), format) + " " + year.tightest().when() + ", mostly by "
                + year.tightest().cause() + "; loosest " + mm(year.loosest().mm(), format) + " "
                + year.loosest().when();
    }

    /** Both ends of the room, for a hint in the line. */
    public static String hint(RoomYear year, LengthFormat format) {
        return mm(year.tightest().mm(), format) + " to " + mm(year.loosest().mm(), format) + " through the year";
    }

    private static String padded(String text) {
        return " ".repeat(Math.max(0, 8 - text.length())) + text;
    }

    /** Nature's numbers: hundredths of a millimetre, or thousandths of an inch. */
    public static String mm(double mm, LengthFormat format) {
        return format instanceof LengthFormat.Metric
                ? String.format(Locale.ROOT, "%.2f mm", mm + 0.0)
                : String.format(Locale.ROOT, "%.3f in", mm / 25.4);
    }
}
