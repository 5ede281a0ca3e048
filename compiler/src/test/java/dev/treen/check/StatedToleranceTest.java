package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How exactly things are made, by a class of ISO 2768-1 and by single parts. The projects are invented. */
class StatedToleranceTest {
    private static Clearance room(Bench bench, String part) {
        return Clearances.of(bench.joined()).stream()
                .filter(room -> room.of().part().name().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static Bench caddy(String tolerance) {
        return Bench.caddy().with("tools    hand", "tools    hand; tolerance { " + tolerance + " }");
    }

    /** Table 1, medium: the opening of 80 and the base of nearly that ± 0.3, grooves 4 deep ± 0.1: (0.3 + 0.3 + 0.2) ÷ 2. */
    @Test
    void aClassSaysHowMuchBySize() {
        Bench medium = caddy("class medium");
        assertThat(medium.codes()).isEmpty();
        assertThat(room(medium, "base").worstMm()).isCloseTo(0.4, offset(1e-12));
        assertThat(room(medium, "base").largest().getFirst().tolerance().source()).startsWith("ISO 2768-1");
        assertThat(room(medium, "base").tightest().mm()).isBetween(0.0, 0.0101);
    }

    /** A figure of the project counts before its class; the other sizes keep the class. */
    @Test
    void figuresCountBeforeTheClass() {
        assertThat(room(caddy("class medium; width 0.1"), "base").worstMm())
                .isCloseTo((0.3 + 0.1 + 0.2) / 2, offset(1e-12));
    }

    /** The fine class says nothing beyond 2,000 mm: there it is as usual by hand, 0.2. */
    @Test
    void sizesThatTheClassDoesNotKnowAreAsUsual() {
        Bench wide = Bench.of("""
                project "Bench lid" { climate { humidity 35%..65%; temperature 18degC..24degC }
                  tools hand; tolerance { class fine } }
                board oak { species white_oak; size 2600 x 400 x 40; rings flat; moisture 9% }
                part left  { length 300; width 60; thickness 20; from oak; place { length back; width up; at -20, 0, 0 } }
                part right like left { place { at 2200, 0, 0 } }
                part lid   { length 2200; width 300; thickness 20; from oak; place { length right; width back; at 0, 0, 20 } }
                joint inset lid into left, right { gap auto }
                """);
        assertThat(room(wide, "lid").largest()).allSatisfy(each -> assertThat(each.tolerance().mm()).isEqualTo(0.2));
    }

    /** The base planed to ± 0.05 beside sides that come out as the project says; a groove is as exact as its side. */
    @Test
    void aPartMayBeMadeMoreExactly() {
        Bench base = caddy("length 0.1; width 0.2; depth 0.1")
                .with("thickness 7; from plank", "thickness 7; from plank; tolerance { width 0.05 }");
        assertThat(room(base, "base").worstMm()).isCloseTo((0.1 + 0.05 + 0.1 + 0.1) / 2, offset(1e-12));
        Bench front = caddy("length 0.1; width 0.2; depth 0.1")
                .with("part front {", "part front { tolerance { depth 0.3 };");
        assertThat(room(front, "base").worstMm())
                .as("the back is like the front, with its grooves")
                .isCloseTo((0.1 + 0.2 + 0.3 + 0.3) / 2, offset(1e-12));
    }

    /** The nearer word counts: a part's class puts aside the project's figures, not those of measuring. */
    @Test
    void thePartsClassPutsTheProjectsFiguresAside() {
        Bench base = caddy("length 0.1; width 0.2; depth 0.1")
                .with("thickness 7; from plank", "thickness 7; from plank; tolerance { class coarse }");
        assertThat(room(base, "base").worstMm()).isCloseTo((0.1 + 0.8 + 0.1 + 0.1) / 2, offset(1e-12));
    }

    /** A word on one part alone is enough for its rooms to be reckoned by it, and leaves other rooms alone. */
    @Test
    void oneExactPartIsEnough() {
        Bench stated = Bench.caddy()
                .with("thickness 7; from plank", "thickness 7; from plank; tolerance { width 0.05 }");
        assertThat(stated.codes()).isEmpty();
        // By hand the opening is usual at ± 0.2, the grooves at ± 0.1.
        assertThat(room(stated, "base").worstMm()).isCloseTo((0.2 + 0.05 + 0.1 + 0.1) / 2, offset(1e-12));
        assertThat(stated.figure("base", "front", "gap")).isLessThan(Bench.caddy().figure("base", "front", "gap"));
    }

    /** `auto` leaves doors, drawers and lids what their tolerances may take, so it is never told against. */
    @ParameterizedTest
    @ValueSource(
            strings = {"class fine", "class medium", "class coarse", "class very_coarse", "length 0.05; width 0.05"})
    void autoStandsWhateverIsStated(String tolerance) {
        Bench door = Bench.of("""
                project "Kitchen cupboard" { climate { humidity 35%%..65%%; temperature 18degC..24degC }
                  tolerance { %s } }
                board cherry { species black_cherry; size 2400 x 450 x 40; rings flat; moisture 8%% }
                part left   { length 700; width 60; thickness 20; from cherry; place { length up; width right; at -60, 0, 0 } }
                part right  like left { place { at 400, 0, 0 } }
                part top    { length 520; width 60; thickness 20; from cherry; place { length right; width up; at -60, 0, 700 } }
                part door   { length 700; width 400; thickness 20; from cherry; place { length up; width right; at 0, 0, 0 } }
                joint inset door into left, right, top { hinge left; gap auto }
                """.formatted(tolerance));
        assertThat(door.codes()).doesNotContain("door-binds");
        assertThat(Clearances.of(door.joined()))
                .filteredOn(room -> room.measure() == 1)
                .allSatisfy(room -> assertThat(room.tightest().mm()).isGreaterThan(-PanelTight.SAME));
    }
}
