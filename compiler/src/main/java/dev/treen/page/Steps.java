package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.drawing.Scene;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.order.Calendar;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
import dev.treen.order.Step;
import dev.treen.plan.StepText;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jsoup.nodes.Element;

/** The steps in their order, each with a picture in which its parts stand out. */
final class Steps {
    /** How the addresses of their pictures begin. */
    static final String PICTURE = "step-picture-";

    private static final String WHOLE = "whole";
    private static final String OPEN = "open";
    private static final String LOOSE = "loose";

    private final Page page;

    private Steps(Page page) {
        this.page = page;
    }

    static void write(Page page) {
        if (page.plan().order().steps().isEmpty()) {
            return;
        }
        new Steps(page).all();
    }

    private void all() {
        Element section = page.section("steps", "Step by step");
        StepText.summary(page.plan().order()).forEach(line -> Html.said(section, "p", line));
        soFar(section);
        calendar(section);
        Html.said(section, "p",
                "In each picture the parts of the step are shaded, in heavy lines and bear their marks; what is cut into"
                        + " them and can be seen from there is black.",
                "class", "quiet pictures");
        page.drawings().assembled().ifPresent(s -> Html.drawing(section, s.definitions(WHOLE), WHOLE));
        page.drawings().apart().ifPresent(s -> Html.drawing(section, s.definitions(OPEN), OPEN));
        page.drawings().loose().ifPresent(s -> Html.drawing(section, s.definitions(LOOSE), LOOSE));
        Element list = Html.add(section, "ol", "class", "steps");
        for (Step step : page.plan().order().steps()) {
            step(Html.add(list, "li", "id", "step-" + step.number(), "value", String.valueOf(step.number())), step);
        }
    }

    /** Where a maker stands who has measured, and what that changed. */
    private void soFar(Element section) {
        List<String> lines = StepText.soFar(page.plan().order().soFar(), page.format());
        if (!lines.isEmpty()) {
            Html.said(section, "h3", "Where you are");
            Element list = Html.add(section, "ul");
            lines.forEach(line -> Html.said(list, "li", line));
        }
    }

    /** How long each part of the work takes, by hand and by the calendar. */
    private void calendar(Element section) {
        List<Calendar.Row> stages = page.plan().order().calendar().rows();
        if (stages.isEmpty()) {
            return;
        }
        Element rows = Page.table(section, "Calendar", "Part of the work", "At the bench", "Begins",
                "Ends, with its waits");
        for (Calendar.Row each : stages) {
            Element row = Html.add(rows, "tr");
            Html.said(row, "th", each.stage().words(), "scope", "row");
            Html.said(row, "td", StepText.handsOn(each.handsOn()));
            Html.said(row, "td", StepText.day(each.begins()));
            Html.said(row, "td", StepText.day(each.ends()));
        }
    }

    private void step(Element item, Step step) {
        Operation operation = step.operation();
        Element heading = Html.add(item, "h3");
        Html.said(heading, "span", step.number() + " ", "class", "number");
        Html.words(heading, operation.action());
        picture(item, step);
        Element on = Html.add(item, "p", "class", "on");
        parts(on, operation.parts());
        if (!operation.with().isEmpty()) {
            Html.text(on, "; with ");
            parts(on, operation.with());
            Html.text(on, " at hand");
        }
        if (!operation.how().isEmpty()) {
            Element how = Html.add(item, "ul", "class", "so");
            operation.how().forEach(line -> Html.said(how, "li", line));
        }
        Element facts = Html.add(item, "dl");
        fact(facts, "Tool", operation.tool());
        settings(facts, operation);
        fact(facts, "Work from", operation.from());
        fact(facts, "Check", operation.check());
        fact(facts, "Care", operation.caution());
        fact(facts, "Time", StepText.time(operation));
        fact(facts, "Then wait", StepText.pause(operation));
        fact(facts, "Why now", step.because());
    }

    private void parts(Element on, List<String> names) {
        boolean first = true;
        for (String name : names) {
            Html.text(on, first ? "" : ", ");
            Html.name(on, name);
            String mark = page.mark(name);
            Html.text(on, mark.isEmpty() ? "" : " (" + mark + ")");
            first = false;
        }
    }

    private static void fact(Element facts, String term, String words) {
        if (!words.isEmpty()) {
            Element each = Html.add(facts, "div", "class", term.equals("Care") ? "care" : "fact");
            Html.said(each, "dt", term);
            Html.said(each, "dd", words);
        }
    }

    private void settings(Element facts, Operation operation) {
        fact(facts, "Set", String.join(", ", operation.settings().stream()
                .map(each -> each.name() + " " + page.text(each.value()))
                .toList()));
    }

    private void picture(Element item, Step step) {
        Operation operation = step.operation();
        String key = PICTURE + step.number();
        String title = "Step " + step.number() + ": " + operation.action().replace("`", "");
        Optional<String> picture = switch (operation.phase()) {
            case REST, RIP, FLATTEN, RESAW -> BoardPicture.of(page.plan(), operation, title);
            case STAVES -> GlueUpPicture.of(page.plan(), operation, title).or(() -> scene(operation, title));
            case MARK, SAW, APART -> MiniLayout.of(page, operation, title).or(() -> scene(operation, title));
            default -> scene(operation, title);
        };
        picture.ifPresent(svg -> Html.drawing(Html.add(item, "figure"), svg, key));
    }

    private Optional<String> scene(Operation operation, String title) {
        Optional<Scene> whole = page.drawings().assembled();
        boolean closed = operation.phase().compareTo(Phase.SQUARE) >= 0;
        boolean useWhole = closed || page.drawings().apart().isEmpty();
        Optional<Scene> scene = useWhole ? whole : page.drawings().apart();
        return shown(scene, useWhole ? WHOLE : OPEN, operation, title)
                .or(() -> shown(page.drawings().loose(), LOOSE, operation, title));
    }

    private Optional<String> shown(Optional<Scene> scene, String prefix, Operation operation, String title) {
        Set<String> parts = new LinkedHashSet<>(operation.parts());
        return scene.filter(s -> parts.stream().anyMatch(s::shows))
                .map(s -> s.picture(prefix, parts, cuts(operation), title, this::called));
    }

    private String called(String part) {
        String mark = page.mark(part);
        return mark.isEmpty() ? part : mark;
    }

    /** The joints whose cuts are made in a step: those that ask for this work on these parts. */
    private Set<String> cuts(Operation operation) {
        Set<String> cuts = new LinkedHashSet<>();
        if (operation.phase() != Phase.ALONG && operation.phase() != Phase.JOINTS
                && operation.phase() != Phase.FITTED) {
            return cuts;
        }
        for (MadeJoint made : page.plan().joined().joints()) {
            for (Work work : made.works()) {
                boolean same = work.tool().equals(operation.tool())
                        && work.settings().equals(operation.settings())
                        && operation.parts().containsAll(work.parts());
                if (same) {
                    int statement = made.joint().statement();
                    page.plan().joined().joints().stream()
                            .filter(m -> m.joint().statement() == statement)
                            .forEach(m -> cuts.add(m.joint().name()));
                }
            }
        }
        return cuts;
    }

    /** The board or leaf that a step saws. */
    static Optional<BoardCut> board(Page page, Operation operation) {
        return page.plan().cutting().boards().stream()
                .filter(b -> operation.action().contains("`" + b.name() + "`"))
                .findFirst();
    }
}
