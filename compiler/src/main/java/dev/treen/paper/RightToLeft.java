package dev.treen.paper;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;

/**
 * Sets words of Hebrew, Arabic and their kin in their order: from the right, with figures and Latin words inside them from
 * the left (Unicode Standard Annex 9, as the JDK has it), and Arabic letters joined.
 */
final class RightToLeft {
    /** Has no width and no look, and counts as a letter that is read from the left. */
    private static final String FROM_THE_LEFT = "\u200e";

    /** So small that nothing is seen of it: some fonts draw the mark. */
    private static final String UNSEEN = "way";

    private RightToLeft() {
    }

    /** Lets what {@code builder} makes tell such words from others. */
    static void give(BaseRendererBuilder<?, ?> builder) {
        builder.useUnicodeBidiSplitter(Splitter::new);
        builder.useUnicodeBidiReorderer(new Reorderer());
    }

    /** A mark to stand between a name and what comes after it. */
    static Element mark() {
        return new Element("span").addClass(UNSEEN).text(FROM_THE_LEFT);
    }

    /** Puts {@code words} into {@code element}, with the marks among them. */
    static void set(Element element, String words) {
        int from = 0;
        for (int at = words.indexOf(FROM_THE_LEFT); at >= 0; at = words.indexOf(FROM_THE_LEFT, from)) {
            element.appendText(words.substring(from, at)).appendChild(mark());
            from = at + 1;
        }
        element.appendText(words.substring(from));
    }

    /** Whether any of {@code text} is read from the right. */
    static boolean any(String text) {
        return text.codePoints().map(Character::getDirectionality).anyMatch(
                way -> way == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
    }

    /** {@code text}, which runs from the right, in the order in which it is seen from the left; marks follow their letters. */
    static String seen(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_RIGHT_TO_LEFT);
        byte[] levels = new byte[bidi.getRunCount()];
        Object[] runs = new Object[levels.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] = levels[i] % 2 == 0 ? run : reversed(run);
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        StringBuilder seen = new StringBuilder();
        for (Object run : runs) {
            seen.append(run);
        }
        return seen.toString();
    }

    /** Letter by letter, each with its marks, and brackets turned round. */
    private static String reversed(String run) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        while (from < run.length()) {
            int to = from + Character.charCount(run.codePointAt(from));
            while (to < run.length() && ArabicForms.mark(run.codePointAt(to))) {
                to += Character.charCount(run.codePointAt(to));
            }
            out.insert(0, mirrored(run.substring(from, to)));
            from = to;
        }
        return out.toString();
    }

    /** The pairs that names are likely to hold; the JDK tells which letters are mirrored, and not by what. */
    private static String mirrored(String letter) {
        String pairs = "()[]{}<>\u00ab\u00bb\u2039\u203a";
        int at = pairs.indexOf(letter);
        return at < 0 || letter.length() != 1 ? letter : pairs.substring(at ^ 1, (at ^ 1) + 1);
    }

    /** Where the words of a paragraph turn round. */
    private static final class Splitter implements BidiSplitter {
        private final List<BidiTextRun> runs = new ArrayList<>();

        @Override
        public void setParagraph(String text, byte direction) {
            runs.clear();
            Bidi bidi = new Bidi(text, switch (direction) {
                case LTR -> Bidi.DIRECTION_LEFT_TO_RIGHT;
                case RTL -> Bidi.DIRECTION_RIGHT_TO_LEFT;
                default -> Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
            });
            // What stands inside words from the right stays with them: the library sets one run after the other.
            for (int i = 0; i < bidi.getRunCount(); i++) {
                byte way = bidi.getRunLevel(i) == 0 ? LTR : RTL;
                int start = bidi.getRunStart(i);
                int length = bidi.getRunLimit(i) - start;
                if (!runs.isEmpty() && runs.getLast().getDirection() == way) {
                    BidiTextRun before = runs.removeLast();
                    start = before.getStart();
                    length += before.getLength();
                }
                runs.add(new BidiTextRun(start, length, way));
            }
        }

        @Override
        public int countTextRuns() {
            return runs.size();
        }

        @Override
        public BidiTextRun getVisualRun(int index) {
            return runs.get(index);
        }

        @Override
        public byte getBaseDirection(String text) {
            for (int letter : text.codePoints().toArray()) {
                switch (Character.getDirectionality(letter)) {
                    case Character.DIRECTIONALITY_LEFT_TO_RIGHT -> {
                        return LTR;
                    }
                    case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> {
                        return RTL;
                    }
                    default -> {
                        // Figures, blanks and marks have no way of their own.
                    }
                }
            }
            return NEUTRAL;
        }
    }

    private static final class Reorderer implements BidiReorderer {
        @Override
        public String reorderRTLTextToLTR(String text) {
            return seen(text);
        }

        @Override
        public String shapeText(String text) {
            return ArabicForms.joined(text);
        }

        @Override
        public String deshapeText(String text) {
            return ArabicForms.apart(text);
        }

        @Override
        public boolean isLiveImplementation() {
            return true;
        }
    }
}
