package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Placing;
import dev.treen.model.Project;
import dev.treen.quantity.Length;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The parts with their seen sizes. A measure written {@code overall} has the joints in it; which they are, and where, is
 * known only when the part has been brought together with its neighbours. So such a measure is first taken to reach to
 * the nearest neighbour, the joints are made, and then what they add is taken off: if the part was written rightly, both
 * come to the same.
 */
final class SeenSizes {
    private SeenSizes() {
    }

    static boolean anyOverall(Project project) {
        return project.parts().stream().anyMatch(part -> !part.overall().equals(Part.Overall.NONE));
    }

    /** Every part as it is written. */
    static Map<String, Part> written(Project project) {
        Map<String, Part> parts = new LinkedHashMap<>();
        project.parts().forEach(part -> parts.put(part.name(), part));
        return parts;
    }

    /** Every part, with {@code overall} measures cut back to where the nearest neighbour begins. */
    static Map<String, Part> toNeighbours(Project project) {
        Map<String, Part> parts = written(project);
        Map<String, Length[]> reach = new HashMap<>();
        for (Joint joint : project.joints()) {
            meets(joint.left(), joint.right(), reach);
            meets(joint.right(), joint.left(), reach);
        }
        reach.forEach((name, lengths) -> parts.computeIfPresent(name, (n, part) -> {
            Part seen = part;
            for (int measure = 0; measure < 3; measure++) {
                if (lengths[measure].signum() > 0) {
                    seen = with(seen, measure, changed(seen.measure(measure), lengths[measure]), lengths[measure]);
                }
            }
            return seen;
        }));
        return parts;
    }

    /** Notes in {@code reach} how far {@code part} can go along each overall measure before it comes to {@code mate}. */
    private static void meets(Part part, Part mate, Map<String, Length[]> reach) {
        if (part.overall().equals(Part.Overall.NONE) || part.placing().isEmpty() || mate.placing().isEmpty()) {
            return;
        }
        Placing placing = part.placing().get();
        for (int axis = 0; axis < 3; axis++) {
            int measure = placing.measureAlong(axis);
            Placing other = mate.placing().get();
            Length between = placing.corner().high(axis)
                    ? placing.high(part, axis).minus(other.high(mate, axis))
                    : other.low(mate, axis).minus(placing.low(part, axis));
            boolean within = between.signum() > 0
                    && between.compareTo(placing.extent(part, axis)) <= 0;
            if (overall(part, measure) && within) {
                Length[] all = reach.computeIfAbsent(
                        part.name(), name -> new Length[]{Length.ZERO, Length.ZERO, Length.ZERO});
                all[measure] = all[measure].signum() == 0 ? between : all[measure].min(between);
            }
        }
    }

    static boolean overall(Part part, int measure) {
        return switch (measure) {
            case 0 -> part.overall().length();
            case 1 -> part.overall().width();
            default -> part.overall().thickness();
        };
    }

    /** The part, its overall measure less what the joints add. */
    static Part without(Part part, int measure, Measure joints) {
        Measure all = part.measure(measure);
        Length value = all.value().minus(joints.value());
        Derivation how = Derivation.combined(
                all.how().label() + " seen",
                Measure.datum(value),
                "−",
                all.how().named("over all"),
                joints.how().named("joints"));
        Length planned = switch (measure) {
            case 0 -> part.assembled().length();
            case 1 -> part.assembled().width();
            default -> part.assembled().thickness();
        };
        return with(part, measure, new Measure(value, all.at(), how), planned.minus(joints.value()));
    }

    private static Measure changed(Measure measure, Length value) {
        return new Measure(value, measure.at(), measure.how());
    }

    /** The part with another measure; {@code planned} is what it has in the assembly, where that was told apart. */
    private static Part with(Part part, int measure, Measure changed, Length planned) {
        return new Part(
                part.name(),
                part.nameAt(),
                measure == 0 ? changed : part.length(),
                measure == 1 ? changed : part.width(),
                measure == 2 ? changed : part.thickness(),
                part.overall(),
                part.from(),
                part.bought(),
                part.anyOf(),
                part.rings(),
                part.ringsAt(),
                part.placing(),
                part.planned().map(size -> switch (measure) {
                    case 0 -> size.withLength(planned);
                    case 1 -> size.withWidth(planned);
                    default -> size.withThickness(planned);
                }),
                part.takes(),
                part.turns(),
                part.glueUp(),
                part.service(),
                part.allow(),
                part.tolerances(),
                part.doc());
    }
}
