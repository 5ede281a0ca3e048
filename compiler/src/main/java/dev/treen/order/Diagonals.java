package dev.treen.order;

import dev.treen.joinery.MadeJoint;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.wood.Figures;
import dev.treen.wood.Squareness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far the diagonals of a frame or box may differ: by its size (rules of the trade F-05, common practice without a
 * source), or less where a panel, door or drawer in it has less room than that would take.
 */
final class Diagonals {
    private static final double MM_PER_INCH = 25.4;
    private static final int FINEST = 64;

    private final Assembly assembly;
    private final Workshop shop;

    private Diagonals(Assembly assembly, Workshop shop) {
        this.assembly = assembly;
        this.shop = shop;
    }

    /** What to look at while the glue of {@code assembly} is wet. */
    static String check(Assembly assembly, Workshop shop) {
        return new Diagonals(assembly, shop).check();
    }

    private String check() {
        List<Double> sides = sides();
        double longer = sides.getFirst();
        double shorter = sides.size() > 1 ? sides.get(1) : longer;
        double usual = Squareness.usualDiagonalsMm(longer, shorter, Figures.standard());
        Optional<Gap> tight = gap();
        double allowed = tight
                .map(gap -> Squareness.diagonalsMm(longer, shorter, Squareness.lean(gap.room(), shorter)))
                .orElse(usual);
        String opposite = "opposite parts are equal, and the diagonals differ by no more than ";
        return allowed < usual
                ? opposite + told(allowed) + ": more would use up the room of " + tight.map(Gap::part).orElse("")
                        + " (reckoned from its gap)"
                : opposite + told(usual) + " (common practice, no source)";
    }

    /** Rounded down to what can be told apart with a rule, but never to nothing. */
    private String told(double mm) {
        if (shop.format().imperial()) {
            long marks = Math.max(1, (long) (mm / MM_PER_INCH * FINEST + 0.1));
            return shop.format().text(Length.ofInches(marks, FINEST));
        }
        return shop.format().text(Length.ofMm(BigFraction.of(Math.max(1, (long) (mm * 10 + 0.001)), 10)));
    }

    /** The two longest sides of the box around it in mm, the longest first. */
    private List<Double> sides() {
        List<Box> boxes = shop.named(assembly.parts()).stream()
                .flatMap(part -> part.solid().stream())
                .flatMap(solid -> solid.bounds().stream())
                .toList();
        List<Double> sides = new ArrayList<>();
        boxes.stream().reduce(Box::join).ifPresent(box -> {
            for (Axis axis : Axis.values()) {
                sides.add(box.extent(axis).doubleValue());
            }
        });
        if (sides.isEmpty()) {
            shop.named(assembly.parts()).forEach(part -> sides.add(part.length().value().toDoubleMm()));
        }
        sides.sort(Comparator.reverseOrder());
        return sides;
    }

    /** The room of a loose part in a frame that leans. */
    private record Gap(String part, double room) {}

    private Optional<Gap> gap() {
        List<Gap> gaps = new ArrayList<>();
        for (MadeJoint made : shop.joined().joints()) {
            if (!made.holdsFast() && assembly.parts().contains(made.joint().right().name())) {
                made.figure("gap")
                        .map(figure -> figure.measure().value().toDoubleMm())
                        .filter(room -> room > 0)
                        .ifPresent(room -> gaps.add(new Gap("`" + made.joint().left().name() + "`", room)));
            }
        }
        return gaps.stream().min(Comparator.comparingDouble(Gap::room));
    }
}
