package dev.treen.drawing;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a drawing as SVG 1.1; the XML writer of the library escapes all text. */
public final class Svg {
    /** About the width of a sans-serif letter for its height; drawings must fit with any font. */
    public static final double LETTER = 0.6;

    private final StringWriter body = new StringWriter();
    private final XMLStreamWriter xml = writer(body);

    private interface Body {
        void write() throws XMLStreamException;
    }

    private static XMLStreamWriter writer(StringWriter to) {
        try {
            return XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(to);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory cannot fail", impossible);
        }
    }

    private static void quietly(Body body) {
        try {
            body.write();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory cannot fail", impossible);
        }
    }

    /** At most two places, whatever the locale. */
    public static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        String plain = text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
        return plain.equals("-0") ? "0" : plain;
    }

    /** The largest size of letters, up to {@code most}, in which {@code text} is at most {@code wide} long. */
    public static double fitting(String text, double wide, double most) {
        return Math.max(1, Math.min(most, (wide - 6) / (LETTER * Math.max(1, text.length()))));
    }

    /** Characters that XML cannot hold at all become blanks. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            boolean bad = c < 0x20 || (c >= 0xD800 && c <= 0xDFFF) || c == 0xFFFE || c == 0xFFFF;
            out.appendCodePoint(bad ? ' ' : c);
        });
        return out.toString();
    }

    private static void attributes(XMLStreamWriter xml, String... pairs) throws XMLStreamException {
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            xml.writeAttribute(pairs[i], pairs[i + 1]);
        }
    }

    private static void element(XMLStreamWriter xml, String name, String text, String... pairs) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(name);
            attributes(xml, pairs);
            xml.writeCharacters(plain(text));
            xml.writeEndElement();
        });
    }

    private void empty(String name, String[] place, String[] look) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeEmptyElement(name);
            attributes(xml, place);
            attributes(xml, look);
        });
    }

    /** A rectangle by its upper left corner; {@code look} is pairs of attribute and value. */
    public void rect(double x, double y, double w, double h, String... look) {
        empty("rect", new String[]{"x", number(x), "y", number(y), "width", number(w), "height", number(h)}, look);
    }

    /** A straight line, black unless {@code look} says otherwise. */
    public void line(double x1, double y1, double x2, double y2, String... look) {
        String[] place = {"x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2), "stroke", "#000000"};
        empty("line", place, look);
    }

    /** A circle about a point. */
    public void circle(double x, double y, double radius, String... look) {
        empty("circle", new String[]{"cx", number(x), "cy", number(y), "r", number(radius)}, look);
    }

    /** A path in the language of SVG. */
    public void path(String d, String... look) {
        empty("path", new String[]{"d", d}, look);
    }

    /** Begins an element that holds what follows, until it is closed. */
    public void open(String name, String... attributes) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(name);
            attributes(xml, attributes);
        });
    }

    /** Ends what was opened last. */
    public void close() {
        quietly(xml::writeEndElement);
    }

    /** Draws once more what is called {@code id} in the same document. */
    public void use(String id) {
        empty("use", new String[]{"href", "#" + id}, new String[0]);
    }

    /** Words that begin, end or have their middle at a point, as {@code anchor} says. */
    public void text(double x, double y, String anchor, String words, String... look) {
        String[] place = {"x", number(x), "y", number(y), "text-anchor", anchor};
        String[] all = new String[place.length + look.length];
        System.arraycopy(place, 0, all, 0, place.length);
        System.arraycopy(look, 0, all, place.length, look.length);
        element(xml, "text", words, all);
    }

    /** The whole drawing, so wide and high: a white ground, a pattern of slanted lines called flaw, and what was drawn. */
    public String finished(double width, double height, String title, String description) {
        return whole(List.of(), true, width, height, title, description);
    }

    /** The whole drawing on a sheet that prints so wide and high in millimetres; what was drawn is in millimetres too. */
    public String printed(double width, double height, String title, String description) {
        List<String> size = List.of("width", number(width) + "mm", "height", number(height) + "mm");
        return whole(size, false, width, height, title, description);
    }

    /** What was drawn, not to be seen itself but to be used by other drawings of the same document. */
    public String hidden() {
        StringWriter out = new StringWriter();
        XMLStreamWriter head = writer(out);
        quietly(() -> {
            xml.writeCharacters("");
            xml.flush();
            head.writeStartElement("svg");
            head.writeDefaultNamespace("http://www.w3.org/2000/svg");
            attributes(head, "width", "0", "height", "0", "aria-hidden", "true");
            head.writeCharacters("");
            head.flush();
            out.write(body.toString());
            head.writeCharacters("\n");
            head.writeEndElement();
            head.close();
        });
        return out.append('\n').toString();
    }

    private String whole(List<String> size, boolean flaws, double width, double height, String title,
            String description) {
        StringWriter out = new StringWriter();
        XMLStreamWriter head = writer(out);
        quietly(() -> {
            xml.writeCharacters("");
            xml.flush();
            head.writeStartElement("svg");
            head.writeDefaultNamespace("http://www.w3.org/2000/svg");
            attributes(head, size.toArray(String[]::new));
            attributes(head, "viewBox", "0 0 " + number(width) + " " + number(height), "role", "img");
            attributes(head, "aria-labelledby", "title desc", "font-family", "sans-serif");
            element(head, "title", title, "id", "title");
            element(head, "desc", description, "id", "desc");
            if (flaws) {
                pattern(head);
            }
            head.writeCharacters("\n");
            head.writeEmptyElement("rect");
            attributes(head, "x", "0", "y", "0", "width", number(width), "height", number(height), "fill", "#ffffff");
            head.writeCharacters("");
            head.flush();
            out.write(body.toString());
            head.writeCharacters("\n");
            head.writeEndElement();
            head.close();
        });
        return out.append('\n').toString();
    }

    private static void pattern(XMLStreamWriter head) throws XMLStreamException {
        head.writeCharacters("\n");
        head.writeStartElement("defs");
        head.writeStartElement("pattern");
        attributes(head, "id", "flaw", "width", "4", "height", "4", "patternUnits", "userSpaceOnUse");
        head.writeEmptyElement("path");
        attributes(head, "d", "M-1 1 L1 -1 M0 4 L4 0 M3 5 L5 3", "stroke", "#000000", "stroke-width", "0.8");
        head.writeEndElement();
        head.writeEndElement();
    }
}
