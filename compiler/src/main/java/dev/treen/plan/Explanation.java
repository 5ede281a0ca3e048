package dev.treen.plan;

import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Library;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.QuantityText;
import dev.treen.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** A derivation in words, the same wherever it is shown: one line a number, what it rests on below it. */
public final class Explanation {
    private static final int MOST_LINES = 40;

    private final LengthFormat format;
    private final String main;
    private final Set<String> lines = new LinkedHashSet<>();

    private Explanation(Settings settings) {
        LengthFormat shown = settings.format();
        // Sums of hundredths have to add up before the reader's eyes, whatever the lists round to.
        this.format = shown instanceof LengthFormat.Metric ? new LengthFormat.Metric(2) : shown;
        this.main = settings.at().file().name();
    }

    /**
     * How {@code derivation} came about, line by line; at most forty lines. Places without a file's name are in the file
     * that has the {@code settings}.
     */
    public static String of(Derivation derivation, Settings settings) {
        Explanation explanation = new Explanation(settings);
        explanation.explain(derivation, 0);
        return String.join("\n", explanation.lines);
    }

    private void explain(Derivation derivation, int depth) {
        if (lines.size() >= MOST_LINES || depth > MOST_LINES) {
            return;
        }
        switch (derivation.formula()) {
            case Derivation.Written written -> line(derivation, "as written" + place(derivation));
            case Derivation.Standard(String source) -> line(derivation, "the default (" + source + ")");
            case Derivation.Listed(List<Derivation> each) -> {
                line(derivation, String.join(" x ", each.stream().map(this::named).toList()));
                each.forEach(one -> explainLeaf(one, depth + 1));
            }
            case Derivation.Same(Derivation of) -> {
                line(derivation, of.label().isEmpty() ? value(of.value()) : named(of));
                explain(of, depth + 1);
            }
            case Derivation.Combined combined -> {
                line(derivation, formula(derivation));
                leaves(derivation).forEach(leaf -> explainLeaf(leaf, depth + 1));
            }
            case Derivation.Rule(String text, String source, List<Derivation> inputs) -> {
                line(derivation, text + (source.isEmpty() ? "" : " (" + source + ")"));
                inputs.forEach(input -> explainLeaf(input, depth + 1));
            }
        }
    }

    private void explainLeaf(Derivation leaf, int depth) {
        boolean figure = leaf.label().isEmpty() && leaf.formula() instanceof Derivation.Written;
        if (!figure) {
            explain(leaf, depth);
        }
    }

    private void line(Derivation derivation, String how) {
        String label = derivation.label().isEmpty() ? "" : derivation.label() + " = ";
        lines.add(label + value(derivation.value()) + "  ←  " + how);
    }

    private String place(Derivation derivation) {
        return derivation.at().map(at -> ", line " + at.line() + elsewhere(at.file().name())).orElse("");
    }

    private String elsewhere(String file) {
        if (file.equals(main)) {
            return "";
        }
        boolean library = Library.tree(file).isPresent();
        return " of " + (library
                ? file.substring(0, file.length() - ".treen".length())
                : file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1));
    }

    /** The formula with its numbers and their names: {@code 80 opening + 2 × (4 groove − 0.83 gap)}. */
    private String formula(Derivation derivation) {
        return derivation.formula() instanceof Derivation.Combined(String sign, Derivation left, Derivation right)
                ? operand(left, sign, false) + " " + sign + " " + operand(right, sign, true)
                : named(derivation);
    }

    private String operand(Derivation part, String around, boolean right) {
        if (part.label().isEmpty() && part.formula() instanceof Derivation.Combined(String sign, var l, var r)) {
            boolean product = around.equals("×") || around.equals("÷");
            boolean sum = sign.equals("+") || sign.equals("−");
            boolean brackets = sum && (product || (right && around.equals("−")));
            return brackets ? "(" + formula(part) + ")" : formula(part);
        }
        boolean factor = around.equals("×") || around.equals("÷");
        return factor && part.label().isEmpty() && part.value() instanceof Datum.Bare(BigFraction amount, Unit unit)
                ? DecimalText.write(amount, 3)
                : named(part);
    }

    private String named(Derivation derivation) {
        String label = derivation.label();
        return value(derivation.value()) + (label.isEmpty() ? "" : " " + label);
    }

    private static List<Derivation> leaves(Derivation derivation) {
        List<Derivation> found = new ArrayList<>();
        if (derivation.formula() instanceof Derivation.Combined(String sign, Derivation left, Derivation right)) {
            for (Derivation each : List.of(left, right)) {
                boolean inner = each.label().isEmpty() && each.formula() instanceof Derivation.Combined;
                if (inner) {
                    found.addAll(leaves(each));
                } else {
                    found.add(each);
                }
            }
        }
        return found;
    }

    /** On a rule a gap is a shade over nothing; a sum of such gaps wants figures. */
    private boolean isSmall(Length length) {
        return format.imperial() && length.abs().compareTo(Length.INCH) < 0 && !format.loss(length).isZero();
    }

    private String value(Datum value) {
        return switch (value) {
            case Datum.Exactly(Quantity quantity) -> quantity.asLength()
                    .filter(this::isSmall)
                    .map(small -> DecimalText.write(small.inches(), 3) + " in")
                    .orElseGet(() -> QuantityText.write(quantity, format));
            case Datum.Bare(BigFraction amount, Unit unit) -> DecimalText.write(amount, 3)
                    + (unit.spelling().equals(format.unit()) ? "" : " " + unit.spelling());
            case Datum.Sizes(List<Datum> measures) ->
                String.join(" x ", measures.stream().map(this::value).toList());
            case Datum.Between(Datum low, Datum high) -> value(low) + ".." + value(high);
            case Datum.Several(List<Datum> values) ->
                String.join(", ", values.stream().map(this::value).toList());
            case Datum.Text(String text) -> "\"" + text + "\"";
            case Datum.Truth(boolean truth) -> String.valueOf(truth);
            case Datum.Word(String word) -> word;
            case Datum.Thing(String path, Datum.Thing.Kind kind) -> path;
            case Datum.Unknown unknown -> "not known";
        };
    }
}
