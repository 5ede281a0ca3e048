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

/**
 * The working drawing of one part: the views that its cuts need by first-angle projection, with every figure that is marked
 * out on it, counted from the left end, the face edge and the face side, and none of them twice.
 */
final class PartSheet {
    private static final double BETWEEN = 7;

    /** What the lying pages of a plan leave beside their margins, on A4 and on Letter alike. */
    private static final double WIDEST = 244;

    private final Settings settings;
    private final LengthFormat format;
    private final FinishedPart part;
    private final List<String> names;
    private final PartViews views;

    /** The views of a part on paper, and whether all their words found room. */
    private record Arranged(List<Mark> marks, boolean complete) {}

    private PartSheet(Settings settings, List<FinishedPart> alike, PartViews views) {
        this.settings = settings;
        this.format = settings.format();
        this.part = alike.getFirst();
        this.names = alike.stream().map(p -> p.part().name()).toList();
        this.views = views;
    }

    /** The sheet for parts that are all alike; there is at least one. */
    static Sheet of(Settings settings, List<FinishedPart> alike, PartViews views) {
        return new PartSheet(settings, alike, views).draw();
    }

    private Sheet draw() {
        Paper paper = Paper.of(format);
        Bounds room = paper.room();
        Paper.Scale scale = paper.scales().getLast();
        List<Mark> drawn = List.of();
        for (Paper.Scale each : paper.scales()) {
            Arranged arranged = arranged(each.factor());
            drawn = arranged.marks();
            scale = each;
            Bounds bounds = Mark.bounds(drawn);
            if (arranged.complete() && bounds.width() <= Math.min(room.width(), WIDEST)
                    && bounds.height() <= room.height()) {
                break;
            }
        }
        Bounds bounds = Mark.bounds(drawn);
        double dx = room.middle().x() - bounds.middle().x();
        double dy = room.middle().y() - bounds.middle().y();
        List<Mark> frame = paper.frame(name(), below(), cells(scale), true);
        return new Sheet(paper.width(), paper.height(), name() + ": working drawing for " + settings.title(), words(),
                scale.text(), frame, Mark.moved(drawn, dx, dy));
    }

    private String name() {
        return String.join(", ", names);
    }

    private String below() {
        String title = settings.title();
        return names.size() == 1 ? title : title + ": " + names.size() + " pieces alike";
    }

    private List<Paper.Cell> cells(Paper.Scale scale) {
        var size = part.finished();
        String board = part.part().from().map(Board::name).orElse("any board");
        String species = part.part().from().map(Woods::name).orElse("");
        List<Paper.Cell> cells = new ArrayList<>();
        cells.add(new Paper.Cell("from", species.isEmpty() ? board : board + ", " + species));
        cells.add(new Paper.Cell("finished, " + format.unit(), format.figure(size.length()) + " × "
                + format.figure(size.width()) + " × " + format.figure(size.thickness())));
        cells.add(new Paper.Cell("scale", scale.text()));
        return cells;
    }

    private Arranged arranged(double factor) {
        Map<Way, List<Mark>> blocks = new EnumMap<>(Way.class);
        boolean complete = true;
        for (PartView view : views.views()) {
            ViewBlock block = new ViewBlock(views, view, factor, format);
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
            List<String> figures = views.levels().values().stream()
                    .flatMap(List::stream)
                    .filter(level -> level.along() == measured)
                    .map(Level::at)
                    .sorted(Length::compareTo)
                    .map(format::text)
                    .toList();
            words.append(switch (measured) {
                case LENGTH -> "Along the grain from the left end: ";
                case WIDTH -> "Across from the face edge: ";
                case THICKNESS -> "In thickness from the face side: ";
            }).append(String.join(", ", figures)).append(". ");
        }
        views.slopes().values().stream()
                .flatMap(java.util.Set::stream)
                .map(Slope::text)
                .sorted()
                .forEach(text -> words.append("Slope ").append(text).append(". "));
        return words.toString().strip();
    }
}
