package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import org.junit.jupiter.api.Test;

/** What findings say where a maker has to act on it: how parts do meet, and figures that a rule can show. Invented. */
class BenchWordsTest {
    private static final String CLIMATE = "climate { humidity 30%..70%; temperature 16degC..28degC }";

    @Test
    void partsThatMeetWronglyAreToldHowTheyDoMeet() {
        Finding batten = Bench.of("""
                project "Rack" { units mm; %s }
                board ash { species white_ash; size 2000 x 180 x 28; moisture 9%% }
                part shelf { length 420; width 150; thickness 12; from ash; place { length right; width back; at 0, 0, 250 } }
                part bracket { length 150; width 40; thickness 14; from ash; place { length back; width up; at 20, 0, 210 } }
                joint sliding_dovetail bracket into shelf
                """.formatted(CLIMATE)).finding("meets-wrongly");
        assertThat(batten.headline()).isEqualTo("`bracket` does not meet `shelf` as a sliding dovetail wants");
        assertThat(batten.found()).isEqualTo("The edge of `bracket` lies against the wide face of `shelf`.");
        Finding corner = Bench.of("""
                project "Rack" { units mm; %s }
                board ash { species white_ash; size 2000 x 180 x 28; moisture 9%% }
                part post { length 620; width 32; thickness 22; from ash; place { length up; width right; at -32, 0, 0 } }
                part shelf { length 420; width 150; thickness 12; from ash; place { length right; width back; at 0, 22, 250 } }
                joint housing shelf into post
                """.formatted(CLIMATE)).finding("meets-wrongly");
        assertThat(corner.found()).startsWith("They touch along one line, at a corner: ").contains("of `post`");
        assertThat(corner.remedies()).isNotEmpty();
    }

    /** A gauge is set to half millimetres, not to hundredths, and what is advised stays within the limit. */
    @Test
    void whatMayBeGluedIsSaidByTheRule() {
        Finding wide = Bench.of("""
                project "Rack" { units mm; %s }
                board ash { species white_ash; size 2000 x 180 x 28; moisture 9%% }
                part post { length 620; width 32; thickness 22; from ash; place { length up; width right; at -32, 0, 0 } }
                part rail { length 420; width 60; thickness 22; from ash; place { length right; width up; at 0, 0, 230 } }
                joint mortise_tenon rail into post
                """.formatted(CLIMATE)).finding("cross-grain-glue");
        assertThat(wide.remedies()).extracting(Remedy::text)
                .anySatisfy(text -> assertThat(text).contains("no more than 42.5 mm"));
    }
}
