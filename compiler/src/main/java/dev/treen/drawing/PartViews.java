package dev.treen.drawing;

import dev.treen.drawing.PartView.Quality;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The views that a part's cuts need, and in which of them each figure stands: once, where it is seen best.
 *
 * @param part the part as it lies
 * @param views the chosen ones, the face side first
 * @param levels for each view the figures that stand there, from the smallest
 * @param slopes for each view the slopes that are told there
 * @param holes for each view the holes whose diameters are told there
 */
record PartViews(
        Laid part,
        List<PartView> views,
        Map<Way, List<Level>> levels,
        Map<Way, Set<Slope>> slopes,
        Map<Way, List<PartView.Disc>> holes) {

    static PartViews of(Laid part) {
        return new Choice(part).make();
    }

    private static final class Choice {
        private final Laid part;
        private final Map<Way, PartView> all = new EnumMap<>(Way.class);
        private final Set<Level> levels = new TreeSet<>(
                Comparator.comparing(Level::along).thenComparing(Level::at));
        private final Set<Slope> slopes = new HashSet<>();
        private final List<PartView> chosen = new ArrayList<>();

        Choice(Laid part) {
            this.part = part;
            List<RoundHole> holes = RoundHole.of(part);
            for (Way way : Way.values()) {
                PartView view = new PartView(part, way, holes);
                all.put(way, view);
                levels.addAll(view.sights().keySet());
                slopes.addAll(view.slopes().keySet());
            }
            levels.removeIf(level -> level.at().isZero());
            levels.removeAll(Derived.levels(part));
        }

        PartViews make() {
            chosen.add(view(Way.FRONT));
            Optional<PartView> next = best();
            while (next.isPresent()) {
                chosen.add(next.get());
                next = best();
            }
            Mouths mouths = Mouths.of(part);
            for (Way way : List.of(Way.BELOW, Way.ABOVE, Way.BACK)) {
                if (mouths.wants(way, chosen.stream().map(PartView::way).collect(Collectors.toSet()))) {
                    chosen.add(view(way));
                }
            }
            Map<Way, List<Level>> byView = new EnumMap<>(Way.class);
            for (Level level : levels) {
                where(level).ifPresent(way -> byView.computeIfAbsent(way, w -> new ArrayList<>()).add(level));
            }
            Map<Way, Set<Slope>> told = new EnumMap<>(Way.class);
            for (Slope slope : slopes) {
                chosen.stream().filter(v -> v.slopes().containsKey(slope))
                        .max(Comparator.comparingInt(v -> seen(v, slope)))
                        .ifPresent(v -> told.computeIfAbsent(v.way(), w -> new HashSet<>()).add(slope));
            }
            return new PartViews(part, chosen, byView, told, discs());
        }

        private Map<Way, List<PartView.Disc>> discs() {
            Map<Way, List<PartView.Disc>> discs = new EnumMap<>(Way.class);
            Map<RoundHole, Way> where = new HashMap<>();
            for (boolean visible : new boolean[]{true, false}) {
                for (PartView view : chosen) {
                    view.discs().stream().filter(d -> d.visible() == visible).forEach(disc -> {
                        if (where.putIfAbsent(disc.hole(), view.way()) == null) {
                            discs.computeIfAbsent(view.way(), w -> new ArrayList<>()).add(disc);
                        }
                    });
                }
            }
            return discs;
        }

        private PartView view(Way way) {
            return Optional.ofNullable(all.get(way)).orElseThrow();
        }

        private static int seen(PartView view, Slope slope) {
            return (int) view.slopes().getOrDefault(slope, List.of()).stream().filter(s -> s.visible()).count();
        }

        private Optional<Way> where(Level level) {
            Optional<PartView> best = Optional.empty();
            for (PartView view : chosen) {
                if (rank(List.of(view), level) > best.map(b -> rank(List.of(b), level)).orElse(-1)) {
                    best = Optional.of(view);
                }
            }
            return best.map(PartView::way);
        }

        private Optional<PartView> best() {
            PartView best = view(Way.FRONT);
            int most = 0;
            for (Way way : Way.values()) {
                PartView view = view(way);
                int gain = chosen.contains(view) ? 0 : gain(view);
                if (gain > most) {
                    most = gain;
                    best = view;
                }
            }
            return most == 0 ? Optional.empty() : Optional.of(best);
        }

        /** How many levels and slopes this view shows that the chosen ones do not show well enough. */
        private int gain(PartView view) {
            int gain = 0;
            for (Level level : levels) {
                int wanted = Math.min(Quality.END.rank(), rank(all.values(), level));
                gain += rank(chosen, level) < wanted && rank(List.of(view), level) >= wanted ? 1 : 0;
            }
            for (Slope slope : slopes) {
                boolean shown = chosen.stream().anyMatch(v -> v.slopes().containsKey(slope));
                gain += !shown && view.slopes().containsKey(slope) ? 1 : 0;
            }
            return gain;
        }

        private static int rank(Iterable<PartView> views, Level level) {
            int best = -1;
            for (PartView view : views) {
                best = Math.max(best, view.sight(level).map(s -> s.quality().rank()).orElse(-1));
            }
            return best;
        }
    }
}
