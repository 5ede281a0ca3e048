package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.FindingPage;
import dev.treen.finding.Remedy;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every code has a page that is complete, and whose examples do what they say. */
class FindingCatalogueTest {
    private static final Path PAGES = Path.of("src", "main", "resources", "dev", "treen", "finding", "pages");
    private static final Path CATALOGUE = Path.of("..", "grammar", "FINDINGS.md");

    @TempDir
    private Path folder;

    @Test
    void everyCodeHasACompletePage() {
        List<String> wanting = new ArrayList<>();
        for (FindingKind kind : FindingCatalogue.kinds()) {
            Optional<FindingPage> there = FindingPage.of(kind);
            if (there.isEmpty()) {
                wanting.add("compiler/" + PAGES.resolve(kind.code() + ".md") + " is missing");
                continue;
            }
            FindingPage page = there.get();
            for (FindingPage.Section section : FindingPage.Section.values()) {
                if (page.text(section).isEmpty()) {
                    wanting.add("compiler/" + PAGES.resolve(kind.code() + ".md") + " lacks "
                            + (section.heading().isEmpty() ? "its first paragraph, what the finding means"
                                    : "the section `## " + section.heading() + "`"));
                }
            }
        }
        assertThat(wanting)
                .as("Every code needs a page: write the files below. A page is a paragraph on what the finding means, and the"
                        + " sections `## At the bench` (why it matters), `## What to do`, `## Gives it` and `## Put right`."
                        + " The last two hold one ```treen block each, a whole project: the first gives this code and no"
                        + " other, the second gives no finding. panel-tight.md is an example. Then write FINDINGS.md anew"
                        + " with -Dtreen.update=true.")
                .isEmpty();
    }

    @Test
    void noPageIsWithoutACode() throws IOException {
        Set<String> codes = new TreeSet<>();
        FindingCatalogue.kinds().forEach(kind -> codes.add(kind.code() + ".md"));
        try (Stream<Path> files = Files.list(PAGES)) {
            assertThat(files.map(file -> String.valueOf(file.getFileName()))).isSubsetOf(codes);
        }
    }

    @Test
    void theBadExamplesGiveTheirCodeAndNoOtherAndTheGoodOnesGiveNone() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (FindingKind kind : FindingCatalogue.kinds()) {
            Optional<FindingPage> there = FindingPage.of(kind);
            if (there.isEmpty()) {
                continue;
            }
            FindingPage page = there.get();
            PageExample first = PageExample.of(page.text(FindingPage.Section.BAD));
            Set<String> bad = first.codes(folder);
            Set<String> wanted = new TreeSet<>(first.others());
            wanted.add(kind.code());
            Set<String> good = PageExample.of(page.text(FindingPage.Section.GOOD)).codes(folder);
            if (!bad.equals(wanted)) {
                wrong.add(kind.code() + ".md: the first example gives " + bad);
            }
            if (!good.isEmpty()) {
                wrong.add(kind.code() + ".md: the second example gives " + good);
            }
        }
        assertThat(wrong).as("Each example must do what its page says").isEmpty();
    }

    /** A safe fix makes its finding go away and brings none; of several ways out each makes it go away where it is told. */
    @Test
    void fixesOfTheBadExamplesMakeThemPass() {
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (FindingKind kind : FindingCatalogue.kinds()) {
            PageExample bad = PageExample.of(FindingPage.of(kind).orElseThrow().text(FindingPage.Section.BAD));
            if (!bad.plain()) {
                continue;
            }
            List<String> before = codes(PageExample.findings(bad.text()));
            for (Finding finding : PageExample.findings(bad.text())) {
                for (Remedy remedy : finding.remedies()) {
                    if (finding.kind().equals(kind) && !remedy.edits().isEmpty()
                            && remedy.grade() != Remedy.Grade.NEEDS_VALUE) {
                        tried++;
                        List<String> after = codes(PageExample.findings(Edit.applied(bad.text(), remedy.edits())));
                        boolean gone = count(after, kind.code()) < count(before, kind.code());
                        boolean clean = remedy.grade() == Remedy.Grade.CHOICE || before.containsAll(after);
                        if (!gone || !clean) {
                            wrong.add(kind.code() + ".md: after `" + remedy.text() + "` there is " + after);
                        }
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(40);
        assertThat(wrong).isEmpty();
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    private static long count(List<String> codes, String code) {
        return codes.stream().filter(code::equals).count();
    }

    @Test
    void theCatalogueIsNotStale() throws IOException {
        String made = FindingCatalogue.markdown();
        if (Boolean.getBoolean("treen.update")) {
            Files.writeString(CATALOGUE, made);
            return;
        }
        assertEquals(made, Files.readString(CATALOGUE).replace("\r\n", "\n"),
                "grammar/FINDINGS.md is stale: write it anew with -Dtreen.update=true");
    }

    @Test
    void explainPrintsThePageAndTheList() {
        String page = explained("explain", "panel-tight");
        assertThat(page).startsWith("error panel-tight: ").contains("At the bench:", "What to do:")
                .doesNotContain("```");
        String list = explained("explain");
        FindingCatalogue.kinds().forEach(kind -> assertThat(list).contains(kind.code(), kind.title()));
    }

    private static String explained(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertThat(Main.run(List.of(words), new Subcommand.Streams(InputStream.nullInputStream(), stream, stream)))
                .isZero();
        return out.toString(StandardCharsets.UTF_8);
    }
}
