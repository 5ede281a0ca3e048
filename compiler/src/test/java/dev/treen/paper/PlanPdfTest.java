package dev.treen.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.drawing.PaperSize;
import dev.treen.model.FileLoader;
import dev.treen.page.PlanPage;
import dev.treen.page.Sources;
import dev.treen.plan.Compilation;
import dev.treen.plan.CutList;
import dev.treen.plan.Projects;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The plan on paper, read back by the PDF library. Projects are invented. */
class PlanPdfTest {
    private static final double POINTS_IN_MM = 72 / 25.4;
    private static byte[] caddy = {};
    private static Document page = new Document("");

    @BeforeAll
    static void lay() {
        page = page(Projects.text("tea-caddy"));
        caddy = pdf(page, PaperSize.A4);
    }

    private static Document page(String text) {
        SourceFile file = new SourceFile("jars.treen", text);
        Sources.Recorder files = new Sources.Recorder(file, FileLoader.NONE);
        Compilation compilation = Compilation.of(file, files);
        return PlanPage.document(compilation.plan(), compilation.checked().facts().years(),
                Drawings.all(compilation.plan().joined(), Figures.of(compilation.plan().settings())), files.sources(),
                Optional.empty());
    }

    private static byte[] pdf(Document page, PaperSize size) {
        return switch (PlanPdf.of(page, size)) {
            case PlanPdf.Whole whole -> whole.bytes();
            case PlanPdf.Not(String why) -> throw new AssertionError(why);
        };
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static Set<PDFont> fonts(PDResources resources) throws IOException {
        Set<PDFont> fonts = new HashSet<>();
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
                fonts.addAll(fonts(form.getResources()));
            }
        }
        return fonts;
    }

    @Test
    void saysAllThatThePageSays() throws IOException {
        String text = text(caddy).replaceAll("\\s+", "");
        Document shown = page.clone();
        shown.select("a.skip, svg[aria-hidden], svg > title, svg > desc").remove();
        // In whatever order the library writes them.
        for (String word : shown.body().text().split("[^\\p{L}\\p{N}]+")) {
            assertThat(text).contains(word);
        }
        assertThat(page.select("svg text")).hasSizeGreaterThan(100);
        CutList list = CutList.of(Projects.example("tea-caddy").plan());
        list.rows().forEach(row -> row.parts().forEach(part -> assertThat(text).contains(part)));
    }

    @Test
    void everyLetterIsCarriedAlong() throws IOException {
        try (PDDocument document = Loader.loadPDF(caddy)) {
            Set<PDFont> fonts = new HashSet<>();
            for (PDPage each : document.getPages()) {
                fonts.addAll(fonts(each.getResources()));
            }
            assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
            for (PDPage each : document.getPages()) {
                for (COSName name : each.getResources().getXObjectNames()) {
                    assertThat(each.getResources().isImageXObject(name)).as("drawings are lines, not dots").isFalse();
                }
            }
        }
    }

    @Test
    void hasATitleALanguageTagsAndABookmarkForEachStep() throws IOException {
        try (PDDocument document = Loader.loadPDF(caddy)) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Tea caddy: a plan");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            List<String> marks = new ArrayList<>();
            for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
                marks.add(item.getTitle());
                item.children().forEach(child -> marks.add(child.getTitle()));
            }
            assertThat(marks).contains("Cut list", "Step by step");
            assertThat(marks.stream().filter(m -> m.matches("\\d+ .*")))
                    .hasSize(Projects.example("tea-caddy").order().steps().size());
            assertThat(text(caddy)).contains("1 of " + document.getNumberOfPages());
        }
    }

    @Test
    void theContentsSayOnWhichSheetASectionBegins() throws IOException {
        for (String example : List.of("tea-caddy", "garden-table", "recipe-box")) {
            Document plan = page(Projects.text(example));
            try (PDDocument document = Loader.loadPDF(pdf(plan, PaperSize.A4))) {
                String first = sheet(document, 1);
                for (Element heading : plan.select("section > h2")) {
                    Matcher line = Pattern.compile(Pattern.quote(heading.text()) + "[ .]+(\\d+)").matcher(first);
                    assertThat(line.find()).as(heading.text()).isTrue();
                    assertThat(sheet(document, Integer.parseInt(line.group(1))).lines())
                            .as("%s: the sheet of %s", example, heading.text())
                            .anySatisfy(words -> assertThat(words.strip()).isEqualTo(heading.text()));
                }
            }
        }
    }

    private static String sheet(PDDocument document, int number) throws IOException {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(number);
        one.setEndPage(number);
        return one.getText(document);
    }

    @Test
    void noSheetIsEmptyAndLongTablesRunOn() throws IOException {
        for (String example : List.of("garden-table", "tea-chest")) {
            try (PDDocument document = Loader.loadPDF(pdf(page(Projects.text(example)), PaperSize.A4))) {
                for (int number = 1; number <= document.getNumberOfPages(); number++) {
                    // Its foot alone has two lines.
                    assertThat(sheet(document, number).lines()).as("%s, sheet %s", example, number)
                            .hasSizeGreaterThan(3);
                }
            }
        }
    }

    @Test
    void isTheSameBytesInAnyLocaleAndTimeZone() {
        Locale before = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(pdf(page, PaperSize.A4)).isEqualTo(caddy);
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zone);
        }
    }

    /** A4 of ISO 216, Letter of ANSI/ASME Y14.1: both from memory. */
    @Test
    void nothingReachesOverTheEdgeOfItsSheet() throws IOException {
        for (PaperSize size : PaperSize.values()) {
            try (PDDocument document = Loader.loadPDF(pdf(page, size))) {
                double narrow = size == PaperSize.A4 ? 210 : 215.9;
                double high = size == PaperSize.A4 ? 297 : 279.4;
                for (PDPage each : document.getPages()) {
                    double width = each.getMediaBox().getWidth() / POINTS_IN_MM;
                    double height = each.getMediaBox().getHeight() / POINTS_IN_MM;
                    assertThat(Math.min(width, height)).isCloseTo(narrow, within(0.1));
                    assertThat(Math.max(width, height)).isCloseTo(high, within(0.1));
                }
                for (TextPosition each : letters(document)) {
                    assertThat((double) each.getX()).as(each.getUnicode()).isBetween(12 * POINTS_IN_MM,
                            each.getPageWidth() - 8 * POINTS_IN_MM);
                    assertThat((double) each.getY()).isBetween(8 * POINTS_IN_MM, (double) each.getPageHeight());
                }
            }
        }
    }

    /** What stands below a drawing as its scale holds on paper. */
    @Test
    void drawingsOfPartsAreTrueToTheirScaleOnBothPapers() throws IOException {
        for (PaperSize size : PaperSize.values()) {
            Document ready = PaperPage.of(page, size);
            assertThat(ready.select("#drawings .row .drawn")).hasSizeGreaterThan(3).allSatisfy(drawn -> {
                String wide = drawn.select("svg").attr("viewBox").split(" ", -1)[2];
                assertThat(drawn.attr("style")).startsWith("width: " + wide + "mm");
            });
        }
    }

    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper all = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                letters.add(text);
            }
        };
        String _ = all.getText(document);
        return letters;
    }

    @Test
    void lettersInDrawingsStandWhereTheDrawingHasThemAndAreNeverUnderSixPoints() throws IOException {
        String svg = "<svg viewBox=\"0 0 100 100\" width=\"100mm\" height=\"100mm\"><g transform=\"translate(0 10)\">"
                + "<text x=\"10\" y=\"40\" font-size=\"10\">Hx</text>"
                + "<text x=\"50\" y=\"40\" text-anchor=\"middle\" font-size=\"1\">M</text></g></svg>";
        Document drawn = Jsoup.parse("<html lang=en><head><title>x</title></head><body style='margin: 0'>" + svg);
        try (PDDocument document = Loader.loadPDF(pdf(drawn, PaperSize.A4))) {
            List<TextPosition> letters = letters(document);
            TextPosition capital = letters.stream().filter(l -> l.getUnicode().equals("H") && l.getFontSizeInPt() > 20)
                    .findFirst().orElseThrow();
            // 18 mm of margin, and half of what is left beside the drawing.
            assertThat(capital.getX() / POINTS_IN_MM).isCloseTo(18 + (176 - 100) / 2.0 + 10, within(0.5));
            assertThat(capital.getY() / POINTS_IN_MM).isCloseTo(18 + 50, within(0.3));
            assertThat(capital.getFontSizeInPt() / POINTS_IN_MM).isCloseTo(10, within(0.2));
            assertThat(letters).allSatisfy(l -> assertThat(l.getFontSizeInPt()).isGreaterThan(5.95f));
        }
    }

    @Test
    void hostileNamesStayWords() throws IOException {
        String name = "<script>alert(1)</script> 'n &amp; ]]> \u202eRTL שלום 😀 中 " + "x".repeat(500);
        String text = text(pdf(page("project \"" + name + "\" { units mm }\n"
                + "/// url(http://example.org/x.png) \\n <img src=x>\n"
                + "part rail { length 300; width 40; thickness 12 }\n"), PaperSize.LETTER));
        assertThat(text).contains("<script>alert(1)</script>", "<img src=x>", "😀");
        assertThat(text.replaceAll("\\s+", "")).contains("x".repeat(500));
    }

    /** Letters that no font here has are named by their numbers; a name is never lost without a word. */
    @Test
    void lettersThatAreNotCarriedAreNamed() throws IOException {
        String text = text(pdf(page(Projects.text("tea-caddy").replace("Tea caddy", "Caddy 木箱 ω")), PaperSize.A4));
        assertThat(text).contains("U+6728, U+7BB1", "Caddy", "ω").doesNotContain("U+03C9");
        assertThat(text(caddy)).doesNotContain("does not carry");
    }

    @Test
    void aProjectWithoutPartsGivesASheet() throws IOException {
        assertThat(text(pdf(page("project \"Nothing yet\" { units mm }\n"), PaperSize.A4)))
                .contains("names no parts yet", "100 mm", "4 in");
    }

    /** The reader puts letters in their order by where they stand on the sheet, and so finds only what stands rightly. */
    @Test
    void wordsFromTheRightStandInTheirOrder() throws IOException {
        String text = Projects.text("tea-caddy").replace("\"Tea caddy\"", "\"קופסת תה 12 لوح\"")
                .replaceAll("\\bplank\\b", "קרש_דובדבן").replaceAll("\\bfront\\b", "جانب");
        try (PDDocument document = Loader.loadPDF(pdf(page(text), PaperSize.A4))) {
            StringBuilder placed = new StringBuilder();
            new PDFTextStripper() {
                @Override
                protected void writeString(String words, List<TextPosition> letters) {
                    letters.stream().map(TextPosition::getUnicode).forEach(placed::append);
                }
            }.getText(document);
            // By their places from left to right: the last letter first.
            assertThat(placed.toString()).contains("תספוק", "ןבדבוד_שרק", "\ufe90\ufee7\ufe8e\ufe9f");
            String read = new PDFTextStripper().getText(document);
            assertThat(read).contains("קופסת תה", "קרש_דובדבן", "جانب");
            // In the foot the title runs from the right, and what follows it still stands to its right.
            List<TextPosition> foot = letters(document).stream()
                    .filter(letter -> letter.getY() > letter.getPageHeight() - 18 * POINTS_IN_MM)
                    .filter(letter -> letter.getX() < letter.getPageWidth() / 2)
                    .toList();
            double words = foot.stream().filter(letter -> letter.getUnicode().equals("p"))
                    .mapToDouble(TextPosition::getX).min().orElseThrow();
            assertThat(foot).filteredOn(letter -> letter.getUnicode().equals("ק"))
                    .isNotEmpty()
                    .allMatch(letter -> letter.getX() < words);
        }
    }
}
