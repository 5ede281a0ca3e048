package dev.treen.plan;

import dev.treen.joinery.GlueFaces;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The faces on which the parts of a joint touch, in words. */
public final class GlueText {
    private static final double MM2_IN_CM2 = 100;
    private static final double MM2_IN_SQUARE_INCH = 25.4 * 25.4;

    private GlueText() {
    }

    /** One line. */
    public static String of(GlueFaces faces, LengthFormat format) {
        List<String> areas = new ArrayList<>();
        add(areas, faces.longGrain(), "long grain on long grain", format);
        add(areas, faces.mixed(), "long grain on end grain, or grain that leans", format);
        add(areas, faces.endGrain(), "end grain on end grain", format);
        return faces.made().joint().name() + " touches on "
                + (areas.isEmpty() ? "no face" : String.join(", ", areas))
                + "  ←  the finished bodies" + (faces.glued() ? "" : "; it is not glued");
    }

    private static void add(List<String> areas, double mm2, String what, LengthFormat format) {
        if (mm2 > 0) {
            areas.add((format.imperial()
                    ? String.format(Locale.ROOT, "%.2f sq in", mm2 / MM2_IN_SQUARE_INCH)
                    : String.format(Locale.ROOT, "%.1f cm²", mm2 / MM2_IN_CM2)) + " " + what);
        }
    }
}
