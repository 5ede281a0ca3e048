package dev.treen.page;

import dev.treen.drawing.Drawings;
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

/** From the text of a project of rails, all of one board each twenty, to its plan, its page, its PDF and its Markdown. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
public class PlanBenchmark {
    /** How many. */
    @Param({"10", "50", "500"})
    public int parts;

    private SourceFile file = new SourceFile("rails.treen", "");
    private Document page = new Document("");

    /** Writes the project and lays out its page once. */
    @Setup(Level.Trial)
    public void write() {
        StringBuilder text = new StringBuilder("project \"Rails\" { units mm }\n");
        for (int i = 0; i < (parts + 19) / 20; i++) {
            text.append("board plank").append(i)
                    .append(" { species black_cherry; size 4000 x 260 x 20; moisture 9% }\n");
        }
        for (int i = 0; i < parts; i++) {
            text.append("part rail").append(i).append(" { length ").append(300 + i % 40).append("; width ")
                    .append(40 + i % 7).append("; thickness 12 }\n");
        }
        file = new SourceFile("rails.treen", text.toString());
        page = page();
    }

    /** Everything but writing. */
    @Benchmark
    public Plan plan() {
        return Compilation.of(file, FileLoader.NONE).plan();
    }

    /** The same with its drawings and its page. */
    @Benchmark
    public Document page() {
        Sources.Recorder files = new Sources.Recorder(file, FileLoader.NONE);
        Compilation compilation = Compilation.of(file, files);
        Plan plan = compilation.plan();
        return PlanPage.document(plan, compilation.checked().facts().years(), Drawings.all(plan.joined()),
                files.sources(), Optional.empty());
    }

    /** The PDF alone. */
    @Benchmark
    public Object pdf() {
        return PlanPdf.of(page, PaperSize.A4);
    }

    /** The Markdown alone. */
    @Benchmark
    public String markdown() {
        return PlanMarkdown.of(page, Map.of());
    }
}
