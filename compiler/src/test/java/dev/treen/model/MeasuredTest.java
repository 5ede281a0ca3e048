package dev.treen.model;

import static dev.treen.model.Texts.codes;
import static dev.treen.model.Texts.evaluate;
import static dev.treen.model.Texts.mm;
import static dev.treen.model.Texts.part;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the maker measures takes the place of what was planned; invented boxes. */
final class MeasuredTest {
    private static final String BOX = """
            use "treen/box"
            box tray { inside 200 x 120 x 30 }
            """;

    private static final Length SHORT = mm(1194).dividedBy(10);

    @Test
    void whatRestsOnItFollowsAndTheDriftIsSaid() {
        Evaluation made = evaluate(BOX + "measured tray.opening.width 119.4");
        Finding finding = Texts.only(made);
        assertThat(finding.code()).isEqualTo("measured");
        assertThat(finding.headline()).isEqualTo("`tray.opening.width` came out 0.6 mm less than planned");
        assertThat(finding.found()).contains("tray.base.width becomes 119.4 mm instead of 120 mm");
        assertThat(part(made, "tray.base").seen().width()).isEqualTo(SHORT);
        assertThat(part(made, "tray.left").seen().length()).isEqualTo(mm(120));
        assertThat(part(made, "tray.base").assembled().width()).isEqualTo(mm(120));
        Measurement measurement = made.project().measurements().getFirst();
        assertThat(measurement.planned()).isEqualTo(mm(120));
        assertThat(measurement.made()).contains("tray.left", "tray.front").doesNotContain("tray.base");
    }

    @Test
    void aPartThatMustBeMadeAlreadyCannotChange() {
        Finding finding = Texts.only(evaluate(BOX + "measured tray.inside.width 119.4"));
        assertThat(finding.code()).isEqualTo("already-made");
        assertThat(finding.headline()).startsWith("`tray.left`, `tray.right` would change");
        assertThat(finding.subjects()).contains("tray.left");
    }

    @Test
    void aPartsOwnSizeIsMeasured() {
        Evaluation made = evaluate("""
                part rail { length 400; width 40; thickness 20 }
                part panel { length rail.length - 2; width 300; thickness 8 }
                measured rail.length 398.5
                """);
        assertThat(codes(made)).containsExactly("measured");
        assertThat(part(made, "panel").seen().length()).isEqualTo(mm(3965).dividedBy(10));
        assertThat(made.project().measurements().getFirst().made()).containsExactly("rail");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            measured tray.opening.width 12        | measured-far-off
            measured tray.opening.width 119.4deg  | wrong-kind
            measured tray.opening.width -5        | wrong-kind
            measured tray.opening 119             | wrong-kind
            measured tray.corner 9                | wrong-kind
            measured tray.openig.width 9          | unknown-name
            """)
    void whatCannotBeMeasuredIsSaid(String line, String code) {
        assertThat(codes(evaluate(BOX + line))).contains(code);
    }

    @Test
    void measuredTwiceIsSaid() {
        Evaluation made = evaluate(BOX + "measured tray.opening.width 119.4\nmeasured tray.opening.width 119.2");
        assertThat(codes(made)).containsExactlyInAnyOrder("given-twice", "measured");
        assertThat(part(made, "tray.base").seen().width()).isEqualTo(SHORT);
    }
}
