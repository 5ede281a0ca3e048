package dev.treen.joinery;

import dev.treen.solid.Solid;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts bodies in the place of those that joints have cut. */
public final class HandCut {
    private HandCut() {
    }

    /** The project with the given bodies, by the names of their parts, which all its parts must be among. */
    public static Joined with(Joined joined, Map<String, Solid> bodies) {
        List<FinishedPart> parts = joined.parts().stream()
                .map(part -> new FinishedPart(part.part(), part.length(), part.width(), part.thickness(),
                        part.roughLength(), part.roughWidth(), part.roughThickness(),
                        Optional.of(new Shaped(() -> body(bodies, part.part().name())))))
                .toList();
        return new Joined(joined.project(), parts, joined.joints(), joined.findings(), joined.natures(), List.of());
    }

    private static Solid body(Map<String, Solid> bodies, String name) {
        return Optional.ofNullable(bodies.get(name)).orElseThrow();
    }
}
