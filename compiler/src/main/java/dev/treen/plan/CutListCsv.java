package dev.treen.plan;

import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The cut list as comma-separated values (RFC 4180: CRLF line ends, quotes doubled), with a row of headings. */
public final class CutListCsv {
    private CutListCsv() {
    }

    /** The cut list of {@code plan}; lengths in the project's units, named in the headings. */
    public static String of(Plan plan) {
        LengthFormat format = plan.format();
        String unit = " " + format.unit();
        StringBuilder out = new StringBuilder();
        row(
                out,
                "mark",
                "parts",
                "count",
                "finished length" + unit,
                "finished width" + unit,
                "finished thickness" + unit,
                "rough length" + unit,
                "rough width" + unit,
                "rough thickness" + unit,
                "species",
                "board",
                "grain along",
                "joints included",
                "notes");
        CutList list = CutList.of(plan);
        for (CutList.Row each : list.rows()) {
            Size finished = each.finished();
            Size rough = each.rough();
            row(
                    out,
                    each.mark(),
                    String.join(", ", each.parts()),
                    String.valueOf(each.parts().size()),
                    format.figure(finished.length()),
                    format.figure(finished.width()),
                    format.figure(finished.thickness()),
                    each.bought() ? "" : format.figure(rough.length()),
                    each.bought() ? "" : format.figure(rough.width()),
                    each.bought() ? "" : format.figure(rough.thickness()),
                    each.species(),
                    each.board(),
                    "length",
                    "yes",
                    notes(each));
        }
        for (CutList.Loose each : list.loose()) {
            Size size = each.piece().size();
            row(
                    out,
                    each.mark(),
                    each.piece().kind().word(each.piece().count()),
                    String.valueOf(each.piece().count()),
                    format.figure(size.length()),
                    format.figure(size.width()),
                    format.figure(size.thickness()),
                    "",
                    "",
                    "",
                    each.species(),
                    each.board(),
                    "length",
                    "",
                    (each.piece().kind().round() ? "round; " : "") + each.source() + "; for "
                            + String.join(", ", each.parts()));
        }
        return out.toString();
    }

    private static String notes(CutList.Row row) {
        return Stream.of(row.bought() ? "bought" : "", row.toFit() ? "to fit" : "", row.notes())
                .filter(note -> !note.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** Ends {@code out} with one row of CSV (RFC 4180), in which no cell can be taken for a formula. */
    public static void row(StringBuilder out, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            out.append(i == 0 ? "" : ",").append(quoted(cells[i]));
        }
        out.append("\r\n");
    }

    private static String quoted(String cell) {
        // A spreadsheet would take a cell that begins so for a formula; a quote before it keeps it text.
        boolean formula = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        String text = formula ? "'" + cell : cell;
        boolean needs = false;
        for (int i = 0; i < text.length(); i++) {
            needs |= ",\"\n\r".indexOf(text.charAt(i)) >= 0;
        }
        return needs ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
