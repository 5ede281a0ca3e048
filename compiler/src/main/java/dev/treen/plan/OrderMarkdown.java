package dev.treen.plan;

import dev.treen.order.Calendar;
import dev.treen.order.Operation;
import dev.treen.order.Setups;
import dev.treen.order.Stage;
import dev.treen.order.Step;
import dev.treen.quantity.LengthFormat;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The order of work as Markdown (CommonMark), to print or to read beside the bench. */
public final class OrderMarkdown {
    private static final String MARKS = "\\*_[]<>#|~&";

    private OrderMarkdown() {
    }

    /** The order of {@code plan}. */
    public static String of(Plan plan) {
        LengthFormat format = plan.format();
        StringBuilder out = new StringBuilder("# ").append(escaped(plan.title())).append(": order of work\n\n");
        out.append("Lengths in ")
                .append(format.unit().equals("in") ? "inches" : "millimetres")
                .append(", finished where nothing else is said.\n\n");
        StepText.summary(plan.order()).forEach(line -> out.append(escaped(line)).append("\n\n"));
        soFar(plan, out);
        out.append("## Cautions\n\n");
        plan.order().cautions().forEach(c -> out.append("- ").append(escaped(c)).append('\n'));
        calendar(plan.order().calendar(), out);
        setups(plan.order().setups(), format, out);
        Optional<Stage> stage = Optional.empty();
        Set<Stage> begun = EnumSet.noneOf(Stage.class);
        for (Step step : plan.order().steps()) {
            Stage now = step.operation().phase().stage();
            if (stage.filter(now::equals).isEmpty()) {
                out.append("\n## ").append(now.words()).append(begun.add(now) ? "\n\n" : ", more of it\n\n");
                stage = Optional.of(now);
            }
            step(step, format, out);
        }
        return out.toString();
    }

    private static void soFar(Plan plan, StringBuilder out) {
        List<String> lines = StepText.soFar(plan.order().soFar(), plan.format());
        if (!lines.isEmpty()) {
            out.append("## Where you are\n\n");
            lines.forEach(line -> out.append("- ").append(escaped(line)).append('\n'));
            out.append('\n');
        }
    }

    private static void calendar(Calendar calendar, StringBuilder out) {
        if (calendar.rows().isEmpty()) {
            return;
        }
        out.append("\n## Calendar\n\n");
        out.append("| part of the work | at the bench | begins | ends, with its waits |\n| --- | --- | --- | --- |\n");
        for (Calendar.Row row : calendar.rows()) {
            out.append("| ").append(row.stage().words())
                    .append(" | ").append(StepText.handsOn(row.handsOn()))
                    .append(" | ").append(StepText.day(row.begins()))
                    .append(" | ").append(StepText.day(row.ends()))
                    .append(" |\n");
        }
    }

    private static void setups(List<Setups.Setup> setups, LengthFormat format, StringBuilder out) {
        if (setups.isEmpty()) {
            return;
        }
        out.append("\n## What is set, in this order\n\n");
        out.append("| before step | on | set | to | also for steps |\n| --- | --- | --- | --- | --- |\n");
        for (Setups.Setup each : setups) {
            out.append("| ").append(each.step())
                    .append(" | ").append(escaped(each.tool()))
                    .append(" | ").append(escaped(each.setting().name()))
                    .append(" | ").append(format.text(each.setting().value()))
                    .append(" | ").append(String.join(", ", each.also().stream().map(String::valueOf).toList()))
                    .append(" |\n");
        }
    }

    private static void step(Step step, LengthFormat format, StringBuilder out) {
        Operation operation = step.operation();
        out.append(step.number()).append(". **").append(escaped(operation.action())).append("**: ");
        out.append(escaped(StepText.parts(operation))).append('\n');
        operation.how().forEach(line -> out.append("    - ").append(escaped(line)).append('\n'));
        item(out, "Tool", operation.tool());
        item(out, "Set", StepText.settings(operation, format));
        item(out, "Work from", operation.from());
        item(out, "Check", operation.check());
        item(out, "Care", operation.caution());
        item(out, "Time", StepText.time(operation));
        item(out, "Wait", StepText.pause(operation));
        item(out, "Here because", step.because());
    }

    private static void item(StringBuilder out, String word, String text) {
        if (!text.isEmpty()) {
            out.append("    - ").append(word).append(": ").append(escaped(text)).append('\n');
        }
    }

    /** What Markdown would take for marks stays text. Names in back quotes are code, where nothing needs escaping. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        boolean code = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            code ^= c == '`' && text.indexOf('`', code ? 0 : i + 1) >= 0;
            if (!code && MARKS.indexOf(c) >= 0) {
                out.append('\\');
            }
            out.append(c == '\n' || c == '\r' || c == '\t' ? ' ' : c);
        }
        return out.toString();
    }
}
