package dev.treen.plan;

import dev.treen.check.Checked;
import dev.treen.check.Checks;
import dev.treen.cutting.Cutter;
import dev.treen.cutting.Cutting;
import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.joinery.Joinery;
import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluation;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.order.BuildOrder;
import dev.treen.order.Ordering;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SyntaxTree;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of a project from text to findings, the quick part: what the editor shows at every keystroke and what
 * {@code treen check} prints begin here.
 *
 * @param file the text
 * @param tree its syntax
 * @param evaluation what it means
 * @param checked its joints and findings
 */
public record Compilation(SourceFile file, SyntaxTree tree, Evaluation evaluation, Checked checked) {

    /** Compiles {@code file} with the files that {@code loader} finds. Never throws for what a user wrote. */
    public static Compilation of(SourceFile file, FileLoader loader) {
        SyntaxTree tree = Parser.parse(file);
        Evaluation evaluation = Evaluator.evaluate(tree, loader, JointKinds.schemas());
        return new Compilation(file, tree, evaluation, Checks.check(Joinery.join(evaluation.project())));
    }

    /** The slow part: the layout and the order. */
    public Plan plan() {
        Cutting cutting = Cutter.cut(checked.joined());
        BuildOrder order = Ordering.order(checked.joined(), cutting);
        List<Finding> findings = new ArrayList<>(checked.findings());
        findings.addAll(cutting.findings());
        return new Plan(checked.joined(), cutting, order, findings);
    }

    /** Whether any of {@code findings} is an error. */
    public static boolean hasErrors(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }
}
