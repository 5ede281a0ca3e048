package dev.treen.syntax;

import dev.treen.syntax.FormatFacts.Column;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lines up what stands below each other: values, marks, inner blocks and comments. */
final class FormatColumns {
    private final List<FormatLine> lines;

    FormatColumns(List<FormatLine> lines) {
        this.lines = lines;
    }

    /** Stretches the lines. */
    void align() {
        Map<Integer, List<FormatLine>> sections = new HashMap<>();
        for (FormatLine line : lines) {
            if (line.column != Column.NONE && !line.verbatim) {
                sections.computeIfAbsent(line.section, _ -> new ArrayList<>()).add(line);
            }
        }
        for (List<FormatLine> section : sections.values()) {
            for (Column column : Column.values()) {
                alignNames(section.stream().filter(line -> line.column == column).toList(), column);
            }
        }
        alignBraces();
    }

    private static void alignNames(List<FormatLine> lines, Column column) {
        List<FormatLine> stretched = lines.stream()
                .filter(line -> line.stop >= 0 && line.stop < line.text.length())
                .toList();
        int widest = stretched.stream().mapToInt(line -> line.stop).max().orElse(0);
        int gap = column == Column.VALUE && stretched.size() > 1 ? 1 : 0;
        for (FormatLine line : stretched) {
            int by = widest - line.stop + gap;
            line.stretch(line.stop, by);
            line.brace += line.brace >= 0 ? by : 0;
        }
    }

    /** Blocks within the lines line up as long as one line follows the other. */
    private void alignBraces() {
        int from = 0;
        while (from < lines.size()) {
            int to = from + 1;
            while (to < lines.size() && hasBrace(from) && hasBrace(to) && follows(lines.get(to - 1), lines.get(to))) {
                to++;
            }
            List<FormatLine> run = lines.subList(from, to);
            int widest = run.stream().mapToInt(line -> line.brace).max().orElse(0);
            for (FormatLine line : run) {
                if (line.brace >= 0) {
                    line.stretch(line.brace, widest - line.brace);
                }
            }
            from = to;
        }
    }

    private boolean hasBrace(int i) {
        return lines.get(i).brace >= 0 && !lines.get(i).verbatim;
    }

    private static boolean follows(FormatLine upper, FormatLine lower) {
        return upper.section == lower.section && upper.column == lower.column && !lower.blankBefore;
    }

    /** The column where the comments of each section stand. */
    Map<Integer, Integer> commentColumns() {
        Map<Integer, Integer> columns = new HashMap<>();
        for (FormatLine line : lines) {
            if (!line.verbatim && !line.comment.isEmpty() && !line.text.isEmpty()) {
                columns.merge(line.section, line.width() + 2, Math::max);
            }
        }
        return columns;
    }
}
