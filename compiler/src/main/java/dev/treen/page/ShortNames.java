package dev.treen.page;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/**
 * What the names of all parts begin with is left out on the page, for a reader at the bench has but this one thing before
 * them: {@code leg[1]} and not {@code garden.leg[1]}. The project's own text keeps them, and the page says so.
 */
final class ShortNames {
    private static final List<String> HEARD = List.of("aria-label", "alt");

    private ShortNames() {
    }

    /** Shortens the names in {@code document}, whose project has these {@code parts}. */
    static void in(Document document, List<String> parts) {
        common(parts).ifPresent(start -> {
            Pattern before = Pattern.compile("(?<![\\w.])" + Pattern.quote(start) + "(?=\\w)");
            for (Element element : document.body().select(":not(.source):not(.how)")) {
                for (TextNode words : element.textNodes()) {
                    if (before.matcher(words.getWholeText()).find()) {
                        words.text(before.matcher(words.getWholeText()).replaceAll(""));
                    }
                }
                for (String heard : HEARD) {
                    if (element.hasAttr(heard)) {
                        element.attr(heard, before.matcher(element.attr(heard)).replaceAll(""));
                    }
                }
            }
            Element list = document.selectFirst("#cut-list > p");
            if (list != null) {
                Html.words(list, " Names are short here: each begins with `" + start + "` in the project's file.");
            }
        });
    }

    /** What all names begin with, up to and with a full stop. */
    static Optional<String> common(List<String> names) {
        if (names.isEmpty()) {
            return Optional.empty();
        }
        String start = names.getFirst().substring(0, names.getFirst().lastIndexOf('.') + 1);
        for (String name : names) {
            while (!name.startsWith(start)) {
                start = start.substring(0, start.substring(0, start.length() - 1).lastIndexOf('.') + 1);
            }
        }
        Matcher plain = Pattern.compile("(?:\\w+(?:\\[\\w+\\])?\\.)+").matcher(start);
        return plain.matches() ? Optional.of(start) : Optional.empty();
    }
}
