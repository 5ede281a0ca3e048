package dev.treen.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.cutting.BoardCut;
import dev.treen.drawing.Corners;
import dev.treen.plan.Costs;
import dev.treen.plan.Plan;
import dev.treen.plan.Projects;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        String board = plan.cutting().boards().stream()
                .filter(cut -> cut.parts().stream().anyMatch(each -> each.name().equals("front")))
                .map(BoardCut::name)
                .findFirst()
                .orElseThrow();
        assertThat(page.select("li")).hasSize(plan.joined().parts().size());
        assertThat(page.select("li").first().text()).contains("A", "front", "178 × 94 × 9 mm", board, "grain");
        assertThat(Jsoup.parse(Labels.of(Projects.compile(HOSTILE).plan())).select("h1").text())
                .isEqualTo("=1+1 <b>, \"x\" 😀");
    }

    /** Each corner's number stands on both its parts and on no other; the panels, which lie loose, have none. */
    @Test
    void bothPartsOfACornerBearItsNumber() {
        Plan plan = Projects.example("tea-caddy").plan();
        Map<String, List<String>> numbers = new HashMap<>();
        Jsoup.parse(Labels.of(plan)).select("li").forEach(label -> numbers.put(
                label.select(".name").first().text(), label.select(".corner").eachText()));
        assertThat(numbers.get("base")).isEmpty();
        assertThat(numbers.get("lid")).isEmpty();
        for (String side : List.of("front", "back", "left", "right")) {
            assertThat(numbers.get(side)).as(side).hasSize(2).doesNotHaveDuplicates();
        }
        assertThat(numbers.values().stream().flatMap(List::stream).sorted())
                .containsExactly("1", "1", "2", "2", "3", "3", "4", "4");
    }

    @Test
    void aNumberStandsAtTheEndWhereThePartsMeet() {
        // The stile stands at the left of the rail; as the rail lies before its maker, that is one of its two ends.
        Corners corners = Corners.of(Projects.compile("""
                project "Frame" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board ash { species white_ash; size 2400 x 180 x 24; rings quarter; moisture 9% }
                part stile { length 500; width 50; thickness 20; from ash; place { length up; width right; at -50, 0, 0 } }
                part other like stile { place { at 300, 0, 0 } }
                part rail { length 300; width 40; thickness 20; from ash; place { length right; width up; at 0, 0, 230 } }
                joint mortise_tenon rail into stile, other
                """).joined());
        assertThat(corners.pairs()).containsExactly(
                new Corners.Pair(1, "rail", "stile"), new Corners.Pair(2, "rail", "other"));
        assertThat(corners.on("rail")).extracting(Corners.Mark::spot)
                .containsExactlyInAnyOrder(Corners.Spot.LEFT_END, Corners.Spot.RIGHT_END);
        assertThat(corners.on("stile")).containsExactly(new Corners.Mark(1, Corners.Spot.BETWEEN));
    }

    @Test
    void theShoppingListIsReadBack() throws IOException {
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(ShoppingCsv.of(Projects.example("tea-caddy").plan())))
                .getRecords();
        assertThat(rows).allSatisfy(row -> assertThat(row.size()).isEqualTo(8));
        assertThat(rows.get(1)).containsExactly("board, black cherry", "1", "", "900 x 140 x 27 mm", "plank", "", "",
                "");
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

    private static final String PRICED = """
            project "Jar rack" { units mm; currency "EUR" }
            board plank { species black_cherry; size 1000 x 200 x 25; moisture 9%; price { cubic_metre 2400 } }
            board lath { species black_cherry; size 1000 x 100 x 25; moisture 9% }
            part rail { length 900; width 180; thickness 20; from plank }
            part end { length 300; width 80; thickness 20; from lath }
            """;

    /** By hand: 1 m x 0.2 m x 0.025 m is 0.005 m³, at 2400 a cubic metre 12. */
    @Test
    void costsAreThoseOfTheBoardsAndWhatHasNoPriceIsSaid() throws IOException {
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(ShoppingCsv.of(Projects.compile(PRICED).plan())))
                .getRecords();
        assertThat(rows.get(1).toList().subList(4, 8)).containsExactly("plank", "12.00", "12.00", "EUR");
        assertThat(rows.get(2).toList().subList(4, 8)).containsExactly("lath", "", "", "");
        assertThat(rows.getLast().toList()).containsExactly("together", "", "", "",
                "1 of 3 priced; not said: lath; the finish", "12.00", "12.00", "EUR");
    }

    /** By hand: 0.2 m² of face; 2 board feet are 288 cubic inches, 0.0047195 m³; 1 square foot is 0.09290304 m². */
    @Test
    void aPriceIsByBoardVolumeOrFace() {
        assertThat(costs("each 7.5")).isEqualTo("7.50");
        assertThat(costs("square_metre 60")).isEqualTo("12.00");
        assertThat(costs("board_foot 10")).isEqualTo("21.19");
        assertThat(costs("square_foot 10")).isEqualTo("21.53");
        assertThat(Projects.codes(Projects.compile(PRICED.replace("cubic_metre 2400", "")).checked().findings()))
                .contains("wrong-kind");
        assertThat(Projects.codes(Projects.compile(PRICED.replace("2400", "2400; each 3")).checked().findings()))
                .contains("wrong-kind");
    }

    private static String costs(String price) {
        return Costs.of(Projects.compile(PRICED.replace("cubic_metre 2400", price)).checked().joined().project()
                .boards().getFirst()).orElseThrow().least().toPlainString();
    }

    /** Two boards that hold the part: the smaller is dearer, and the layout takes the cheaper. */
    @Test
    void theLayoutTakesTheCheapestBoardsWhereAllHaveAPrice() {
        String text = """
                project "Jar rack" { units mm; currency "£" }
                board small { species black_cherry; size 1000 x 100 x 25; moisture 9%; price { each 30 } }
                board large { species black_cherry; size 2000 x 200 x 25; moisture 9% PRICE }
                part rail { length 900; width 80; thickness 20 }
                """;
        assertThat(taken(text.replace("PRICE", "; price { each 20 }"))).isEqualTo("large");
        assertThat(taken(text.replace("PRICE", "; price { each 40 }"))).isEqualTo("small");
        assertThat(taken(text.replace("PRICE", ""))).as("by area where a price is missing").isEqualTo("small");
    }

    private static String taken(String text) {
        return Costs.of(Projects.compile(text).plan()).boards().stream().map(b -> b.name()).reduce("", String::concat);
    }
}
