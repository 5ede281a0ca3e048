package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.model.Defect;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * The layout of one board as a drawing to scale: parts with their names, sizes and grain, saw cuts by number, flaws
 * hatched, offcuts dashed. Readable in black and white, and by ear through its title and description.
 */
public final class LayoutSvg {
    private static final double MARGIN = 18;
    private static final double FOOT = 34;
    private static final double HEAD = 22;
    private static final double TEXT = 9;

    private final Plan plan;
    private final BoardCut board;
    private final LengthFormat format;
    private final XMLStreamWriter svg;
    private final double scale;
    private final double height;

    private LayoutSvg(Plan plan, BoardCut board, XMLStreamWriter svg) {
        this.plan = plan;
        this.board = board;
        this.format = plan.joined().project().settings().format();
        this.svg = svg;
        double length = board.board().length().value().toDoubleMm();
        // A drawing is 900 units wide whatever the board; a narrow board is drawn at the same scale both ways.
        this.scale = 900 / length;
        this.height = board.board().width().value().toDoubleMm() * scale;
    }

    /** The drawing of {@code board}. */
    public static String of(Plan plan, BoardCut board) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            new LayoutSvg(plan, board, writer).write();
            writer.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory cannot fail", impossible);
        }
        return out.append('\n').toString();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }

    private double x(Length x) {
        return MARGIN + x.toDoubleMm() * scale;
    }

    /** The near edge is drawn below, as the board lies before its maker. */
    private double y(Length y) {
        return HEAD + MARGIN + height - y.toDoubleMm() * scale;
    }

    private void write() throws XMLStreamException {
        double total = HEAD + height + 2 * MARGIN + FOOT;
        svg.writeStartElement("svg");
        svg.writeDefaultNamespace("http://www.w3.org/2000/svg");
        svg.writeAttribute("viewBox", "0 0 936 " + number(total));
        svg.writeAttribute("role", "img");
        svg.writeAttribute("font-family", "sans-serif");
        svg.writeAttribute("font-size", number(TEXT));
        element("title", board.name() + ": cutting layout for " + plan.title());
        element("desc", description());
        hatch();
        rectangle(0, 0, 936, total, "fill", "#ffffff");
        text(MARGIN, 16, "start", board.name() + ", " + format.text(board.board().length().value()) + " x "
                + format.text(board.board().width().value()) + ", " + format.text(board.thickness())
                + " thick once flat", "font-weight", "bold", "font-size", "12");
        outline();
        for (Rectangle offcut : board.offcuts()) {
            box(offcut, "fill", "none", "stroke", "#000000", "stroke-width", "0.5", "stroke-dasharray", "3 2");
            label(offcut, "offcut", format.figure(offcut.length()) + " x " + format.figure(offcut.width()));
        }
        for (BoardCut.OnBoard part : board.parts()) {
            part(part);
        }
        for (Defect defect : board.board().defects()) {
            defect(defect);
        }
        for (BoardCut.SawCut cut : board.cuts()) {
            cut(cut);
        }
        foot(total);
        svg.writeEndElement();
    }

    private String description() {
        StringBuilder text = new StringBuilder();
        for (BoardCut.OnBoard part : board.parts()) {
            text.append(part.part())
                    .append(", ")
                    .append(format.text(part.area().length()))
                    .append(" along by ")
                    .append(format.text(part.area().width()))
                    .append(" across the grain, from ")
                    .append(format.text(part.area().x()))
                    .append(" of the left end and ")
                    .append(format.text(part.area().y()))
                    .append(" of the near edge. ");
        }
        return text.toString().strip();
    }

    private void element(String name, String text) throws XMLStreamException {
        svg.writeStartElement(name);
        svg.writeCharacters(plain(text));
        svg.writeEndElement();
    }

    /** Characters that XML cannot hold at all. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(c < 0x20 || (c >= 0xD800 && c <= 0xDFFF) ? ' ' : c));
        return out.toString();
    }

    private void attributes(String... pairs) throws XMLStreamException {
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            svg.writeAttribute(pairs[i], pairs[i + 1]);
        }
    }

    private void rectangle(double x, double y, double w, double h, String... more) throws XMLStreamException {
        svg.writeEmptyElement("rect");
        attributes("x", number(x), "y", number(y), "width", number(w), "height", number(h));
        attributes(more);
    }

    private void box(Rectangle area, String... more) throws XMLStreamException {
        rectangle(
                x(area.x()),
                y(area.y().plus(area.width())),
                area.length().toDoubleMm() * scale,
                area.width().toDoubleMm() * scale,
                more);
    }

    private void line(double x1, double y1, double x2, double y2, String... more) throws XMLStreamException {
        svg.writeEmptyElement("line");
        attributes("x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2), "stroke", "#000000");
        attributes(more);
    }

    private void text(double x, double y, String anchor, String words, String... more) throws XMLStreamException {
        svg.writeStartElement("text");
        attributes("x", number(x), "y", number(y), "text-anchor", anchor);
        attributes(more);
        svg.writeCharacters(plain(words));
        svg.writeEndElement();
    }

    private void hatch() throws XMLStreamException {
        svg.writeStartElement("defs");
        svg.writeStartElement("pattern");
        attributes("id", "flaw", "width", "4", "height", "4", "patternUnits", "userSpaceOnUse");
        svg.writeEmptyElement("path");
        attributes("d", "M0 4 L4 0", "stroke", "#000000", "stroke-width", "0.8");
        svg.writeEndElement();
        svg.writeEndElement();
    }

    private void outline() throws XMLStreamException {
        rectangle(MARGIN, HEAD + MARGIN, 900, height, "fill", "#f4ead6", "stroke", "#000000", "stroke-width", "1.4");
    }

    private void part(BoardCut.OnBoard part) throws XMLStreamException {
        Rectangle area = part.area();
        box(area, "fill", "#ffffff", "stroke", "#000000", "stroke-width", "1");
        label(area, part.part(), format.figure(area.length()) + " x " + format.figure(area.width()));
        double left = x(area.x());
        double middle = left + area.length().toDoubleMm() * scale / 2;
        double below = y(area.y()) - 5;
        double reach = Math.min(24, area.length().toDoubleMm() * scale / 3);
        line(middle - reach, below, middle + reach, below, "stroke-width", "0.6");
        svg.writeEmptyElement("path");
        attributes("d", "M" + number(middle + reach) + " " + number(below) + " l-5 -2 v4 z", "fill", "#000000");
    }

    private void label(Rectangle area, String name, String size) throws XMLStreamException {
        double wide = area.length().toDoubleMm() * scale;
        double high = area.width().toDoubleMm() * scale;
        double cx = x(area.x()) + wide / 2;
        double cy = y(area.y()) - high / 2;
        String both = name + "  " + size;
        double one = Math.min(TEXT, Math.min(high - 2, 1.7 * (wide - 4) / Math.max(1, both.length())));
        if (high >= 34) {
            double fits = Math.min(TEXT + 1, 1.7 * (wide - 4) / Math.max(name.length(), size.length()));
            text(cx, cy - 3, "middle", name, "font-weight", "bold", "font-size", number(fits));
            text(cx, cy + 9, "middle", size, "font-size", number(Math.min(TEXT, fits)));
        } else if (one >= 3) {
            text(cx, cy + one / 3, "middle", both, "font-size", number(one));
        }
    }

    private void defect(Defect defect) throws XMLStreamException {
        String[] look = {"fill", "url(#flaw)", "stroke", "#000000", "stroke-width", "0.8"};
        switch (defect) {
            case Defect.Disc disc -> {
                svg.writeEmptyElement("circle");
                attributes(
                        "cx",
                        number(x(disc.x())),
                        "cy",
                        number(y(disc.y())),
                        "r",
                        number(disc.radius().toDoubleMm() * scale));
                attributes(look);
                double up = y(disc.y()) - disc.radius().toDoubleMm() * scale - 2;
                text(x(disc.x()), up, "middle", disc.kind(), "font-size", "7");
            }
            case Defect.Line split -> {
                line(x(split.x1()), y(split.y1()), x(split.x2()), y(split.y2()), "stroke-width", "2.4",
                        "stroke-dasharray", "5 2");
                text(x(split.x2()) + 3, y(split.y2()) + 3, "start", split.kind(), "font-size", "7");
            }
            case Defect.Patch patch -> box(
                    new Rectangle(patch.x(), patch.y(), patch.length(), patch.width()), look);
        }
    }

    private void cut(BoardCut.SawCut cut) throws XMLStreamException {
        Rectangle piece = cut.piece();
        double x1 = cut.along() ? x(piece.x()) : x(cut.at());
        double x2 = cut.along() ? x(piece.x().plus(piece.length())) : x1;
        double y1 = cut.along() ? y(cut.at()) : y(piece.y());
        double y2 = cut.along() ? y1 : y(piece.y().plus(piece.width()));
        line(x1, y1, x2, y2, "stroke-width", "0.7", "stroke-dasharray", "8 2 1.5 2");
        double mx = cut.along() ? x1 + 7 : x1;
        double my = cut.along() ? y1 : y2 + 7;
        svg.writeEmptyElement("circle");
        attributes("cx", number(mx), "cy", number(my), "r", "5", "fill", "#000000");
        text(mx, my + 2.4, "middle", String.valueOf(cut.number()), "fill", "#ffffff", "font-size", "6.5");
    }

    private void foot(double total) throws XMLStreamException {
        double y = total - 20;
        double bar = 100 * scale;
        line(MARGIN, y, MARGIN + bar, y, "stroke-width", "1.5");
        line(MARGIN, y - 3, MARGIN, y + 3);
        line(MARGIN + bar, y - 3, MARGIN + bar, y + 3);
        text(MARGIN, y + 12, "start", format.text(Length.ofMm(100)));
        text(
                MARGIN + bar + 14,
                y + 3,
                "start",
                "sizes are rough; arrows show the grain; numbers in black count the cuts; flaws are hatched; dashed is"
                        + " an offcut; left end and near edge are the datum");
    }
}
