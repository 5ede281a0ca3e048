package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.model.Schemas;
import dev.treen.wood.Finish;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan costs, by hand. All prices are invented. */
class CostsTest {
    private static final String TEXT = """
            project "Two boards" { units mm; currency "EUR"; GLUE FINISH }
            board plank { species black_cherry; size 1200 x 160 x 20; moisture 9%; price { each 22 } }
            board bit { species black_cherry; size 1200 x 160 x 20; moisture 9% }
            part a { length 200; width 100; thickness 15; from plank; place { length right; width up; at 0, 0, 0 } }
            part b { length 200; width 100; thickness 15; from bit; place { length right; width up; at 0, -15, 0 } }
            joint nail b into a { count 3; thick 1.5; long 25 }
            """;

    private static Costs costs(String finish, String more) {
        return Costs.of(Projects.compile(TEXT.replace("GLUE", "").replace("FINISH", finish) + more).plan());
    }

    private static String line(Costs costs, String what) {
        return costs.supplies().stream().filter(each -> each.what().startsWith(what)).findFirst()
                .map(costs::words).orElse("none").replace('\u00a0', ' ');
    }

    /**
     * The faces of a board of 200 x 100 x 15 mm have 490 cm², of both 980. Three to eight coats of shellac at 10 to 14 m² a
     * litre are 21 to 78 ml, to five 20 and 80; at 31 a litre 0.62 and 2.48.
     */
    @Test
    void aFinishCostsWhatItsCoverageSays() {
        Costs costs = costs("finish { kind shellac; price { litre 31 } }", "");
        assertThat(line(costs, "finish: shellac")).isEqualTo("EUR 0.62 to 2.48, at EUR 31.00 a litre");
        assertThat(costs.supplies()).extracting(Supplies.Supply::what).noneMatch(what -> what.contains("varnish"));
        assertThat(costs.unpriced()).containsExactly("`bit`", "nails, 1.5 x 25 mm");
        assertThat(costs.sum().replace('\u00a0', ' ')).startsWith("Together EUR 22.62 to 24.48, for 2 of 4 priced");
    }

    @Test
    void finishesOfWhichOneIsWantedAreOneLine() {
        Costs costs = costs("", "");
        assertThat(costs.unpriced()).containsExactly("`bit`", "the finish", "nails, 1.5 x 25 mm");
        assertThat(costs.priced()).isEqualTo(1);
        assertThat(costs.lines()).isEqualTo(4);
    }

    /** A can of 50 ml: 20 ml are one can and 80 ml two. By weight, 50 and 100 ml at 0.9 kg a litre and 20 a kilogram. */
    @Test
    void cansAreBoughtWhole() {
        assertThat(line(costs("finish { kind shellac; pack 50; price { each 4 } }", ""), "finish"))
                .isEqualTo("EUR 4.00 to 8.00: 1 to 2 packs of 50 ml at EUR 4.00 each");
        assertThat(line(costs("finish { kind shellac; pack 50; weighs 0.9; price { kilogram 20 } }", ""), "finish"))
                .isEqualTo("EUR 0.90 to 1.80: 1 to 2 packs of 50 ml at EUR 20.00 a kilogram");
    }

    @Test
    void aNamedFinishIsFoundAndItsBlockOverruled() {
        String can = "\nfinish can { kind shellac; pack 500; price { each 12 } }\n";
        assertThat(line(costs("finish can", can), "finish")).isEqualTo("EUR 12.00: 1 pack of 500 ml at EUR 12.00 each");
        assertThat(line(costs("finish can { price { each 10 } }", can), "finish"))
                .isEqualTo("EUR 10.00: 1 pack of 500 ml at EUR 10.00 each");
    }

    /** The hardware that says most of the sizes is the one; the length counts before the thickness. */
    @Test
    void hardwareIsFoundByKindAndSizes() {
        String all = "\nhardware brad { kind nail; price { each 0.10 } }\n";
        assertThat(line(costs("", all), "nails")).isEqualTo("EUR 0.30, at EUR 0.10 each");
        all += "hardware stout { kind nail; thick 1.5; price { each 0.20 } }\n";
        assertThat(line(costs("", all), "nails")).isEqualTo("EUR 0.60, at EUR 0.20 each");
        all += "hardware long { kind nail; long 25; pack 100; price { each 4.50 } }\n";
        assertThat(line(costs("", all), "nails")).isEqualTo("EUR 4.50: 1 pack of 100 at EUR 4.50 each");
        assertThat(line(costs("", "\nhardware other { kind nail; long 30; price { each 9 } }\n"), "nails"))
                .isEqualTo("not said");
        assertThat(line(costs("", "\nhardware knob { count 2; price { each 3.20 } }\n"), "knob"))
                .isEqualTo("EUR 6.40, at EUR 3.20 each");
    }

    @Test
    void withoutACurrencyNoneIsWritten() {
        Costs costs = Costs.of(Projects.compile(
                TEXT.replace("currency \"EUR\"; GLUE FINISH", "")).plan());
        assertThat(costs.sum()).startsWith("Together 22.00, for 1 of 4 priced");
    }

    @Test
    void theLinesOfThePlanAddUpToItsSum() throws IOException {
        JsonNode shopping = new ObjectMapper().readTree(PlanJson.of(Projects.compile(TEXT
                .replace("GLUE", "").replace("FINISH", "finish { kind drying_oil; price { litre 17.35 } }")).plan()))
                .get("shopping");
        double most = 0;
        for (JsonNode line : shopping.get("lines")) {
            most += line.has("cost") ? line.get("cost").get("most").asDouble() : 0;
        }
        assertThat(shopping.get("together").get("most").asDouble()).isEqualTo(Math.round(most * 100) / 100.0);
        assertThat(shopping.get("priced").asInt()).isEqualTo(2);
        assertThat(shopping.get("counted").asInt()).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "glue x | missing-property",
            "finish | missing-property",
            "hardware { count 1 } | missing-property",
            "hardware a { price { each 3 } } | missing-property",
            "hardware a { count 1; price { litre 3 } } | wrong-kind",
            "hardware a { count 1; price { } } | wrong-kind",
            "hardware a { count 1; price { each 3; litre 3 } } | wrong-kind",
            "hardware a { count 2.5 } | wrong-kind",
            "hardware a { count 1; price { each 0 } } | out-of-range",
            "hardware a { kind hinge; count 2 } | does-not-belong",
            "hardware a { kind hinge }; hardware b { kind hinge } | same-name",
            "hardware a { count 1 }; hardware a { count 2 } | same-name"})
    void whatIsWrongIsSaid(String line, String code) {
        assertThat(Projects.codes(Projects.compile(TEXT.replace("GLUE FINISH", "") + line + "\n").findings()))
                .contains(code);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "finish { price { litre 3 } } | missing-property",
            "finish { kind shellac; price { each 3 } } | missing-property",
            "finish { kind shellac; price { kilogram 3 } } | missing-property",
            "finish { kind wax } | wrong-kind",
            "finish unknown | unknown-name",
            "glue { price { each 8 } } | missing-property"})
    void whatIsWrongInTheProjectIsSaid(String words, String code) {
        assertThat(Projects.codes(Projects.compile(TEXT.replace("GLUE FINISH", words)).findings())).contains(code);
    }

    @Test
    void theFinishesOfTheLanguageAreThoseOfTheTable() {
        assertThat(Schemas.FINISH_KINDS).isEqualTo(List.copyOf(Finish.all().stream().map(Finish::word).toList()));
    }

    /** Of two boards of 490 cm² each, the second with no finish, then with one face of 200 cm² left raw. */
    @Test
    void partsThatStayRawTakeNoFinish() {
        assertThat(reckoned("")).contains("980 cm² of surface, all faces of all parts");
        assertThat(reckoned("finish none; ")).contains("490 cm² of surface, the faces that are finished");
        assertThat(reckoned("finish one; ")).contains("780 cm² of surface, the faces that are finished");
    }

    private static String reckoned(String second) {
        String text = TEXT.replace("GLUE", "").replace("FINISH", "").replace("part b { ", "part b { " + second);
        return Supplies.of(Projects.compile(text).joined(), List.of()).stream()
                .filter(each -> each.group() == Supplies.Group.FINISH)
                .map(Supplies.Supply::reckoned)
                .findFirst()
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource({"price 45, 5, each", "price 45 board_foot, 1, board_foot"})
    void aPriceThatDoesNotSayForHowMuchCanBeMended(String written, int ways, String first) {
        String text = TEXT.replace("GLUE", "").replace("FINISH", "").replace("price { each 22 }", written);
        Finding finding = Projects.compile(text).findings().stream()
                .filter(each -> each.headline().contains("for how much of it")).findFirst().orElseThrow();
        assertThat(finding.remedies()).hasSize(ways);
        String mended = Edit.applied(text, finding.remedies().getFirst().edits());
        assertThat(mended).contains("price { " + first + " 45 }");
        assertThat(Projects.compile(mended).findings()).noneMatch(each -> each.headline().contains("price"));
    }
}
