package dev.treen.joinery;

import dev.treen.model.Direction;
import dev.treen.model.GrainRun;
import dev.treen.model.LayoutWishes;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A run of grain whose parts are walls that close a ring: each meets the next end to end, and the last the first. A strip
 * has two ends, so the figure goes on round every corner but the one between the last part and the first (rule of the trade
 * Y-04: that the grain goes round, Noyes, Handwork in Wood (1910), ch. IX; where the odd corner belongs is common practice,
 * no source).
 *
 * @param corners for each part of the run where it meets the next one; the last of them is the odd one
 */
public record GrainRing(GrainRun run, List<Corner> corners) {
    private static final int FEWEST = 3;

    /** Keeps its own copy. */
    public GrainRing {
        corners = List.copyOf(corners);
    }

    /**
     * Where two parts of a ring meet.
     *
     * @param sides of the ring on which it lies, as its maker stands before it; none in the middle of all
     */
    public record Corner(String one, String other, List<Direction> sides) {
        /** Keeps its own copy. */
        public Corner {
            sides = List.copyOf(sides);
        }

        /** Whether it lies at the back, where it is seen least. */
        public boolean atBack() {
            return sides.contains(Direction.BACK);
        }

        /** The part that meets {@code part} here, if it is one of both. */
        public Optional<String> mate(String part) {
            return part.equals(one) ? Optional.of(other) : part.equals(other) ? Optional.of(one) : Optional.empty();
        }

        /** {@code at the front left corner}, or {@code at the front} where two parts make one wall. */
        public String place() {
            String words = String.join(" ", sides.stream().map(Direction::surface).toList());
            return sides.isEmpty() ? "in the middle" : "at the " + words + (sides.size() > 1 ? " corner" : "");
        }
    }

    /** Those of the runs of a project that close a ring, of parts that are sawn out in one piece. */
    public static List<GrainRing> of(Joined joined) {
        if (joined.project().runs().isEmpty()) {
            return List.of();
        }
        Set<String> pieced = new HashSet<>();
        joined.project().settings().layout().bookmatched().stream()
                .map(LayoutWishes.Group::parts)
                .forEach(pieced::addAll);
        joined.parts().stream()
                .map(FinishedPart::part)
                .filter(part -> part.glueUp().isPresent())
                .forEach(part -> pieced.add(part.name()));
        return joined.project().runs().stream()
                .filter(run -> run.parts().stream().noneMatch(pieced::contains))
                .flatMap(run -> of(run, joined).stream())
                .toList();
    }

    /** Those whose strip lies among {@code parts}: those of one board. */
    public static List<GrainRing> among(Collection<String> parts, Joined joined) {
        return of(joined).stream().filter(ring -> parts.containsAll(ring.run.parts())).toList();
    }

    /** The corner at which the run begins and ends, where the grain does not meet. */
    public Corner odd() {
        return corners.getLast();
    }

    /** What is to be known of it, in a sentence whose names {@code named} writes. */
    public String told(UnaryOperator<String> named) {
        List<String> names = run.parts().stream().map(named).toList();
        return "the grain runs on through " + String.join(", ", names) + ": it meets at " + meets()
                + ", and does not " + odd().place() + ", between " + named.apply(odd().one()) + " and "
                + named.apply(odd().other());
    }

    /** At how many corners the grain meets, {@code 3 corners}; a wall of two parts has a meeting that is no corner. */
    public String meets() {
        boolean cornered = corners.stream().allMatch(corner -> corner.sides().size() > 1);
        return corners.size() - 1 + (cornered ? " corners" : " places");
    }

    /** The parts in whose grain that of {@code part} goes on: two, or one beside the odd corner. */
    public List<String> meeting(String part) {
        return corners.subList(0, corners.size() - 1).stream()
                .flatMap(corner -> corner.mate(part).stream())
                .toList();
    }

    private static Optional<GrainRing> of(GrainRun run, Joined joined) {
        List<Meeting.Placed> walls = run.parts().stream()
                .flatMap(name -> joined.part(name).stream())
                .flatMap(part -> Meeting.Placed.of(part.part()).stream())
                .toList();
        if (walls.size() < FEWEST || walls.size() < run.parts().size()) {
            return Optional.empty();
        }
        Optional<Set<Axis>> plane = plane(walls);
        List<Touch> touches = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            Touch.of(walls.get(i), walls.get((i + 1) % walls.size())).ifPresent(touches::add);
        }
        if (plane.isEmpty() || touches.size() < walls.size()) {
            return Optional.empty();
        }
        Box round = walls.stream().map(Meeting.Placed::box).reduce(Box::join).orElseThrow();
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            int before = (i + walls.size() - 1) % walls.size();
            if (touches.get(before).endOf(walls.get(i)) * touches.get(i).endOf(walls.get(i)) >= 0) {
                return Optional.empty();
            }
            corners.add(new Corner(run.parts().get(i), run.parts().get((i + 1) % walls.size()),
                    touches.get(i).sides(round, plane.get())));
        }
        return Optional.of(new GrainRing(run, corners));
    }

    /** The plane in which the grain goes round; empty where it does not, or where a part lies flat in it as in a frame. */
    private static Optional<Set<Axis>> plane(List<Meeting.Placed> walls) {
        Set<Axis> grain = EnumSet.noneOf(Axis.class);
        Set<Axis> width = EnumSet.noneOf(Axis.class);
        walls.forEach(wall -> {
            grain.add(Axes.of(wall.placing().length().axis()));
            width.add(Axes.of(wall.placing().width().axis()));
        });
        return grain.size() == 2 && width.size() == 1 ? Optional.of(grain) : Optional.empty();
    }

    /** Where two walls touch: the lowest and the highest corner of what they share. */
    private record Touch(Vec3 low, Vec3 high) {
        static Optional<Touch> of(Meeting.Placed one, Meeting.Placed other) {
            return switch (one.box().contact(other.box())) {
                case BoxContact.FaceToFace(var side, var min, var max) -> Optional.of(new Touch(min, max));
                case BoxContact.Edge(var along, var from, var to, var first, var second) ->
                    Optional.of(new Touch(from, to));
                case BoxContact.Overlapping(var shared) -> Optional.of(new Touch(shared.min(), shared.max()));
                case BoxContact.Corner _ -> Optional.empty();
                case BoxContact.Apart _ -> Optional.empty();
            };
        }

        /** At which end of a wall it lies: -1 low, 1 high, 0 between them. */
        int endOf(Meeting.Placed wall) {
            Axis grain = Axes.of(wall.placing().length().axis());
            int begins = third(low.get(grain), wall.box(), grain);
            return begins == third(high.get(grain), wall.box(), grain) ? begins : 0;
        }

        List<Direction> sides(Box round, Set<Axis> plane) {
            return Stream.of(Axis.Z, Axis.Y, Axis.X)
                    .filter(plane::contains)
                    .flatMap(axis -> {
                        BigFraction middle = low.get(axis).add(high.get(axis)).divide(2);
                        int side = third(middle, round, axis);
                        return side == 0 ? Stream.empty() : Stream.of(Direction.of(Axes.number(axis), side));
                    })
                    .toList();
        }

        /** In which third of a box a coordinate lies: corners lie in the outer ones. */
        private static int third(BigFraction at, Box of, Axis axis) {
            double part = at.subtract(of.min().get(axis)).divide(of.extent(axis)).doubleValue();
            return part < 1 / 3.0 ? -1 : part > 2 / 3.0 ? 1 : 0;
        }
    }
}
