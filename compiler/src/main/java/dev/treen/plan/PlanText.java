package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Work;
import dev.treen.order.Step;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** The plan for the terminal: cut list, layout and order in aligned text of at most a hundred columns. */
public final class PlanText {
    private static final int WIDEST = 96;

    private final Plan plan;
    private final LengthFormat format;
    private final StringBuilder out = new StringBuilder();

    private PlanText(Plan plan) {
        this.plan = plan;
        this.format = plan.joined().project().settings().format();
    }

    /** The plan as text. */
    public static String of(Plan plan) {
        return new PlanText(plan).write();
    }

    private String write() {
        out.append(plan.title()).append("\n\n");
        cutList();
        layout();
        order();
        return out.toString();
    }

    private void heading(String text) {
        out.append(text).append('\n').append("-".repeat(text.length())).append('\n');
    }

    private void cutList() {
        heading("Cut list (" + format.unit() + ")");
        out.append("Length is along the grain. Finished sizes include the joints; rough sizes the allowances.\n\n");
        Columns columns = new Columns("lrrrrrrrrl");
        columns.row("part", "finished", "x", "", "x", "", "rough", "x", "", "board");
        for (FinishedPart part : plan.joined().parts()) {
            columns.row(
                    part.part().name(),
                    format.figure(part.length().value()),
                    "x",
                    format.figure(part.width().value()),
                    "x",
                    format.figure(part.thickness().value()),
                    format.figure(part.roughLength().value()),
                    "x",
                    format.figure(part.roughWidth().value()),
                    part.part().from().map(b -> b.name()).orElse("any"));
        }
        columns.lines().forEach(line -> out.append(line).append('\n'));
        out.append('\n');
    }

    private void layout() {
        heading("Layout");
        if (plan.cutting().boards().isEmpty()) {
            out.append("No boards are named, so there is none.\n\n");
            return;
        }
        out.append("Places count from the left end and the near edge.\n\n");
        for (BoardCut board : plan.cutting().boards()) {
            out.append(board.name())
                    .append(", ")
                    .append(format.text(board.board().length().value()))
                    .append(" x ")
                    .append(format.text(board.board().width().value()))
                    .append(", ")
                    .append(format.text(board.thickness()))
                    .append(" thick once flat\n");
            Columns columns = new Columns("lrlrlrlr");
            for (BoardCut.OnBoard part : board.parts()) {
                Rectangle area = part.area();
                columns.row(
                        part.part(),
                        format.figure(area.length()),
                        "x",
                        format.figure(area.width()),
                        "at",
                        format.figure(area.x()),
                        ",",
                        format.figure(area.y()));
            }
            columns.lines().forEach(line -> out.append(line).append('\n'));
            for (Rectangle offcut : board.offcuts()) {
                out.append("  offcut worth keeping: ")
                        .append(format.text(offcut.length()))
                        .append(" x ")
                        .append(format.text(offcut.width()))
                        .append('\n');
            }
            out.append('\n');
        }
        out.append(yieldLine(plan)).append("\n\n");
    }

    /** What came of the boards, in one line. */
    static String yieldLine(Plan plan) {
        String share = DecimalText.write(plan.cutting().yieldPercent(), 0) + " % of the boards cut becomes parts";
        String how = plan.cutting().proved()
                ? "; no layout takes less board"
                : "; at most " + DecimalText.write(100 * plan.cutting().gap(), 0)
                        + " % from the best possible (" + plan.cutting().bound() + ")";
        return share + how + ".";
    }

    private void order() {
        heading("Order of work");
        for (Step step : plan.order().steps()) {
            String number = step.number() + ". ";
            List<String> lines = new ArrayList<>(FindingText.wrapped(step.action() + ": " + parts(step), WIDEST - 4));
            out.append(" ".repeat(Math.max(0, 4 - number.length()))).append(number).append(lines.removeFirst());
            out.append('\n');
            lines.forEach(line -> out.append("    ").append(line).append('\n'));
            line("tool", step.tool());
            line("set", settings(step, format));
            line("from", step.from());
            line("check", step.check());
            line("care", step.caution());
        }
        out.append('\n');
        heading("Cautions");
        plan.order().cautions().forEach(caution -> out.append("  - ").append(caution).append('\n'));
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

    static String parts(Step step) {
        return String.join(", ", step.parts());
    }

    static String settings(Step step, LengthFormat format) {
        List<String> all = new ArrayList<>();
        for (Work.GaugeSetting each : step.settings()) {
            all.add(each.name() + " " + format.text(each.value()));
        }
        return String.join(", ", all);
    }
}
