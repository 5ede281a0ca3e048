package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import dev.treen.check.Bench;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Volume, mass and glue faces of finished parts, by hand. The projects are invented. */
class WeightsTest {
    private static final String HEAD = """
            project "Stand" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board ash { species white_ash; size 2000 x 160 x 45; rings flat; moisture 9% }
            board any { size 2000 x 160 x 40; moisture 9% }
            """;

    private static GlueFaces only(Bench bench) {
        List<GlueFaces> all = GlueFaces.of(bench.joined());
        assertThat(all).hasSize(1);
        return all.getFirst();
    }

    /** Rule J-10: 2 · length · width of the tenon, whose two other sides lie against end grain. */
    @Test
    void aTenonGluesOnItsCheeks() {
        Bench bench = Bench.of(HEAD + """
                part leg  { length 400; width 40; thickness 40; from ash; place { length up; width right; at 0, 0, 0 } }
                part rail { length 300; width 60; thickness 24; from ash; place { length right; width up; at 40, 8, 200 } }
                joint mortise_tenon rail into leg { thick 10; long 25; shoulder 5; haunch 0 }
                """);
        GlueFaces faces = only(bench);
        assertThat(faces.glued()).isTrue();
        assertThat(faces.longGrain()).isEqualTo(2.0 * 25 * 50);
        // The two edges of the tenon on end grain of the leg, and the shoulders on its long grain; the tip is free.
        assertThat(faces.mixed()).isEqualTo(2.0 * 25 * 10 + 60 * 24 - 50 * 10);
        assertThat(faces.endGrain()).isZero();
    }

    /** Two boards edge to edge touch with their long grain; two on end with none. */
    @Test
    void boardsEdgeToEdge() {
        Bench edges = Bench.of(HEAD + """
                part one { length 500; width 100; thickness 20; from ash; place { length right; width back; at 0, 0, 0 } }
                part two like one { place { at 0, 100, 0 } }
                joint edge one to two
                """);
        assertThat(only(edges).longGrain()).isEqualTo(500.0 * 20);
        assertThat(only(edges).total()).isEqualTo(500.0 * 20);
    }

    /** A mitre of 45 degrees leans: √2 · thickness · height, and counts as end grain on end grain. */
    @Test
    void aMitreIsNearEndGrain() {
        Bench caddy = Bench.caddy();
        GlueFaces corner = GlueFaces.of(caddy.joined()).stream()
                .filter(faces -> faces.made().joint().name().contains("front and left")
                        || faces.made().joint().name().contains("front to left"))
                .findFirst()
                .orElseThrow();
        // 9 thick and 84 high, less the groove of 5 by 4 through both.
        assertThat(corner.endGrain()).isCloseTo(Math.sqrt(2) * (9 * 84 - 5 * 4), offset(1e-9));
        assertThat(corner.longGrain()).isZero();
    }

    @Test
    void massIsVolumeTimesDensity() {
        Bench bench = Bench.of(HEAD + """
                part top { length 500; width 100; thickness 20; from ash }
                part low { length 500; width 100; thickness 20; from any; place { length right; width back; at 0, 0, 0 } }
                """);
        Weights weights = Weights.of(bench.joined());
        assertThat(weights.parts()).allSatisfy(part -> assertThat(part.volume()).isEqualTo(BigFraction.of(1_000_000)));
        Weight ash = weights.parts().getFirst();
        assertThat(weights.kilograms()).isCloseTo(ash.density().orElseThrow() / 1000, offset(1e-9)).isBetween(0.6, 0.7);
        assertThat(weights.unknown()).containsExactly("low");
        assertThat(weights.byWood()).extracting(Weights.OfWood::wood).containsExactly("white ash", "");
    }

    /** A wetter room makes the same part heavier. */
    @Test
    void moistureCounts() {
        String part = "part top { length 500; width 100; thickness 20; from ash }\n";
        double dry = Weights.of(Bench.of(HEAD + part).joined()).kilograms();
        double damp = Weights.of(Bench.of(HEAD.replace("35%..65%", "75%..85%") + part).joined()).kilograms();
        assertThat(damp / dry).isBetween(1.01, 1.06);
    }
}
