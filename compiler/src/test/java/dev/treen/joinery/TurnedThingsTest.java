package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A thing of a pattern is the same thing however it is turned: its directions turn with it. The project is invented. */
class TurnedThingsTest {
    private static final String PARTS = """
            part stile { length 300; width 50; thickness 20; place { length up; width right; at -50, 0, 0 } }
            part foot { length 200; width 50; thickness 20; place { length right; width up; at 0, 0, 60 } }
            part panel { length 200; width 120; thickness 12; takes sapwood on back; place { length right; width up; at 0, 1, 110 } }
            joint mortise_tenon foot into stile
            joint groove panel into foot, stile { wide 6; shoulder front; stop 40 from up; held down }
            part shelf { length 40; width 90; thickness 12; place { length front; width up; at -40, -40, 200 } }
            joint housing shelf into stile { stop 15 from up }
            """;

    private static Bench frame(String facing) {
        return Bench.of("""
                project "Frame" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board ash { species white_ash; size 2400 x 180 x 24; rings quarter; moisture 9%% }
                pattern frame {
                %s
                }
                frame it { from ash; place { at 100, 200, 0; facing %s } }
                """.formatted(PARTS, facing));
    }

    @ParameterizedTest
    @ValueSource(strings = {"right", "back", "left", "up", "down"})
    void turnedItIsTheSame(String facing) {
        Bench straight = frame("front");
        Bench turned = frame(facing);
        assertThat(turned.codes()).isEqualTo(straight.codes());
        for (String part : new String[]{"it.stile", "it.foot", "it.panel", "it.shelf"}) {
            assertThat(turned.part(part).solid().orElseThrow().volume())
                    .as(part)
                    .isEqualTo(straight.part(part).solid().orElseThrow().volume());
        }
        assertThat(figures(turned)).isEqualTo(figures(straight));
    }

    /** But for the shoulder, which is that of the edge that lies lower in the room. */
    private static List<String> figures(Bench bench) {
        return bench.joined().joints().stream()
                .flatMap(made -> made.figures().stream())
                .filter(figure -> !figure.name().equals("shoulder"))
                .map(figure -> figure.name() + " " + figure.measure().value())
                .toList();
    }
}
