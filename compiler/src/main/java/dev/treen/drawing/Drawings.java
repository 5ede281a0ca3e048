package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Drawing;
import dev.treen.solid.Placed;
import dev.treen.solid.Solid;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All drawings of a project. */
public final class Drawings {
    private Drawings() {
    }

    /** The drawings by what they show: each part under its name, then the whole assembled and taken apart. */
    public static Map<String, Sheet> of(Joined joined) {
        return all(joined, Figures.of(joined.project().settings())).sheets();
    }

    /** The drawings with their figures written so, and the scenes from which small pictures are made. */
    public static DrawingSet all(Joined joined, Figures figures) {
        Settings settings = joined.project().settings();
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        for (List<FinishedPart> alike : alike(joined.parts())) {
            sheets.put("part-" + alike.getFirst().part().name(), part(settings, alike, figures));
        }
        List<Placed> placed = placed(joined);
        Optional<Scene> assembled = Optional.empty();
        Optional<Scene> apart = Optional.empty();
        if (!placed.isEmpty()) {
            Drawing seen = Pictorial.seen(placed);
            sheets.put("assembled", Pictorial.assembled(settings.title(), placed, seen, settings.format()));
            assembled = Optional.of(new Scene(seen));
        }
        if (placed.size() > 1) {
            Explosion.Open open = Explosion.of(placed);
            List<Placed> moved = Pictorial.moved(placed, open.shifts());
            Drawing seen = Pictorial.seen(moved);
            sheets.put("taken-apart",
                    Pictorial.exploded(settings.title(), moved, seen, open.ways(), settings.format()));
            apart = Optional.of(new Scene(seen));
        }
        return new DrawingSet(sheets, assembled, apart, loose(joined));
    }

    /** Parts that have no place lie flat on the bench, one behind the other. */
    private static Optional<Scene> loose(Joined joined) {
        List<Placed> lying = new ArrayList<>();
        Length behind = Length.ZERO;
        for (FinishedPart part : joined.parts()) {
            if (part.bare().filter(s -> !s.isEmpty()).isEmpty() && drawable(part)) {
                var size = part.finished();
                lying.add(new Placed(part.part().name(), Solid.of(Box.at(
                        Vec3.of(Length.ZERO, behind, Length.ZERO),
                        Vec3.of(size.length(), size.width(), size.thickness())))));
                behind = behind.plus(size.width()).plus(size.width().dividedBy(3));
            }
        }
        return lying.isEmpty() ? Optional.empty() : Optional.of(new Scene(Pictorial.seen(lying)));
    }

    /** The working drawing of parts that are alike. */
    static Sheet part(Settings settings, List<FinishedPart> alike, Figures figures) {
        return PartSheet.of(settings, alike, PartViews.of(Laid.of(alike.getFirst())), figures);
    }

    /**
     * The parts that have a place and a body, as solids by their names, without the small round holes of screws and nails,
     * which the sheets of parts show.
     */
    public static List<Placed> placed(Joined joined) {
        return joined.parts().stream()
                .flatMap(part -> part.bare().filter(s -> !s.isEmpty()).stream()
                        .map(solid -> new Placed(part.part().name(), solid)))
                .toList();
    }

    /** Parts of one board that look the same from all six sides share a drawing. */
    static List<List<FinishedPart>> alike(List<FinishedPart> parts) {
        Map<Object, List<FinishedPart>> groups = new LinkedHashMap<>();
        for (FinishedPart part : parts) {
            if (drawable(part)) {
                Object key = List.of(
                        part.part().bought().flatMap(Board::species).orElse(part.part().source()),
                        part.part().bought().isPresent(), Look.of(Laid.of(part)));
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
            }
        }
        return List.copyOf(groups.values());
    }

    private static boolean drawable(FinishedPart part) {
        var size = part.finished();
        return size.length().signum() > 0 && size.width().signum() > 0 && size.thickness().signum() > 0;
    }
}
