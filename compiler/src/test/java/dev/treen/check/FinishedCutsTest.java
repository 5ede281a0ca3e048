package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import dev.treen.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of cuts that are seen on finished bodies: where, of what, by how much. The projects are invented. */
class FinishedCutsTest {
    private static final String CLIMATE = "climate { humidity 35%..65%; temperature 18degC..24degC }";

    /** A leg with two rails into neighbouring faces at one height. */
    private static Bench leg(String first, String second) {
        return Bench.of("""
                project "Stool" { units mm; %s }
                board ash { species white_ash; size 2000 x 120 x 60; rings rift; moisture 9%% }
                part leg  { length 400; width 40; thickness 40; from ash; place { length up; width right; at 0, 0, 0 } }
                part side { length 300; width 60; thickness 20; from ash; place { length right; width up; at 40, 10, 200 } }
                part back { length 300; width 60; thickness 20; from ash; place { length back; width up; at 10, 40, 200 } }
                joint mortise_tenon side into leg { %s }
                joint mortise_tenon back into leg { %s }
                """.formatted(CLIMATE, first, second));
    }

    /** Tenons that meet are mitred, and their mortises may run into each other. */
    @Test
    void mitredTenonsMayMeet() {
        assertThat(leg("long 28; haunch 0", "long 28; haunch 0").codes()).doesNotContain("cuts-meet", "parts-clash");
    }

    @Test
    void aMortiseThatRunsIntoADowelHoleIsToldAtTheLaterJoint() {
        Bench bench = Bench.of("""
                project "Jar carrier" { units mm; %s }
                board ash { species white_ash; size 2400 x 180 x 22; rings rift; moisture 9%% }
                part base { length 360; width 140; thickness 16; from ash; place { length right; width back; at 0, 0, 0 } }
                part lip { length 360; width 20; thickness 16; from ash; place { length right; width back; at 0, -20, 0 } }
                part partition { length 80; width 140; thickness 16; from ash; place { length up; width back; at 172, 0, 16 } }
                joint dowel lip to base { count 3 }
                joint dowel partition to base { count 3; thick 6 }
                """.formatted(CLIMATE));
        Finding finding = bench.finding("cuts-meet");
        assertThat(finding.at().text()).isEqualTo("partition to base");
        assertThat(finding.subjects()).contains("base", "lip", "partition");
        assertThat(finding.related()).extracting(r -> r.at().text()).contains("lip to base", "base");
        // The hole from above is 6 mm wide; the one from the edge cannot share more of it than that.
        assertThat(finding.numbers().get("length")).isLessThanOrEqualTo(6.0).isGreaterThan(3);
    }

    /** Two staves are one panel: its groove passes the mortise of the rail that only the lower one enters. */
    @ParameterizedTest
    @CsvSource({"joint edge low to high, false", "'', true"})
    void stavesOfOnePanelMayPassTheMortiseOfItsRail(String glued, boolean told) {
        Bench bench = Bench.of("""
                project "Frame" { units mm; %s }
                board ash { species white_ash; size 2400 x 180 x 24; rings quarter; moisture 9%% }
                part stile { length 500; width 50; thickness 20; from ash; place { length up; width right; at -50, 0, 0 } }
                part rail { length 300; width 40; thickness 20; from ash; place { length right; width up; at 0, 0, 60 } }
                part low { length 300; width 120; thickness 6; from ash; place { length right; width up; at 0, 7, 100 } }
                part high like low { place { at 0, 7, 220 } }
                joint mortise_tenon rail into stile
                joint groove low into rail, stile { wide 6; stop auto }
                joint groove high into stile { wide 6 }
                %s
                """.formatted(CLIMATE, glued));
        assertThat(bench.codes().contains("cuts-meet")).isEqualTo(told);
    }

    /** A groove is ploughed through, whatever it meets: corners, housings and other grooves are crossed by right. */
    @ParameterizedTest
    @CsvSource({"mitre", "finger", "dovetail"})
    void groovesCrossCornersByRight(String corner) {
        Bench bench = Bench.caddy().with("joint mitre", "joint " + corner);
        assertThat(bench.codes()).doesNotContain("cuts-meet", "wall-too-thin");
    }

    @Test
    void aThinWallIsToldOnceWithItsPlace() {
        Bench bench = Bench.of("""
                project "Two trays" { units mm; %s }
                board cherry { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9%% }
                part wall { length 120; width 60; thickness 12; from cherry; place { length back; width up; at 0, 0, 0 } }
                part near { length 100; width 120; thickness 6; from cherry; place { length right; width back; at -100, 0, 20 } }
                part far like near { place { at 12, 0, 20 } }
                joint groove near into wall { wide 6; deep 5; gap 0.5 }
                joint groove far into wall { wide 6; deep 4.5; gap 0.5 }
                """.formatted(CLIMATE));
        assertThat(bench.codes()).containsExactly("wall-too-thin");
        Finding finding = bench.finding("wall-too-thin");
        assertThat(finding.at().text()).isIn("far into wall", "near into wall");
        assertThat(finding.numbers().get("left")).isEqualTo(2.5, offset(1e-9));
        assertThat(finding.found()).contains("2.5 mm by 120 mm by 6 mm").contains("5 mm, 0 mm, 20 mm");
        assertThat(finding.subjects()).contains("wall", "near", "far");
        assertThat(bench.with("at 12, 0, 20", "at 12, 0, 26").codes()).as("side by side").doesNotContain(
                "wall-too-thin");
    }

    /** A haunch fills the groove at the end of a stile; without one it shows. */
    @Test
    void aHaunchHidesTheGroove() {
        Bench haunched = Bench.of("""
                project "Door" { units mm; %s }
                board ash { species white_ash; size 2400 x 280 x 27; rings rift; moisture 9%% }
                part stile { length 400; width 50; thickness 20; from ash; place { length up; width right; at -50, 0, 0 } }
                part rail { length 200; width 50; thickness 20; from ash; place { length right; width up; at 0, 0, 350 } }
                part panel { length 350; width 200; thickness 6; from ash; place { length up; width right; at 0, 7, 0 } }
                joint mortise_tenon rail into stile
                joint groove panel into stile, rail { wide 6; deep 8; gap 2 }
                """.formatted(CLIMATE));
        assertThat(haunched.codes()).doesNotContain("groove-shows");
        Bench plain = haunched.with("joint mortise_tenon rail into stile", "joint dowel rail to stile { long 50 }");
        Finding finding = plain.finding("groove-shows");
        assertThat(finding.at().text()).isEqualTo("panel into stile");
        assertThat(finding.subjects()).contains("panel", "stile");
        assertThat(finding.numbers().get("area")).isEqualTo(48, offset(1e-9));
        assertThat(plain.with("wide 6; deep 8; gap 2", "wide 6; deep 8; gap 2; stop auto").codes())
                .doesNotContain("groove-shows");
    }
}
