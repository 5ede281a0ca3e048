package dev.treen.model;

import dev.treen.finding.Finding;
import dev.treen.joinery.JointKinds;
import dev.treen.quantity.Length;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Projects given as text, evaluated. */
final class Texts {
    private Texts() {
    }

    static Evaluation evaluate(String text) {
        return evaluate(text, Map.of());
    }

    /** With other files by name. */
    static Evaluation evaluate(String text, Map<String, String> files) {
        return Evaluator.evaluate(
                Parser.parse(new SourceFile("main.treen", text)),
                (path, from) -> Optional.ofNullable(files.get(path)).map(t -> new SourceFile(path + ".treen", t)),
                JointKinds.schemas());
    }

    static List<String> codes(Evaluation evaluation) {
        return evaluation.project().findings().stream().map(Finding::code).toList();
    }

    static Finding only(Evaluation evaluation) {
        List<Finding> findings = evaluation.project().findings();
        if (findings.size() != 1) {
            throw new AssertionError("not one finding: " + findings);
        }
        return findings.getFirst();
    }

    static Part part(Evaluation evaluation, String name) {
        return evaluation.project().parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part " + name + " but "
                        + evaluation.project().parts().stream().map(Part::name).toList() + " and "
                        + evaluation.project().findings()));
    }

    static List<String> parts(Evaluation evaluation) {
        return evaluation.project().parts().stream().map(Part::name).toList();
    }

    static Length mm(long mm) {
        return Length.ofMm(mm);
    }
}
