package dev.treen.plan;

import dev.treen.check.Checked;
import dev.treen.check.Checks;
import dev.treen.check.Remembered;
import dev.treen.cutting.Cutter;
import dev.treen.cutting.Cutting;
import dev.treen.cutting.CuttingFindings;
import dev.treen.cutting.EarlierLayout;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluation;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.model.Instance;
import dev.treen.order.BuildOrder;
import dev.treen.order.Ordering;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SyntaxTree;
import dev.treen.yield.Cancel;
import dev.treen.yield.Progress;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * A project on its way from text to plan, each stage worked out once, when it is first asked for. Up to
 * {@link #quick()} it is quick enough for every keystroke; {@link #bodies()}, {@link #cutting()}, {@link #order()} and
 * {@link #plan()} take longer. Never throws for what a user wrote.
 */
public final class Compilation {
    private static final String TOO_SMALL = "board-too-";

    private final SourceFile file;
    private final Lazy<SyntaxTree> tree;
    private final Lazy<Evaluation> evaluation;
    private final Lazy<Optional<Waiting>> waiting;
    private final Lazy<Checked> quick;
    private final Remembered remembered;
    private final Lazy<List<Finding>> bodies;
    private final Lazy<Checked> checked;
    private final EarlierLayout earlier;
    private final Lazy<Cutting> cutting;
    private final Lazy<BuildOrder> order;

    private Compilation(
            SourceFile file, FileLoader loader, Optional<LengthFormat> shown, Optional<Editing> editing,
            EarlierLayout earlier) {
        Editing kept = editing.orElseGet(() -> new Editing(file.name()));
        this.file = file;
        tree = new Lazy<>(() -> editing.isPresent() ? kept.text().read(file) : Parser.parse(file));
        evaluation = new Lazy<>(
                () -> shownIn(shown, Evaluator.evaluate(tree(), loader, JointKinds.schemas(), kept.values())));
        waiting = new Lazy<>(() -> Waiting.of(tree(), evaluation()));
        quick = new Lazy<>(() -> settled(
                Checks.quickly(kept.subassemblies().join(evaluation().project()), kept.remembered())));
        remembered = kept.remembered();
        bodies = new Lazy<>(() -> Checks.bodies(quick(), remembered, () -> false));
        checked = new Lazy<>(() -> settled(quick().with(bodies())));
        this.earlier = earlier;
        cutting = new Lazy<>(() -> Cutter.cut(joined(), earlier));
        order = new Lazy<>(() -> Ordering.order(joined(), cutting()));
    }

    /** The compilation of {@code file} with the files that {@code loader} finds. */
    public static Compilation of(SourceFile file, FileLoader loader) {
        return of(file, loader, Optional.empty());
    }

    /** The same with all lengths shown as {@code shown} says, and not as the project's own units would have them. */
    public static Compilation of(SourceFile file, FileLoader loader, Optional<LengthFormat> shown) {
        return of(file, loader, shown, EarlierLayout.NONE);
    }

    /** The same with a layout that moves as little as it can of what an earlier plan had. */
    public static Compilation of(
            SourceFile file, FileLoader loader, Optional<LengthFormat> shown, EarlierLayout earlier) {
        return new Compilation(file, loader, shown, Optional.empty(), earlier);
    }

    /** The compilation of the newest version of an edited file, with what {@code editing} has kept of those before. */
    public static Compilation of(SourceFile file, FileLoader loader, Editing editing) {
        return new Compilation(file, loader, Optional.empty(), Optional.of(editing), EarlierLayout.NONE);
    }

    private static Evaluation shownIn(Optional<LengthFormat> shown, Evaluation evaluation) {
        return shown.map(evaluation::shownIn).orElse(evaluation);
    }

    /** The text. */
    public SourceFile file() {
        return file;
    }

    /** Its syntax. */
    public SyntaxTree tree() {
        return tree.get();
    }

    /** What it means. */
    public Evaluation evaluation() {
        return evaluation.get();
    }

    /** With its joints made. */
    public Joined joined() {
        return quick().joined();
    }

    /** With all that can be said of it at every keystroke. */
    public Checked quick() {
        return quick.get();
    }

    /** What its finished bodies show, whatever joints made them. */
    public List<Finding> bodies() {
        return bodies.get();
    }

    /**
     * The same, for somebody who may soon want another version instead: what has been looked at by then need not be again.
     *
     * @throws java.util.concurrent.CancellationException once {@code stopped} says so
     */
    public List<Finding> bodies(BooleanSupplier stopped) {
        return bodies.get(() -> Checks.bodies(quick(), remembered, stopped));
    }

    /** With all that is to be said of it before boards are cut. */
    public Checked checked() {
        return checked.get();
    }

    /** The layout of its parts on its boards. */
    public Cutting cutting() {
        return cutting.get();
    }

    /**
     * The same, for somebody who wants to hear how the search goes. Where {@code cancel} ended it, it is the best so far, and
     * stays the layout of this compilation.
     */
    public Cutting cutting(Progress progress, Cancel cancel) {
        return cutting.get(() -> Cutter.cut(joined(), earlier, progress, cancel));
    }

    /** The order in which it is built. */
    public BuildOrder order() {
        return order.get();
    }

    /** The whole plan. */
    public Plan plan() {
        return new Plan(joined(), cutting(), order(), with(checked(), cutting().findings()));
    }

    /** All findings, those of the layout with them; it is only looked at as closely as that needs. */
    public List<Finding> findings() {
        return with(checked(), Cutter.findings(joined()));
    }

    /**
     * The findings so far: the quick ones, with those of bodies and of a layout where {@code shown} and {@code laidOut} have
     * any. They may be of the version before, as far as what they speak of is still there.
     */
    public List<Finding> findings(Optional<List<Finding>> shown, List<Finding> laidOut) {
        Checked so = shown.map(these -> settled(quick().with(these))).orElseGet(this::quick);
        return laidOut.isEmpty() ? so.findings() : with(so, laidOut);
    }

    /** Whether any of {@code findings} is an error. */
    public static boolean hasErrors(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }

    /** Whether all that stops {@code findings} is wood that is too small: a plan can be made, and says what is missing. */
    public static boolean onlyWoodMissing(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.ERROR)
                .allMatch(f -> f.kind().equals(CuttingFindings.NO_ROOM) || f.code().startsWith(TOO_SMALL));
    }

    /** Every kind of finding that a compilation can have. */
    public static List<FindingKind> kinds() {
        List<FindingKind> kinds = new ArrayList<>(Checks.kinds());
        kinds.addAll(CuttingFindings.all());
        return kinds;
    }

    /** Without what waits for something else to be settled. */
    private Checked settled(Checked all) {
        return all.saying(told(all.findings()));
    }

    private List<Finding> told(List<Finding> all) {
        return waiting.get().map(known -> known.without(all)).orElse(all);
    }

    /** That a part fits nowhere is not said again where it was said that its board is too small. */
    private List<Finding> with(Checked checked, List<Finding> ofLayout) {
        Set<String> known = new HashSet<>();
        for (Finding each : checked.findings()) {
            if (each.code().startsWith(TOO_SMALL)) {
                known.addAll(each.subjects());
            }
        }
        List<Finding> all = new ArrayList<>(checked.findings());
        for (Finding each : ofLayout) {
            boolean again = each.kind().equals(CuttingFindings.NO_ROOM)
                    && each.subjects().stream().anyMatch(known::contains);
            if (!again) {
                all.add(Instance.atUse(each, evaluation().project().instances()));
            }
        }
        return told(all);
    }
}
