package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Making;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Measure;
import dev.treen.model.Settings;
import dev.treen.model.Tolerances;
import dev.treen.quantity.Length;
import dev.treen.quantity.Quantity;
import dev.treen.solid.Side;
import dev.treen.wood.Panels.Hold;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** All rooms of a project that must neither vanish nor grow too large. */
final class Clearances {
    private Clearances() {
    }

    static List<Clearance> of(Joined joined) {
        Settings settings = joined.project().settings();
        List<Clearance> all = new ArrayList<>();
        Panels.of(joined).forEach(panel -> all.add(panel(panel, settings)));
        Map<String, FinishedPart> parts = new HashMap<>();
        for (MadeJoint made : joined.joints()) {
            if (Loose.in(made.joint())) {
                if (parts.isEmpty()) {
                    joined.parts().forEach(part -> parts.put(part.part().name(), part));
                }
                made.meeting().face().ifPresent(side -> loose(made, side, joined, parts).ifPresent(all::add));
            }
        }
        return all;
    }

    /** Room at one side of what lies in an opening; none to speak of on its hinge and where it stands. */
    private static Optional<Clearance> loose(
            MadeJoint made, Side side, Joined joined, Map<String, FinishedPart> parts) {
        double share = Loose.share(made.joint(), side);
        FinishedPart part = parts.get(made.joint().left().name());
        if (share == 0 || part == null) {
            return Optional.empty();
        }
        Settings settings = joined.project().settings();
        int measure = made.meeting().left().measure(side.axis());
        Measure own = made.figure("lip").map(lip -> lip.measure()).orElseGet(
                () -> measure == 0 ? part.length() : part.width());
        Dimension opening = Dimension.of(
                "opening", Panels.figure(made, "opening"), Making.Kind.LENGTH, settings.tolerances());
        Dimension size = Dimension.of(
                measure == 0 ? "length" : "width", own, measure == 0 ? Making.Kind.LENGTH : Making.Kind.WIDTH,
                part.part().tolerances());
        Derivation both = sum("", opening.leaf(), "−", size.leaf());
        Derivation room = share < 1 ? half("room", both) : both.named("room");
        Measure gap = Panels.figure(made, "gap");
        return Optional.of(new Clearance(
                part,
                made,
                "gap",
                room,
                gap.at(),
                gap.value().toDoubleMm(),
                joined.nature(part.part()),
                measure,
                share * own.value().toDoubleMm(),
                List.of(opening, size).stream().map(d -> d.deviation(room, settings)).toList()));
    }

    /**
     * A made dimension under its name, so that the room's derivation can be asked how it follows it. An opening comes out
     * as the project says, since several parts make it; all else as its part says.
     */
    record Dimension(String what, Measure measure, Derivation leaf, Making.Kind kind, Tolerances said) {
        static Dimension of(String what, Measure measure, Making.Kind kind, Tolerances said) {
            return new Dimension(
                    what, measure, measure.how().named(what), measured(measure.how()) ? Making.Kind.MEASURED : kind,
                    said);
        }

        /** Whether the number was measured on the piece as made: then only the measuring errs, not the making. */
        private static boolean measured(Derivation how) {
            return switch (how.formula()) {
                case Derivation.Same(Derivation of) -> measured(of);
                case Derivation.Rule(String text, String source, var inputs) -> text.startsWith("measured on the wood");
                case Derivation.Written written -> false;
                case Derivation.Standard standard -> false;
                case Derivation.Combined combined -> false;
                case Derivation.Listed listed -> false;
            };
        }

        // The very leaf is meant: another dimension may have the same value and a derivation like it.
        @SuppressWarnings("ReferenceEquality")
        Clearance.Deviation deviation(Derivation room, Settings settings) {
            BigFraction slope = Derivatives.of(room, node -> node == leaf);
            return new Clearance.Deviation(what, measure.at(), kind, slope.doubleValue(),
                    Making.of(kind, measure.value(), said, settings));
        }
    }

    /**
     * Room on each side of a panel: {@code (opening + groove + groove − width) ÷ 2}, the panel lying in the middle; glued
     * along one edge, all of it is on the other side.
     */
    static Clearance panel(Panels.Held panel, Settings settings) {
        Dimension opening = Dimension.of("opening", Panels.figure(panel.low().getFirst(), "opening"),
                Making.Kind.LENGTH, settings.tolerances());
        Dimension one = groove("groove", panel.low());
        Dimension other = groove("groove opposite", panel.high());
        Dimension width = Dimension.of(
                "width", panel.part().width(), Making.Kind.WIDTH, panel.part().part().tolerances());
        Derivation between = sum("", sum("", opening.leaf(), "+", one.leaf()), "+", other.leaf());
        Derivation all = sum("", between, "−", width.leaf());
        Derivation room = panel.hold() == Hold.ONE_EDGE ? all.named("room") : half("room", all);
        return new Clearance(
                panel.part(),
                panel.tightest(),
                "gap",
                room,
                Panels.figure(panel.tightest(), "gap").at(),
                panel.gapMm(),
                panel.nature(),
                1,
                panel.share() * panel.widthMm(),
                List.of(opening, one, other, width).stream().map(d -> d.deviation(room, settings)).toList());
    }

    /** The shallowest of the grooves at one edge, as exact as the part that it is cut in. */
    private static Dimension groove(String what, List<MadeJoint> grooves) {
        MadeJoint shallowest = grooves.stream()
                .min(Comparator.comparing(made -> Panels.figure(made, "deep").value()))
                .orElseThrow();
        return Dimension.of(what, Panels.figure(shallowest, "deep"), Making.Kind.DEPTH,
                shallowest.joint().right().tolerances());
    }

    /** The sum or difference of two lengths. */
    static Derivation sum(String label, Derivation left, String sign, Derivation right) {
        Length a = length(left);
        Length b = length(right);
        Length value = sign.equals("+") ? a.plus(b) : a.minus(b);
        return Derivation.combined(label, Measure.datum(value), sign, left, right);
    }

    /** Half of a length. */
    static Derivation half(String label, Derivation of) {
        Quantity two = Quantity.number(2);
        Derivation by = new Derivation(
                "", new Datum.Exactly(two), new Derivation.Standard("both sides"), Optional.empty());
        return Derivation.combined(label, Measure.datum(length(of).dividedBy(2)), "÷", of, by);
    }

    private static Length length(Derivation derivation) {
        return derivation.value() instanceof Datum.Exactly(Quantity quantity)
                ? quantity.asLength().orElse(Length.ZERO)
                : Length.ZERO;
    }
}
