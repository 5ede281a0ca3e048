package dev.treen.page;

import dev.treen.joinery.Work;
import dev.treen.order.Operation;
import dev.treen.order.Step;
import java.util.HashMap;
import java.util.Map;
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
        Element rows = Page.table(section, "Settings in their order", "Step", "Tool", "What is set", " To", "For");
        Map<String, Work.GaugeSetting> now = new HashMap<>();
        for (Step step : page.plan().order().steps()) {
            Operation operation = step.operation();
            for (Work.GaugeSetting setting : operation.settings()) {
                if (!setting.equals(now.put(operation.tool() + "/" + setting.name(), setting))) {
                    row(rows, step, setting);
                }
            }
        }
    }

    private void row(Element rows, Step step, Work.GaugeSetting setting) {
        Element row = Html.add(rows, "tr");
        link(Html.add(row, "th", "scope", "row"), step);
        Html.said(row, "td", step.operation().tool());
        Html.said(row, "td", setting.name());
        Html.said(row, "td", page.text(setting.value()), "class", "figure");
        Html.names(Html.add(row, "td"), step.operation().parts());
    }

    private void checks() {
        Element section = page.section("checks", "Checks before going on");
        Element rows = Page.table(section, "Tick each when it holds", "Done", "Step", "What must hold", "Work");
        for (Step step : page.plan().order().steps()) {
            if (!step.operation().check().isEmpty()) {
                Element row = Html.add(rows, "tr");
                Html.said(Html.add(row, "td"), "span", "\u00a0", "class", "tick");
                link(Html.add(row, "th", "scope", "row"), step);
                Html.said(row, "td", step.operation().check());
                Html.said(row, "td", step.operation().action());
            }
        }
    }

    private static void link(Element cell, Step step) {
        Html.said(cell, "a", String.valueOf(step.number()), "href", "#step-" + step.number());
    }
}
