package dev.treen.paper;

import dev.treen.drawing.Svg;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;

/**
 * Deals drawings, each in the size it is printed in, out to rows and the rows to sheets: each goes to the first place that has
 * room for it, so that small ones fill up what large ones leave.
 */
final class DrawnSheets {
    private static final double BETWEEN = 6;

    /** What a drawing's caption and the room about it take, in millimetres. */
    private static final double CAPTION = 12;

    private final double wide;
    private final double high;
    private final List<Sheet> sheets = new ArrayList<>();

    /** For sheets with so much room, in millimetres. */
    DrawnSheets(double wide, double high) {
        this.wide = wide;
        this.high = high;
    }

    private static final class Sheet {
        private final List<Row> rows = new ArrayList<>();
        private double used;
    }

    private static final class Row {
        private final Element element = new Element("div").addClass("row");
        private final double high;
        private double used;

        private Row(double high) {
            this.high = high;
        }
    }

    /** Puts {@code figure} into the first row or sheet that has room. */
    void place(Element figure) {
        Element drawn = figure.selectFirst("> .drawn");
        double need = drawn == null ? wide : Math.min(wide, Fitted.width(drawn) + BETWEEN);
        double tall = drawn == null ? high : Fitted.height(drawn) + CAPTION;
        Row row = row(need, tall);
        row.element.appendChild(figure.attr("style", "width: " + Svg.number(need - 1) + "mm"));
        row.used += need;
    }

    private Row row(double need, double tall) {
        for (Sheet sheet : sheets) {
            for (Row row : sheet.rows) {
                if (row.used + need <= wide && tall <= row.high) {
                    return row;
                }
            }
            if (sheet.used + tall <= high) {
                return added(sheet, tall);
            }
        }
        Sheet sheet = new Sheet();
        sheets.add(sheet);
        return added(sheet, tall);
    }

    private static Row added(Sheet sheet, double tall) {
        Row row = new Row(tall);
        sheet.rows.add(row);
        sheet.used += tall;
        return row;
    }

    /** The rows in their order, sheet by sheet. */
    List<Element> rows() {
        List<Element> rows = new ArrayList<>();
        for (Sheet sheet : sheets) {
            sheet.rows.forEach(row -> {
                row.element.appendElement("div").addClass("end");
                rows.add(row.element);
            });
        }
        return rows;
    }
}
