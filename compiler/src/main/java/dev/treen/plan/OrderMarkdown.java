package dev.treen.plan;

import dev.treen.order.Step;
import dev.treen.quantity.LengthFormat;

/** The order of work as Markdown, to print or to read beside the bench. */
public final class OrderMarkdown {
    private OrderMarkdown() {
    }

    /** The order of {@code plan}. */
    public static String of(Plan plan) {
        LengthFormat format = plan.joined().project().settings().format();
        StringBuilder out = new StringBuilder("# ").append(escaped(plan.title())).append(": order of work\n\n");
        out.append("Lengths in ").append(format.unit().equals("in") ? "inches" : "millimetres").append(". ")
                .append(plan.order().settings());
        out.append(" settings of a gauge, fence or stop.\n\n## Cautions\n\n");
        plan.order().cautions().forEach(c -> out.append("- ").append(c).append('\n'));
        out.append("\n## Steps\n\n");
        for (Step step : plan.order().steps()) {
            out.append(step.number()).append(". **").append(escaped(step.action())).append("**: ");
            out.append(escaped(PlanText.parts(step))).append('\n');
            item(out, "Tool", step.tool());
            item(out, "Set", PlanText.settings(step, format));
            item(out, "Work from", step.from());
            item(out, "Check", step.check());
            item(out, "Care", step.caution());
            item(out, "Here because", step.because());
        }
        return out.toString();
    }

    private static void item(StringBuilder out, String word, String text) {
        if (!text.isEmpty()) {
            out.append("    - ").append(word).append(": ").append(escaped(text)).append('\n');
        }
    }

    /** What Markdown would take for marks stays text. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ("\\*_[]<>#|".indexOf(c) >= 0) {
                out.append('\\');
            }
            out.append(c == '\n' || c == '\r' ? ' ' : c);
        }
        return out.toString();
    }
}
