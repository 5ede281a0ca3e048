package dev.treen.plan;

import dev.treen.cutting.Areas;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.Rectangle;
import dev.treen.cutting.Strip;
import dev.treen.joinery.Weights;
import dev.treen.order.Operation;
import dev.treen.order.Step;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import java.util.ArrayList;
import java.util.List;

/** The plan for the terminal: cut list, layout and order in aligned text of at most a hundred columns. */
public final class PlanText {
    private static final String SHADES = " A + is a shade over the mark of the rule, a - a shade under it.";
    private static final int WIDEST = 96;
    private static final int NAMES = 26;

    private final Plan plan;
    private final LengthFormat format;
    private final StringBuilder out = new StringBuilder();

    private PlanText(Plan plan) {
        this.plan = plan;
        this.format = plan.format();
    }

    /** The plan as text. */
    public static String of(Plan plan) {
        return new PlanText(plan).write();
    }

    private String write() {
        out.append(FindingText.visible(plan.title())).append("\n\n");
        cutList();
        layout();
        order();
        return out.toString();
    }

    private void heading(String text) {
        out.append(text).append('\n').append("-".repeat(text.length())).append('\n');
    }

    private void paragraph(String indent, String text) {
        FindingText.wrapped(text, WIDEST - indent.length())
                .forEach(line -> out.append(indent).append(line).append('\n'));
    }

    private void cutList() {
        heading("Cut list (" + format.unit() + ")");
        paragraph("", "Length is along the grain. Finished sizes include the joints; rough sizes the allowances."
                + " What is marked * is made to fit: its size is only planned." + (format.imperial() ? SHADES : ""));
        out.append('\n');
        CutList list = CutList.of(plan);
        Columns columns = new Columns("llrrlrlrlrlrlrl");
        columns.row("", "part", "", "finished", "", "", "", "", "", "rough", "", "", "", "", "board");
        for (CutList.Row row : list.rows()) {
            List<String> names = new ArrayList<>(
                    FindingText.wrapped(String.join(", ", row.parts()) + (row.toFit() ? " *" : ""), NAMES));
            Size finished = row.finished();
            Size rough = row.rough();
            columns.row(
                    row.mark(),
                    shortened(names.removeFirst(), NAMES),
                    String.valueOf(row.parts().size()),
                    format.figure(finished.length()),
                    "x",
                    format.figure(finished.width()),
                    "x",
                    format.figure(finished.thickness()),
                    "",
                    row.bought() ? "" : format.figure(rough.length()),
                    row.bought() ? "" : "x",
                    row.bought() ? "" : format.figure(rough.width()),
                    row.bought() ? "" : "x",
                    row.bought() ? "" : format.figure(rough.thickness()),
                    row.bought() ? shortened("bought, " + row.species(), NAMES)
                            : row.board().isEmpty() ? "any" : shortened(row.board(), NAMES));
            names.forEach(more -> columns.row("", shortened(more, NAMES)));
        }
        columns.lines().forEach(line -> out.append(line).append('\n'));
        for (CutList.Row row : list.rows()) {
            plan.joined().part(row.parts().getFirst()).flatMap(part -> SawnText.of(plan, part))
                    .ifPresent(text -> paragraph("  ", FindingText.visible(row.mark() + " " + text + ".")));
        }
        out.append('\n');
        loose(list);
        totals(list);
    }

    private void loose(CutList list) {
        if (list.loose().isEmpty()) {
            return;
        }
        out.append("Small pieces for the joints, of offcuts or bought:\n");
        Columns columns = new Columns("llrrlrlrl");
        for (CutList.Loose row : list.loose()) {
            Size size = row.piece().size();
            boolean round = row.piece().kind().round();
            columns.row(
                    row.mark(),
                    shortened(row.name(), NAMES + NAMES / 2),
                    String.valueOf(row.piece().count()),
                    format.figure(size.length()),
                    "x",
                    format.figure(size.width()),
                    round ? "" : "x",
                    round ? "round" : format.figure(size.thickness()),
                    shortened(row.source(), NAMES));
        }
        columns.lines().forEach(line -> out.append(line).append('\n'));
        out.append('\n');
    }

    private void totals(CutList list) {
        Columns columns = new Columns("rlrlr");
        for (CutList.Total total : list.totals()) {
            columns.row(
                    format.text(total.thickness()),
                    "thick:",
                    total.parts() + (total.parts() == 1 ? " part," : " parts,"),
                    "rough",
                    format.imperial()
                            ? DecimalText.write(total.boardFeet(), 2) + " board feet"
                            : DecimalText.write(total.area(), 3) + " m2");
        }
        columns.lines().forEach(line -> out.append(line).append('\n'));
        out.append('\n');
        List<String> mass = MassText.of(Weights.of(plan.joined()), format);
        if (!mass.isEmpty()) {
            paragraph("", FindingText.visible(String.join(" ", mass)));
            out.append('\n');
        }
    }

    private static String shortened(String text, int width) {
        String plain = FindingText.visible(text);
        return plain.codePointCount(0, plain.length()) <= width
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, width - 1)) + "…";
    }

    private void layout() {
        Cutting cutting = plan.cutting();
        heading("Layout");
        if (cutting.boards().isEmpty()) {
            out.append("There is none.\n\n");
            return;
        }
        out.append("Rough sizes; places count from the left end and the near edge.\n\n");
        cutting.boards().forEach(this::board);
        cutting.untouched().forEach(leaf -> out.append("`").append(leaf).append("` stays whole.\n\n"));
        paragraph("", yieldLine(plan));
        out.append('\n');
        if (!cutting.remarks().isEmpty()) {
            cutting.remarks().forEach(line -> paragraph("", FindingText.visible(line)));
            out.append('\n');
        }
        List<String> moves = MovesText.of(cutting.moves(), format);
        if (!moves.isEmpty()) {
            moves.forEach(line -> paragraph("", line));
            out.append('\n');
        }
    }

    private void board(BoardCut board) {
        out.append(board.name())
                .append(", ")
                .append(format.text(board.board().length().value()))
                .append(" x ")
                .append(format.text(board.board().width().value()))
                .append(", ")
                .append(format.text(board.thickness()))
                .append(board.board().sheet() ? " thick\n" : " thick once flat\n");
        Columns columns = new Columns("lrlrlrlr");
        for (BoardCut.OnBoard part : board.parts()) {
            place(columns, shortened(part.name(), NAMES), part.area());
        }
        for (Strip strip : board.strips()) {
            place(columns, "strip " + strip.number(), strip.area());
        }
        for (Rectangle offcut : board.offcuts()) {
            place(columns, "offcut", offcut);
        }
        columns.lines().forEach(line -> out.append(line).append('\n'));
        for (Strip strip : board.strips()) {
            paragraph("  ", "strip " + strip.number() + " stays whole until what runs along it is done: "
                    + String.join(", ", strip.parts()));
        }
        out.append('\n');
    }

    private void place(Columns columns, String name, Rectangle area) {
        columns.row(
                name,
                format.figure(area.length()),
                "x",
                format.figure(area.width()),
                "at",
                format.figure(area.x()),
                ",",
                format.figure(area.y()));
    }

    /** What came of the boards, in two sentences. */
    public static String yieldLine(Plan plan) {
        Cutting cutting = plan.cutting();
        Areas areas = cutting.areas();
        String how = cutting.proved()
                ? "Proved best: no layout takes less board."
                : "Within " + DecimalText.write(Math.ceil(100 * cutting.gap()), 0)
                        + " % of the best possible: no layout saves more of the boards taken (bound by "
                        + cutting.bound() + ").";
        return "Of the boards and leaves cut, " + share(areas, areas.finished()) + " becomes finished parts; "
                + share(areas, areas.allowances()) + " is planed and shot off them, "
                + share(areas, areas.kerf()) + " is saw dust, " + share(areas, areas.offcuts())
                + " is offcuts worth keeping, and " + share(areas, areas.waste()) + " is ends, flaws and slivers. "
                + how;
    }

    private static String share(Areas areas, double area) {
        return DecimalText.write(areas.percent(area), 0) + " %";
    }

    private void order() {
        heading("Order of work");
        StepText.summary(plan.order()).forEach(line -> paragraph("", line));
        StepText.soFar(plan.order().soFar(), format).forEach(line -> paragraph("", line));
        out.append('\n');
        for (Step step : plan.order().steps()) {
            Operation operation = step.operation();
            String number = step.number() + ". ";
            List<String> lines = new ArrayList<>(FindingText.wrapped(
                    operation.action() + ": " + FindingText.visible(StepText.parts(operation)), WIDEST - 4));
            out.append(" ".repeat(Math.max(0, 4 - number.length()))).append(number).append(lines.removeFirst());
            out.append('\n');
            lines.forEach(line -> out.append("    ").append(line).append('\n'));
            operation.how().forEach(how -> line("-", how));
            line("tool", operation.tool());
            line("set", StepText.settings(operation, format));
            line("from", operation.from());
            line("check", operation.check());
            line("care", operation.caution());
            line("time", StepText.time(operation));
            line("wait", StepText.pause(operation));
        }
        out.append('\n');
        heading("Cautions");
        for (String caution : plan.order().cautions()) {
            List<String> lines = new ArrayList<>(FindingText.wrapped(caution, WIDEST - 4));
            out.append("  - ").append(lines.removeFirst()).append('\n');
            lines.forEach(line -> out.append("    ").append(line).append('\n'));
        }
    }

    private void line(String word, String text) {
        if (!text.isEmpty()) {
            String indent = "      " + word + " ".repeat(Math.max(1, 6 - word.length()));
            for (String each : FindingText.wrapped(text, WIDEST - indent.length())) {
                out.append(indent).append(each).append('\n');
                indent = " ".repeat(indent.length());
            }
        }
    }
}
