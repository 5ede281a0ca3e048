package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The working drawing of one part: the views that its cuts need by first-angle projection, with every figure that is marked
 * out on it, counted from the left end, the face edge and the face side, and none of them twice.
 */
final class PartSheet {
    private static final double BETWEEN = 7;

    /** What the lying pages of a plan leave beside their margins, on A4 and on Letter alike. */
    private static final double WIDEST = 244;

    /** Drawn smaller than this, a joint of a few millimetres is hard to read. */
    private static final double SMALL = 0.5;

    private final Settings settings;
    private final Figures figures;
    private final FinishedPart part;
    private final List<String> names;
    private final PartViews views;

    /** The views of a part on paper, and whether all their words found room. */
    private record Arranged(List<Mark> marks, boolean complete) {}

    private PartSheet(Settings settings, List<FinishedPart> alike, PartViews views, Figures figures) {
        this.settings = settings;
        this.figures = figures;
        this.part = alike.getFirst();
        this.names = alike.stream().map(p -> p.part().name()).toList();
        this.views = views;
    }

    /** The sheet for parts that are all alike; there is at least one. */
    static Sheet of(Settings settings, List<FinishedPart> alike, PartViews views, Figures figures) {
        return new PartSheet(settings, alike, views, figures).draw();
    }

    private Sheet draw() {
        Paper paper = Paper.of(figures.own());
        Drawn drawn = drawn(paper);
        Bounds room = paper.room();
        Bounds bounds = Mark.bounds(drawn.marks());
        double dx = room.middle().x() - bounds.middle().x();
        double dy = room.middle().y() - bounds.middle().y();
        List<Mark> frame = paper.frame(name(), below(), cells(drawn.scaleText()), true);
        return new Sheet(paper.width(), paper.height(), name() + ": working drawing for " + settings.title(),
                drawn.broken() ? words() + " Long stretches on which nothing is marked out are left out." : words(),
                drawn.scaleText(), frame, Mark.moved(drawn.marks(), dx, dy));
    }

    /** The views as they go on paper. */
    private record Drawn(List<Mark> marks, Paper.Scale scale, boolean broken) {
        String scaleText() {
            return broken ? scale.text() + Sheet.SHORTENED : scale.text();
        }
    }

    /** As large as the paper allows; a long part that would be drawn small is shortened where nothing is marked out on it. */
    private Drawn drawn(Paper paper) {
        Drawn whole = whole(paper);
        if (whole.scale().factor() >= SMALL || plain()) {
            return whole;
        }
        for (Paper.Scale each : paper.scales()) {
            if (each.factor() <= whole.scale().factor()) {
                break;
            }
            Optional<Arranged> shortened = each.factor() > 1 ? Optional.empty()
                    : shortened(each.factor(), paper.room());
            if (shortened.isPresent()) {
                return new Drawn(shortened.get().marks(), each, true);
            }
        }
        return whole;
    }

    private Optional<Arranged> shortened(double factor, Bounds room) {
        return Breaks.KEPT.stream()
                .map(keep -> Breaks.of(views.views(), factor, keep))
                .filter(breaks -> !breaks.left().isEmpty())
                .map(this::arranged)
                .filter(arranged -> fits(arranged, room))
                .findFirst();
    }

    /** Whether nothing is marked out on it but its size. */
    private boolean plain() {
        return views.levels().values().stream().mapToInt(List::size).sum() <= Measured.values().length;
    }

    private Drawn whole(Paper paper) {
        Paper.Scale scale = paper.scales().getLast();
        List<Mark> marks = List.of();
        for (Paper.Scale each : paper.scales()) {
            Arranged arranged = arranged(Breaks.none(each.factor()));
            marks = arranged.marks();
            scale = each;
            if (fits(arranged, paper.room())) {
                break;
            }
        }
        return new Drawn(marks, scale, false);
    }

    private static boolean fits(Arranged arranged, Bounds room) {
        Bounds bounds = Mark.bounds(arranged.marks());
        return arranged.complete() && bounds.width() <= Math.min(room.width(), WIDEST)
                && bounds.height() <= room.height();
    }

    private String name() {
        return String.join(", ", names);
    }

    private String below() {
        String title = settings.title();
        return names.size() == 1 ? title : title + ": " + names.size() + " pieces alike";
    }

    private List<Paper.Cell> cells(String scale) {
        var size = part.finished();
        String board = part.part().bought().isPresent() ? "bought"
                : part.part().from().filter(any -> part.part().anyOf().isEmpty()).map(Board::name).orElse("any board");
        String species = part.part().stuff().map(Woods::name).orElse("");
        List<Paper.Cell> cells = new ArrayList<>();
        cells.add(new Paper.Cell("from", species.isEmpty() ? board : board + ", " + species));
        LengthFormat own = figures.own();
        cells.add(new Paper.Cell("finished, " + own.unit(), own.figure(size.length()) + " × "
                + own.figure(size.width()) + " × " + own.figure(size.thickness())));
        cells.add(new Paper.Cell("scale", scale));
        return cells;
    }

    private Arranged arranged(Breaks breaks) {
        Map<Way, List<Mark>> blocks = new EnumMap<>(Way.class);
        boolean complete = true;
        for (PartView view : views.views()) {
            ViewBlock block = new ViewBlock(views, view, breaks, figures, !part.part().foreign());
            blocks.put(view.way(), block.draw());
            complete &= block.complete();
        }
        List<Mark> marks = new ArrayList<>(blocks.get(Way.FRONT));
        Bounds row = Mark.bounds(marks);
        // First angle: what is seen from the left lies on the right, what is seen from above lies below.
        for (Way way : List.of(Way.LEFT, Way.BACK)) {
            row = beside(marks, blocks, way, row, true);
        }
        row = beside(marks, blocks, Way.RIGHT, row, false);
        for (Way way : List.of(Way.ABOVE, Way.BELOW)) {
            List<Mark> block = blocks.getOrDefault(way, List.of());
            if (!block.isEmpty()) {
                Bounds own = Mark.bounds(block);
                double dy = way == Way.ABOVE ? row.bottom() + BETWEEN - own.top() : row.top() - BETWEEN - own.bottom();
                marks.addAll(Mark.moved(block, 0, dy));
            }
        }
        return new Arranged(marks, complete);
    }

    private static Bounds beside(List<Mark> marks, Map<Way, List<Mark>> blocks, Way way, Bounds row, boolean right) {
        List<Mark> block = blocks.getOrDefault(way, List.of());
        if (block.isEmpty()) {
            return row;
        }
        Bounds own = Mark.bounds(block);
        double dx = right ? row.right() + BETWEEN - own.left() : row.left() - BETWEEN - own.right();
        List<Mark> moved = Mark.moved(block, dx, 0);
        marks.addAll(moved);
        return row.join(Mark.bounds(moved));
    }

    /** All figures in words, for those who hear the drawing. */
    private String words() {
        StringBuilder words = new StringBuilder();
        for (Measured measured : Measured.values()) {
            List<String> levels = views.levels().values().stream()
                    .flatMap(List::stream)
                    .filter(level -> level.along() == measured)
                    .map(Level::at)
                    .sorted(Length::compareTo)
                    .map(figures::text)
                    .toList();
            words.append(switch (measured) {
                case LENGTH -> "Along the grain from the left end: ";
                case WIDTH -> "Across from the face edge: ";
                case THICKNESS -> "In thickness from the face side: ";
            }).append(String.join(", ", levels)).append(". ");
        }
        views.slopes().values().stream()
                .flatMap(java.util.Set::stream)
                .map(Slope::text)
                .sorted()
                .forEach(text -> words.append("Slope ").append(text).append(". "));
        return words.toString().strip();
    }
}
