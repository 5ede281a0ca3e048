package dev.treen.plan;

import dev.treen.finding.Finding;
import dev.treen.finding.Related;
import dev.treen.finding.Remedy;
import dev.treen.source.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Findings for the terminal: what, the line with a caret, by how much, why, what to do. */
public final class FindingText {
    private static final int WIDEST = 96;

    private final boolean colour;

    /** With colour only where the reader is a terminal. */
    public FindingText(boolean colour) {
        this.colour = colour;
    }

    /** All findings, one below the other, and how many there are. */
    public String of(List<Finding> findings) {
        // A statement for several parts is found at fault once for each; what reads the same is told once.
        Map<String, Finding> told = new LinkedHashMap<>();
        findings.forEach(f -> told.putIfAbsent(of(f), f));
        return String.join("\n", told.keySet()) + (told.isEmpty() ? "" : "\n")
                + summary(List.copyOf(told.values())) + '\n';
    }

    private static String summary(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "Nothing to complain about.";
        }
        long errors = count(findings, dev.treen.finding.Severity.ERROR);
        long warnings = count(findings, dev.treen.finding.Severity.WARNING);
        long notes = findings.size() - errors - warnings;
        return errors + (errors == 1 ? " error, " : " errors, ") + warnings
                + (warnings == 1 ? " warning, " : " warnings, ") + notes + (notes == 1 ? " note" : " notes");
    }

    private static long count(List<Finding> findings, dev.treen.finding.Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    private String of(Finding finding) {
        StringBuilder out = new StringBuilder();
        String head = finding.severity().word() + " " + finding.code();
        out.append(paint(finding, head)).append("  ").append(finding.headline()).append('\n');
        if (finding.at().file().text().isEmpty()) {
            out.append("  ").append(finding.at().file().name()).append('\n');
        } else {
            out.append("  ").append(finding.at()).append('\n');
            excerpt(out, finding.at(), finding.label());
        }
        for (Related each : finding.related()) {
            if (!each.at().file().equals(finding.at().file())) {
                out.append("  ").append(each.at()).append('\n');
            }
            excerpt(out, each.at(), each.label());
        }
        paragraph(out, "Found", finding.found());
        paragraph(out, "Because", finding.because());
        for (Remedy remedy : finding.remedies()) {
            String grade = remedy.grade() == Remedy.Grade.SAFE ? "  [safe to apply]" : "";
            paragraph(out, "Do", remedy.text() + grade);
        }
        return out.toString();
    }

    private String paint(Finding finding, String text) {
        if (!colour) {
            return text;
        }
        String code = switch (finding.severity()) {
            case ERROR -> "31";
            case WARNING -> "33";
            case NOTE -> "36";
        };
        return "\u001b[1;" + code + "m" + text + "\u001b[0m";
    }

    private static void excerpt(StringBuilder out, Span at, String label) {
        String line = at.file().lineText(at.line() - 1).replace('\t', ' ');
        int from = at.column() - 1;
        int marks = Math.max(1, Math.min(at.end() - at.start(), Math.max(1, line.length() - from)));
        int cut = Math.max(0, Math.min(from - 20, line.length() - WIDEST));
        String shown = line.substring(Math.min(cut, line.length()), Math.min(line.length(), cut + WIDEST));
        String number = String.valueOf(at.line());
        out.append(" ".repeat(Math.max(0, 6 - number.length())))
                .append(number)
                .append(" | ")
                .append(visible(shown))
                .append('\n');
        out.append("       | ")
                .append(" ".repeat(Math.max(0, from - cut)))
                .append("^".repeat(Math.min(marks, WIDEST)))
                .append(label.isEmpty() ? "" : " " + label)
                .append('\n');
    }

    /** Control characters would act on the terminal: they are shown as marks instead. */
    static String visible(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints()
                .forEach(c -> shown.appendCodePoint(
                        Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '\u00b7' : c));
        return shown.toString();
    }

    private static void paragraph(StringBuilder out, String word, String text) {
        if (text.isEmpty()) {
            return;
        }
        String indent = "  " + word + " ".repeat(Math.max(1, 9 - word.length()));
        for (String line : wrapped(text, WIDEST - indent.length())) {
            out.append(indent).append(visible(line)).append('\n');
            indent = " ".repeat(indent.length());
        }
    }

    static List<String> wrapped(String text, int width) {
        List<String> lines = new java.util.ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
