package dev.treen.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/**
 * The page of a plan once more as Markdown (CommonMark with the tables of GitHub's dialect), for whoever reads plans as
 * text. It says what the page says; drawings are links to the files beside it. Where the pictures of the steps are no
 * files, it says that the page has them.
 */
public final class PlanMarkdown {
    private static final Set<String> QUIET = Set.of("nav", "style", "head", "svg");

    /** What Markdown would take for a mark of its own, wherever it stands. */
    private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<>|~&#$]");

    private static final Pattern BEGINNING = Pattern.compile("^(\\d+)([.)])|^([-+=])");

    private final Map<String, String> drawings;
    private final StringBuilder out = new StringBuilder();

    private PlanMarkdown(Map<String, String> drawings) {
        this.drawings = drawings;
    }

    /**
     * The text of {@code page}.
     *
     * @param drawings the names of the files with the drawings, by the addresses of their titles in the page
     */
    public static String of(Document page, Map<String, String> drawings) {
        PlanMarkdown written = new PlanMarkdown(drawings);
        written.blocks(page.body());
        return written.out.toString().strip() + "\n";
    }

    private void blocks(Element parent) {
        for (Element each : parent.children()) {
            block(each);
        }
    }

    private void block(Element element) {
        if (QUIET.contains(element.tagName()) || element.hasClass("skip")) {
            return;
        }
        switch (element.tagName()) {
            case "h1" -> paragraph("# " + words(element));
            case "h2" -> paragraph("## " + words(element));
            case "h3" -> paragraph("### " + words(element));
            case "p", "figcaption" -> paragraph(element.hasClass("pictures") && !showsSteps()
                    ? "The pictures of the steps are in plan.html."
                    : guarded(words(element)));
            case "figure" -> figure(element);
            case "table" -> table(element);
            case "dl" -> facts(element);
            case "pre" -> fenced(element.wholeText());
            case "ul", "ol" -> list(element);
            default -> blocks(element);
        }
    }

    private boolean showsSteps() {
        return drawings.keySet().stream().anyMatch(address -> address.startsWith(Steps.PICTURE));
    }

    private void paragraph(String words) {
        if (!words.isBlank()) {
            out.append(words).append("\n\n");
        }
    }

    private void figure(Element figure) {
        Element title = figure.selectFirst("svg > title");
        if (title != null && drawings.containsKey(title.id())) {
            paragraph("![" + escaped(title.text()) + "](" + drawings.get(title.id()) + ")");
        }
        blocks(figure);
    }

    private void facts(Element list) {
        for (Element each : list.select("> div")) {
            Element term = each.selectFirst("dt");
            Element said = each.selectFirst("dd");
            if (term != null && said != null) {
                out.append("- ").append(words(term)).append(": ").append(words(said)).append('\n');
            }
        }
        out.append('\n');
    }

    private void list(Element list) {
        boolean deep = list.hasClass("steps");
        int number = 1;
        for (Element item : list.select("> li")) {
            if (deep) {
                blocks(item);
            } else {
                String mark = list.tagName().equals("ol") ? number++ + ". " : "- ";
                out.append(mark).append(guarded(words(item))).append('\n');
            }
        }
        out.append('\n');
    }

    private void table(Element table) {
        Element caption = table.selectFirst("caption");
        if (caption != null) {
            paragraph("**" + words(caption) + "**");
        }
        List<Element> heads = heads(table);
        out.append("| ").append(heads.stream().map(this::head).collect(Collectors.joining(" | "))).append(" |\n|");
        heads.forEach(head -> out.append(head.hasClass("figure") ? " ---: |" : " --- |"));
        out.append('\n');
        for (Element row : table.select("tbody > tr")) {
            out.append("| ")
                    .append(row.children().stream().map(this::words).collect(Collectors.joining(" | ")))
                    .append(" |\n");
        }
        out.append('\n');
    }

    /** Markdown knows one row of heads: a group's words go before those of its columns. */
    private static List<Element> heads(Element table) {
        List<Element> rows = table.select("thead > tr");
        List<Element> heads = new ArrayList<>();
        List<Element> below = rows.size() > 1 ? new ArrayList<>(rows.get(1).children()) : List.of();
        int next = 0;
        for (Element head : rows.getFirst().children()) {
            int span = head.hasAttr("colspan") ? Integer.parseInt(head.attr("colspan")) : 0;
            if (span == 0) {
                heads.add(head);
            }
            for (int i = 0; i < span; i++) {
                heads.add(below.get(next++).clone().attr("data-group", head.text()));
            }
        }
        return heads;
    }

    private String head(Element head) {
        String group = head.attr("data-group");
        return (group.isEmpty() ? "" : escaped(group) + ": ") + words(head);
    }

    private void fenced(String text) {
        String fence = "```";
        while (text.contains(fence)) {
            fence += "`";
        }
        String whole = text.replaceFirst("^\\n", "");
        out.append(fence).append('\n').append(whole);
        out.append(whole.endsWith("\n") ? "" : "\n").append(fence).append("\n\n");
    }

    private String words(Element element) {
        StringBuilder line = new StringBuilder();
        inside(element, line);
        return line.toString().replaceAll("\\s+", " ").strip();
    }

    private void inside(Element parent, StringBuilder line) {
        for (Node each : parent.childNodes()) {
            if (each instanceof TextNode text) {
                line.append(escaped(text.getWholeText()));
            } else if (each instanceof Element element) {
                inline(element, line);
            }
        }
    }

    private void inline(Element element, StringBuilder line) {
        if (element.tagName().equals("svg")) {
            return;
        }
        if (element.hasClass("tick")) {
            line.append("☐");
            return;
        }
        StringBuilder inside = new StringBuilder();
        inside(element, inside);
        String words = inside.toString().strip();
        boolean strong = element.tagName().equals("strong") || element.hasClass("name");
        boolean apart = element.tagName().equals("br") || element.hasClass("remark") || element.hasClass("beside");
        line.append(apart ? " " : "");
        if (strong && !words.isEmpty()) {
            line.append(inside.toString().startsWith(" ") ? " " : "").append("**").append(words).append("**")
                    .append(inside.toString().endsWith(" ") ? " " : "");
        } else {
            line.append(inside);
        }
    }

    private static String escaped(String words) {
        return MARKS.matcher(words).replaceAll("\\\\$0");
    }

    /** What would begin a list or a line at the beginning of a paragraph. */
    private static String guarded(String words) {
        Matcher begins = BEGINNING.matcher(words);
        return begins.find() ? begins.replaceFirst(begins.group(3) == null ? "$1\\\\$2" : "\\\\$3") : words;
    }
}
