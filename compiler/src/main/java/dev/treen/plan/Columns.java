package dev.treen.plan;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in aligned columns; figures to the right. */
final class Columns {
    private final boolean[] right;
    private final List<List<String>> rows = new ArrayList<>();

    /** One letter a column: {@code l} to the left, {@code r} to the right. */
    Columns(String alignment) {
        right = new boolean[alignment.length()];
        for (int i = 0; i < right.length; i++) {
            right[i] = alignment.charAt(i) == 'r';
        }
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    List<String> lines() {
        int[] widths = new int[right.length];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], row.get(i).codePointCount(0, row.get(i).length()));
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            String cell = row.get(i);
            String pad = " ".repeat(widths[i] - cell.codePointCount(0, cell.length()));
            line.append("  ").append(right[i] ? pad + cell : cell + pad);
        }
        return line.toString().stripTrailing();
    }
}
