package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.cutting.Strip;
import dev.treen.drawing.Svg;
import dev.treen.joinery.GrainRing;
import dev.treen.joinery.Joined;
import dev.treen.model.Defect;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The layout of one board as a drawing to scale: parts with their names, sizes and grain, saw kerfs in grey with the
 * number of the cut, flaws hatched, offcuts dashed, strips in a heavy line. Readable in black and white, and by ear
 * through its title and description.
 */
public final class LayoutSvg {
    private static final double MARGIN = 18;

    /** As wide as the drawing of a long board is, in its own units; that of a board of another shape is narrower. */
    public static final double WIDEST = DrawnBoard.WIDE + 2 * MARGIN;
    private static final double HEAD = 26;
    private static final double FOOT = 26;
    private static final double LEAST = 300;
    private static final double LEGEND = 9;
    private static final double INSIDE = 1.8;
    private static final int MANY_CUTS = 16;
    private static final String INK = "#000000";
    private static final String SMALL = Svg.number(LayoutLabels.SMALL);

    private final String title;
    private final List<GrainRing> rings;
    private final BoardCut board;
    private final LengthFormat format;
    private final Svg svg = new Svg();
    private final boolean alone;
    private final double head;
    private final DrawnBoard at;
    private final double wide;
    private final LayoutLabels labels;
    private final double badge;
    private final List<double[]> badges = new ArrayList<>();

    private LayoutSvg(Joined joined, BoardCut board, boolean alone) {
        Settings settings = joined.project().settings();
        this.title = settings.title();
        this.rings = board.rings(joined);
        this.board = board;
        this.format = settings.format();
        this.alone = alone;
        this.head = alone ? HEAD : 0;
        this.at = DrawnBoard.of(board, MARGIN, head + MARGIN);
        this.wide = Math.max(LEAST, at.size(board.board().length().value()) + 2 * MARGIN);
        this.labels = new LayoutLabels(svg, at, format);
        this.badge = board.cuts().size() > MANY_CUTS ? 4.8 : 5.5;
    }

    /** The drawing of {@code board}, which says by itself what it shows. */
    public static String of(Joined joined, BoardCut board) {
        return new LayoutSvg(joined, board, true).write();
    }

    /** The same for a page that says beside it which board it is, and once for all boards how they are drawn. */
    public static String inPage(Joined joined, BoardCut board) {
        return new LayoutSvg(joined, board, false).write();
    }

    /** What the drawings of {@code boards} show, in words. */
    public static List<String> legend(List<BoardCut> boards) {
        long across = boards.stream().filter(LayoutSvg::hasPartsAcross).count();
        String grain = across == 0
                ? "The grain of all parts lies along the board."
                : across == boards.size()
                        ? "Arrows lie along the face grain of the sheet."
                        : "The grain of all parts lies along their board; on a sheet arrows lie along its face grain.";
        return List.of(
                "Sizes are rough. " + grain + " Figures below it count from its left end.",
                "Grey: saw kerf, with the number of the cut. Hatched: flaw. Dashed: offcut. Heavy line: strip, cut apart"
                        + " after the work along it.");
    }

    private static boolean hasPartsAcross(BoardCut board) {
        return board.parts().stream().anyMatch(part -> part.lay().equals(BoardCut.OnBoard.ACROSS));
    }

    private String write() {
        Rectangle whole = new Rectangle(
                Length.ZERO, Length.ZERO, board.board().length().value(), board.board().width().value());
        if (alone) {
            svg.text(MARGIN, 16, "start", heading(), "font-weight", "bold", "font-size", "12");
        }
        box(whole, "fill", "#f3ead8", "stroke", INK, "stroke-width", "1.5");
        board.parts().forEach(this::part);
        board.cuts().forEach(this::kerf);
        board.offcuts().forEach(this::offcut);
        board.strips().forEach(this::strip);
        board.board().defects().forEach(this::defect);
        board.cuts().forEach(this::badge);
        stations();
        double foot = at.bottom() + MARGIN + 12;
        double end = foot(foot);
        for (String line : labels.key(wide - 2 * MARGIN)) {
            svg.text(MARGIN, end, "start", line, "font-size", SMALL);
            end += LayoutLabels.LINE;
        }
        for (GrainRing ring : rings) {
            for (String line : FindingText.wrapped(sentence(ring), LayoutLabels.columns(wide - 2 * MARGIN))) {
                svg.text(MARGIN, end, "start", line, "font-size", SMALL);
                end += LayoutLabels.LINE;
            }
        }
        double total = Math.max(at.bottom() + MARGIN + FOOT, end);
        return svg.finished(wide, total, name() + ": cutting layout for " + title, description());
    }

    private String name() {
        return board.leaves() == 1
                ? board.board().name()
                : board.board().name() + ", leaf " + board.leaf() + " of " + board.leaves();
    }

    private String heading() {
        // A name that runs from the right must not draw the figures after it to its other side.
        String name = Bidi.requiresBidi(name().toCharArray(), 0, name().length()) ? name() + "\u200e" : name();
        return name + ": " + format.text(board.board().length().value()) + " × "
                + format.text(board.board().width().value()) + ", " + format.text(board.thickness())
                + (board.board().sheet() ? " thick" : " thick once flat");
    }

    private String description() {
        StringBuilder text = new StringBuilder();
        for (BoardCut.OnBoard part : board.parts()) {
            text.append(part.name())
                    .append(", ")
                    .append(format.text(part.area().length()))
                    .append(" along by ")
                    .append(format.text(part.area().width()))
                    .append(" across the grain, ")
                    .append(format.text(part.area().x()))
                    .append(" from the left end and ")
                    .append(format.text(part.area().y()))
                    .append(" from the near edge")
                    .append(part.note().isEmpty() ? ". " : "; it " + part.note() + ". ");
        }
        for (BoardCut.SawCut cut : board.cuts()) {
            text.append("Cut ")
                    .append(cut.number())
                    .append(cut.along() ? ", a rip, " : ", a crosscut, ")
                    .append(format.text(cut.at()))
                    .append(cut.along() ? " from the near edge. " : " from the left end. ");
        }
        rings.forEach(ring -> text.append(sentence(ring)).append(' '));
        return text.toString().strip();
    }

    private static String sentence(GrainRing ring) {
        String told = ring.told(name -> name);
        return told.substring(0, 1).toUpperCase(Locale.ROOT) + told.substring(1) + ".";
    }

    private void box(Rectangle area, String... more) {
        svg.rect(at.x(area.x()), at.top(area), at.size(area.length()), at.size(area.width()), more);
    }

    /** Dashed a hair within its edges, which the kerfs round it would hide. */
    private void offcut(Rectangle offcut) {
        double wide = at.size(offcut.length()) - 2 * INSIDE;
        double high = at.size(offcut.width()) - 2 * INSIDE;
        if (wide > 0 && high > 0) {
            svg.rect(at.x(offcut.x()) + INSIDE, at.top(offcut) + INSIDE, wide, high, "fill", "none", "stroke", INK,
                    "stroke-width", "0.6", "stroke-dasharray", "4 2.5");
        }
        labels.offcut(offcut);
    }

    private void part(BoardCut.OnBoard part) {
        box(part.area(), "fill", "#ffffff", "stroke", INK, "stroke-width", "1");
        labels.part(part);
    }

    /** The kerf to scale, and never thinner than a line. */
    private void kerf(BoardCut.SawCut cut) {
        Rectangle piece = cut.piece();
        double thick = Math.max(0.9, at.size(cut.kerf()));
        String[] look = {"fill", "#6b6b6b"};
        if (cut.along()) {
            svg.rect(at.x(piece.x()), at.y(cut.at()) - thick, at.size(piece.length()), thick, look);
        } else {
            svg.rect(at.x(cut.at()), at.top(piece), thick, at.size(piece.width()), look);
        }
    }

    private void strip(Strip strip) {
        box(strip.area(), "fill", "none", "stroke", INK, "stroke-width", "2.2");
        // Below the longest part, whose grain arrow leaves most room beside it.
        Rectangle longest = board.parts().stream()
                .filter(part -> strip.parts().contains(part.name()))
                .map(BoardCut.OnBoard::area)
                .max(Comparator.comparing(Rectangle::length))
                .orElse(strip.area());
        svg.text(at.x(longest.x()) + 4, at.y(longest.y()) - 4, "start", "strip " + strip.number(),
                "font-size", SMALL);
    }

    private void defect(Defect defect) {
        String[] look = {"fill", "url(#flaw)", "stroke", INK, "stroke-width", "0.8"};
        switch (defect) {
            case Defect.Disc disc -> {
                double radius = at.size(disc.radius());
                double y = at.y(disc.y());
                svg.circle(at.x(disc.x()), y, radius, look);
                boolean high = y - radius - 10 < head + MARGIN;
                flaw(disc.kind(), at.x(disc.x()), y + (high ? radius + 8 : -radius - 3), "middle");
            }
            case Defect.Line line -> {
                double x = at.x(line.x2());
                svg.line(at.x(line.x1()), at.y(line.y1()), x, at.y(line.y2()), "stroke-width",
                        Svg.number(Math.max(2.2, at.size(line.width()))), "stroke-dasharray", "5 2");
                boolean leftward = line.x2().compareTo(line.x1()) < 0;
                endOf(line.kind(), x, at.y(line.y2()), leftward);
            }
            case Defect.Patch patch -> {
                Rectangle area = new Rectangle(patch.x(), patch.y(), patch.length(), patch.width());
                box(area, look);
                flaw(patch.kind(), at.middleX(area), at.middleY(area) + 3, "middle");
            }
        }
    }

    /** Names what ends at a place: beside it, or above it where the name would run out of the picture. */
    private void endOf(String kind, double x, double y, boolean leftward) {
        double word = 4 + kind.length() * LayoutLabels.SMALL * Svg.LETTER;
        if (leftward ? x > word : x + word < wide) {
            flaw(kind, x + (leftward ? -4 : 4), y + 3, leftward ? "end" : "start");
        } else {
            flaw(kind, x, y - 5, leftward ? "start" : "end");
        }
    }

    private void flaw(String kind, double x, double y, String anchor) {
        svg.text(x, y, anchor, kind, "font-size", SMALL, "stroke", "#ffffff", "stroke-width", "2", "paint-order",
                "stroke");
    }

    /** The number of a cut where the saw enters; numbers that would lie on each other move along the cut. */
    private void badge(BoardCut.SawCut cut) {
        Rectangle piece = cut.piece();
        double mx = cut.along() ? at.x(piece.x()) + badge + 2 : at.x(cut.at()) + at.size(cut.kerf()) / 2;
        double my = cut.along()
                ? at.y(cut.at()) - at.size(cut.kerf()) / 2
                : at.top(piece) + (wholeWidth(piece) ? -badge - 1 : badge + 1);
        while (taken(mx, my)) {
            mx += cut.along() ? badge : 0;
            my += cut.along() ? 0 : badge;
        }
        badges.add(new double[]{mx, my});
        svg.circle(mx, my, badge, "fill", INK);
        double font = cut.number() > 99 ? badge : badge * 1.3;
        svg.text(mx, my + font / 3, "middle", String.valueOf(cut.number()), "fill", "#ffffff", "font-size",
                Svg.number(font));
    }

    private boolean wholeWidth(Rectangle piece) {
        return piece.width().compareTo(board.board().width().value()) == 0;
    }

    private boolean taken(double x, double y) {
        return badges.stream().anyMatch(b -> Math.hypot(b[0] - x, b[1] - y) < 2 * badge);
    }

    /** How far each crosscut through the near edge is from the left end, where there is room to say it. */
    private void stations() {
        double last = 0;
        List<BoardCut.SawCut> across = board.cuts().stream()
                .filter(c -> !c.along() && c.piece().y().isZero())
                .sorted(Comparator.comparing(BoardCut.SawCut::at))
                .toList();
        for (BoardCut.SawCut cut : across) {
            String figure = format.figure(cut.at());
            double x = at.x(cut.at());
            double half = figure.length() * LayoutLabels.SMALL * Svg.LETTER / 2;
            double middle = Math.min(x, wide - 1 - half);
            if (middle - half > last + 3) {
                svg.line(x, at.bottom(), x, at.bottom() + 4, "stroke-width", "0.6");
                svg.text(middle, at.bottom() + 12, "middle", figure, "font-size", SMALL);
                last = middle + half;
            }
        }
    }

    /** The bar, and beside it what the drawing shows; how far down they reach. */
    private double foot(double y) {
        Length bar = format.unit().equals("in") ? Length.INCH.times(4) : Length.ofMm(100);
        double end = MARGIN + at.size(bar);
        svg.line(MARGIN, y, end, y, "stroke-width", "1.5");
        svg.line(MARGIN, y - 3, MARGIN, y + 3);
        svg.line(end, y - 3, end, y + 3);
        if (!alone) {
            svg.text(end + 6, y + 2.5, "start", format.text(bar), "font-size", SMALL);
            return y + 14;
        }
        svg.text(MARGIN, y + 12, "start", format.text(bar), "font-size", SMALL);
        double x = Math.max(end, MARGIN + 40) + 14;
        double below = y - 1;
        for (String words : legend(List.of(board))) {
            for (String line : FindingText.wrapped(words, (int) ((wide - x) / (Svg.LETTER * LEGEND)))) {
                svg.text(x, below, "start", line, "font-size", Svg.number(LEGEND));
                below += LEGEND + 3;
            }
        }
        return Math.max(below, y + 24);
    }
}
