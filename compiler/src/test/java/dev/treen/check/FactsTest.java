package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.treen.finding.Finding;
import dev.treen.model.Datum;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What `require` may ask of parts, judged after the checks with the numbers behind it. */
class FactsTest {

    private static double mm(Bench bench, String part, String fact) {
        return bench.checked().facts().fact(part, fact).orElseThrow().value() instanceof Datum.Exactly(var quantity)
                ? quantity.amount().doubleValue()
                : Double.NaN;
    }

    private static Bench requiring(Bench bench, String requirement) {
        return Bench.of(bench.text() + requirement + "\n");
    }

    /** A base 86.3 wide of cherry from 9 to 12.06 % (Wood Handbook Table 13-5, eq. 4-5): 0.83 less 0.33 and 0.3 is 0.2. */
    @Test
    void aPanelHasRoomClearanceAndCover() {
        Bench caddy = Bench.caddy();
        assertThat(mm(caddy, "base", "gap")).isEqualTo(caddy.figure("base", "front", "gap").toDoubleMm());
        assertThat(mm(caddy, "base", "clearance")).isBetween(0.2, 0.211);
        double width = caddy.part("base").width().value().toDoubleMm();
        double dry = width * (1 - 0.00248 * (9 - 6.88));
        assertThat(mm(caddy, "base", "cover")).isCloseTo((dry - 80) / 2, offset(0.003));
        assertThat(caddy.checked().facts().names("base")).contains("gap", "clearance", "loosest", "cover", "mass");
        assertThat(caddy.checked().facts().names("front")).containsExactly("mass");
    }

    /**
     * By hand: E 0.8 × 12.3 GPa (Wood Handbook Table 5-3), b 152.4, h 15.875, so I is 50 810 mm⁴; 50 lb of usual load
     * (Architectural Woodwork Standards 2009, 1.2.21) and the shelf itself over 762 mm: 5qL⁴/384EI.
     */
    @Test
    void aShelfSagsByTheBeamFormula() {
        Bench shelf = Bench.shelf();
        double moment = 152.4 * Math.pow(15.875, 3) / 12;
        double even = 0.001915 * 152.4 + mm(shelf, "shelf", "mass") / 1000 * 9.81 / 762;
        double modulus = 0.8 * 12_273;
        double bending = 5 * even * Math.pow(762, 4) / (384 * modulus * moment);
        assertThat(mm(shelf, "shelf", "sag")).isCloseTo(bending * 1.5, offset(bending * 0.05));
    }

    /**
     * Specific gravity 0.68 of white oak at 12 % (Wood Handbook Table 5-3), on its basic one by Eq. 4-11 and back at the
     * middle of the room: by hand, apart from the code, which starts from the density printed to a whole kg/m³. The
     * shelf's tongue is 3/8 in short at the front of each side.
     */
    @Test
    void aPartWeighsByItsFinishedBody() {
        Bench shelf = Bench.shelf();
        double cubicInches = 30 * 6 * 0.625 + 2 * (6 - 0.375) * 3.0 / 16 * 0.625;
        double moisture = shelf.joined().nature(shelf.part("shelf").part()).usualMoisture();
        double basic = 0.68 / (1 + 0.265 * 0.6 * 0.68);
        double now = basic / (1 - 0.265 * (1 - moisture / 30) * basic);
        assertThat(moisture).isBetween(6.0, 11.0);
        assertThat(mm(shelf, "shelf", "mass"))
                .isCloseTo(cubicInches * Math.pow(25.4, 3) / 1e6 * now * (1000 + 10 * moisture), offset(1.5));
    }

    @Test
    void aRequirementOverFactsHoldsOrSaysByHowMuchNot() {
        assertThat(requiring(Bench.caddy(), "require base.clearance >= 0.1mm").codes()).isEmpty();
        Bench wanting = requiring(Bench.caddy(), "require base.clearance >= 0.8mm because \"the kitchen steams\"");
        assertThat(wanting.codes()).containsExactly("requirement-not-met");
        Finding finding = wanting.finding("requirement-not-met");
        assertThat(finding.at().text()).isEqualTo("base.clearance >= 0.8mm");
        assertThat(finding.found()).isEqualTo("On the left of `>=` is 0.2 mm, on the right 0.8 mm.");
        assertThat(finding.because()).startsWith("the kitchen steams.").contains("12.06 % moisture");
        assertThat(finding.subjects()).contains("base");
    }

    @Test
    void aFactMayStandInASum() {
        assertThat(requiring(Bench.caddy(), "require base.loosest - base.clearance < 2mm and base.mass < 1kg").codes())
                .isEmpty();
        assertThat(requiring(Bench.caddy(), "require base.gap < 1kg").codes()).containsExactly("do-not-add-up");
        assertThat(requiring(Bench.caddy(), "require base.gap").codes()).containsExactly("wrong-kind");
    }

    @Test
    void anUnknownFactNamesThoseThatAreNear() {
        Bench slip = requiring(Bench.caddy(), "require base.clearence >= 0.1mm");
        assertThat(slip.codes()).containsExactly("unknown-name");
        assertThat(slip.finding("unknown-name").safeRemedy().orElseThrow().text()).isEqualTo("write `clearance`");
        assertThat(slip.mended("unknown-name").codes()).isEmpty();
        Bench none = requiring(Bench.caddy(), "require front.sag <= 1mm");
        assertThat(none.finding("unknown-name").found()).isEqualTo("It has `length`, `width`, `thickness`, `mass`.");
        assertThat(requiring(Bench.caddy(), "require bass.gap > 1").codes()).as("said once")
                .containsExactly("unknown-name");
    }

    /** Numbered parts and parts inside instances of patterns have their facts too. */
    @Test
    void numberedPartsAndPartsOfInstancesHaveFacts() {
        Bench shelves = Bench.shelf()
                .with("part shelf {", "repeat i in 1..1 { part shelf[i] {")
                .with("place { length right; width back; at 0, 0, 4 }\n}",
                        "place { length right; width back; at 0, 0, 4 } } }")
                .with("joint housing shelf into", "joint housing shelf[1] into");
        assertThat(requiring(shelves, "require shelf[1].sag <= 6mm").codes()).isEmpty();
        assertThat(requiring(shelves, "require shelf[1].sag <= 1/32in because \"it carries books\"").codes())
                .containsExactly("requirement-not-met");
        Bench tray = Bench.of("""
                project "Trays" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }
                pattern tray {
                  param deep : length = 80mm
                  part low  { length 200; width 30; thickness 15; from plank; place { length right; width up; at 0, -15, 0 } }
                  part high like low { place { at 0, deep, 0 } }
                  part floor { length 200; width deep; thickness 6; from plank; place { length right; width back; at 0, 0, 12 } }
                  joint groove floor into low, high { wide 6; deep 5; gap auto }
                }
                tray small { }
                """);
        assertThat(requiring(tray, "require small.floor.clearance >= 0.1mm").codes()).isEmpty();
        assertThat(requiring(tray, "require small.floor.clearance >= 3mm").codes())
                .containsExactly("requirement-not-met");
    }

    /** A size must not wait for a check of itself: outside `require` a fact is an unknown name. */
    @Test
    void onlyRequirementsMayAskForFacts() {
        assertThat(Bench.caddy().with("width inside.width", "width base.gap").codes()).contains("unknown-name");
        assertThat(List.of("gap", "clearance", "loosest", "cover", "sag", "mass")).isSubsetOf(
                Facts.kinds().stream().map(FactKind::name).toList());
    }
}
