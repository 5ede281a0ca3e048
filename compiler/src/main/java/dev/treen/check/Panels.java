package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Groove;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The panels of a project that are held in grooves at both sides across their grain. */
final class Panels {
    private Panels() {
    }

    /**
     * A panel between two grooves.
     *
     * @param part the panel
     * @param first the groove on one side
     * @param second the groove on the other
     * @param nature how its wood moves
     */
    record Held(FinishedPart part, MadeJoint first, MadeJoint second, Nature nature) {
        /** What is free on one side at the bench. */
        double gapMm() {
            return figure(first, "gap").value().min(figure(second, "gap").value()).toDoubleMm();
        }

        /** The depth of the shallower groove. */
        double deepMm() {
            return figure(first, "deep").value().min(figure(second, "deep").value()).toDoubleMm();
        }

        /** The panel's width at the bench. */
        double widthMm() {
            return part.width().value().toDoubleMm();
        }

        /** The opening between both grooved parts. */
        double openingMm() {
            return part.part().width().value().toDoubleMm();
        }

        /** Half of what it grows to the wettest season. */
        double swellingMm() {
            return Math.max(0, widthMm() * nature.swelling() / 2);
        }
    }

    static Measure figure(MadeJoint made, String name) {
        return made.figure(name).orElseThrow().measure();
    }

    static List<Held> of(Joined joined) {
        Settings settings = joined.project().settings();
        Map<String, List<MadeJoint>> across = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            if (made.joint().kind().equals(Groove.KIND) && meetsAcross(made)) {
                across.computeIfAbsent(made.joint().left().name(), p -> new ArrayList<>())
                        .add(made);
            }
        }
        List<Held> held = new ArrayList<>();
        across.forEach((name, grooves) -> {
            if (grooves.size() == 2) {
                joined.part(name).ifPresent(part -> held.add(
                        new Held(part, grooves.get(0), grooves.get(1), Nature.of(part.part(), settings))));
            }
        });
        return held;
    }

    /** Whether the panel enters with an edge that runs along its grain. */
    private static boolean meetsAcross(MadeJoint made) {
        Part panel = made.joint().left();
        Part wall = made.joint().right();
        return panel.placing().isPresent()
                && wall.placing().isPresent()
                && wall.placing().get().thickness().axis() == panel.placing().get().width().axis();
    }
}
