package dev.treen.order;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.Strip;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Inset;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JointNumbers;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.model.Board;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What all builders of operations ask: the project, its parts by kind, hand or machine, times.
 *
 * @param measured parts that are made to measure once others stand
 * @param assemblies what is glued together
 * @param numbers what stands on the labels of parts that meet
 */
record Workshop(
        Joined joined,
        Cutting cutting,
        LengthFormat format,
        boolean hand,
        Times times,
        Set<String> measured,
        List<Assembly> assemblies,
        JointNumbers numbers) {

    static Workshop of(Joined joined, Cutting cutting) {
        boolean hand = joined.project().settings().hand();
        List<Assembly> assemblies = Assembly.among(joined);
        return new Workshop(
                joined,
                cutting,
                joined.project().settings().format(),
                hand,
                new Times(hand),
                measuredParts(joined, assemblies),
                assemblies,
                JointNumbers.of(joined));
    }

    /** Parts that are made to measure once others stand (rules of the trade O-07); a framed door is made, then planed. */
    private static Set<String> measuredParts(Joined joined, List<Assembly> assemblies) {
        Set<String> measured = new LinkedHashSet<>();
        for (MadeJoint made : joined.joints()) {
            for (Work work : made.works()) {
                if (JointWork.toMeasure(work, made)) {
                    measured.addAll(work.parts());
                }
            }
        }
        assemblies.forEach(assembly -> assembly.parts().forEach(measured::remove));
        return measured;
    }

    /** Parts that are made to the opening between those of {@code assembly}: panels that it closes in, lids that slide into it. */
    List<String> openings(Assembly assembly) {
        Set<String> openings = new LinkedHashSet<>(assembly.enclosed());
        joined.joints().stream()
                .filter(made -> !Loose.in(made.joint()))
                .filter(made -> made.works().stream().anyMatch(work -> JointWork.toMeasure(work, made)))
                .filter(made -> assembly.parts().contains(made.joint().right().name()))
                .forEach(made -> openings.add(made.joint().left().name()));
        openings.retainAll(measured);
        return List.copyOf(openings);
    }

    /** Parts that lie in an opening of what is glued: doors, drawers. */
    Set<String> inset() {
        Set<String> inset = new LinkedHashSet<>();
        joined.joints().stream()
                .filter(made -> made.joint().kind().equals(Inset.KIND))
                .forEach(made -> inset.add(made.joint().left().name()));
        return inset;
    }

    /** The first words where the piece is made by hand, the second by machine. */
    String tool(String byHand, String byMachine) {
        return hand ? byHand : byMachine;
    }

    List<FinishedPart> parts() {
        return joined.parts();
    }

    /** The parts that are made: all but those that are bought ready. */
    List<FinishedPart> made() {
        return joined.made();
    }

    /** Names of all parts that are made and whose size is known before anything is measured. */
    List<String> first() {
        return made().stream()
                .map(Workshop::name)
                .filter(name -> !measured.contains(name))
                .toList();
    }

    /** A line for each strip all of whose parts are among {@code parts}: what is done to them is done in one go. */
    List<String> whole(Collection<String> parts) {
        List<String> lines = new ArrayList<>();
        for (BoardCut cut : cutting.boards()) {
            for (Strip strip : cut.strips()) {
                if (parts.containsAll(strip.parts())) {
                    lines.add(Names.quoted(strip.parts()) + " in one go, as strip " + strip.number() + " of `"
                            + cut.name() + "` while it is whole");
                }
            }
        }
        return lines;
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

    /** Whether any face of {@code part} gets a finish. */
    static boolean finished(FinishedPart part) {
        return !part.part().service().faces().equals("none");
    }

    /** Area of one face of each part, in units of 0.1 m². */
    static double tenths(Collection<FinishedPart> parts) {
        return parts.stream()
                .mapToDouble(p -> p.length().value().toDoubleMm() * p.width().value().toDoubleMm())
                .sum()
                / 100_000;
    }

    List<FinishedPart> named(Collection<String> names) {
        Set<String> wanted = Set.copyOf(names);
        return parts().stream().filter(p -> wanted.contains(name(p))).toList();
    }
}
