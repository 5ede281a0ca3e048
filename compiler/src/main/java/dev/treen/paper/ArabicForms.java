package dev.treen.paper;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Arabic letters as they look at the beginning, in the middle and at the end of a word. Which forms there are is taken from
 * the JDK's own tables: the presentation forms of Unicode come apart into their letters (blocks FB50 and FE70), and stand in
 * the order alone, at the end, at the beginning, in the middle. A letter that has no form for the beginning joins to the
 * right alone.
 */
final class ArabicForms {
    private static final int ALONE = 0;
    private static final int END = 1;
    private static final int BEGINNING = 2;
    private static final int MIDDLE = 3;
    private static final int DRAWN_OUT = 0x640;
    private static final int LAM = 0x644;
    private static final int JOINER = 0x200D;

    /** The forms of a letter, and of lam with an alef after it, by the letters that they come apart into. */
    private static final Map<String, List<Integer>> FORMS = forms();

    private ArabicForms() {
    }

    private static Map<String, List<Integer>> forms() {
        Map<String, List<Integer>> forms = new HashMap<>();
        collect(0xFB50, 0xFBB1, forms);
        collect(0xFBD3, 0xFBE7, forms);
        collect(0xFBFC, 0xFBFF, forms);
        collect(0xFE80, 0xFEFC, forms);
        return forms;
    }

    private static void collect(int from, int to, Map<String, List<Integer>> forms) {
        for (int form = from; form <= to; form++) {
            String letters = apart(Character.toString(form));
            boolean letter = letters.length() == 1 || (letters.length() == 2 && letters.charAt(0) == LAM);
            if (Character.isDefined(form) && letter && !letters.equals(Character.toString(form))) {
                forms.computeIfAbsent(letters, l -> new ArrayList<>()).add(form);
            }
        }
    }

    /** The letters of {@code text} without their forms. */
    static String apart(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(letter -> out.append(letter >= 0xFB50 && letter <= 0xFEFC
                ? Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFKC)
                : Character.toString(letter)));
        return out.toString();
    }

    /** {@code text}, in the order in which it is read, with every letter in the form that its neighbours ask for. */
    static String joined(String text) {
        int[] letters = text.codePoints().toArray();
        StringBuilder out = new StringBuilder();
        boolean before = false;
        for (int i = 0; i < letters.length; i++) {
            int letter = letters[i];
            if (mark(letter)) {
                out.appendCodePoint(letter);
                continue;
            }
            int next = next(letters, i);
            String pair = letter == LAM && next == i + 1 && next < letters.length
                    ? Character.toString(LAM) + Character.toString(letters[next]) : "";
            if (FORMS.containsKey(pair)) {
                out.appendCodePoint(form(FORMS.getOrDefault(pair, List.of()), before ? END : ALONE, letter));
                before = false;
                i = next;
                continue;
            }
            boolean after = onward(letter) && next < letters.length && backward(letters[next]);
            List<Integer> forms = FORMS.getOrDefault(Character.toString(letter), List.of());
            boolean joins = before && backward(letter);
            out.appendCodePoint(form(forms, joins ? after ? MIDDLE : END : after ? BEGINNING : ALONE, letter));
            before = onward(letter);
        }
        return out.toString();
    }

    private static int form(List<Integer> forms, int wanted, int letter) {
        // A letter that never joins stays as it is written.
        return forms.size() > END && wanted < forms.size() ? forms.get(wanted) : letter;
    }

    /** The place of the next letter that is no mark. */
    private static int next(int[] letters, int from) {
        int next = from + 1;
        while (next < letters.length && mark(letters[next])) {
            next++;
        }
        return next;
    }

    /** Whether {@code letter} stands on or under the one before it. */
    static boolean mark(int letter) {
        return Character.getType(letter) == Character.NON_SPACING_MARK;
    }

    /** Whether a letter joins to the one before it, which stands to its right. */
    private static boolean backward(int letter) {
        return letter == DRAWN_OUT || letter == JOINER
                || FORMS.getOrDefault(Character.toString(letter), List.of()).size() > END;
    }

    /** Whether a letter joins to the one after it. */
    private static boolean onward(int letter) {
        return letter == DRAWN_OUT || letter == JOINER
                || FORMS.getOrDefault(Character.toString(letter), List.of()).size() > BEGINNING;
    }
}
