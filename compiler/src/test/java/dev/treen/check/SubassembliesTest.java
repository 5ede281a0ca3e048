package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingPage;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Subassembly;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is looked at subassembly by subassembly comes to what a look at the whole project finds. */
class SubassembliesTest {

    @Test
    void theWholeFindsWhatItsSubassembliesFind() throws Exception {
        int several = 0;
        int found = 0;
        for (String text : texts()) {
            Joined joined = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE).joined();
            List<Finding> whole = Checks.tied(joined);
            List<Finding> apart = joined.subassemblies().stream()
                    .map(Subassembly::joined)
                    .flatMap(each -> Checks.tied(each).stream())
                    .toList();
            assertThat(apart).as(text).containsExactlyInAnyOrderElementsOf(whole);
            several += joined.subassemblies().size() > 1 ? 1 : 0;
            found += whole.size();
        }
        assertThat(several).isGreaterThan(20);
        assertThat(found).isGreaterThan(20);
    }

    @Test
    void bodiesShowTheSameSubassemblyBySubassembly() throws Exception {
        int found = 0;
        for (String text : texts()) {
            Joined joined = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE).joined();
            Standing standing = Standing.of(joined);
            List<Finding> whole = Checks.tiedBodies(joined, standing);
            List<Finding> apart = joined.subassemblies().stream()
                    .flatMap(each -> Checks.tiedBodies(each.joined(), standing.of(each)).stream())
                    .toList();
            assertThat(apart).as(text).containsExactlyInAnyOrderElementsOf(whole);
            found += whole.size();
        }
        assertThat(found).isGreaterThan(5);
    }

    @Test
    void everyPartIsInOneOfThem() throws Exception {
        for (String text : texts()) {
            Joined joined = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE).joined();
            assertThat(joined.subassemblies().stream().flatMap(each -> each.joined().parts().stream()))
                    .containsExactlyInAnyOrderElementsOf(joined.parts());
            assertThat(joined.subassemblies().stream().mapToInt(each -> each.joined().joints().size()).sum())
                    .isEqualTo(joined.joints().size());
        }
    }

    /** All examples, all pages of findings, and each of these beside a second part of which they know nothing. */
    private static List<String> texts() throws Exception {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
            for (Path path : files.filter(each -> each.toString().endsWith(".treen")).sorted().toList()) {
                texts.add(Files.readString(path));
            }
        }
        Compilation.kinds().forEach(kind -> FindingPage.of(kind).ifPresent(page -> {
            String bad = page.text(FindingPage.Section.BAD).replaceAll("```\\w*", "");
            texts.add(bad);
            texts.add(bad
                    + "\npart stray { length 90; width 40; thickness 9; place { length right; width up; at 0, 9000, 0 } }\n");
        }));
        return texts;
    }
}
