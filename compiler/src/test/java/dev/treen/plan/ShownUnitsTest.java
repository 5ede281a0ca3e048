package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.FinishedPart;
import dev.treen.model.FileLoader;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.source.SourceFile;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes from text to value to text, in the project's units and in others. */
class ShownUnitsTest {
    private static final int FOOT = 12 * 64;

    private static Compilation compile(String text, String way) {
        return Compilation.of(new SourceFile("rule.treen", text), FileLoader.NONE, LengthFormat.named(way));
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 32, 64})
    void everyMarkOfARuleGoesThroughTheCompilerUnchanged(int divisions) {
        LengthFormat way = LengthFormat.named("in/" + divisions).orElseThrow();
        List<String> written = new ArrayList<>();
        StringBuilder project = new StringBuilder("project \"Rule\" { units in }\n");
        for (int n = 1; n <= FOOT; n += 64 / divisions) {
            int mark = n + 64 / divisions - 1;
            written.add(way.figure(Length.ofInches(mark, 64)));
            project.append("part p").append(mark).append(" { length ").append(written.getLast())
                    .append("; width 1; thickness 1 }\n");
        }
        Compilation compilation = compile(project.toString(), "in/" + divisions);
        assertThat(Compilation.hasErrors(compilation.checked().findings())).isFalse();
        assertThat(compilation.joined().parts()).extracting(p -> way.figure(p.part().seen().length()))
                .containsExactlyElementsOf(written);
        assertThat(compilation.joined().parts()).extracting(p -> p.part().seen().length())
                .allMatch(length -> way.loss(length).isZero());
        assertThat(written.getLast()).isEqualTo("12");
    }

    @Test
    void millimetresOnAnInchRuleAreAtMostHalfAMarkOffAndSaySo() {
        // 1 in is 25.4 mm (international yard and pound agreement, 1959); the nearest mark by plain decimals.
        LengthFormat way = LengthFormat.named("in/16").orElseThrow();
        for (int mm = 1; mm <= 1000; mm++) {
            BigDecimal marks = new BigDecimal(mm * 16).divide(new BigDecimal("25.4"), MathContext.DECIMAL64);
            BigDecimal nearest = marks.setScale(0, RoundingMode.HALF_UP);
            BigDecimal off = marks.subtract(nearest);
            String word = off.abs().compareTo(new BigDecimal("0.125")) <= 0 ? "" : off.signum() > 0 ? "+" : "-";
            String mark = LengthFormat.inches(16).figure(Length.ofInches(nearest.intValueExact(), 16));
            assertThat(way.figure(Length.ofMm(mm))).isEqualTo(mark + word);
        }
    }

    @Test
    void theWholePlanIsShownAnotherWayAndMeansTheSame() {
        String text = Projects.text("tea-caddy");
        Compilation own = compile(text, "");
        Compilation shown = compile(text, "in/64");
        assertThat(shown.joined().parts()).map(FinishedPart::finished)
                .isEqualTo(own.joined().parts().stream().map(FinishedPart::finished).toList());
        String plan = PlanText.of(shown.plan());
        assertThat(plan.substring(0, plan.indexOf("Order of work")))
                .contains("Cut list (in)", "7 1/64-  x", "A + is a shade over", "board feet")
                .doesNotContain(" mm", "m2");
        assertThat(CutListCsv.of(shown.plan())).contains("finished length in", "7 1/64-,");
        assertThat(PlanText.of(own.plan())).contains("Cut list (mm)", "178", "m2").doesNotContain("board feet",
                "A + is");
    }

    @Test
    void findingsAreShownThatWayToo() {
        String tight = Projects.text("tea-caddy").replace("gap auto", "gap 0.2");
        assertThat(new FindingText(false).of(compile(tight, "in").checked().findings()))
                .contains("panel-tight", " in ").doesNotContain("mm wide");
    }

    @Test
    void everyNameIsAWay() {
        assertThat(LengthFormat.NAMES).allMatch(name -> LengthFormat.named(name).isPresent());
        assertThat(LengthFormat.named("in/8")).isEqualTo(Optional.empty());
        assertThat(LengthFormat.named("in")).isEqualTo(LengthFormat.named("in/32"));
    }
}
