package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the data files to the form that the reader and the house rely on. */
class DataFilesTest {

    @ParameterizedTest
    @ValueSource(strings = {
            "dimensional_change.csv", "shrinkage.csv", "mechanical.csv", "emc_equation.csv", "recommended_mc.csv",
            "fasteners.csv", "adhesives.csv", "safety.csv", "thresholds.csv", "sheet_goods.csv", "trade_names.csv",
            "finishes.csv"
    })
    void everyRowIsWholeAndSourced(String file) throws IOException {
        List<List<String>> expected = letterByLetter(text(file));
        List<String> header = expected.removeFirst();
        List<Csv.Row> rows = Csv.load(file).rows();
        assertThat(rows).extracting(Csv.Row::cells).isEqualTo(expected);
        for (Csv.Row row : rows) {
            assertThat(row.cells()).as("%s", row).hasSameSizeAs(header);
            assertThat(row.text("source")).as("%s", row).isNotBlank();
            if (header.contains("provenance")) {
                assertThat(row.text("provenance")).as("%s", row).isNotBlank();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"dimensional_change.csv", "shrinkage.csv", "mechanical.csv"})
    void oneRowOfEachSpeciesIsInUse(String file) {
        Map<String, Integer> preferred = new HashMap<>();
        for (Csv.Row row : Csv.load(file).rows()) {
            preferred.merge(row.text("species_id"), Integer.parseInt(row.text("preferred")), Integer::sum);
        }
        assertThat(preferred.values()).containsOnly(1);
    }

    @Test
    void tradeNamesAndCautionsNameKnownSpecies() {
        List<String> ids = SpeciesTable.published().ids();
        for (Csv.Row row : Csv.load("trade_names.csv").rows()) {
            assertThat(ids).contains(row.text("species_id").replace('-', '_'));
            assertThat(ids).doesNotContain(row.text("trade_name"));
        }
        for (Csv.Row row : Csv.load("safety.csv").rows()) {
            if (!row.text("species_ids").isEmpty()) {
                assertThat(ids).contains(row.text("species_ids").replace('-', '_').split(";"));
            }
        }
    }

    @Test
    void figuresKnowTheirOrigin() {
        for (Figure figure : Figures.standard().all()) {
            assertThat(figure.rule()).matches("[MSQJFO]-(\\d\\d[a-z]?|[a-j])");
            assertThat(figure.meaning()).isNotBlank();
            assertThat(figure.citation().provenance())
                    .isIn("published", "derived", "from memory", "common practice, no source");
        }
        assertThatThrownBy(() -> Figures.standard().get("nothing")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aProjectMayOverruleAFigure() {
        Figures own = Figures.standard().with("panel-tight.warning", 0.6);
        assertThat(own.value("panel-tight.warning")).isEqualTo(0.6);
        assertThat(own.get("panel-tight.warning").citation()).isEqualTo(Citation.declared());
        assertThat(own.value("panel-tight.error")).isZero();
        assertThat(Figures.standard().value("panel-tight.warning")).isEqualTo(0.3);
    }

    @Test
    void cautions() {
        assertThat(Cautions.all()).hasSize(63);
        assertThat(Cautions.ofKind("fire")).extracting(Caution::hazard).anyMatch(hazard -> hazard.startsWith("rags"));
        Species walnut = SpeciesTable.published().get("black_walnut").orElseThrow();
        assertThat(Cautions.forSpecies(walnut)).extracting(Caution::id).containsExactly("S060");
        Species oak = SpeciesTable.published().get("post_oak").orElseThrow();
        assertThat(Cautions.forSpecies(oak)).extracting(Caution::id).containsExactly("S061");
        assertThat(Cautions.forSpecies(Species.declared("plum", 0.003, 0.002))).isEmpty();
    }

    /** Wood Handbook FPL-GTR-282 Table 10-1 and Table 13-2. */
    @Test
    void adhesivesAndAdvice() {
        assertThat(Adhesive.published()).hasSize(21).anySatisfy(glue -> {
            assertThat(glue.name()).isEqualTo("hot hide glue");
            assertThat(glue.openMinutes().high()).hasValue(10);
        });
        List<MoistureAdvice> advice = MoistureAdvice.published();
        assertThat(advice).hasSize(39);
        assertThat(advice.getFirst().average()).hasValue(8);
        assertThat(advice).allSatisfy(row -> assertThat(row.months().size()).isIn(0, 12));
    }

    private static String text(String file) throws IOException {
        try (InputStream in = Csv.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text).doesNotContain("\r", "\t", "\"\"").endsWith("\n");
            return text;
        }
    }

    /** A second reading, one letter at a time, as RFC 4180 has it. */
    private static List<List<String>> letterByLetter(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '"') {
                quoted = !quoted;
            } else if (!quoted && (letter == ',' || letter == '\n')) {
                cells.add(cell.toString());
                cell.setLength(0);
                if (letter == '\n') {
                    rows.add(cells);
                    cells = new ArrayList<>();
                }
            } else {
                cell.append(letter);
            }
        }
        return rows;
    }
}
