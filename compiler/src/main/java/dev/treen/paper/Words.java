package dev.treen.paper;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;

/**
 * Lifts the words out of a drawing and lays them over it, each at its place, as words of the page. So they are set in the
 * letters that the file carries, and can be searched, copied and heard; inside the drawing they would be outlines.
 */
final class Words {
    /**
     * How far below the top of a line, in its letters' size, the library sets the line on which they stand; it goes by the
     * tallest letter of any font in the list. Measured; a test measures it anew.
     */
    private static final double BASE = 1.207;

    /** In millimetres: 6 points, the least that is read at the bench without picking the sheet up (common practice, no source). */
    private static final double LEAST = 6 * 25.4 / 72;

    /** Half the height of a capital. */
    private static final double MIDDLE = 0.34;

    /** No name is as wide for its letters. */
    private static final double WIDE_LETTER = 1.1;

    private static final Pattern MOVED = Pattern.compile("translate\\(([-0-9.]+)[ ,]+([-0-9.]+)\\)");
    private static final Pattern TURNED = Pattern.compile("rotate\\(-90 ([-0-9.]+) ([-0-9.]+)\\)");

    private final Element over;
    private final double scale;

    private Words(Element over, double scale) {
        this.over = over;
        this.scale = scale;
    }

    /** Puts {@code svg} into a block of its own, with its words over it; {@code scale} is in millimetres a unit. */
    static void lift(Element svg, double scale) {
        Element block = new Element("div").addClass("drawn").attr("style", svg.attr("style"));
        svg.replaceWith(block);
        block.appendChild(svg);
        Words words = new Words(block, scale);
        for (Element text : svg.select("text")) {
            words.lay(text);
            text.remove();
        }
    }

    private void lay(Element text) {
        double movedX = 0;
        double movedY = 0;
        for (Element parent : text.parents()) {
            Matcher moved = MOVED.matcher(parent.attr("transform"));
            if (moved.matches()) {
                movedX += Double.parseDouble(moved.group(1));
                movedY += Double.parseDouble(moved.group(2));
            } else if (parent.hasAttr("transform")) {
                throw new IllegalArgumentException("words in a drawing that is moved by " + parent.attr("transform"));
            }
        }
        double x = Double.parseDouble(text.attr("x")) + movedX;
        double y = Double.parseDouble(text.attr("y")) + movedY;
        double meant = text.hasAttr("font-size") ? Double.parseDouble(text.attr("font-size")) : 16;
        double letters = Math.max(meant, LEAST / scale);
        double wide = letters * (text.text().length() * WIDE_LETTER + 1);
        double left = switch (text.attr("text-anchor")) {
            case "middle" -> x - wide / 2;
            case "end" -> x - wide;
            default -> x;
        };
        String align = switch (text.attr("text-anchor")) {
            case "middle" -> "center";
            case "end" -> "right";
            default -> "left";
        };
        // Letters that grew keep their middle where it was.
        double top = y + (letters - meant) * MIDDLE - BASE * letters;
        StringBuilder style = new StringBuilder();
        style.append("left: ").append(mm(left)).append("; top: ").append(mm(top)).append("; width: ").append(mm(wide))
                .append("; font-size: ").append(mm(letters)).append("; text-align: ").append(align);
        same(text, "font-weight", "font-weight", style);
        same(text, "font-style", "font-style", style);
        same(text, "fill", "color", style);
        turn(text, left - movedX, top - movedY, style);
        RightToLeft.set(over.appendElement("div").addClass("words").attr("style", style.toString()), text.text());
    }

    private static void same(Element text, String from, String to, StringBuilder style) {
        if (text.hasAttr(from)) {
            style.append("; ").append(to).append(": ").append(text.attr(from));
        }
    }

    private void turn(Element text, double left, double top, StringBuilder style) {
        if (!text.hasAttr("transform")) {
            return;
        }
        Matcher turned = TURNED.matcher(text.attr("transform"));
        if (!turned.matches()) {
            throw new IllegalArgumentException("words in a drawing that are turned by " + text.attr("transform"));
        }
        style.append("; transform: rotate(-90deg); transform-origin: ")
                .append(mm(Double.parseDouble(turned.group(1)) - left))
                .append(' ')
                .append(mm(Double.parseDouble(turned.group(2)) - top));
    }

    private String mm(double units) {
        return String.format(Locale.ROOT, "%.3fmm", units * scale);
    }
}
