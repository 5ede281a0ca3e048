package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.model.Board;
import dev.treen.model.GlueUp;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ways in which a part may be divided into staves: equally, or as wide as the boards are. A glue line keeps clear of
 * what joints cut into the part, a groove or a hinge's recess, where that does not run across it; it would open there, or
 * show.
 */
final class Staving {
    /** How far a glue line keeps from a cut: common practice, no source; the figure is our own. */
    private static final Length CLEAR = Length.ofMm(3);

    /** A narrower stave is a strip that tips over on its edge: common practice, no source; the figure is our own. */
    private static final Length LEAST = Length.ofMm(25);

    /** So many more staves than the fewest are tried. */
    private static final int MORE = 2;

    private static final int MOST_WIDTHS = 4;

    /** A stretch of the width in which no glue line may lie. */
    private record Stretch(Length from, Length to) {
        boolean holds(Length at) {
            return at.compareTo(from) > 0 && at.compareTo(to) < 0;
        }
    }

    private final FinishedPart part;
    private final GlueUp asked;
    private final Length whole;
    private final Length edges;
    private final Length step;
    private final List<Stretch> cuts;
    private final List<Length> usable;

    /**
     * @param touched where joints touch the part
     * @param boards those that may give its staves
     * @param step to which widths are rounded
     */
    Staving(FinishedPart part, GlueUp asked, List<Rectangle> touched, List<Board> boards, Length step) {
        this.part = part;
        this.asked = asked;
        this.step = step;
        this.whole = part.roughWidth().value();
        this.edges = part.part().allow().planing().value().times(2);
        this.cuts = cuts(touched);
        this.usable = boards.stream()
                .map(board -> board.width().value().minus(edges))
                .map(width -> asked.widest().map(w -> w.value().min(width)).orElse(width))
                .filter(width -> width.compareTo(LEAST) >= 0)
                .distinct()
                .sorted(java.util.Comparator.reverseOrder())
                .toList();
    }

    /** What a leaf has to give for a part that is glued up: its faces are planed once more when the glue is hard. */
    static Length thickness(FinishedPart part) {
        Length thick = part.thickness().value();
        return part.part().glueUp().isEmpty() ? thick : thick.plus(part.part().allow().planing().value().times(2));
    }

    private List<Stretch> cuts(List<Rectangle> touched) {
        Length width = part.width().value();
        Length before = whole.minus(width).dividedBy(2);
        return touched.stream()
                .filter(place -> place.width().compareTo(width) < 0 && !crosses(place))
                .map(place -> new Stretch(
                        place.y().plus(before).minus(CLEAR), place.y().plus(place.width()).plus(before).plus(CLEAR)))
                .toList();
    }

    /** Whether a cut runs over the glue lines, as a housing does, and not along them; what lies at an end may be a tenon. */
    private boolean crosses(Rectangle place) {
        boolean atEnd = place.x().signum() <= 0
                || place.x().plus(place.length()).compareTo(part.length().value()) >= 0;
        return !atEnd && place.width().compareTo(place.length()) > 0;
    }

    /** The divisions worth trying, the plainest first; never none. */
    List<Glued> ways() {
        Set<List<Length>> found = new LinkedHashSet<>();
        Length widest = usable.isEmpty() ? whole : usable.getFirst();
        int fewest = Math.max(2, (int) Math.ceil(whole.toDoubleMm() / widest.toDoubleMm() - 1e-9));
        int from = asked.match() == GlueUp.Match.BOOK ? 2 : asked.staves().orElse(Math.min(fewest, GlueUp.MOST_STAVES));
        int to = asked.staves().isPresent() || asked.match() == GlueUp.Match.BOOK ? from : from + MORE;
        for (int count = from; count <= to; count++) {
            equal(count, widest).ifPresent(found::add);
        }
        if (asked.match() != GlueUp.Match.BOOK) {
            usable.stream().limit(MOST_WIDTHS).forEach(width -> full(width)
                    .filter(staves -> asked.staves().map(count -> count == staves.size()).orElse(true))
                    .ifPresent(found::add));
        }
        if (found.isEmpty()) {
            List<Length> staves = evenly(from);
            return List.of(glued(staves, clear(staves)));
        }
        return found.stream().map(staves -> glued(staves, true)).toList();
    }

    Glued glued(List<Length> staves, boolean clear) {
        return new Glued(
                part.part().name(), asked, staves, part.roughLength().value(), edges, thickness(part), clear);
    }

    /** Whether glue lines between these staves are clear of all cuts. */
    boolean clear(List<Length> staves) {
        Length at = Length.ZERO;
        for (Length stave : staves.subList(0, staves.size() - 1)) {
            at = at.plus(stave);
            Length line = at;
            if (cuts.stream().anyMatch(cut -> cut.holds(line))) {
                return false;
            }
        }
        return true;
    }

    private List<Length> evenly(int count) {
        Length exact = whole.dividedBy(count);
        Length one = exact.roundDownTo(step).signum() > 0 ? exact.roundDownTo(step) : exact;
        List<Length> staves = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            staves.add(one);
        }
        staves.add(whole.minus(one.times(count - 1L)));
        return staves;
    }

    private Optional<List<Length>> equal(int count, Length widest) {
        if (asked.match() == GlueUp.Match.BOOK) {
            Length half = whole.dividedBy(2);
            List<Length> leaves = List.of(half, half);
            return clear(leaves) ? Optional.of(leaves) : Optional.empty();
        }
        List<Length> lines = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            lines.add(whole.times(i).dividedBy(count).roundTo(step));
        }
        return moved(lines, widest);
    }

    /** Staves as wide as one board, and what is left over. */
    private Optional<List<Length>> full(Length width) {
        Length stave = width.roundDownTo(step);
        List<Length> lines = new ArrayList<>();
        Length at = stave;
        while (at.compareTo(whole) < 0 && lines.size() < GlueUp.MOST_STAVES) {
            lines.add(at);
            at = at.plus(stave);
        }
        return lines.isEmpty() ? Optional.empty() : moved(lines, stave);
    }

    /** The lines in their order, each moved as little as keeps it clear of cuts and its staves of a fair width. */
    private Optional<List<Length>> moved(List<Length> lines, Length widest) {
        List<Length> staves = new ArrayList<>();
        Length before = Length.ZERO;
        for (int i = 0; i < lines.size(); i++) {
            int after = lines.size() - i;
            Length low = before.plus(LEAST).max(whole.minus(widest.times(after)));
            Length high = before.plus(widest).min(whole.minus(LEAST.times(after)));
            Optional<Length> line = nearest(lines.get(i), low, high);
            if (line.isEmpty()) {
                return Optional.empty();
            }
            staves.add(line.get().minus(before));
            before = line.get();
        }
        staves.add(whole.minus(before));
        return staves.getLast().compareTo(widest) <= 0 ? Optional.of(staves) : Optional.empty();
    }

    private Optional<Length> nearest(Length wanted, Length low, Length high) {
        List<Length> places = new ArrayList<>(List.of(wanted, low, high));
        for (Stretch cut : cuts) {
            places.add(cut.from.roundDownTo(step));
            places.add(cut.to.roundUpTo(step));
        }
        return places.stream()
                .filter(at -> at.compareTo(low) >= 0 && at.compareTo(high) <= 0)
                .filter(at -> cuts.stream().noneMatch(cut -> cut.holds(at)))
                .min(java.util.Comparator.comparing((Length at) -> at.minus(wanted).abs()));
    }
}
