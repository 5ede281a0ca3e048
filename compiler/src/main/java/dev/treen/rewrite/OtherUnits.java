package dev.treen.rewrite;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.model.FileLoader;
import dev.treen.model.Project;
import dev.treen.plan.Compilation;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.BareFigures;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Writes a project's own file in another unit without changing any size that is written in it. A length that has no short
 * form in the new unit keeps its old one, written out. What is left {@code auto} goes to the marks of the new unit.
 *
 * <p>Whether a bare number is a length depends on where its value ends up, so it is tried: all are given their old unit,
 * those of which the project then complains are counts and go back, and the result has to mean what the text meant.
 */
public final class OtherUnits {
    private static final LengthFormat MARKS = new LengthFormat.FractionalInches(64);
    private static final int MOST_TRIALS = 60;
    /** A trial reads the whole file; a long one has fewer, or the editor would wait. */
    private static final int MOST_FIGURES_READ = 60_000;
    private static final int DEEPEST = 8;
    private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");

    private final Compilation before;
    private final FileLoader loader;
    private final Unit from;
    private final Unit to;
    private final List<String> said;
    private final List<Expr.Figure> bare;
    private final int trials;

    private OtherUnits(Compilation before, FileLoader loader, Unit to) {
        this.before = before;
        this.loader = loader;
        this.from = before.evaluation().project().settings().units();
        this.to = to;
        this.said = new WrittenSizes().of(before.evaluation().project());
        this.bare = BareFigures.of(before.tree());
        this.trials = Math.clamp(MOST_FIGURES_READ / Math.max(1, bare.size()), 4, MOST_TRIALS);
    }

    /**
     * The edits that write {@code project} in {@code to}; nothing where it has errors, is written so already, or where its
     * numbers cannot be told apart.
     */
    public static Optional<List<Edit>> of(Compilation project, FileLoader loader, Unit to) {
        Project read = project.evaluation().project();
        return read.settings().units() == to || Compilation.hasErrors(read.findings())
                ? Optional.empty()
                : new OtherUnits(project, loader, to).edits();
    }

    private Optional<List<Edit>> edits() {
        Optional<Edit> word = unitWord();
        if (word.isEmpty()) {
            return Optional.empty();
        }
        Set<Expr.Figure> lengths = new LinkedHashSet<>(bare);
        for (int trial = 0; trial < trials; trial++) {
            List<Edit> edits = written(lengths, word.get());
            Compilation after = compiled(edits);
            List<Finding> errors = after.evaluation().project().findings().stream()
                    .filter(finding -> finding.severity() == Severity.ERROR)
                    .toList();
            if (errors.isEmpty()) {
                return settled(lengths, word.get());
            }
            if (!lengths.removeAll(counts(errors, edits, lengths))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * What the project complains of most plainly: figures that stand where it does, else those of the values named there,
     * of one finding alone, the one that leaves least to choose from.
     */
    private Set<Expr.Figure> counts(List<Finding> errors, List<Edit> edits, Set<Expr.Figure> lengths) {
        Set<Expr.Figure> direct = new LinkedHashSet<>();
        errors.forEach(error -> direct.addAll(standing(back(error.at(), edits), lengths)));
        return direct.isEmpty()
                ? errors.stream()
                        .map(error -> named(back(error.at(), edits), lengths, 0))
                        .filter(some -> !some.isEmpty())
                        .min(Comparator.comparingInt(Set::size))
                        .orElse(Set.of())
                : direct;
    }

    /** Where the project says its unit, or where it is to say it. */
    private Optional<Edit> unitWord() {
        String word = to.name().toLowerCase(Locale.ROOT);
        for (Statement statement : before.tree().statements()) {
            if (statement instanceof Statement.Project(Span span, var title, var body)) {
                Optional<Span> said = body.stream()
                        .flatMap(block -> block.statements().stream())
                        .filter(each -> each instanceof Statement.Property property
                                && property.name().text().equals("units"))
                        .flatMap(each -> ((Statement.Property) each).values().stream().map(Value::span))
                        .findFirst();
                if (said.isPresent()) {
                    return said.map(at -> new Edit(at, word));
                }
                return Optional.of(body
                        .map(block -> new Edit(at(block.span().start() + 1), " units " + word + ";"))
                        .orElseGet(() -> new Edit(at(span.end()), " { units " + word + " }")));
            }
        }
        return Optional.empty();
    }

    private Span at(int offset) {
        return new Span(before.file(), offset, offset);
    }

    private List<Edit> written(Set<Expr.Figure> lengths, Edit word) {
        List<Edit> edits = new ArrayList<>(List.of(word));
        lengths.forEach(figure -> edits.add(new Edit(figure.span(), written(figure))));
        edits.sort(Comparator.comparingInt(edit -> edit.at().start()));
        return edits;
    }

    private String written(Expr.Figure figure) {
        Length length = Length.ofMm(from.of(figure.amount()).amount());
        if (to == Unit.IN) {
            boolean onMark = Exact.isWhole(length.inches().multiply(64));
            return onMark ? MARKS.figure(length) : figure.span().text() + from.name().toLowerCase(Locale.ROOT);
        }
        BigFraction amount = length.mm().divide(to.of(BigFraction.ONE).amount());
        return DecimalText.exact(amount);
    }

    private Compilation compiled(List<Edit> edits) {
        String text = Edit.applied(before.file().text(), edits);
        return Compilation.of(new SourceFile(before.file().name(), text), loader);
    }

    /** Where a place of the new text was in the old one. */
    private Span back(Span now, List<Edit> edits) {
        return new Span(before.file(), back(now.start(), edits, false), back(now.end(), edits, true));
    }

    private int back(int offset, List<Edit> edits, boolean end) {
        int moved = 0;
        for (Edit edit : edits) {
            int start = edit.at().start() + moved;
            int stop = start + edit.text().length();
            if (offset < start || (offset == start && !end)) {
                break;
            }
            if (offset <= stop) {
                return end ? edit.at().end() : edit.at().start();
            }
            moved += edit.text().length() - (edit.at().end() - edit.at().start());
        }
        return Math.min(before.file().text().length(), Math.max(0, offset - moved));
    }

    private static Set<Expr.Figure> standing(Span place, Set<Expr.Figure> lengths) {
        Set<Expr.Figure> found = new LinkedHashSet<>();
        lengths.stream()
                .filter(figure -> figure.span().start() >= place.start() && figure.span().end() <= place.end())
                .forEach(found::add);
        return found;
    }

    /** The figures of the values whose names stand at a place; of those named there in turn only where there are none. */
    private Set<Expr.Figure> named(Span place, Set<Expr.Figure> lengths, int depth) {
        List<Span> values = new ArrayList<>();
        Matcher names = NAME.matcher(before.file().text().substring(place.start(), place.end()));
        while (names.find()) {
            String name = names.group();
            for (Statement statement : before.tree().statements()) {
                if (statement instanceof Statement.Let let && let.name().text().equals(name)) {
                    values.add(let.value().span());
                }
            }
        }
        Set<Expr.Figure> here = new LinkedHashSet<>();
        values.forEach(value -> here.addAll(standing(value, lengths)));
        if (here.isEmpty() && depth < DEEPEST) {
            values.forEach(value -> here.addAll(named(value, lengths, depth + 1)));
        }
        return here;
    }

    /**
     * Without anything to complain of, a product may still mean another thing: what makes the two texts differ less as a
     * count than as a length is a count.
     */
    private Optional<List<Edit>> settled(Set<Expr.Figure> lengths, Edit word) {
        int apart = apart(lengths, word);
        int tried = 0;
        for (Expr.Figure each : List.copyOf(lengths)) {
            if (apart == 0 || tried == trials) {
                break;
            }
            if (!inSum(each)) {
                continue;
            }
            tried++;
            lengths.remove(each);
            int without = apart(lengths, word);
            if (without < apart) {
                apart = without;
            } else {
                lengths.add(each);
            }
        }
        return apart == 0 ? Optional.of(written(lengths, word)) : Optional.empty();
    }

    /** Whether a figure stands beside others and not alone as a value. */
    private boolean inSum(Expr.Figure figure) {
        String text = before.file().text();
        return !alone(text.substring(0, figure.span().start()).stripTrailing(), true)
                || !alone(text.substring(figure.span().end()).stripLeading(), false);
    }

    private static boolean alone(String beside, boolean left) {
        if (beside.isEmpty()) {
            return true;
        }
        char next = left ? beside.charAt(beside.length() - 1) : beside.charAt(0);
        return "+-*/()".indexOf(next) < 0;
    }

    private int apart(Set<Expr.Figure> lengths, Edit word) {
        Compilation after = compiled(written(lengths, word));
        if (Compilation.hasErrors(after.evaluation().project().findings())) {
            return Integer.MAX_VALUE;
        }
        List<String> other = new WrittenSizes().of(after.evaluation().project());
        if (said.size() != other.size()) {
            return Integer.MAX_VALUE - 1;
        }
        int apart = 0;
        for (int i = 0; i < said.size(); i++) {
            apart += said.get(i).equals(other.get(i)) ? 0 : 1;
        }
        return apart;
    }
}
