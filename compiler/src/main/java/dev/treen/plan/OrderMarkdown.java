package dev.treen.plan;

import dev.treen.order.Operation;
import dev.treen.order.Step;
import dev.treen.quantity.LengthFormat;

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
        out.append("## Cautions\n\n");
        plan.order().cautions().forEach(c -> out.append("- ").append(escaped(c)).append('\n'));
        out.append("\n## Steps\n\n");
        for (Step step : plan.order().steps()) {
            Operation operation = step.operation();
            out.append(step.number()).append(". **").append(escaped(operation.action())).append("**: ");
            out.append(escaped(StepText.parts(operation))).append('\n');
            item(out, "Tool", operation.tool());
            item(out, "Set", StepText.settings(operation, format));
            item(out, "Work from", operation.from());
            item(out, "Check", operation.check());
            item(out, "Care", operation.caution());
            item(out, "Time", StepText.time(operation));
            item(out, "Wait", StepText.pause(operation));
            item(out, "Here because", step.because());
        }
        return out.toString();
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
