package dev.treen.drawing;

import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of paper lying down: A4 where lengths are metric, Letter where they are inches; with its frame, its title block
 * and the scales that are used on it.
 *
 * @param width in millimetres
 * @param height in millimetres
 * @param scales from the greatest
 */
record Paper(double width, double height, List<Scale> scales) {
    private static final double MARGIN = 10;
    private static final double BLOCK = 20;
    private static final double GAP = 4;

    /** So many on paper for so many of the part. */
    record Scale(int paper, int part) {
        double factor() {
            return (double) paper / part;
        }

        /** Two for five is written 1:2.5, as on a scale rule. */
        String text() {
            return paper == 2 && part % 2 == 1 && part > 1 ? "1:" + part / 2 + ".5" : paper + ":" + part;
        }
    }

    /**
     * ISO 216; ISO 5455 (from memory), with 1:2.5 between: where one scale to the next is so far, small joints would be
     * drawn too small to read.
     */
    private static final Paper A4 = of(PaperSize.A4, scales(1, 2, 0, 5, 10, 20, 50, 100));
    /** ANSI/ASME Y14.1; halves and quarters as inch rules have them (from memory). */
    private static final Paper LETTER = of(PaperSize.LETTER, scales(1, 2, 4, 8, 16, 32, 64));

    private static Paper of(PaperSize lying, List<Scale> scales) {
        return new Paper(/* width= */ lying.height(), /* height= */ lying.width(), scales);
    }

    private static List<Scale> scales(int... parts) {
        List<Scale> scales = new ArrayList<>(List.of(new Scale(2, 1)));
        for (int part : parts) {
            scales.add(part == 0 ? new Scale(2, 5) : new Scale(1, part));
        }
        return List.copyOf(scales);
    }

    static Paper of(LengthFormat format) {
        return switch (PaperSize.beside(format)) {
            case A4 -> A4;
            case LETTER -> LETTER;
        };
    }

    /** The room for the drawing itself. */
    Bounds room() {
        return new Bounds(MARGIN + GAP, MARGIN + GAP, width - MARGIN - GAP, height - MARGIN - BLOCK - GAP);
    }

    /**
     * The frame with its title block.
     *
     * @param name what is drawn, in bold
     * @param below one line about it
     * @param cells what stands to the right, each with its head
     * @param symbol whether views are laid out by first-angle projection, and the symbol says so
     */
    List<Mark> frame(String name, String below, List<Cell> cells, boolean symbol) {
        List<Mark> marks = new ArrayList<>();
        double right = width - MARGIN;
        double foot = height - MARGIN;
        double top = foot - BLOCK;
        box(marks, new Bounds(MARGIN, MARGIN, right, foot), Pen.FRAME);
        marks.add(new Mark.Line(new Spot(MARGIN, top), new Spot(right, top), Pen.SEEN));
        double at = right;
        if (symbol) {
            at -= 26;
            marks.addAll(ProjectionSymbol.marks(new Spot(at + 13, top + BLOCK / 2)));
            marks.add(new Mark.Line(new Spot(at, top), new Spot(at, foot), Pen.THIN));
        }
        for (Cell cell : cells.reversed()) {
            double wide = Math.max(Lettering.width(cell.text(), Lettering.USUAL, false),
                    Lettering.width(cell.head(), Lettering.SMALL, false)) + 6;
            at -= wide;
            marks.add(left(cell.head(), at + 2, top + 6, Lettering.SMALL, false, wide));
            marks.add(left(cell.text(), at + 2, top + 13, Lettering.USUAL, false, wide));
            marks.add(new Mark.Line(new Spot(at, top), new Spot(at, foot), Pen.THIN));
        }
        double room = at - MARGIN - 4;
        marks.add(left(name, MARGIN + 2, top + 7, Lettering.HEAD, true, room));
        marks.add(left(below, MARGIN + 2, top + 14.5, Lettering.USUAL, false, room));
        return marks;
    }

    /** A cell of the title block. */
    record Cell(String head, String text) {}

    private static Mark.Label left(String words, double x, double y, double size, boolean bold, double room) {
        double most = Math.max(size / 2, Math.min(size, size * room / Lettering.width(words, size, bold)));
        String shown = words;
        while (shown.length() > 1 && Lettering.width(shown, most, bold) > room) {
            shown = shown.substring(0, shown.length() - (shown.endsWith("…") ? 2 : 1)) + "…";
        }
        double wide = Lettering.width(shown, most, bold);
        return new Mark.Label(new Spot(x + wide / 2, y), shown, most, bold, false, Mark.Label.From.LEFT);
    }

    private static void box(List<Mark> marks, Bounds box, Pen pen) {
        Spot a = new Spot(box.left(), box.top());
        Spot b = new Spot(box.right(), box.top());
        Spot c = new Spot(box.right(), box.bottom());
        Spot d = new Spot(box.left(), box.bottom());
        marks.addAll(List.of(new Mark.Line(a, b, pen), new Mark.Line(b, c, pen), new Mark.Line(c, d, pen),
                new Mark.Line(d, a, pen)));
    }
}
