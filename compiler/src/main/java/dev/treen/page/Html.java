package dev.treen.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.DocumentType;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;

/** Puts elements and words into a page; the library escapes all words. */
final class Html {
    /** What every drawing of the house calls its title, its description and its hatching. */
    private static final Set<String> OWN = Set.of("title", "desc", "flaw");

    private Html() {
    }

    /** A page of its own: a head with its title and its style, and a body without anything in it. */
    static Document document(String title, String style) {
        Document document = new Document("");
        document.outputSettings().prettyPrint(false).charset(StandardCharsets.UTF_8);
        document.appendChild(new DocumentType("html", "", ""));
        Element html = add(document, "html", "lang", "en");
        Element head = add(html, "head");
        add(head, "meta", "charset", "utf-8");
        add(head, "meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        said(head, "title", title);
        add(head, "style").appendChild(new DataNode(style(style)));
        add(html, "body");
        return document;
    }

    static String style(String name) {
        try (InputStream in = Html.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the style " + name + " is not among the resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A new element at the end of {@code parent}; {@code attributes} are pairs of name and value. */
    static Element add(Element parent, String tag, String... attributes) {
        Element element = parent.appendElement(tag);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            element.attr(attributes[i], plain(attributes[i + 1]));
        }
        return element;
    }

    /** The same with words in it, in which what stands between back quotes is a name. */
    static Element said(Element parent, String tag, String words, String... attributes) {
        Element element = add(parent, tag, attributes);
        words(element, words);
        return element;
    }

    /** Words at the end of {@code element}; names in back quotes are set apart, and cannot turn the line round. */
    static void words(Element element, String words) {
        int at = 0;
        while (at < words.length()) {
            int open = words.indexOf('`', at);
            int shut = open < 0 ? -1 : words.indexOf('`', open + 1);
            if (shut < 0) {
                break;
            }
            text(element, words.substring(at, open));
            name(element, words.substring(open + 1, shut));
            at = shut + 1;
        }
        text(element, words.substring(Math.min(at, words.length())));
    }

    /** Plain words at the end of {@code element}. */
    static void text(Element element, String words) {
        if (!words.isEmpty()) {
            element.appendChild(new TextNode(plain(words)));
        }
    }

    /** A name from the project: whatever way its letters run, the words round it keep theirs. */
    static Element name(Element parent, String name) {
        Element bdi = add(parent, "bdi", "class", "name");
        text(bdi, name);
        return bdi;
    }

    /** Names in a row, with commas. */
    static void names(Element parent, Iterable<String> names) {
        boolean first = true;
        for (String each : names) {
            text(parent, first ? "" : ", ");
            name(parent, each);
            first = false;
        }
    }

    /** Characters that no page may hold become blanks. */
    static String plain(String words) {
        StringBuilder out = new StringBuilder(words.length());
        words.codePoints().forEach(c -> {
            boolean control = (c < 0x20 && c != '\n' && c != '\t') || (c >= 0x7F && c < 0xA0);
            boolean none = (c >= 0xD800 && c <= 0xDFFF) || (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
            out.appendCodePoint(control || none ? ' ' : c);
        });
        return out.toString();
    }

    /** A drawing in the page; {@code key} keeps the names inside it apart from those of other drawings. */
    static Element drawing(Element parent, String svg, String key) {
        Element drawing = Parser.xmlParser().parseInput(svg, "").child(0);
        drawing.removeAttr("xmlns");
        for (Element each : drawing.getAllElements()) {
            if (OWN.contains(each.attr("id"))) {
                each.attr("id", key + "-" + each.attr("id"));
            }
            if (each.attr("fill").equals("url(#flaw)")) {
                each.attr("fill", "url(#" + key + "-flaw)");
            }
        }
        if (drawing.hasAttr("aria-labelledby")) {
            drawing.attr("aria-labelledby", key + "-title " + key + "-desc");
        }
        parent.appendChild(drawing);
        return drawing;
    }

    /** A word for an address inside the page. */
    static String id(String words, int number) {
        String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return plain.substring(0, Math.min(plain.length(), 40)) + "-" + number;
    }
}
