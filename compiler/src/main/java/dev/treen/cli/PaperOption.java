package dev.treen.cli;

import dev.treen.drawing.PaperSize;
import dev.treen.finding.NearWords;
import dev.treen.paper.PlanPdf;
import dev.treen.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Document;

/** {@code --paper}: on which sheets the plan is laid out as a PDF, or that there shall be none. */
final class PaperOption {
    static final String NAME = "--paper";
    static final String USAGE = "[--paper SHEET]";
    static final String HELP = """
            plan.pdf is laid out for the sheets of the project's units, A4 or Letter, or for SHEET: a4 or letter; with
            none it is left out, which is quicker.""";
    private static final String NONE = "none";
    private static final String FILE = "plan.pdf";

    private PaperOption() {
    }

    /** What is wrong with what was asked for. */
    static Optional<String> wrong(Arguments arguments) {
        List<String> words = new ArrayList<>(PaperSize.words());
        words.add(NONE);
        return arguments.option(NAME).filter(word -> !words.contains(word)).map(word -> {
            String near = NearWords.of(word, words).stream().findFirst().map(w -> "; near is " + w).orElse("");
            return "no paper is called " + word + ", but " + String.join(", ", words) + near;
        });
    }

    /** Puts the PDF into {@code files} unless none is wanted; says why where it could not be made. */
    static Optional<String> write(Arguments arguments, Plan plan, Document page, Map<String, byte[]> files) {
        Optional<String> word = arguments.option(NAME);
        if (word.filter(NONE::equals).isPresent()) {
            return Optional.empty();
        }
        PaperSize size = word.flatMap(PaperSize::named).orElseGet(() -> PaperSize.beside(plan.format()));
        return switch (PlanPdf.of(page, size)) {
            case PlanPdf.Whole whole -> {
                files.put(FILE, whole.bytes());
                yield Optional.empty();
            }
            case PlanPdf.Not(String why) -> Optional.of(why);
        };
    }
}
