package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is set on gauges, fences and stops, and how often (rules of the trade O-05). */
public final class Setups {
    private Setups() {
    }

    /**
     * A gauge, fence or stop that is set, and kept for as long as that serves.
     *
     * @param step the step before which it is set
     * @param tool the tool of that step
     * @param setting what is set, and to what
     * @param also further steps done with it as it stands
     */
    public record Setup(int step, String tool, GaugeSetting setting, List<Integer> also) {
        /** Keeps its own copy. */
        public Setup {
            also = List.copyOf(also);
        }
    }

    /** All settings of {@code steps}, in the order in which they are made. */
    public static List<Setup> of(List<Step> steps) {
        List<Setup> setups = new ArrayList<>();
        Map<String, Integer> now = new HashMap<>();
        for (Step step : steps) {
            for (GaugeSetting setting : Gauges.set(step.operation())) {
                String gauge = Gauges.gauge(step.operation(), setting);
                Integer held = now.get(gauge);
                if (held != null && setups.get(held).setting().value().equals(setting.value())) {
                    Setup known = setups.get(held);
                    List<Integer> also = new ArrayList<>(known.also());
                    also.add(step.number());
                    setups.set(held, new Setup(known.step(), known.tool(), known.setting(), also));
                } else {
                    now.put(gauge, setups.size());
                    setups.add(new Setup(step.number(), step.operation().tool(), setting, List.of()));
                }
            }
        }
        return setups;
    }

    /** How often something is set when operations follow each other so; a gauge keeps its setting until it gets another. */
    static int count(List<Operation> order) {
        int count = 0;
        Map<String, Length> now = new HashMap<>();
        for (Operation each : order) {
            for (GaugeSetting setting : Gauges.set(each)) {
                if (!setting.value().equals(now.put(Gauges.gauge(each, setting), setting.value()))) {
                    count++;
                }
            }
        }
        return count;
    }

    /**
     * How often something is set when one part after the other is made ready, up to the dry fit, before the next is begun;
     * a setting that the next part happens to want as it stands is not counted again.
     */
    static int partByPart(List<Operation> operations) {
        Map<String, List<Operation>> lives = new LinkedHashMap<>();
        Set<Operation> rest = new LinkedHashSet<>();
        for (Operation each : operations) {
            if (each.phase().compareTo(Phase.TRY) < 0) {
                each.parts().forEach(part -> lives.computeIfAbsent(part, p -> new ArrayList<>()).add(each));
            } else {
                rest.add(each);
            }
        }
        List<Operation> order = new ArrayList<>();
        lives.values().forEach(order::addAll);
        order.addAll(rest);
        return count(order);
    }
}
