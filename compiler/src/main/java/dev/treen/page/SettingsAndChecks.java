package dev.treen.page;

import dev.treen.order.Operation;
import dev.treen.order.Setups;
import dev.treen.order.Step;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** Gauges, fences and stops in the order in which they are set; then all that is looked at before going on. */
final class SettingsAndChecks {
    private final Page page;

    private SettingsAndChecks(Page page) {
        this.page = page;
    }

    static void write(Page page) {
        SettingsAndChecks both = new SettingsAndChecks(page);
        if (page.plan().order().settings() > 0) {
            both.settings();
        }
        if (page.plan().order().steps().stream().anyMatch(step -> !step.operation().check().isEmpty())) {
            both.checks();
        }
    }

    private void settings() {
        Element section = page.section("settings", "Gauges, fences and stops");
        Html.said(section, "p",
                "In the order in which they are set. Each stays as it is until it stands here again; make"
                        + " all like marks before you change it.");
        Element rows = Page.table(section, "Settings in their order", "Step", "Tool", "What is set", " To", "For",
                "Kept for");
        Map<Integer, Operation> work = page.plan().order().steps().stream()
                .collect(Collectors.toMap(Step::number, Step::operation));
        for (Setups.Setup each : page.plan().order().setups()) {
            Element row = Html.add(rows, "tr");
            link(Html.add(row, "th", "scope", "row"), each.step());
            Html.said(row, "td", each.tool());
            Html.said(row, "td", each.setting().name());
            Html.said(row, "td", page.text(each.setting().value()), "class", "figure");
            Set<String> on = new LinkedHashSet<>();
            Stream.concat(Stream.of(each.step()), each.also().stream())
                    .flatMap(step -> Optional.ofNullable(work.get(step)).stream())
                    .forEach(operation -> on.addAll(operation.parts()));
            Html.names(Html.add(row, "td"), on);
            kept(Html.add(row, "td"), each.also());
        }
    }

    /** The later steps for which a gauge stays as it is. */
    private static void kept(Element cell, List<Integer> steps) {
        for (int step : steps) {
            Html.text(cell, cell.childNodeSize() == 0 ? (steps.size() == 1 ? "step " : "steps ") : ", ");
            link(cell, step);
        }
    }

    /** What must hold is said once where steps that follow each other ask for the same. */
    private void checks() {
        Element section = page.section("checks", "Checks before going on");
        Element rows = Page.table(section, "Tick each when it holds", "Done", "Step", "Work", "What must hold");
        Optional<Step> said = Optional.empty();
        for (Step step : page.plan().order().steps()) {
            String check = step.operation().check();
            if (!check.isEmpty()) {
                Element row = Html.add(rows, "tr");
                Html.said(Html.add(row, "td"), "span", "\u00a0", "class", "tick");
                link(Html.add(row, "th", "scope", "row"), step.number());
                Html.said(row, "td", step.operation().action());
                if (said.filter(before -> before.operation().check().equals(check)).isPresent()) {
                    Element cell = Html.said(row, "td", "as in step ");
                    link(cell, said.get().number());
                } else {
                    Html.said(row, "td", check);
                    said = Optional.of(step);
                }
            }
        }
    }

    private static void link(Element cell, int step) {
        Html.said(cell, "a", String.valueOf(step), "href", "#step-" + step);
    }
}
