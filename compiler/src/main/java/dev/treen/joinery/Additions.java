package dev.treen.joinery;

import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Placing;
import dev.treen.quantity.Length;
import dev.treen.quantity.Quantity;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What all joints add to every part. Where several joints add at one side, as a panel's edge that lies in two rails, the
 * part is lengthened once, by the most.
 */
final class Additions {
    private final Map<String, Map<Side, Addition>> bySide = new HashMap<>();

    void add(Addition addition) {
        bySide.computeIfAbsent(addition.part(), part -> new EnumMap<>(Side.class))
                .merge(addition.side(), addition, Additions::longer);
    }

    private static Addition longer(Addition one, Addition other) {
        return other.amount().value().compareTo(one.amount().value()) > 0 ? other : one;
    }

    private Map<Side, Addition> of(Part part) {
        return bySide.getOrDefault(part.name(), Map.of());
    }

    /** All that is added to one measure, or nothing. */
    Optional<Measure> to(Part part, int measure) {
        return part.placing().flatMap(placing -> to(part, placing, measure));
    }

    private Optional<Measure> to(Part part, Placing placing, int measure) {
        Map<Side, Addition> sides = of(part);
        List<Addition> here = sides.values().stream()
                .filter(a -> placing.measureAlong(Axes.number(a.side().axis())) == measure)
                .toList();
        if (here.isEmpty()) {
            return Optional.empty();
        }
        Measure one = here.getFirst().amount();
        if (here.size() == 1) {
            return Optional.of(one);
        }
        Measure other = here.getLast().amount();
        Length sum = one.value().plus(other.value());
        boolean alike = one.value().equals(other.value()) && label(one).equals(label(other));
        Derivation how = alike
                ? Derivation.combined("", Measure.datum(sum), "×", number(2), one.how().named(label(one)))
                : Derivation.combined("", Measure.datum(sum), "+", one.how(), other.how());
        return Optional.of(new Measure(sum, one.at(), how));
    }

    /** Up to the name of the other part: the corner with one is as the corner with the other. */
    private static String label(Measure measure) {
        String label = measure.how().label();
        int with = label.indexOf(" with ");
        return with < 0 ? label : label.substring(0, with);
    }

    private static Derivation number(long value) {
        return new Derivation(
                "",
                new Datum.Exactly(Quantity.number(value)),
                new Derivation.Written(),
                Optional.empty());
    }

    /** The box with one side drawn in. */
    private static Box shrunk(Box box, Side side, Length by) {
        BigFraction to = box.coordinate(side).add(by.mm().multiply(side.sign()));
        return side.sign() > 0
                ? new Box(box.min(), box.max().with(side.axis(), to))
                : new Box(box.min().with(side.axis(), to), box.max());
    }

    /** The seen box with everything that is added to it. */
    Box grown(Part part, Box seen) {
        Box box = seen;
        for (Addition addition : of(part).values()) {
            if (addition.amount().value().signum() > 0) {
                box = box.join(Rebate.step(box, addition.side(), addition.amount().value()));
            } else if (addition.amount().value().signum() < 0) {
                box = shrunk(box, addition.side(), addition.amount().value());
            }
        }
        return box;
    }
}
