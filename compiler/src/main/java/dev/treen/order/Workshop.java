package dev.treen.order;

import dev.treen.cutting.Cutting;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.model.Board;
import dev.treen.quantity.LengthFormat;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What all builders of operations ask: the project, its parts by kind, hand or machine, times. */
record Workshop(
        Joined joined, Cutting cutting, LengthFormat format, boolean hand, Times times, Set<String> measured) {

    static Workshop of(Joined joined, Cutting cutting) {
        boolean hand = joined.project().settings().hand();
        return new Workshop(
                joined,
                cutting,
                joined.project().settings().format(),
                hand,
                new Times(hand),
                measuredParts(joined));
    }

    /** Parts that are made to measure once others stand (rules of the trade O-07). */
    private static Set<String> measuredParts(Joined joined) {
        Set<String> measured = new LinkedHashSet<>();
        for (MadeJoint made : joined.joints()) {
            for (Work work : made.works()) {
                if (JointWork.toMeasure(work, made)) {
                    measured.addAll(work.parts());
                }
            }
        }
        return measured;
    }

    /** The first words where the piece is made by hand, the second by machine. */
    String tool(String byHand, String byMachine) {
        return hand ? byHand : byMachine;
    }

    List<FinishedPart> parts() {
        return joined.parts();
    }

    /** Names of all parts whose size is known before anything is measured. */
    List<String> first() {
        return parts().stream()
                .map(Workshop::name)
                .filter(name -> !measured.contains(name))
                .toList();
    }

    static String name(FinishedPart part) {
        return part.part().name();
    }

    static List<String> names(Collection<FinishedPart> parts) {
        return parts.stream().map(Workshop::name).toList();
    }

    static boolean sheet(FinishedPart part) {
        return part.part().from().map(Board::sheet).orElse(false);
    }

    /** Area of one face of each part, in units of 0.1 m². */
    static double tenths(Collection<FinishedPart> parts) {
        return parts.stream()
                .mapToDouble(p -> p.length().value().toDoubleMm() * p.width().value().toDoubleMm())
                .sum()
                / 100_000;
    }

    List<FinishedPart> named(Collection<String> names) {
        return parts().stream().filter(p -> names.contains(name(p))).toList();
    }

    /** {@code `a`, `b` and `c`}. */
    static String quoted(Collection<String> names) {
        return list(names.stream().map(name -> "`" + name + "`").toList());
    }

    static String list(Collection<String> names) {
        List<String> all = List.copyOf(names);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.getLast();
    }
}
