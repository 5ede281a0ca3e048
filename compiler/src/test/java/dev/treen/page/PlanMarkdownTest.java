package dev.treen.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.drawing.DrawingSet;
import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.source.SourceFile;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The plan as Markdown. Projects are invented. */
class PlanMarkdownTest {
    private static Document page(String text) {
        SourceFile file = new SourceFile("jars.treen", text);
        Sources.Recorder files = new Sources.Recorder(file, FileLoader.NONE);
        Compilation compilation = Compilation.of(file, files);
        DrawingSet drawings = Drawings.all(compilation.plan().joined(), Figures.of(compilation.plan().settings()));
        return PlanPage.document(compilation.plan(), compilation.checked().facts().years(), drawings, files.sources(),
                Optional.empty());
    }

    private static String markdown(String text) {
        return PlanMarkdown.of(page(text), Map.of("assembled-title", "assembled.svg", "layout-1-title", "layout.svg"));
    }

    @Test
    void saysWhatThePageSays() {
        Document page = page(Projects.text("tea-caddy"));
        String plain = markdown(Projects.text("tea-caddy")).replaceAll("[\\\\*\\s]", "");
        for (var words : page.select("h1, section h2, h3, td, th, dt, dd, figcaption, footer p")) {
            String said = words.hasClass("group") || words.select(".tick").hasText() ? "" : words.text();
            assertThat(plain).contains(said.replaceAll("[\\\\*\\s\u00a0]", ""));
        }
        assertThat(markdown(Projects.text("tea-caddy")))
                .contains("![", "](assembled.svg)", "](layout.svg)", "```\n// A tea caddy");
    }

    /** Each picture holds all that it draws on, and nothing that it does not. */
    @Test
    void thePicturesOfTheStepsStandByThemselves() {
        Document page = page(Projects.text("spice-cupboard"));
        List<StepPictures.Picture> pictures = StepPictures.of(page);
        assertThat(pictures).hasSize(page.select("#steps li > figure").size()).hasSizeGreaterThan(20);
        for (StepPictures.Picture each : pictures) {
            Document svg = Jsoup.parse(each.svg(), "", Parser.xmlParser());
            assertThat(svg.child(0).attr("xmlns")).isEqualTo("http://www.w3.org/2000/svg");
            assertThat(svg.child(0).child(0).tagName()).isEqualTo("title");
            assertThat(svg.select("use").eachAttr("href").stream().map(href -> href.substring(1)).distinct().sorted()
                    .toList())
                    .as("step " + each.step())
                    .isEqualTo(svg.select("defs > [id]").eachAttr("id").stream().sorted().toList());
        }
    }

    @Test
    void showsThePicturesOfTheStepsOrSaysWhereTheyAre() {
        Document page = page(Projects.text("tea-caddy"));
        Map<String, String> files = new HashMap<>();
        StepPictures.of(page).forEach(each -> files.put(each.address(), "step-" + each.step() + ".svg"));
        assertThat(PlanMarkdown.of(page, files)).contains("![Step 1: ", "](step-1.svg)", "In each picture")
                .doesNotContain("are in plan.html");
        assertThat(PlanMarkdown.of(page, Map.of())).contains("The pictures of the steps are in plan.html.")
                .doesNotContain("In each picture", "![");
    }

    /** GitHub Flavored Markdown, section 4.10: as many cells in each row as there are heads, from memory. */
    @Test
    void everyRowHasAsManyCellsAsItsTableHasHeads() {
        for (String example : List.of("tea-caddy", "spice-cupboard", "wall-shelf")) {
            int width = 0;
            for (String line : markdown(Projects.text(example)).lines().toList()) {
                if (!line.startsWith("|")) {
                    width = 0;
                } else {
                    int cells = line.replace("\\|", "").split("\\|", -1).length;
                    width = width == 0 ? cells : width;
                    assertThat(cells).as(line).isEqualTo(width);
                }
            }
        }
    }

    @Test
    void hostileNamesStayWords() {
        String text = markdown("""
                project "<script>x</script> | a*b [c](d) # 1. `e`" { units mm }
                /// - <img src=x> ```
                part rail { length 300; width 40; thickness 12 }
                """);
        assertThat(text.lines().findFirst().orElseThrow()).isEqualTo("A plan to build from");
        assertThat(text).contains("# \\<script\\>x\\</script\\> \\| a\\*b \\[c\\](d) \\# 1. \\`e\\`")
                .contains("\\<img src=x\\>")
                .contains("\n````\nproject");
    }

    @Test
    void aProjectWithoutPartsGivesAText() {
        assertThat(markdown("project \"Nothing yet\" { units mm }\n")).contains("names no parts yet");
    }
}
