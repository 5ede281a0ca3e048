package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The cut list as an independent reader of RFC 4180 takes it. */
class CutListCsvTest {

    private static List<CSVRecord> read(String csv) throws IOException {
        CSVFormat strict = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(new StringReader(csv), strict)) {
            return parser.getRecords();
        }
    }

    @Test
    void everyPartIsThereOnceWithItsSizes() throws IOException {
        List<CSVRecord> rows = read(CutListCsv.of(Projects.example("wall-shelf").plan()));
        assertThat(rows).hasSize(2).allSatisfy(row -> assertThat(row.isConsistent()).isTrue());
        assertThat(rows.get(0).get("parts")).isEqualTo("side_left, side_right");
        assertThat(rows.get(1).get("parts")).isEqualTo("shelf[1], shelf[2], shelf[3]");
        assertThat(rows.get(1).get("count")).isEqualTo("3");
        assertThat(rows.get(1).get("finished length in")).isEqualTo("30 3/8");
        assertThat(rows.get(1).get("mark")).isEqualTo("B");
    }

    @Test
    void whatIsMadeToFitIsMarked() throws IOException {
        List<CSVRecord> rows = read(CutListCsv.of(Projects.example("tea-caddy").plan()));
        assertThat(rows).filteredOn(row -> row.get("notes").startsWith("to fit"))
                .extracting(row -> row.get("parts"))
                .containsExactly("base", "lid");
    }

    /** Common practice, no source: a spreadsheet takes a cell that begins with = + - or @ for a formula. */
    @Test
    void textOfAProjectStaysText() throws IOException {
        String csv = CutListCsv.of(Projects.compile("""
                project "x" { units mm }
                /// =SUM(A1:A9), "quoted"
                part a { length 100; width 50; thickness 10 }
                """).plan());
        assertThat(read(csv).getFirst().get("notes")).isEqualTo("'=SUM(A1:A9), \"quoted\"");
    }

    @Test
    void linesEndAsTheStandardSays() {
        String csv = CutListCsv.of(Projects.example("tea-caddy").plan());
        assertThat(csv.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(csv).endsWith("\r\n");
    }

    @Test
    void marksGoOnAfterZ() {
        String many = "project \"x\" { units mm }\nrepeat i in 1..30 { part p[i] { length 100 + i * 1mm; width 5; thickness 4 } }";
        List<CutList.Row> rows = CutList.of(Projects.compile(many).plan()).rows();
        assertThat(rows.get(25).mark()).isEqualTo("Z");
        assertThat(rows.get(26).mark()).isEqualTo("AA");
        assertThat(rows.get(29).mark()).isEqualTo("AD");
    }
}
