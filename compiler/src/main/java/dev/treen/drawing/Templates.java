package dev.treen.drawing;

import dev.treen.joinery.Joined;
import java.util.ArrayList;
import java.util.List;

/**
 * Templates of dovetails and other angled work at full size, on sheets that find room on A4 and on Letter. Each sheet has a
 * ruler to be held against a real one; what is longer than a sheet is laid on several, with crosses that come over each
 * other.
 */
public final class Templates {
    /** What both papers have between margins of 12 mm: ISO 216 A4 is 210 wide, ANSI Letter 279.4 high. */
    public static final double WIDTH = 186;
    public static final double HEIGHT = 250;

    private static final double RULER = 22;
    private static final double CAPTION = 7;
    private static final double GAP = 5;
    /** What two sheets of one template share. */
    private static final double OVERLAP = 12;
    private static final double CROSS = 3;
    private static final double ASIDE = 4;

    private final String title;
    private final List<List<Mark>> pages = new ArrayList<>();
    private double x;
    private double y;
    private double row;

    private Templates(String title) {
        this.title = title;
    }

    /** The sheets; none where nothing is angled. */
    public static List<Sheet> of(Joined joined) {
        Templates templates = new Templates(joined.project().settings().title());
        Template.of(joined).forEach(templates::lay);
        return templates.sheets();
    }

    private void lay(Template template) {
        Bounds all = Mark.bounds(template.marks());
        double high = HEIGHT - RULER - CAPTION;
        if (all.width() <= WIDTH && all.height() <= high) {
            place(template.caption(), template.marks());
            return;
        }
        List<Double> columns = cuts(all.width(), WIDTH - 2 * ASIDE - 2 * CROSS);
        List<Double> rows = cuts(all.height(), high - 2 * ASIDE - 2 * CROSS);
        List<Mark> marks = new ArrayList<>(template.marks());
        double out = ASIDE;
        rows.subList(1, rows.size()).forEach(at -> List.of(-out, all.width() + out)
                .forEach(side -> cross(marks, new Spot(side, at + OVERLAP / 2))));
        columns.subList(1, columns.size()).forEach(at -> List.of(-out, all.height() + out)
                .forEach(side -> cross(marks, new Spot(at + OVERLAP / 2, side))));
        int number = 0;
        for (double top : rows) {
            for (double left : columns) {
                number++;
                double right = end(columns, left, all.width()) + (last(columns, left) ? out + CROSS : 0);
                double foot = end(rows, top, all.height()) + (last(rows, top) ? out + CROSS : 0);
                Bounds window = new Bounds(left == 0 ? -out - CROSS : left, top == 0 ? -out - CROSS : top, right, foot);
                List<Mark> tile = new Clip(window).of(marks);
                if (!tile.isEmpty()) {
                    place(template.caption() + " (" + number + " of " + rows.size() * columns.size() + ")",
                            Mark.moved(tile, -window.left(), -window.top()));
                }
            }
        }
    }

    /** Where the tiles begin, each sharing some with the one before it. */
    private static List<Double> cuts(double all, double most) {
        int count = all <= most ? 1 : (int) Math.ceil((all - OVERLAP) / (most - OVERLAP));
        double step = (all - OVERLAP) / count;
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cuts.add(i * step);
        }
        return cuts;
    }

    private static boolean last(List<Double> cuts, double at) {
        return at == cuts.getLast();
    }

    private static double end(List<Double> cuts, double at, double all) {
        return last(cuts, at) ? all : cuts.get(cuts.indexOf(at) + 1) + OVERLAP;
    }

    private static void cross(List<Mark> marks, Spot at) {
        marks.add(new Mark.Line(at.plus(-CROSS, 0), at.plus(CROSS, 0), Pen.THIN));
        marks.add(new Mark.Line(at.plus(0, -CROSS), at.plus(0, CROSS), Pen.THIN));
        marks.add(new Mark.Ring(at, CROSS / 2, false));
    }

    /** In rows from the left, on a new sheet where there is no more room. */
    private void place(String words, List<Mark> marks) {
        String caption = Flat.shortened(words, WIDTH * Lettering.USUAL / Lettering.SMALL);
        Bounds bounds = Mark.bounds(marks);
        double named = Lettering.width(caption, Lettering.SMALL, false);
        double wide = Math.max(bounds.width(), named);
        if (x > 0 && x + wide > WIDTH) {
            x = 0;
            y += row + GAP;
            row = 0;
        }
        if (pages.isEmpty() || y + CAPTION + bounds.height() > HEIGHT - RULER) {
            pages.add(new ArrayList<>());
            x = 0;
            y = 0;
            row = 0;
        }
        List<Mark> page = pages.getLast();
        page.add(new Mark.Label(new Spot(x + named / 2, y + CAPTION / 2), caption, Lettering.SMALL, false, false,
                Mark.Label.From.LEFT));
        page.addAll(Mark.moved(marks, x - bounds.left(), y + CAPTION - bounds.top()));
        x += wide + GAP;
        row = Math.max(row, CAPTION + bounds.height());
    }

    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String number = "sheet " + (i + 1) + " of " + pages.size();
            sheets.add(new Sheet(WIDTH, HEIGHT, title + ": templates, " + number,
                    "Templates at full size. What stays at the face is grey, what is cut away is white.", "1:1",
                    ruler(number + ": " + title), pages.get(i)));
        }
        return sheets;
    }

    private static List<Mark> ruler(String name) {
        List<Mark> marks = new ArrayList<>(Mark.moved(Ruler.marks(), -2.5, HEIGHT - 21));
        double right = 122;
        words(marks, right, HEIGHT - 14, Flat.shortened(name, WIDTH - right));
        words(marks, right, HEIGHT - 9, "Print at 100 %, and hold a rule to this one.");
        words(marks, right, HEIGHT - 4, "Grey stays, white is cut away at this face.");
        return marks;
    }

    private static void words(List<Mark> marks, double x, double y, String words) {
        double wide = Lettering.width(words, Lettering.SMALL, false);
        marks.add(new Mark.Label(new Spot(x + wide / 2, y), words, Lettering.SMALL, false, false,
                Mark.Label.From.LEFT));
    }
}
