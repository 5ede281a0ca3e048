package dev.treen.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.spelling.Near;
import dev.treen.spelling.Slips;
import dev.treen.wood.SpeciesTable.Lookup;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesTableTest {

    private static final SpeciesTable TABLE = SpeciesTable.published();

    /** Wood Handbook FPL-GTR-190 Tables 13-5, 4-3 and 5-3a. */
    @Test
    void blackCherry() {
        Species cherry = TABLE.get("black_cherry").orElseThrow();
        Coefficients movement = cherry.coefficients().orElseThrow();
        assertThat(movement.tangential()).isEqualTo(0.00248);
        assertThat(movement.radial()).isEqualTo(0.00126);
        assertThat(movement.citation().source()).isEqualTo("Wood Handbook FPL-GTR-190 Table 13-5");
        assertThat(movement.citation().edition()).isEqualTo("2010");
        assertThat(cherry.botanicalName()).isEqualTo("Prunus serotina");
        assertThat(cherry.kind()).isEqualTo(Species.Kind.HARDWOOD);
        assertThat(cherry.shrinkage().orElseThrow().tangential()).hasValue(7.1);
        assertThat(cherry.strength().orElseThrow().specificGravity()).hasValue(0.5);
        assertThat(cherry.strength().orElseThrow().modulusOfElasticity()).hasValue(10300);
    }

    /** Coefficients of Table 13-5 that the worked examples rely on; editions as named in the file. */
    @ParameterizedTest(name = "{0}: {1}, {2} (Wood Handbook Table 13-5)")
    @CsvSource({
            "sugar_maple, 0.00353, 0.00165, 2010", "american_beech, 0.00431, 0.00190, 2010",
            "black_walnut, 0.00274, 0.00190, 2010", "white_ash, 0.00274, 0.00169, 2010",
            "eastern_white_pine, 0.00212, 0.00071, 2021", "white_oak_commercial_group, 0.00365, 0.00180, 2010",
            "red_oak_commercial_group, 0.00369, 0.00158, 2010", "white_oak, 0.00376, 0.00194, 2021",
            "northern_red_oak, 0.00304, 0.00137, 2021"
    })
    void coefficients(String id, double tangential, double radial, String edition) {
        Coefficients pair = TABLE.get(id).orElseThrow().coefficients().orElseThrow();
        assertThat(pair.tangential()).isEqualTo(tangential);
        assertThat(pair.radial()).isEqualTo(radial);
        assertThat(pair.citation().edition()).isEqualTo(edition);
    }

    @Test
    void allPublishedEditionsAreKept() {
        List<Coefficients> editions = TABLE.editions("black_oak");
        assertThat(editions).hasSizeGreaterThan(1);
        // The printed 2010 figure does not follow from the printed shrinkage, so the derived one is in use.
        assertThat(editions.getFirst().tangential()).isCloseTo(0.004, within(5e-5));
        assertThat(TABLE.editions("nothing")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"black_cherry", "Black cherry", " black-cherry ", "BLACK_CHERRY"})
    void spellings(String name) {
        assertThat(TABLE.find(name))
                .isInstanceOfSatisfying(
                        Lookup.Found.class, found -> assertThat(found.species().id()).isEqualTo("black_cherry"));
    }

    /** Names of the trade: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
            "cherry, black_cherry;sweet_cherry", "hard maple, black_maple;sugar_maple", "teaks, ''",
            "white pine, eastern_white_pine;western_white_pine", "hornbeam, european_hornbeam"
    })
    void tradeNames(String name, String candidates) {
        switch (TABLE.find(name)) {
            case Lookup.Candidates some -> assertThat(some.candidates()).containsExactly(candidates.split(";"));
            case Lookup.Unknown unknown -> {
                assertThat(candidates).isEmpty();
                assertThat(unknown.near()).contains("teak");
            }
            case Lookup.Found found -> throw new AssertionError("found " + found);
        }
    }

    @ParameterizedTest
    @CsvSource({"blak_cherry, black_cherry", "sugar_mapel, sugar_maple", "yelow_brich, yellow_birch", "saple, sapele"})
    void misspellings(String written, String meant) {
        assertThat(TABLE.find(written))
                .isInstanceOfSatisfying(
                        Lookup.Unknown.class, unknown -> assertThat(unknown.near()).contains(meant));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "_", "__", "zzzzzzzz", "x\nblack_cherry", "\"", ","})
    void oddNamesAreNoTrouble(String name) {
        assertThat(TABLE.find(name)).isInstanceOf(Lookup.Unknown.class);
    }

    @Test
    void declaredSpecies() {
        Species plum = Species.declared("garden_plum", 0.003, 0.0017);
        SpeciesTable table = TABLE.with(plum);
        assertThat(table.get("garden_plum")).contains(plum);
        assertThat(table.ids()).contains("garden_plum", "black_cherry").isSorted();
        assertThat(TABLE.get("garden_plum")).isEmpty();
        assertThat(plum.coefficients().orElseThrow().citation()).isEqualTo(Citation.declared());
        Species own = Species.declared("black_cherry", 0.0026, 0.0013);
        assertThat(TABLE.with(own).get("black_cherry")).contains(own);
    }

    @Test
    void everySpeciesReads() {
        List<Species> all = TABLE.all();
        assertThat(all).hasSize(195);
        for (Species species : all) {
            assertThat(species.id()).matches("[a-z]+(_[a-z]+)*");
            assertThat(species.commonName()).isNotBlank();
            species.coefficients().ifPresent(pair -> {
                assertThat(pair.tangential()).isBetween(0.0008, 0.0060);
                assertThat(pair.radial()).isBetween(0.0004, pair.tangential());
                assertThat(pair.citation().source()).isNotBlank();
            });
        }
        assertThat(all).filteredOn(species -> species.coefficients().isEmpty()).extracting(Species::id)
                .contains("gray_birch");
    }

    @Test
    void unknownSpeciesSaysSo() {
        Species bare = TABLE.get("gray_birch").orElseThrow();
        Coefficients pair = bare.coefficientsOrUnknown(Figures.standard());
        assertThat(pair.tangential()).isEqualTo(0.0035);
        assertThat(pair.citation().provenance()).isEqualTo("common practice, no source");
    }

    @Test
    void nearNames() {
        assertThat(Slips.between("", "abc")).isEqualTo(3);
        assertThat(Slips.between("kitchen", "kicthen")).isEqualTo(1);
        assertThat(Slips.between("bench", "bench")).isZero();
        assertThat(Slips.between("bench", "beech")).isEqualTo(1);
        assertThat(Near.of("ek", List.of("elm", "oak", "ash"))).isEmpty();
        assertThat(Near.of("aok", List.of("elm", "oak", "ash"))).first().isEqualTo("oak");
    }

    @Test
    void sheets() {
        SheetGood plywood = SheetGoods.get("plywood").orElseThrow();
        assertThat(plywood.growth(600, -30)).isCloseTo(-0.36, within(1e-12));
        assertThat(plywood.isExempt(600, Figures.standard())).isTrue();
        assertThat(plywood.isExempt(1200, Figures.standard())).isFalse();
        assertThat(SheetGoods.get("slate")).isEmpty();
    }
}
