package dev.treen.plan;

import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a drawing as SVG 1.1; the XML writer of the library escapes all text. */
final class Svg {
    /** About the width of a sans-serif letter for its height; drawings must fit with any font. */
    private static final double LETTER = 0.6;

    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;

    private interface Body {
        void write() throws XMLStreamException;
    }

    Svg(double width, double height) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory cannot fail", impossible);
        }
        quietly(() -> {
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
            attributes("viewBox", "0 0 " + number(width) + " " + number(height), "role", "img");
            attributes("aria-labelledby", "title desc", "font-family", "sans-serif");
        });
    }

    private static void quietly(Body body) {
        try {
            body.write();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory cannot fail", impossible);
        }
    }

    /** At most two places, whatever the locale. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        String plain = text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
        return plain.equals("-0") ? "0" : plain;
    }

    /** The largest size of letters, up to {@code most}, in which {@code text} is at most {@code wide} long. */
    static double fitting(String text, double wide, double most) {
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

    private void attributes(String... pairs) throws XMLStreamException {
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            xml.writeAttribute(pairs[i], pairs[i + 1]);
        }
    }

    void named(String title, String description) {
        element("title", title, "id", "title");
        element("desc", description, "id", "desc");
    }

    private void element(String name, String text, String... pairs) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(name);
            attributes(pairs);
            xml.writeCharacters(plain(text));
            xml.writeEndElement();
        });
    }

    private void empty(String name, String[] place, String[] look) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeEmptyElement(name);
            attributes(place);
            attributes(look);
        });
    }

    void rect(double x, double y, double w, double h, String... look) {
        empty("rect", new String[]{"x", number(x), "y", number(y), "width", number(w), "height", number(h)}, look);
    }

    void line(double x1, double y1, double x2, double y2, String... look) {
        String[] place = {"x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2), "stroke", "#000000"};
        empty("line", place, look);
    }

    void circle(double x, double y, double radius, String... look) {
        empty("circle", new String[]{"cx", number(x), "cy", number(y), "r", number(radius)}, look);
    }

    void path(String d, String... look) {
        empty("path", new String[]{"d", d}, look);
    }

    void text(double x, double y, String anchor, String words, String... look) {
        String[] place = {"x", number(x), "y", number(y), "text-anchor", anchor};
        String[] all = new String[place.length + look.length];
        System.arraycopy(place, 0, all, 0, place.length);
        System.arraycopy(look, 0, all, place.length, look.length);
        element("text", words, all);
    }

    /** A pattern of slanted lines under the name {@code id}. */
    void hatch(String id) {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement("defs");
            xml.writeStartElement("pattern");
            attributes("id", id, "width", "4", "height", "4", "patternUnits", "userSpaceOnUse");
            xml.writeEmptyElement("path");
            attributes("d", "M-1 1 L1 -1 M0 4 L4 0 M3 5 L5 3", "stroke", "#000000", "stroke-width", "0.8");
            xml.writeEndElement();
            xml.writeEndElement();
        });
    }

    String finished() {
        quietly(() -> {
            xml.writeCharacters("\n");
            xml.writeEndElement();
            xml.close();
        });
        return out.append('\n').toString();
    }
}
