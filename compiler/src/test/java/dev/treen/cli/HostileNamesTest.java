package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.treen.plan.Projects;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

/** Names that are more than letters, through the whole command: every file stays well formed, and no name is lost. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileNamesTest {
    private static final String TITLE = "<script>alert(1)</script> \"x\" 'y' &amp; ]]> --> 😀 שלום 木箱 "
            + "t".repeat(500);
    private static final String NOTE = "=1+1, \"note\" <img src=x onerror=alert(2)> ]]> ``` 😀 הערה 備考 "
            + "n".repeat(500);
    private static final String LONG = "p".repeat(500);
    private static final List<String> PARTS = List.of("צד", "前板", LONG);
    private static final String BOARD = "קרש_木";

    private final TreeMap<String, byte[]> files = new TreeMap<>();
    private String complained = "";

    @BeforeAll
    void build(@TempDir Path folder) throws IOException {
        Path project = folder.resolve("hostile.treen");
        Files.writeString(project, Projects.text("tea-caddy")
                .replace("\"Tea caddy\"", '"' + TITLE.replace("\"", "\\\"") + '"')
                .replace("/// The face that is seen first: the best figure of the plank.", "/// " + NOTE)
                .replaceAll("\\bplank\\b", BOARD)
                .replaceAll("\\bfront\\b", PARTS.get(0))
                .replaceAll("\\bbase\\b", PARTS.get(1))
                .replaceAll("\\blid\\b", LONG));
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(List.of("build", project.toString(), "-o", folder.resolve("out").toString()),
                new Subcommand.Streams(InputStream.nullInputStream(),
                        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8)));
        complained = err.toString(StandardCharsets.UTF_8);
        assertThat(code).as(complained).isZero();
        try (Stream<Path> made = Files.list(folder.resolve("out"))) {
            for (Path file : made.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
    }

    private String text(String file) {
        return new String(files.get(file), StandardCharsets.UTF_8);
    }

    private List<String> ending(String with) {
        List<String> found = files.keySet().stream().filter(name -> name.endsWith(with)).toList();
        assertThat(found).as(with).isNotEmpty();
        return found;
    }

    private List<CSVRecord> rows(String file) throws IOException {
        CSVFormat strict = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text(file)), strict)) {
            return parser.getRecords();
        }
    }

    @Test
    void nothingIsComplainedOf() {
        assertThat(complained).isEmpty();
    }

    @Test
    void pagesHoldTheNamesAsWordsAndNoScript() {
        for (String file : ending(".html")) {
            Document page = Jsoup.parse(text(file));
            assertThat(page.select("script:containsData(alert)")).as(file).isEmpty();
            assertThat(page.select("img[src=x], [onerror]")).as(file).isEmpty();
            assertThat(page.title()).as(file).contains("<script>alert(1)</script>");
            assertThat(page.body().wholeText()).as(file).contains(TITLE).contains(PARTS).contains(BOARD);
        }
        assertThat(Jsoup.parse(text("plan.html")).body().wholeText()).contains(NOTE);
    }

    @Test
    void listsAreReadBack() throws IOException {
        for (String file : ending(".csv")) {
            assertThat(rows(file)).as(file).isNotEmpty()
                    .allSatisfy(row -> assertThat(row.isConsistent()).isTrue());
        }
        List<String> parts = new ArrayList<>();
        rows("cut-list.csv").forEach(row -> parts.addAll(List.of(row.get("parts").split(", ", -1))));
        assertThat(parts).containsAll(PARTS);
        assertThat(rows("cut-list.csv")).extracting(row -> row.get("notes")).anySatisfy(
                note -> assertThat(note).isEqualTo("'" + NOTE));
        assertThat(text("shopping.csv")).contains(BOARD);
    }

    @Test
    void dataIsParsed() throws IOException {
        String json = new ObjectMapper().readTree(text("plan.json")).toString();
        String title = new ObjectMapper().writeValueAsString(TITLE);
        assertThat(json).contains(title).contains(PARTS).contains(BOARD);
        for (String file : ending(".gltf")) {
            assertThat(new ObjectMapper().readTree(text(file)).toString()).as(file).contains(PARTS);
        }
    }

    @Test
    void drawingsAreParsedAndHoldNoScript() throws Exception {
        DocumentBuilderFactory xml = DocumentBuilderFactory.newInstance();
        xml.setNamespaceAware(true);
        for (String file : ending(".svg")) {
            var drawing = xml.newDocumentBuilder().parse(new InputSource(new StringReader(text(file))));
            assertThat(drawing.getElementsByTagNameNS("*", "script").getLength()).as(file).isZero();
        }
    }

    @Test
    void thePrintedPlanHasTheNamesOrSaysWhatItLacks() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(files.get("plan.pdf"))) {
            String text = new PDFTextStripper().getText(pdf);
            String joined = text.replaceAll("\\s+", "");
            assertThat(joined).contains("<script>alert(1)</script>", "t".repeat(500), "n".repeat(500), LONG);
            assertThat(text).contains("does not carry", "U+6728", "U+7BB1", "U+524D", "U+677F", "U+5099", "U+8003");
        }
    }

    @Test
    void theTextsHoldTheNamesAndNoScript() {
        for (String file : List.of("order.md", "plan.md")) {
            // What is fenced is shown as it is; a fence is longer than any row of backticks in it.
            String words = text(file).replaceAll("(?ms)^(`{3,})\\n.*?^\\1$", "");
            assertThat(words).as(file).contains("木箱", "t".repeat(500)).contains(PARTS);
            // A name's marks are put out of force by a backslash.
            assertThat(words.replaceAll("\\\\.", "")).as(file).doesNotContain("<script", "<img");
        }
        assertThat(text("plan.md")).as("a longer fence").contains("\n````\n");
    }
}
