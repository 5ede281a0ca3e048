package dev.treen.page;

import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.drawing.PaperSize;
import dev.treen.model.FileLoader;
import dev.treen.paper.PlanPdf;
import dev.treen.plan.Compilation;
import dev.treen.plan.Plan;
import dev.treen.source.SourceFile;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jsoup.nodes.Document;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * From the text of a project to its plan, its page, its PDF and its Markdown: racks of five parts, two sides and three housed
 * shelves each, with a board for each rack.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
public class PlanBenchmark {
    private static final int PARTS_IN_RACK = 5;
    private static final String RACK = """
            board plank%1$d { species black_cherry; size 1700 x 120 x 20; moisture 9%% }
            part side%1$d_a { length 300; width 90; thickness 15; place { length up; width back; at -15, %2$d, 0 } }
            part side%1$d_b like side%1$d_a { place { at 280, %2$d, 0 } }
            part shelf%1$d_a { length 280; width 90; thickness 12; place { length right; width back; at 0, %2$d, 40 } }
            part shelf%1$d_b like shelf%1$d_a { place { at 0, %2$d, 150 } }
            part shelf%1$d_c like shelf%1$d_a { place { at 0, %2$d, 260 } }
            joint housing shelf%1$d_a into side%1$d_a, side%1$d_b { deep 4 }
            joint housing shelf%1$d_b into side%1$d_a, side%1$d_b { deep 4 }
            joint housing shelf%1$d_c into side%1$d_a, side%1$d_b { deep 4 }
            """;

    /** How many. */
    @Param({"10", "50", "500"})
    public int parts;

    private SourceFile file = new SourceFile("racks.treen", "");
    private Document page = new Document("");

    /** Writes the project and lays out its page once. */
    @Setup(Level.Trial)
    public void write() {
        file = new SourceFile("racks.treen", text(parts));
        page = page();
    }

    private static String text(int parts) {
        StringBuilder text = new StringBuilder("project \"Racks for the larder\" { units mm; tools hand }\n");
        for (int rack = 0; rack < parts / PARTS_IN_RACK; rack++) {
            text.append(RACK.formatted(rack, rack * 200));
        }
        return text.toString();
    }

    /** Prints the project of so many parts, to measure a whole process with. */
    public static void main(String[] args) {
        System.out.print(text(Integer.parseInt(args[0])));
    }

    /** Everything but drawing and writing. */
    @Benchmark
    public Plan plan() {
        return Compilation.of(file, FileLoader.NONE).plan();
    }

    /** From the text to the text of {@code plan.html}. */
    @Benchmark
    public String html() {
        return PlanPage.text(page());
    }

    /** The PDF alone, from the page. */
    @Benchmark
    public Object pdf() {
        return PlanPdf.of(page, PaperSize.A4);
    }

    /** The Markdown alone, from the page. */
    @Benchmark
    public String markdown() {
        return PlanMarkdown.of(page, Map.of());
    }

    private Document page() {
        Sources.Recorder files = new Sources.Recorder(file, FileLoader.NONE);
        Compilation compilation = Compilation.of(file, files);
        Plan plan = compilation.plan();
        return PlanPage.document(plan, compilation.checked().facts().years(),
                Drawings.all(plan.joined(), Figures.of(plan.settings())),
                files.sources(), Optional.empty());
    }
}
