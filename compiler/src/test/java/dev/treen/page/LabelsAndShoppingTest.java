package dev.treen.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Plan;
import dev.treen.plan.Projects;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Labels and the shopping list, read back by libraries that had no part in writing them. */
class LabelsAndShoppingTest {
    private static final String HOSTILE = """
            project "=1+1 <b>, \\"x\\" 😀" { units mm }
            board plank { size 900 x 140 x 20 }
            part rail { length 300; width 40; thickness 12; from plank }
            """;

    @Test
    void everyPartHasItsLabel() {
        Plan plan = Projects.example("tea-caddy").plan();
        Document page = Jsoup.parse(Labels.of(plan));
        assertThat(page.select("li")).hasSize(plan.joined().parts().size());
        assertThat(page.select("li").first().text()).contains("A", "front", "178 × 94 × 9 mm", "plank leaf 1", "grain");
        assertThat(Jsoup.parse(Labels.of(Projects.compile(HOSTILE).plan())).select("h1").text())
                .isEqualTo("=1+1 <b>, \"x\" 😀");
    }

    @Test
    void theShoppingListIsReadBack() throws IOException {
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(ShoppingCsv.of(Projects.example("tea-caddy").plan())))
                .getRecords();
        assertThat(rows).allSatisfy(row -> assertThat(row.size()).isEqualTo(5));
        assertThat(rows.get(1)).containsExactly("board, black cherry", "1", "", "900 x 140 x 27 mm", "plank");
        assertThat(rows.stream().map(row -> row.get(0))).contains("glue", "finish, if it is shellac");
    }

    /** Counted by hand from the project: two nails in each of four corners, and two in each end of the base. */
    @Test
    void whatTheJointsTakeIsOnTheShoppingList() throws IOException {
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(ShoppingCsv.of(Projects.joint("nail").plan())))
                .getRecords();
        assertThat(rows.stream().filter(row -> row.get(0).contains("nails")).map(row -> row.get(0) + ": " + row.get(1)))
                .containsExactly("nails, 1.2 x 40 mm: 8", "nails, 1.2 x 30 mm: 4");
        List<CSVRecord> hung = CSVFormat.RFC4180
                .parse(new StringReader(ShoppingCsv.of(Projects.joint("hinge").plan())))
                .getRecords();
        assertThat(hung.stream().filter(row -> row.get(0).contains("hinges")).map(row -> row.get(1)))
                .as("two on the one lid, told once")
                .containsExactly("2");
    }
}
