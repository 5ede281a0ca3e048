package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.Natures;
import dev.treen.model.Schemas;
import dev.treen.order.Phase;
import dev.treen.order.Step;
import dev.treen.wood.SheetGood;
import dev.treen.wood.SheetGoods;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts that are bought ready: in every list, and in no step that makes anything. */
class BoughtPartsTest {
    private static final String HEAD = """
            project "Frame" { units mm; currency "EUR"; climate { humidity 40%..60%; temperature 18degC..22degC } }
            board plank { species black_cherry; size 900 x 140 x 24; moisture 9% }
            part bar { length 300; width 40; thickness 18; from plank; place { length right; width back; at 0, 0, 0 } }
            """;

    private static Compilation with(String rest) {
        return Projects.compile(HEAD + rest);
    }

    private static List<Step> steps(Compilation compilation, String part) {
        return compilation.order().steps().stream()
                .filter(step -> step.operation().parts().contains(part))
                .toList();
    }

    @Test
    void aPaneIsLaidInWhenTheFrameHasItsFinishAndIsInNoOtherStep() {
        Compilation frame = Projects.example("print-frame");
        assertThat(frame.findings()).isEmpty();
        assertThat(frame.cutting().unplaced()).isEmpty();
        assertThat(frame.cutting().boards()).allSatisfy(board -> assertThat(board.parts())
                .noneMatch(part -> part.blank().parts().contains("print.pane")));
        List<Step> pane = steps(frame, "print.pane");
        assertThat(pane).extracting(step -> step.operation().phase()).containsExactly(Phase.MOUNT);
        assertThat(pane.getFirst().operation().action()).contains("without glue");
        List<Step> bars = steps(frame, "print.top");
        assertThat(bars.stream().filter(step -> step.operation().phase() == Phase.FINISH)).isNotEmpty()
                .allMatch(step -> step.number() < pane.getFirst().number());
        assertThat(frame.order().steps()).noneMatch(step -> step.operation().action().contains("pin the rebates"));
    }

    @Test
    void itIsInTheCutListAsBoughtAndAmongWhatIsToBeBought() {
        Compilation frame = Projects.example("print-frame");
        CutList list = CutList.of(frame.plan());
        assertThat(list.rows()).filteredOn(CutList.Row::bought).singleElement().satisfies(row -> {
            assertThat(row.parts()).containsExactly("print.pane");
            assertThat(row.species()).isEqualTo("glass");
        });
        assertThat(list.totals().stream().mapToInt(CutList.Total::parts).sum()).isEqualTo(4);
        assertThat(Costs.of(frame.plan()).supplies()).filteredOn(each -> each.group() == Supplies.Group.PART)
                .singleElement()
                .satisfies(each -> assertThat(each.what()).startsWith("glass, 300").contains("200"));
        assertThat(CutListCsv.of(frame.plan())).contains("300,200,5,,,,glass,");
    }

    /** Two panes of 200 x 150 mm are 0.06 m²; at 40 a square metre 1.20 each. */
    @Test
    void whatIsAlikeIsBoughtTogetherAndPricedByItsSize() {
        Costs costs = Costs.of(with("""
                part one { length 200; width 150; thickness 3; bought glass; price { square_metre 40 } }
                part two { length 200; width 150; thickness 3; bought glass; price { square_metre 40 } }
                """).plan());
        assertThat(costs.supplies()).filteredOn(each -> each.group() == Supplies.Group.PART).singleElement()
                .satisfies(each -> {
                    assertThat(each.least()).isEqualTo(2);
                    assertThat(costs.words(each).replace('\u00a0', ' ')).startsWith("EUR 2.40");
                });
    }

    /** A panel of glass in a groove is closed in dry; nobody planes it to the opening. */
    @Test
    void aPaneInAGrooveIsCutByItsSellerToWhatWasMeasured() {
        Compilation door = with("""
                part pane { length 300; width 200; thickness 4; bought glass; place { length right; width up; at 0, 18, 18 } }
                joint groove pane into bar { deep 6 }
                """);
        assertThat(door.findings()).isEmpty();
        assertThat(steps(door, "pane")).extracting(step -> step.operation().action())
                .anyMatch(action -> action.startsWith("Have ") && action.contains("cut by its seller"))
                .noneMatch(action -> action.startsWith("Make ") || action.startsWith("Finish")
                        || action.startsWith("Clean") || action.startsWith("Glue"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"from plank", "finish both", "glue_up { staves 2 }"})
    void whatIsSaidOfHowItIsMadeContradicts(String made) {
        assertThat(Projects.codes(with("part pane { length 200; width 150; thickness 3; bought glass; " + made + " }\n")
                .findings())).containsExactly("bought-and-made");
    }

    @Test
    void whatTheThingAroundItSaysOfItsPartsDoesNot() {
        assertThat(Projects.example("print-frame").findings()).isEmpty();
        assertThat(Projects.codes(with("part pane { length 200; width 150; thickness 3; bought glass; finish none }\n")
                .findings())).isEmpty();
    }

    @Test
    void aWoodIsNamedAsTheTablesNameItAndAStuffAsTheyDo() {
        assertThat(Projects.codes(with("part pane { length 200; width 150; thickness 3; bought glas }\n").findings()))
                .containsExactly("unknown-species");
        assertThat(with("part knob { length 20; width 20; thickness 20; bought european_beech }\n").findings())
                .isEmpty();
    }

    @Test
    void woodMovesAndGlassDoesNot() {
        Compilation both = with("""
                part knob { length 200; width 200; thickness 20; bought european_beech }
                part pane { length 200; width 200; thickness 3; bought glass }
                """);
        Natures natures = both.joined().natures();
        assertThat(natures.of(both.joined().part("knob").orElseThrow().part()).swelling(1, 200)).isPositive();
        assertThat(natures.of(both.joined().part("pane").orElseThrow().part()).swelling(1, 2000)).isZero();
    }

    @Test
    void theReferenceNamesAllThatPartsAreBoughtOf() {
        assertThat(SheetGoods.foreign()).extracting(SheetGood::id).allSatisfy(stuff -> assertThat(
                Schemas.PART.property("bought").orElseThrow().doc()).contains("`" + stuff + "`"));
    }
}
