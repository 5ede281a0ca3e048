package dev.treen.plan;

import dev.treen.joinery.FinishedPart;
import dev.treen.quantity.LengthFormat;

/** The cut list as comma-separated values (RFC 4180: CRLF line ends, quotes doubled), with a row of headings. */
public final class CutListCsv {
    private CutListCsv() {
    }

    /** The cut list of {@code plan}; lengths in the project's units, named in the headings. */
    public static String of(Plan plan) {
        LengthFormat format = plan.joined().project().settings().format();
        String unit = " " + format.unit();
        StringBuilder out = new StringBuilder();
        row(
                out,
                "part",
                "count",
                "finished length" + unit,
                "finished width" + unit,
                "finished thickness" + unit,
                "rough length" + unit,
                "rough width" + unit,
                "rough thickness" + unit,
                "species",
                "board",
                "notes");
        for (FinishedPart part : plan.joined().parts()) {
            row(
                    out,
                    part.part().name(),
                    "1",
                    format.figure(part.length().value()),
                    format.figure(part.width().value()),
                    format.figure(part.thickness().value()),
                    format.figure(part.roughLength().value()),
                    format.figure(part.roughWidth().value()),
                    format.figure(part.roughThickness().value()),
                    part.part().from().flatMap(b -> b.species()).orElse("").replace('_', ' '),
                    part.part().from().map(b -> b.name()).orElse(""),
                    part.part().doc());
        }
        return out.toString();
    }

    private static void row(StringBuilder out, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            out.append(i == 0 ? "" : ",").append(quoted(cells[i]));
        }
        out.append("\r\n");
    }

    private static String quoted(String cell) {
        boolean needs = cell.indexOf(',') >= 0 || cell.indexOf('"') >= 0 || cell.indexOf('\n') >= 0
                || cell.indexOf('\r') >= 0;
        // A spreadsheet would take a cell that begins so for a formula; a quote before it keeps it text.
        boolean formula = !cell.isEmpty() && "=+-@".indexOf(cell.charAt(0)) >= 0;
        String text = formula ? "'" + cell : cell;
        return needs ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
