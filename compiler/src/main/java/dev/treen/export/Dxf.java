package dev.treen.export;

import dev.treen.drawing.Outlines;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;

/**
 * The views of a part as ASCII DXF of release 12, in millimetres at full size: lines and circles only, which everything
 * that reads DXF reads (Autodesk, DXF Reference, release 12; from memory). Each view has a layer of its own, and one more
 * for what lies behind wood.
 */
public final class Dxf {
    private static final int WHITE = 7;
    private static final int GREY = 8;

    private final StringBuilder out = new StringBuilder();

    private Dxf() {
    }

    /** The drawing of parts that are alike. */
    public static String of(Outlines part) {
        Dxf dxf = new Dxf();
        dxf.write(part);
        return dxf.out.toString();
    }

    private void write(Outlines part) {
        pair(999, "Treen: " + plain(String.join(", ", part.names())) + ", millimetres, full size");
        section("HEADER");
        pair(9, "$ACADVER");
        pair(1, "AC1009");
        double[] bounds = bounds(part);
        point("$EXTMIN", bounds[0], bounds[1]);
        point("$EXTMAX", bounds[2], bounds[3]);
        pair(0, "ENDSEC");
        tables(part);
        section("ENTITIES");
        for (Outlines.Face face : part.views()) {
            face.segments().forEach(segment -> line(face, segment));
            face.circles().forEach(circle -> circle(face, circle));
        }
        pair(0, "ENDSEC");
        pair(0, "EOF");
    }

    private void tables(Outlines part) {
        section("TABLES");
        table("LTYPE", 2);
        lineType("CONTINUOUS", "", new double[0]);
        lineType("HIDDEN", "__ __ __", new double[]{3, -1.5});
        pair(0, "ENDTAB");
        Set<String> layers = new LinkedHashSet<>();
        part.views().forEach(face -> layers.add(layer(face, true)));
        part.views().forEach(face -> layers.add(layer(face, false)));
        table("LAYER", layers.size() + 1);
        layer("0", true);
        layers.forEach(name -> layer(name, !name.endsWith("_HIDDEN")));
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    private void section(String name) {
        pair(0, "SECTION");
        pair(2, name);
    }

    private void table(String name, int entries) {
        pair(0, "TABLE");
        pair(2, name);
        pair(70, String.valueOf(entries));
    }

    private void lineType(String name, String looks, double[] dashes) {
        pair(0, "LTYPE");
        pair(2, name);
        pair(70, "0");
        pair(3, looks);
        pair(72, "65");
        pair(73, String.valueOf(dashes.length));
        double whole = 0;
        for (double dash : dashes) {
            whole += Math.abs(dash);
        }
        pair(40, number(whole));
        for (double dash : dashes) {
            pair(49, number(dash));
        }
    }

    private void layer(String name, boolean seen) {
        pair(0, "LAYER");
        pair(2, name);
        pair(70, "0");
        pair(62, String.valueOf(seen ? WHITE : GREY));
        pair(6, seen ? "CONTINUOUS" : "HIDDEN");
    }

    private static String layer(Outlines.Face face, boolean seen) {
        return face.caption().toUpperCase(Locale.ROOT).replace(' ', '_') + (seen ? "" : "_HIDDEN");
    }

    private void line(Outlines.Face face, Outlines.Segment segment) {
        pair(0, "LINE");
        pair(8, layer(face, segment.seen()));
        place(10, segment.fromX(), segment.fromY());
        place(11, segment.toX(), segment.toY());
    }

    private void circle(Outlines.Face face, Outlines.Circle circle) {
        pair(0, "CIRCLE");
        pair(8, layer(face, circle.seen()));
        place(10, circle.x(), circle.y());
        pair(40, number(circle.radius()));
    }

    private void point(String name, double x, double y) {
        pair(9, name);
        place(10, x, y);
    }

    private void place(int code, double x, double y) {
        pair(code, number(x));
        pair(code + 10, number(y));
        pair(code + 20, "0.0");
    }

    private static double[] bounds(Outlines part) {
        double[] bounds = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
                Double.NEGATIVE_INFINITY};
        part.views().stream().flatMap(face -> face.segments().stream()).forEach(segment -> {
            bounds[0] = Math.min(bounds[0], Math.min(segment.fromX(), segment.toX()));
            bounds[1] = Math.min(bounds[1], Math.min(segment.fromY(), segment.toY()));
            bounds[2] = Math.max(bounds[2], Math.max(segment.fromX(), segment.toX()));
            bounds[3] = Math.max(bounds[3], Math.max(segment.fromY(), segment.toY()));
        });
        return bounds;
    }

    private void pair(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code)).append('\n').append(value).append('\n');
    }

    /** To a millionth of a millimetre, always with a point. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value).replaceFirst("0+$", "").replaceFirst("\\.$", ".0");
        return text.equals("-0.0") ? "0.0" : text;
    }

    /** Release 12 knows only ASCII; no line end may get into a line. */
    private static String plain(String words) {
        StringBuilder plain = new StringBuilder();
        words.chars().forEach(c -> plain.append(c >= 0x20 && c < 0x7F ? String.valueOf((char) c)
                : String.format(Locale.ROOT, "\\U+%04X", c)));
        return plain.toString();
    }
}
