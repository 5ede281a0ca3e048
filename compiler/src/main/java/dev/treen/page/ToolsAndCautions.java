package dev.treen.page;

import dev.treen.finding.Finding;
import dev.treen.order.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;

/** What must be on the bench, and what to mind before anything is switched on. */
final class ToolsAndCautions {
    private static final int MOST_STEPS = 8;

    private ToolsAndCautions() {
    }

    static void write(Page page) {
        tools(page);
        Element section = page.section("cautions", "Before you begin: cautions");
        section.addClass("cautions");
        Element list = Html.add(section, "ul");
        page.plan().order().cautions().forEach(each -> Html.said(list, "li", each));
    }

    private static void tools(Page page) {
        Map<String, List<Integer>> tools = new LinkedHashMap<>();
        for (Step step : page.plan().order().steps()) {
            // "a plough plane, or a cutter against a fence" is one entry.
            for (String tool : step.operation().tool().split(", (?!or )", -1)) {
                if (!tool.isBlank() && !tool.equals("nothing")) {
                    tools.computeIfAbsent(tool.strip(), t -> new ArrayList<>()).add(step.number());
                }
            }
        }
        if (tools.isEmpty()) {
            return;
        }
        Element section = page.section("tools", "Tools");
        Element list = Html.add(section, "ul", "class", "columns");
        tools.forEach((tool, steps) -> {
            Element item = Html.said(list, "li", tool + " ");
            Html.said(item, "span", where(steps), "class", "quiet");
        });
    }

    private static String where(List<Integer> steps) {
        List<String> first = steps.stream().limit(MOST_STEPS).map(String::valueOf).toList();
        return (steps.size() == 1 ? "step " : "steps ") + String.join(", ", first)
                + (steps.size() > MOST_STEPS ? " and more" : "");
    }

    /** What is still to be said of the project; nothing where the checks are silent. */
    static void findings(Page page) {
        List<Finding> findings = page.plan().findings();
        if (findings.isEmpty()) {
            return;
        }
        Element section = page.section("findings", "What the checks say");
        Element list = Html.add(section, "ul");
        Map<List<String>, List<Finding>> alike = new LinkedHashMap<>();
        findings.forEach(each -> alike.computeIfAbsent(
                List.of(each.code(), nameless(each.headline()), each.found(), each.because()), k -> new ArrayList<>())
                .add(each));
        for (List<Finding> same : alike.values()) {
            Finding each = same.getFirst();
            Element item = Html.add(list, "li");
            Html.add(item, "strong").text(each.severity().word() + " " + each.code() + ": ");
            Html.words(item, each.headline() + ". " + each.found() + " " + each.because());
            List<String> others = same.stream().skip(1).map(other -> named(other.headline())).distinct()
                    .sorted().toList();
            if (!others.isEmpty()) {
                Html.words(item, " The same holds for " + String.join(", ", others) + ".");
            }
        }
    }

    /** A headline without the first name in it. */
    private static String nameless(String headline) {
        return headline.replaceFirst("`[^`]*`", "");
    }

    /** The first name in a headline, as it is set apart. */
    private static String named(String headline) {
        int open = headline.indexOf('`');
        int shut = headline.indexOf('`', open + 1);
        return open < 0 || shut < 0 ? headline : headline.substring(open, shut + 1);
    }
}
