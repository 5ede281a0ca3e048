package dev.treen.rewrite;

import dev.treen.joinery.JointKinds;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds with which values of its parameters a pattern makes a given thing. Choices and counts are tried; lengths and sizes
 * are solved from how each size and place answers when one of them grows by a millimetre. Where an answer is not in
 * proportion, that is done again from the values found.
 */
final class Solver {
    private static final int MOST_CHOICES = 150;
    private static final int MOST_ALIKE = 12;
    private static final int MOST_ROUNDS = 4;
    private static final int MOST_OF_A_ROW = 12;
    private static final BigFraction SMALL = BigFraction.of(5);

    private final PatternSource source;
    private final Thing wanted;
    private final Set<String> kinds;

    /** With what a pattern makes the thing, and which of its parts is which: the pattern's name for each with the thing's. */
    record Fit(Given given, Map<String, String> names, List<BigFraction> at, Thing made) {}

    private Solver(PatternSource source, Thing wanted) {
        this.source = source;
        this.wanted = wanted;
        this.kinds = wanted.joints().stream().map(Joint::kind).collect(Collectors.toSet());
    }

    /** The first values found that make {@code wanted}, sizes, places and given lengths of joints alike. */
    static Optional<Fit> fit(PatternSource source, Thing wanted) {
        return new Solver(source, wanted).fit();
    }

    private Optional<Fit> fit() {
        boolean canBe = source.mayMake(kinds) && source.parameters().stream()
                .noneMatch(each -> each.required() && !each.isMeasured() && !each.isChoice());
        if (!canBe) {
            return Optional.empty();
        }
        for (Given given : alike(choices())) {
            Thing made = source.made(List.of(given)).getFirst();
            for (Map<String, String> names : Matching.of(made, wanted)) {
                Optional<Fit> fit = measured(withLengths(given, made, names), names);
                if (fit.isPresent()) {
                    return fit;
                }
            }
        }
        return Optional.empty();
    }

    /** All that the choices may be together; a word that is a joint which the thing has not is passed over. */
    private List<Given> choices() {
        List<Given> all = new ArrayList<>(List.of(beginning()));
        for (Parameter each : source.parameters()) {
            if (!each.isChoice() || each.isInner()) {
                continue;
            }
            List<Given> more = new ArrayList<>();
            for (Given before : all) {
                each.words().stream()
                        .filter(word -> kinds.contains(word) || !isJoint(word))
                        .forEach(word -> more.add(before.with(each.key(), word)));
            }
            if (!more.isEmpty() && more.size() <= MOST_CHOICES) {
                all = more;
            }
        }
        return all;
    }

    private static boolean isJoint(String word) {
        return JointKinds.named(word).isPresent();
    }

    private Given beginning() {
        Given given = Given.NOTHING;
        BigFraction longest = longest();
        for (Parameter each : source.parameters()) {
            if (each.required() && each.isMeasured()) {
                given = given.with(each.key(), each.beginning(longest));
            }
        }
        return given;
    }

    /** The longest of its measures: as much everywhere, so that nothing is less than nothing to begin with. */
    private BigFraction longest() {
        double longest = 100;
        for (Part part : wanted.parts().values()) {
            for (int i = 0; i < 3; i++) {
                longest = Math.max(longest, part.measure(i).value().toDoubleMm());
            }
        }
        return BigFraction.of(Math.round(longest));
    }

    /** Those that make as many parts with the same kinds of joints, counts tried where there are more or fewer. */
    private List<Given> alike(List<Given> choices) {
        List<Given> all = new ArrayList<>(choices);
        List<Thing> made = source.made(choices);
        for (Parameter each : source.parameters()) {
            if (each.type().equals("count")) {
                List<Given> rows = new ArrayList<>();
                for (int i = 0; i < choices.size(); i++) {
                    boolean other = wanted.parts().size() != made.get(i).parts().size();
                    for (int count = 0; other && count <= Math.min(MOST_OF_A_ROW, wanted.parts().size()); count++) {
                        rows.add(choices.get(i).saying(each.key(), String.valueOf(count)));
                    }
                }
                all.addAll(rows);
            }
        }
        List<Thing> things = source.made(all);
        List<Given> alike = new ArrayList<>();
        for (int i = 0; i < all.size() && alike.size() < MOST_ALIKE; i++) {
            boolean same = things.get(i).parts().size() == wanted.parts().size()
                    && things.get(i).kinds().equals(wanted.kinds());
            if (same) {
                alike.add(all.get(i));
            }
        }
        return alike;
    }

    /** Parameters left to Treen that the joints of the thing do not leave to it get a length, and boards a board. */
    private Given withLengths(Given given, Thing made, Map<String, String> names) {
        List<Parameter> open = source.parameters().stream()
                .filter(each -> (each.auto() && each.isMeasured()) || each.type().equals("board"))
                .toList();
        List<Thing> tried = source.made(open.stream().map(each -> tried(given, each)).toList());
        Given more = given;
        for (int i = 0; i < open.size(); i++) {
            Parameter each = open.get(i);
            if (each.isMeasured()) {
                more = saysLengths(made, tried.get(i), names) ? more.with(each.key(), each.beginning(SMALL)) : more;
            } else {
                Optional<String> board = board(tried.get(i), names);
                more = board.isPresent() ? more.saying(each.key(), board.get()) : more;
            }
        }
        return more;
    }

    private static Given tried(Given given, Parameter parameter) {
        return parameter.isMeasured()
                ? given.with(parameter.key(), parameter.beginning(SMALL))
                : given.saying(parameter.key(), PatternSource.WOOD);
    }

    /** Whether a parameter gives joints a length that those of the thing have too. */
    private boolean saysLengths(Thing before, Thing now, Map<String, String> names) {
        Map<Thing.Tie, Joint> was = before.byTie();
        Map<Thing.Tie, Joint> theirs = wanted.byTie();
        return now.byTie().entrySet().stream().anyMatch(each -> Thing.lengths(each.getValue()).keySet().stream()
                .anyMatch(property -> Optional.ofNullable(was.get(each.getKey()))
                        .filter(joint -> !Thing.lengths(joint).containsKey(property))
                        .isPresent()
                        && Optional.ofNullable(theirs.get(named(each.getKey(), names)))
                                .filter(joint -> Thing.lengths(joint).containsKey(property))
                                .isPresent()));
    }

    /** The board of the parts that a parameter gives a board to, where it is another than that of the rest. */
    private Optional<String> board(Thing tried, Map<String, String> names) {
        List<String> boards = tried.parts().entrySet().stream()
                .filter(each -> each.getValue().from().filter(from -> from.name().equals(PatternSource.WOOD))
                        .isPresent())
                .map(each -> theirs(each.getKey(), names).source())
                .distinct()
                .toList();
        return boards.size() == 1 && !boards.getFirst().isEmpty() && !boards.equals(List.of(common(wanted)))
                ? Optional.of(boards.getFirst())
                : Optional.empty();
    }

    /** The board of most parts. */
    static String common(Thing thing) {
        return thing.parts().values().stream()
                .map(Part::source)
                .collect(Collectors.groupingBy(name -> name, LinkedHashMap::new, Collectors.counting()))
                .entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private Part theirs(String name, Map<String, String> names) {
        return Objects.requireNonNull(wanted.parts().get(names.get(name)));
    }

    private static Thing.Tie named(Thing.Tie tie, Map<String, String> names) {
        return new Thing.Tie(names.getOrDefault(tie.left(), ""), names.getOrDefault(tie.right(), ""), tie.kind(),
                tie.into());
    }

    private Optional<Fit> measured(Given begun, Map<String, String> names) {
        // Those that have to be given come first: of what is left open, a standard stays as it is.
        Map<String, List<BigFraction>> open = new LinkedHashMap<>();
        for (boolean required : List.of(true, false)) {
            source.parameters().stream()
                    .filter(each -> each.isMeasured() && each.required() == required)
                    .forEach(each -> Optional.ofNullable(begun.measures().get(each.key()))
                            .or(() -> Optional.of(each.standard()).filter(some -> !some.isEmpty()))
                            .ifPresent(values -> open.put(each.key(), values)));
        }
        Answers answers = new Answers(source, wanted, names);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<Answers.Step> step = answers.step(begun, open);
            if (step.isEmpty()) {
                return Optional.empty();
            }
            if (step.get().fits()) {
                return Optional.of(new Fit(sparse(begun, open, step.get()), names, step.get().at(), step.get().made()));
            }
            open.putAll(step.get().values());
        }
        return Optional.empty();
    }

    /** What has to be said: all that must be given, and what is not as the standard. */
    private Given sparse(Given begun, Map<String, List<BigFraction>> values, Answers.Step step) {
        Map<String, List<BigFraction>> said = new LinkedHashMap<>();
        for (Parameter each : source.parameters()) {
            List<BigFraction> value = values.get(each.key());
            if (value != null && (each.standard().isEmpty() || !value.equals(each.standard()))) {
                boolean third = value.size() == 3 && each.required() && step.idle().contains(each.key());
                said.put(each.key(), third ? value.subList(0, 2) : value);
            }
        }
        return begun.changed(said);
    }
}
