package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Making;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.wood.Panels.Hold;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The panels of a project that are held in grooves at both sides across their grain. */
final class Panels {
    private Panels() {
    }

    /**
     * A panel between two rows of grooves.
     *
     * @param part the panel
     * @param low the grooves on its left, front or lower side
     * @param high the grooves on the opposite side
     * @param nature how its wood moves
     */
    record Held(FinishedPart part, List<MadeJoint> low, List<MadeJoint> high, Nature nature) {
        /** The groove that leaves least room. */
        MadeJoint tightest() {
            return moving().stream()
                    .min(Comparator.comparing(made -> figure(made, "gap").value()))
                    .orElseThrow();
        }

        /** Whether it or what it is held in has a word on how exactly it is made, of its own or by the project. */
        boolean stated() {
            return all().stream().anyMatch(made -> Making.stated(made.joint()));
        }

        /** All of its grooves. */
        List<MadeJoint> all() {
            List<MadeJoint> all = new ArrayList<>(low);
            all.addAll(high);
            return all;
        }

        /** How it is kept from wandering. */
        Hold hold() {
            return heldAt().isPresent()
                    ? Hold.ONE_EDGE
                    : all().stream().anyMatch(made -> Groove.heldInTheMiddle(made.joint())) ? Hold.MIDDLE : Hold.FREE;
        }

        /** The side along which it is glued. */
        Optional<Side> heldAt() {
            return all().stream().flatMap(made -> Groove.heldAt(made.joint()).stream()).findFirst();
        }

        /** How much of its movement comes out at an edge that moves. */
        double share() {
            return hold() == Hold.ONE_EDGE ? 1 : 0.5;
        }

        /** Those grooves in which it moves. */
        List<MadeJoint> moving() {
            Optional<Side> still = heldAt();
            return all().stream().filter(made -> !made.meeting().face().equals(still) || still.isEmpty()).toList();
        }

        /**
         * What is free at an edge that moves, at the bench: the panel lying in the middle, or glued in on the other side
         * with whatever room is left there.
         */
        double gapMm() {
            double all = openingMm() + lowDeep().plus(highDeep()).toDoubleMm() - widthMm();
            return hold() == Hold.ONE_EDGE ? all - gluedGapMm() : all / 2;
        }

        /** What is left behind the edge that is glued. */
        double gluedGapMm() {
            return glued("gap");
        }

        private double glued(String figure) {
            return all().stream()
                    .filter(made -> made.meeting().face().equals(heldAt()))
                    .mapToDouble(made -> figure(made, figure).value().toDoubleMm())
                    .min()
                    .orElse(0);
        }

        /** How far it reaches into the groove that it may leave, when driest; pushed aside, if nothing holds it. */
        double coverMm() {
            double over = dryMm(widthMm()) - openingMm();
            return switch (hold()) {
                case FREE -> over - deepMm();
                case MIDDLE -> over / 2;
                case ONE_EDGE -> over - (glued("deep") - gluedGapMm());
            };
        }

        /** The same while it lies as it should. */
        double lyingMm() {
            return hold() == Hold.ONE_EDGE ? coverMm() : (dryMm(widthMm()) - openingMm()) / 2;
        }

        Length lowDeep() {
            return shallowest(low);
        }

        Length highDeep() {
            return shallowest(high);
        }

        private static Length shallowest(List<MadeJoint> grooves) {
            return grooves.stream().map(g -> figure(g, "deep").value()).min(Length::compareTo).orElseThrow();
        }

        /** The depth of the deeper row: pushed into it, the panel leaves the other row most. */
        double deepMm() {
            return lowDeep().max(highDeep()).toDoubleMm();
        }

        /** The panel's width at the bench. */
        double widthMm() {
            return part.width().value().toDoubleMm();
        }

        /** The opening between both grooved parts. */
        double openingMm() {
            return figure(low.getFirst(), "opening").value().toDoubleMm();
        }

        /** What it grows to the wettest season at an edge that moves. */
        double swellingMm() {
            return nature.swelling(1, widthMm()) * share();
        }

        /** A panel of this width, at the driest. */
        double dryMm(double widthMm) {
            return widthMm - nature.shrinking(1, widthMm);
        }
    }

    static Measure figure(MadeJoint made, String name) {
        return made.figure(name).orElseThrow().measure();
    }

    static List<Held> of(Joined joined) {
        Map<String, Map<Integer, List<MadeJoint>>> across = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND)) {
                acrossTheGrain(made.meeting()).ifPresent(side -> across
                        .computeIfAbsent(made.joint().left().name(), panel -> new HashMap<>())
                        .computeIfAbsent(side.sign(), sign -> new ArrayList<>())
                        .add(made));
            }
        }
        if (across.isEmpty()) {
            return List.of();
        }
        List<Held> held = new ArrayList<>();
        for (FinishedPart part : joined.parts()) {
            Map<Integer, List<MadeJoint>> sides = across.getOrDefault(part.part().name(), Map.of());
            List<MadeJoint> low = sides.getOrDefault(-1, List.of());
            List<MadeJoint> high = sides.getOrDefault(1, List.of());
            if (!low.isEmpty() && !high.isEmpty()) {
                held.add(new Held(part, low, high, joined.nature(part.part())));
            }
        }
        return held;
    }

    /** The side by which the panel enters, if that is an edge along its grain. */
    private static Optional<Side> acrossTheGrain(Meeting meeting) {
        return meeting.contact() instanceof BoxContact.FaceToFace face && measure(meeting, face.side().axis()) == 1
                ? Optional.of(face.side())
                : Optional.empty();
    }

    private static int measure(Meeting meeting, Axis axis) {
        return meeting.left().measure(axis);
    }
}
