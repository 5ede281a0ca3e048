package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.cutting.Strip;
import dev.treen.model.Defect;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * The layout of one board as a drawing to scale: parts with their names, sizes and grain, saw kerfs in grey with the
 * number of the cut, flaws hatched, offcuts dashed, strips in a heavy line. Readable in black and white, and by ear
 * through its title and description.
 */
public final class LayoutSvg {
    private static final double WIDE = 900;
    private static final double MARGIN = 18;
    private static final double HEAD = 26;
    private static final double FOOT = 32;
    private static final double TEXT = 10;
    private static final double SMALL = 7.5;
    private static final double BADGE = 5.5;
    private static final String INK = "#000000";
    private static final String HATCHED = "url(#flaw)";

    private final Plan plan;
    private final BoardCut board;
    private final LengthFormat format;
    private final Svg svg;
    private final double scale;
    private final double height;
    private final List<double[]> badges = new ArrayList<>();

    private LayoutSvg(Plan plan, BoardCut board) {
        this.plan = plan;
        this.board = board;
        this.format = plan.format();
        // A drawing is 900 units wide whatever the board; a narrow board is drawn at the same scale both ways.
        this.scale = WIDE / board.board().length().value().toDoubleMm();
        this.height = board.board().width().value().toDoubleMm() * scale;
        this.svg = new Svg(WIDE + 2 * MARGIN, HEAD + height + 2 * MARGIN + FOOT);
    }

    /** The drawing of {@code board}. */
    public static String of(Plan plan, BoardCut board) {
        return new LayoutSvg(plan, board).write();
    }

    private double x(Length x) {
        return MARGIN + x.toDoubleMm() * scale;
    }

    /** The near edge is drawn below, as the board lies before its maker. */
    private double y(Length y) {
        return HEAD + MARGIN + height - y.toDoubleMm() * scale;
    }

    private double drawn(Length length) {
        return length.toDoubleMm() * scale;
    }

    private String write() {
        svg.named(name() + ": cutting layout for " + plan.title(), description());
        svg.hatch("flaw");
        svg.rect(0, 0, WIDE + 2 * MARGIN, HEAD + height + 2 * MARGIN + FOOT, "fill", "#ffffff");
        svg.text(MARGIN, 16, "start", heading(), "font-weight", "bold", "font-size", "12");
        svg.rect(MARGIN, HEAD + MARGIN, WIDE, height, "fill", "#f3ead8", "stroke", INK, "stroke-width", "1.5");
        board.offcuts().forEach(this::offcut);
        board.parts().forEach(this::part);
        board.cuts().forEach(this::kerf);
        board.strips().forEach(this::strip);
        board.board().defects().forEach(this::defect);
        board.cuts().forEach(this::badge);
        stations();
        foot();
        return svg.finished();
    }

    private String name() {
        return board.leaves() == 1
                ? board.board().name()
                : board.board().name() + ", leaf " + board.leaf() + " of " + board.leaves();
    }

    private String heading() {
        return name() + ": " + format.text(board.board().length().value()) + " x "
                + format.text(board.board().width().value()) + ", " + format.text(board.thickness())
                + (board.board().sheet() ? " thick" : " thick once flat");
    }

    private String description() {
        StringBuilder text = new StringBuilder();
        for (BoardCut.OnBoard part : board.parts()) {
            text.append(part.part())
                    .append(", ")
                    .append(format.text(part.area().length()))
                    .append(" along by ")
                    .append(format.text(part.area().width()))
                    .append(" across the grain, ")
                    .append(format.text(part.area().x()))
                    .append(" from the left end and ")
                    .append(format.text(part.area().y()))
                    .append(" from the near edge. ");
        }
        for (BoardCut.SawCut cut : board.cuts()) {
            text.append("Cut ")
                    .append(cut.number())
                    .append(cut.along() ? ", a rip, " : ", a crosscut, ")
                    .append(format.text(cut.at()))
                    .append(cut.along() ? " from the near edge. " : " from the left end. ");
        }
        return text.toString().strip();
    }

    private void box(Rectangle area, String... more) {
        svg.rect(x(area.x()), y(area.y().plus(area.width())), drawn(area.length()), drawn(area.width()), more);
    }

    private void offcut(Rectangle offcut) {
        box(offcut, "fill", "none", "stroke", INK, "stroke-width", "0.6", "stroke-dasharray", "4 2.5");
        label(offcut, "offcut", size(offcut), "font-style", "italic");
    }

    private String size(Rectangle area) {
        return format.figure(area.length()) + " x " + format.figure(area.width());
    }

    private void part(BoardCut.OnBoard part) {
        Rectangle area = part.area();
        box(area, "fill", "#ffffff", "stroke", INK, "stroke-width", "1");
        label(area, part.part(), size(area), "font-weight", "bold");
        double middle = x(area.x()) + drawn(area.length()) / 2;
        double below = y(area.y()) - Math.min(6, drawn(area.width()) / 6);
        double reach = Math.min(24, drawn(area.length()) / 3);
        svg.line(middle - reach, below, middle + reach, below, "stroke-width", "0.7");
        svg.path("M" + Svg.number(middle + reach) + " " + Svg.number(below) + " l-5 -2 v4 z", "fill", INK);
        svg.path("M" + Svg.number(middle - reach) + " " + Svg.number(below) + " l5 -2 v4 z", "fill", INK);
    }

    /** Name and size in two lines, in one, turned, or as small as can still be read. */
    private void label(Rectangle area, String name, String size, String... look) {
        double wide = drawn(area.length());
        double high = drawn(area.width());
        double cx = x(area.x()) + wide / 2;
        double cy = y(area.y()) - high / 2;
        if (high > 2 * wide) {
            turned(cx, cy, high, wide, name + "  " + size, look);
        } else if (high >= 34) {
            double top = Svg.fitting(name, wide, TEXT + 1);
            svg.text(cx, cy - 3, "middle", name, with(look, "font-size", Svg.number(top)));
            svg.text(cx, cy + 9, "middle", size, "font-size", Svg.number(Svg.fitting(size, wide, TEXT)));
        } else {
            String both = name + "  " + size;
            double one = Math.min(high - 2, Svg.fitting(both, wide, TEXT));
            if (one >= 3) {
                svg.text(cx, cy + one / 3, "middle", both, with(look, "font-size", Svg.number(one)));
            }
        }
    }

    private void turned(double cx, double cy, double along, double across, String text, String... look) {
        double font = Math.min(across - 2, Svg.fitting(text, along, TEXT));
        if (font >= 3) {
            String turn = "rotate(-90 " + Svg.number(cx) + " " + Svg.number(cy) + ")";
            svg.text(cx, cy + font / 3, "middle", text, with(look, "font-size", Svg.number(font), "transform", turn));
        }
    }

    private static String[] with(String[] look, String... more) {
        String[] all = new String[look.length + more.length];
        System.arraycopy(look, 0, all, 0, look.length);
        System.arraycopy(more, 0, all, look.length, more.length);
        return all;
    }

    /** The kerf to scale, and never thinner than a line. */
    private void kerf(BoardCut.SawCut cut) {
        Rectangle piece = cut.piece();
        double thick = Math.max(0.9, drawn(cut.kerf()));
        String[] look = {"fill", "#6b6b6b"};
        if (cut.along()) {
            svg.rect(x(piece.x()), y(cut.at()) - thick, drawn(piece.length()), thick, look);
        } else {
            svg.rect(x(cut.at()), y(piece.y().plus(piece.width())), thick, drawn(piece.width()), look);
        }
    }

    private void strip(Strip strip) {
        box(strip.area(), "fill", "none", "stroke", INK, "stroke-width", "2.2");
        svg.text(x(strip.area().x()) + 4, y(strip.area().y()) - 4, "start",
                "strip " + strip.number(), "font-size", Svg.number(SMALL));
    }

    private void defect(Defect defect) {
        String[] look = {"fill", HATCHED, "stroke", INK, "stroke-width", "0.8"};
        switch (defect) {
            case Defect.Disc disc -> {
                double radius = drawn(disc.radius());
                svg.circle(x(disc.x()), y(disc.y()), radius, look);
                boolean atTop = y(disc.y()) - radius - 10 < HEAD + MARGIN;
                flaw(disc.kind(), x(disc.x()), y(disc.y()) + (atTop ? radius + 8 : -radius - 3), "middle");
            }
            case Defect.Line line -> {
                svg.line(x(line.x1()), y(line.y1()), x(line.x2()), y(line.y2()), "stroke-width",
                        Svg.number(Math.max(2.2, drawn(line.width()))), "stroke-dasharray", "5 2");
                boolean leftward = x(line.x2()) > MARGIN + WIDE - 40;
                flaw(line.kind(), x(line.x2()) + (leftward ? -4 : 4), y(line.y2()) + 3, leftward ? "end" : "start");
            }
            case Defect.Patch patch -> {
                Rectangle area = new Rectangle(patch.x(), patch.y(), patch.length(), patch.width());
                box(area, look);
                flaw(patch.kind(), x(patch.x()) + drawn(patch.length()) / 2, y(patch.y()) - drawn(patch.width()) / 2,
                        "middle");
            }
        }
    }

    private void flaw(String kind, double x, double y, String anchor) {
        svg.text(x, y, anchor, kind, "font-size", Svg.number(SMALL), "stroke", "#ffffff", "stroke-width", "2",
                "paint-order", "stroke");
    }

    /** The number of a cut where the saw enters; numbers that would lie on each other move along the cut. */
    private void badge(BoardCut.SawCut cut) {
        Rectangle piece = cut.piece();
        double mx = cut.along() ? x(piece.x()) + BADGE + 2 : x(cut.at()) + drawn(cut.kerf()) / 2;
        double my = cut.along()
                ? y(cut.at()) - drawn(cut.kerf()) / 2
                : y(piece.y().plus(piece.width())) + (wholeWidth(piece) ? -BADGE - 1 : BADGE + 1);
        while (taken(mx, my)) {
            mx += cut.along() ? BADGE : 0;
            my += cut.along() ? 0 : BADGE;
        }
        badges.add(new double[]{mx, my});
        svg.circle(mx, my, BADGE, "fill", INK);
        svg.text(mx, my + 2.5, "middle", String.valueOf(cut.number()), "fill", "#ffffff", "font-size",
                cut.number() > 99 ? "5" : "7");
    }

    private boolean wholeWidth(Rectangle piece) {
        return piece.width().compareTo(board.board().width().value()) == 0;
    }

    private boolean taken(double x, double y) {
        return badges.stream().anyMatch(b -> Math.hypot(b[0] - x, b[1] - y) < 2 * BADGE);
    }

    /** How far each crosscut through the near edge is from the left end, where there is room to say it. */
    private void stations() {
        double last = 0;
        List<BoardCut.SawCut> across = board.cuts().stream()
                .filter(c -> !c.along() && c.piece().y().isZero())
                .sorted((a, b) -> a.at().compareTo(b.at()))
                .toList();
        for (BoardCut.SawCut cut : across) {
            String figure = format.figure(cut.at());
            double half = figure.length() * SMALL * 0.3;
            if (x(cut.at()) - half > last + 3) {
                svg.line(x(cut.at()), y(Length.ZERO), x(cut.at()), y(Length.ZERO) + 4, "stroke-width", "0.6");
                svg.text(x(cut.at()), y(Length.ZERO) + 12, "middle", figure, "font-size", Svg.number(SMALL));
                last = x(cut.at()) + half;
            }
        }
    }

    private void foot() {
        double y = HEAD + height + 2 * MARGIN + 12;
        Length bar = format.unit().equals("in") ? Length.INCH.times(4) : Length.ofMm(100);
        double end = MARGIN + drawn(bar);
        svg.line(MARGIN, y, end, y, "stroke-width", "1.5");
        svg.line(MARGIN, y - 3, MARGIN, y + 3);
        svg.line(end, y - 3, end, y + 3);
        svg.text(MARGIN, y + 12, "start", format.text(bar), "font-size", Svg.number(SMALL));
        double x = Math.max(end, MARGIN + 40) + 14;
        svg.text(x, y - 1, "start",
                "Sizes are rough. Arrows lie along the grain. Figures below the board count from its"
                        + " left end.",
                "font-size", "9");
        svg.text(x, y + 11, "start", "Grey: saw kerf, with the number of the cut. Hatched: flaw. Dashed: offcut. Heavy"
                + " line: strip, cut apart after its grooves.", "font-size", "9");
    }
}
