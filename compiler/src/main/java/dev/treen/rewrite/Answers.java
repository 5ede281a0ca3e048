package dev.treen.rewrite;

import dev.treen.model.Joint;
import dev.treen.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How sizes and places of what a pattern makes answer to its measures, set against those of the thing that is wanted. Each
 * part gives six equations, three sizes and three places; each length that both give for a joint gives one. Unknown are the
 * place of the whole and the measures.
 */
final class Answers {
    private static final int AXES = 3;

    private final PatternSource source;
    private final Thing wanted;
    private final Map<String, String> names;

    /**
     * One step towards the values.
     *
     * @param fits whether the values it began with are the right ones
     * @param values those that would be, were all in proportion
     * @param at where the whole stands
     * @param made what the values it began with make
     * @param idle sizes whose third measure nothing answers to
     */
    record Step(boolean fits, Map<String, List<BigFraction>> values, List<BigFraction> at, Thing made,
            Set<String> idle) {}

    private record Unknown(String key, int measure) {}

    /** A figure of what is made, what it has to be, and the axis along which it is a place, less than 0 for a size. */
    private record Figure(BigFraction value, BigFraction goal, int axis) {}

    Answers(PatternSource source, Thing wanted, Map<String, String> names) {
        this.source = source;
        this.wanted = wanted;
        this.names = names;
    }

    /** One step from {@code open}; none where the equations contradict each other. */
    Optional<Step> step(Given given, Map<String, List<BigFraction>> open) {
        List<Unknown> unknowns = new ArrayList<>();
        List<Given> tried = new ArrayList<>(List.of(given.changed(open)));
        open.forEach((key, values) -> {
            for (int i = 0; i < values.size(); i++) {
                unknowns.add(new Unknown(key, i));
                tried.add(given.changed(grown(open, key, i, BigFraction.ONE)));
            }
        });
        List<Thing> made = source.made(tried);
        List<List<Figure>> answers = made.stream().map(each -> figures(each, made.getFirst())).toList();
        int count = answers.getFirst().size();
        if (count == 0 || answers.stream().anyMatch(each -> each.size() != count)) {
            return Optional.empty();
        }
        List<List<BigFraction>> rows = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            rows.add(row(row, answers));
        }
        int all = AXES + unknowns.size();
        return Equations.solved(rows, all).map(values -> {
            Map<String, List<BigFraction>> next = new LinkedHashMap<>(open);
            boolean fits = true;
            for (int i = 0; i < unknowns.size(); i++) {
                BigFraction more = values.get(AXES + i);
                fits &= more.signum() == 0;
                next.putAll(grown(next, unknowns.get(i).key(), unknowns.get(i).measure(), more));
            }
            return new Step(fits, next, values.subList(0, AXES), made.getFirst(), idle(unknowns, rows));
        });
    }

    private static Map<String, List<BigFraction>> grown(
            Map<String, List<BigFraction>> values, String key, int measure, BigFraction by) {
        Map<String, List<BigFraction>> grown = new LinkedHashMap<>(values);
        List<BigFraction> measures = new ArrayList<>(values.getOrDefault(key, List.of()));
        measures.set(measure, measures.get(measure).add(by));
        grown.put(key, measures);
        return grown;
    }

    private static List<BigFraction> row(int row, List<List<Figure>> answers) {
        Figure now = answers.getFirst().get(row);
        List<BigFraction> factors = new ArrayList<>();
        for (int axis = 0; axis < AXES; axis++) {
            factors.add(axis == now.axis() ? BigFraction.ONE : BigFraction.ZERO);
        }
        for (List<Figure> grown : answers.subList(1, answers.size())) {
            factors.add(grown.get(row).value().subtract(now.value()));
        }
        factors.add(now.goal().subtract(now.value()));
        return factors;
    }

    /** All that {@code thing} has to do with the one that is wanted, in the order of {@code first}. */
    private List<Figure> figures(Thing thing, Thing first) {
        List<Figure> figures = new ArrayList<>();
        first.parts().keySet().forEach(name -> {
            Optional<Part> part = Optional.ofNullable(thing.parts().get(name));
            Optional<Part> theirs = Optional.ofNullable(wanted.parts().get(names.get(name)));
            if (part.isPresent() && theirs.isPresent()) {
                List<BigFraction> values = Thing.sizes(part.get());
                List<BigFraction> goals = Thing.sizes(theirs.get());
                for (int i = 0; i < values.size(); i++) {
                    figures.add(new Figure(values.get(i), goals.get(i), i - AXES));
                }
            }
        });
        Map<Thing.Tie, Joint> ties = thing.byTie();
        Map<Thing.Tie, Joint> theirs = wanted.byTie();
        first.byTie().forEach((tie, joint) -> {
            Map<String, BigFraction> values = lengths(ties, tie);
            Map<String, BigFraction> goals = lengths(theirs, new Thing.Tie(
                    names.getOrDefault(tie.left(), ""), names.getOrDefault(tie.right(), ""), tie.kind(), tie.into()));
            for (String property : Thing.lengths(joint).keySet()) {
                BigFraction value = values.get(property);
                BigFraction goal = goals.get(property);
                if (value != null && goal != null) {
                    figures.add(new Figure(value, goal, -1));
                }
            }
        });
        return figures;
    }

    private static Map<String, BigFraction> lengths(Map<Thing.Tie, Joint> joints, Thing.Tie tie) {
        return Optional.ofNullable(joints.get(tie)).map(Thing::lengths).orElse(Map.of());
    }

    /** Parameters of whose measures nothing answers to the third. */
    private static Set<String> idle(List<Unknown> unknowns, List<List<BigFraction>> rows) {
        Set<String> idle = new LinkedHashSet<>();
        for (int i = 0; i < unknowns.size(); i++) {
            int column = AXES + i;
            boolean nothing = rows.stream().allMatch(row -> row.get(column).signum() == 0);
            if (nothing && unknowns.get(i).measure() == 2) {
                idle.add(unknowns.get(i).key());
            }
        }
        return idle;
    }
}
