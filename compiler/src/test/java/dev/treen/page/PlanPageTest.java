package dev.treen.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.model.FileLoader;
import dev.treen.order.BuildOrder;
import dev.treen.order.Step;
import dev.treen.plan.Compilation;
import dev.treen.plan.Plan;
import dev.treen.plan.PlanJson;
import dev.treen.plan.Projects;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a plan: complete, closed in itself, right as HTML, and its own source. Projects are invented. */
class PlanPageTest {
    private static final String HOSTILE = "<script>alert(1)</script> \"quoted\" 'n &amp; ]]> --> \u202eRTL שלום 😀 "
            + "x".repeat(500);

    private static String page(SourceFile file, FileLoader loader, Optional<LengthFormat> beside) {
        Sources.Recorder files = new Sources.Recorder(file, loader);
        Compilation compilation = Compilation.of(file, files);
        Plan plan = compilation.plan();
        return PlanPage.of(plan, compilation.checked().facts().years(),
                Drawings.all(plan.joined(), Figures.of(plan.settings())), files.sources(),
                beside);
    }

    private static String page(String text) {
        return page(new SourceFile("work/jars.treen", text), FileLoader.NONE, Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "spice-cupboard", "wall-shelf", "kitchen-drawer"})
    void isItsOwnSource(String example) {
        String once = page(Projects.text(example));
        Sources inside = Sources.in(once).orElseThrow();
        assertThat(inside.main().text()).isEqualTo(Projects.text(example));
        assertThat(inside.main().name()).isEqualTo("jars.treen");
        assertThat(page(inside.main(), inside.loader(), Optional.empty())).isEqualTo(once);
        assertThat(PlanJson.of(Compilation.of(inside.main(), inside.loader()).plan()))
                .isEqualTo(PlanJson.of(Projects.example(example).plan()));
    }

    /** Whoever reads the page alone has to find there what the order knows. */
    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "kitchen-cabinet", "sewing-box"})
    void saysAllThatTheOrderKnows(String example) {
        Document page = Jsoup.parse(page(Projects.text(example)));
        BuildOrder order = Projects.example(example).order();
        for (Step step : order.steps()) {
            Element item = page.select("#step-" + step.number()).getFirst();
            assertThat(item.select(".so li")).as(step.operation().action()).hasSameSizeAs(step.operation().how());
            for (String words : List.of(step.operation().tool(), step.operation().check(), step.operation().caution(),
                    step.because())) {
                assertThat(item.text()).contains(words.replace("`", ""));
            }
        }
        Element settings = page.select("#settings tbody").getFirst();
        assertThat(settings.children()).hasSameSizeAs(order.setups());
        assertThat(settings.select("tr td:last-child a")).as("later steps for which a gauge stays")
                .hasSize(order.setups().stream().mapToInt(setup -> setup.also().size()).sum());
        assertThat(page.select("#steps > .scroll caption:contains(Calendar) ~ tbody tr"))
                .hasSameSizeAs(order.calendar().rows());
    }

    @Test
    void saysWhereAMakerStandsWhoHasMeasured() {
        String text = Projects.text("tea-caddy-by-pattern");
        String box = Projects.compile(text).joined().parts().getFirst().part().name().split("\\.")[0];
        Document page = Jsoup.parse(page(text + "\nmeasured " + box + ".opening.width 79.4\n"));
        assertThat(page.select("#steps h3").eachText()).contains("Where you are");
        assertThat(page.select("#steps > ul li").eachText())
                .anyMatch(line -> line.contains("79.4 mm instead of 80 mm"));
        assertThat(Jsoup.parse(page(text)).select("#steps h3").eachText()).doesNotContain("Where you are");
    }

    @Test
    void aMarkLeadsToItsDrawing() {
        Document page = Jsoup.parse(page(Projects.text("tea-caddy")));
        for (Element link : page.select("#cut-list .mark a")) {
            assertThat(page.select(link.attr("href") + " figcaption strong").text().split(", ")).contains(link.text());
        }
        assertThat(page.select("#cut-list .mark a")).hasSize(6);
        assertThat(page.select(".symbol svg title").text()).isEqualTo("First-angle projection");
    }

    /** Step pictures are small: whole names would be cut off. */
    @Test
    void partsInStepPicturesBearTheirMarks() {
        Document page = Jsoup.parse(page(Projects.text("kitchen-drawer")));
        List<String> words = page.select(".steps svg:has(use) text").eachText();
        assertThat(words).isNotEmpty().allMatch(word -> word.matches("[A-Z]{1,2}"));
    }

    @Test
    void aBoardIsSeenWhereItIsMarkedOut() {
        Document page = Jsoup.parse(page(Projects.text("tea-caddy")));
        assertThat(page.select(".steps > li:contains(Mark out plank leaf 1) svg text").eachText()).isNotEmpty();
        assertThat(page.select(".steps > li:contains(Mark out plank leaf 2) svg text").eachText()).isNotEmpty();
        assertThat(page.select(".steps > li:contains(Mark out plank leaf) svg text").eachText())
                .contains("A", "B", "C", "D", "E", "F");
    }

    @Test
    void theSameFindingOfSeveralPartsIsSaidOnce() {
        Document page = Jsoup.parse(page(Projects.text("garden-table")));
        assertThat(page.select("#findings li").eachText()).hasSize(1)
                .allMatch(text -> text.endsWith("The same holds for leg[2], leg[3], leg[4]."));
    }

    @Test
    void carriesTheFilesThatTheProjectUses() {
        Map<String, String> disk = Map.of("work/shared/rack.treen",
                "\n\nboard plank { species black_cherry; size 900 x 140 x 20; moisture 9% }\r\n");
        FileLoader loader = (path, from) -> Optional.ofNullable(disk.get("work/" + path + ".treen"))
                .map(text -> new SourceFile("work/" + path + ".treen", text));
        String text = """
                project "Jar rack" { units mm }
                use "shared/rack"
                part rail { length 300; width 40; thickness 12; from plank }
                """;
        String once = page(new SourceFile("work/jars.treen", text), loader, Optional.empty());
        Sources inside = Sources.in(once).orElseThrow();
        assertThat(inside.texts()).containsEntry("shared/rack.treen", disk.get("work/shared/rack.treen"));
        assertThat(page(inside.main(), inside.loader(), Optional.empty())).isEqualTo(once);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "spice-cupboard", "wall-shelf", "hall-bookcase"})
    void needsNothingElseAndIsRightForThoseWhoHearIt(String example) {
        soundPage(Jsoup.parse(page(Projects.text(example))));
    }

    private static void soundPage(Document page) {
        assertThat(page.select("script, link, iframe, object, embed, img, [src], [onload], [onclick]")).isEmpty();
        page.select("[href]").forEach(e -> assertThat(e.attr("href")).startsWith("#"));
        assertThat(page.html()).doesNotContain("@import").doesNotContain("url(http");
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(e -> assertThat(ids.add(e.id())).as("the address %s stands once", e.id()).isTrue());
        page.select("[href]").forEach(e -> assertThat(ids).contains(e.attr("href").substring(1)));
        for (Element each : page.select("[aria-labelledby]")) {
            assertThat(ids).containsAll(List.of(each.attr("aria-labelledby").split(" ")));
        }
        assertThat(page.select("main, header, nav, footer")).hasSize(4);
        assertThat(page.select("h1")).hasSize(1);
        int level = 1;
        for (Element heading : page.select("h1, h2, h3, h4")) {
            int next = heading.tagName().charAt(1) - '0';
            assertThat(next).as(heading.text()).isLessThanOrEqualTo(level + 1);
            level = next;
        }
        for (Element table : page.select("table")) {
            assertThat(table.select("caption")).hasSize(1);
            table.select("thead th").forEach(th -> assertThat(th.attr("scope")).startsWith("col"));
            table.select("tbody tr").forEach(tr -> assertThat(tr.select("th[scope=row]")).hasSize(1));
        }
        for (Element svg : page.select("svg")) {
            boolean told = svg.select("> title").hasText() && svg.attr("role").equals("img");
            assertThat(told || svg.attr("aria-hidden").equals("true")).isTrue();
        }
    }

    @Test
    void everyStepHasItsPicture() {
        // The parts of the tea chest have no place.
        for (String example : List.of("tea-caddy", "tea-chest")) {
            Document page = Jsoup.parse(page(Projects.text(example)));
            assertThat(page.select("ol.steps > li")).hasSameSizeAs(Projects.example(example).order().steps())
                    .allSatisfy(step -> assertThat(step.select("> figure > svg")).as(step.text()).hasSize(1));
        }
    }

    @Test
    void hostileNamesStayWords() {
        String title = HOSTILE.replace("\"", "\\\"");
        String html = page("project \"" + title + "\" { units mm }\n"
                + "/// <img src=x onerror=alert(1)> & <b>\n"
                + "part rail { length 300; width 40; thickness 12 }\n");
        Document page = Jsoup.parse(html);
        soundPage(page);
        assertThat(page.select("h1").text()).contains("<script>alert(1)</script>").contains("😀");
        assertThat(page.select("#cut-list").text()).contains("<img src=x onerror=alert(1)>");
    }

    @Test
    void aProjectWithoutPartsStillGivesAPage() {
        Document page = Jsoup.parse(page("project \"Nothing yet\" { units mm }\n"));
        soundPage(page);
        assertThat(page.text()).contains("names no parts yet");
    }

    @Test
    void saysWhichPartsNoBoardHolds() {
        String html = page("""
                project "Jar rack" { units mm }
                board short { size 200 x 90 x 20 }
                part rail { length 300; width 40; thickness 12; from short }
                part end { length 100; width 40; thickness 12; from short }
                """);
        assertThat(Jsoup.parse(html).select("#materials .note").text()).contains("No board has room for: rail.");
    }

    @Test
    void fiveHundredPartsGiveAPage() {
        StringBuilder text = new StringBuilder("project \"Many rails\" { units mm }\n");
        IntStream.range(0, 500).forEach(i -> text.append("part rail").append(i).append(" { length ").append(100 + i)
                .append("; width 40; thickness 12 }\n"));
        Document page = Jsoup.parse(page(text.toString()));
        soundPage(page);
        assertThat(page.select("#cut-list tbody tr")).hasSize(500);
    }

    @Test
    void bothUnitsStandSideBySide() {
        String html = page(new SourceFile("jars.treen", Projects.text("tea-caddy")), FileLoader.NONE,
                LengthFormat.named("in"));
        // 5 mm is 0.1969 in: 6/32 and a shade (the inch of 25.4 mm, international yard and pound agreement of 1959).
        assertThat(Jsoup.parse(html).select("#steps").text()).contains("fence 5 mm (3/16+ in)");
    }

    @Test
    void isTheSameInAnyLocaleAndTimeZone() {
        String here = page(Projects.text("wall-shelf"));
        Locale before = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(page(Projects.text("wall-shelf"))).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zone);
        }
        assertThat(IntStream.range(0, 4).parallel().mapToObj(i -> page(Projects.text("wall-shelf"))).toList())
                .containsOnly(here);
    }

    /** Web Content Accessibility Guidelines 2.2, 1.4.3: at least 4.5 to 1 between letters and ground. */
    @Test
    void lettersStandOutFromTheirGround() {
        Matcher colours = Pattern.compile("[^-]color: (#[0-9a-f]{6})").matcher(Html.style("plan.css"));
        int seen = 0;
        while (colours.find()) {
            seen++;
            assertThat(1.05 / (luminance(colours.group(1)) + 0.05)).as(colours.group(1)).isGreaterThan(4.5);
        }
        assertThat(seen).isGreaterThan(5);
    }

    private static double luminance(String hex) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
