package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was measured on the wood.
 *
 * @param byPath by the path of the planned value that it takes the place of
 * @param planned the parts as they were planned, by name
 */
record MeasuredValues(Map<String, List<Taken>> byPath, Map<String, Part> planned) {
    static final MeasuredValues NONE = new MeasuredValues(Map.of(), Map.of());

    /** One measurement; {@code which} is the measure of a size, or −1 for the whole value. */
    record Taken(int which, Length length, Span at) {}

    /** The value called {@code path}, with what was measured of it. */
    Derived inPlaceOf(String path, Derived planned) {
        Derived value = planned;
        for (Taken taken : byPath.getOrDefault(path, List.of())) {
            value = with(taken, value);
        }
        return value;
    }

    private static Derived with(Taken taken, Derived planned) {
        if (taken.which() < 0) {
            return Arithmetic.length(planned.value()).isPresent() ? measured(taken, planned) : planned;
        }
        if (!(planned.value() instanceof Datum.Sizes(List<Datum> measures)) || taken.which() >= measures.size()) {
            return planned;
        }
        int which = taken.which();
        String label = planned.how().label() + "." + Size.NAMES.get(which);
        List<Derivation> each = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            each.add(planned.how().formula() instanceof Derivation.Listed(List<Derivation> parts)
                    ? parts.get(i)
                    : new Derivation("", measures.get(i), planned.how().formula(), planned.how().at()));
        }
        Derived measured = measured(taken, new Derived(measures.get(which), each.get(which).named(label)));
        each.set(which, measured.how());
        List<Datum> changed = new ArrayList<>(measures);
        changed.set(which, measured.value());
        Datum value = new Datum.Sizes(List.copyOf(changed));
        return new Derived(
                value,
                new Derivation(
                        planned.how().label(),
                        value,
                        new Derivation.Listed(each),
                        planned.how().at()));
    }

    private static Derived measured(Taken taken, Derived planned) {
        Datum value = Measure.datum(taken.length());
        return new Derived(
                value,
                new Derivation(
                        planned.how().label(),
                        value,
                        new Derivation.Rule("measured on the wood, in place of the plan's figure", "",
                                List.of(planned.how().named("planned"))),
                        Optional.of(taken.at())));
    }

    /** Whether {@code how} rests on the measurement written at {@code at}. */
    static boolean restsOn(Derivation how, Span at) {
        return restsOn(how, at, java.util.Collections.newSetFromMap(new java.util.IdentityHashMap<>()));
    }

    private static boolean restsOn(Derivation how, Span at, java.util.Set<Derivation> seen) {
        if (!seen.add(how)) {
            return false;
        }
        if (how.at().filter(at::equals).isPresent()) {
            return true;
        }
        return switch (how.formula()) {
            case Derivation.Written written -> false;
            case Derivation.Standard standard -> false;
            case Derivation.Listed(List<Derivation> each) -> each.stream().anyMatch(one -> restsOn(one, at, seen));
            case Derivation.Same(Derivation of) -> restsOn(of, at, seen);
            case Derivation.Combined(String sign, Derivation left, Derivation right) ->
                restsOn(left, at, seen) || restsOn(right, at, seen);
            case Derivation.Rule(String text, String source, List<Derivation> inputs) ->
                inputs.stream().anyMatch(input -> restsOn(input, at, seen));
        };
    }
}
