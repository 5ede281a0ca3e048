package dev.treen.plan;

import dev.treen.order.BuildOrder;
import dev.treen.order.Setups;
import dev.treen.order.Step;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why a step of the order stands where it does, in plain text. */
public final class StepReasons {
    private static final int WIDTH = 96;

    private final BuildOrder order;
    private final StringBuilder out = new StringBuilder();

    private StepReasons(BuildOrder order) {
        this.order = order;
    }

    /** The reasons of {@code step} of {@code order}. */
    public static String of(Step step, BuildOrder order, LengthFormat format) {
        StepReasons reasons = new StepReasons(order);
        reasons.explain(step, format);
        return reasons.out.toString();
    }

    private void explain(Step step, LengthFormat format) {
        line("", "Step " + step.number() + ": " + step.operation().action());
        line("", "for " + StepText.parts(step.operation()));
        before(step);
        after(step);
        settings(step, format);
        if (step.needs().isEmpty() && order.steps().size() > 1) {
            line("", "Nothing has to come before it.");
        }
        List<Integer> free = free(step);
        if (!free.isEmpty()) {
            line("", "It could as well stand anywhere from place " + free.getFirst() + " to place " + free.getLast()
                    + "; here it costs the fewest settings, the least waiting and the fewest changes of tool"
                    + (order.best() ? "." : " that were found."));
        }
    }

    private void before(Step step) {
        if (step.needs().isEmpty()) {
            return;
        }
        line("", "It comes after");
        Map<String, List<Integer>> reasons = new LinkedHashMap<>();
        step.needs().forEach(need -> reasons.computeIfAbsent(need.because(), b -> new ArrayList<>()).add(need.step()));
        reasons.forEach((because, steps) -> {
            steps.forEach(number -> line("  ", number + ". " + FindingText.visible(action(number))));
            line("      ", "because " + because);
        });
    }

    private void after(Step step) {
        List<String> lines = new ArrayList<>();
        for (Step other : order.steps()) {
            other.needs().stream()
                    .filter(need -> need.step() == step.number())
                    .forEach(need -> lines.add(other.number() + ". " + FindingText.visible(other.operation().action())
                            + ", because " + need.because()));
        }
        if (!lines.isEmpty()) {
            line("", "It comes before");
            lines.forEach(each -> line("  ", each));
        }
    }

    private void settings(Step step, LengthFormat format) {
        for (Setups.Setup each : order.setups()) {
            String what = each.setting().name() + " " + format.text(each.setting().value());
            if (each.step() == step.number() && !each.also().isEmpty()) {
                line("", "What is set here, " + what + ", also serves steps "
                        + String.join(", ", each.also().stream().map(String::valueOf).toList()) + ".");
            } else if (each.also().contains(step.number())) {
                line("", "It uses " + what + " as set for step " + each.step() + ".");
            }
        }
    }

    /** The first and last place that the rules alone leave it; empty where there is only one. */
    private List<Integer> free(Step step) {
        int earliest = step.after().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
        int latest = order.steps().stream()
                .filter(other -> other.after().contains(step.number()))
                .mapToInt(Step::number)
                .min()
                .orElse(order.steps().size() + 1)
                - 1;
        return earliest < latest ? List.of(earliest, latest) : List.of();
    }

    private String action(int number) {
        return order.steps().get(number - 1).operation().action();
    }

    private void line(String indent, String text) {
        for (String each : FindingText.wrapped(FindingText.visible(text), WIDTH - indent.length())) {
            out.append(indent).append(each).append('\n');
        }
    }
}
