package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Compilation;
import dev.treen.plan.OrderMarkdown;
import dev.treen.plan.Projects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From where the maker is (rules of the trade O-07: walls, measure, base). The scene is the tea caddy, invented. */
class ProgressTest {
    private static final String TEXT = Projects.text("tea-caddy-by-pattern");

    private static Compilation measured(String... lines) {
        return Projects.compile(TEXT + "\n" + String.join("\n", lines) + "\n");
    }

    private static List<Phase> phases(Compilation compilation, String part) {
        return compilation.order().steps().stream()
                .filter(s -> s.operation().parts().contains(part))
                .map(s -> s.operation().phase())
                .toList();
    }

    private static String instance() {
        return Projects.compile(TEXT).joined().parts().getFirst().part().name().split("\\.")[0];
    }

    @Test
    void withoutMeasurementsNothingIsTakenAsDone() {
        assertThat(Projects.compile(TEXT).order().soFar()).isEqualTo(SoFar.NOTHING);
    }

    @Test
    void whatStandsRoundAMeasuredOpeningIsMadeAndTheBaseFollows() {
        String caddy = instance();
        Compilation now = measured("measured " + caddy + ".opening.width 79.4");
        SoFar soFar = now.order().soFar();
        assertThat(soFar.made()).contains(caddy + ".front", caddy + ".back", caddy + ".left", caddy + ".right");
        assertThat(soFar.done()).anySatisfy(done -> assertThat(done).contains("mitres"));
        assertThat(soFar.changes()).anySatisfy(change -> assertThat(change.name()).isEqualTo(caddy + ".base.width"));
        assertThat(phases(now, caddy + ".front")).doesNotContain(Phase.SAW, Phase.JOINTS, Phase.TRY)
                .contains(Phase.GLUE);
        assertThat(phases(now, caddy + ".base")).contains(Phase.FITTED);
        assertThat(now.order().steps().size()).isLessThan(Projects.compile(TEXT).order().steps().size());
        assertThat(OrderMarkdown.of(now.plan())).contains("## Where you are", "79.4 mm instead of 80 mm");
    }

    @Test
    void whatIsLeftKeepsTheRulesThatLedOverWhatIsDone() {
        Compilation now = measured("measured " + instance() + ".opening.width 79.4");
        OperationGraph left = Progress.of(now.joined(), now.cutting(), Ordering.graph(now.joined(), now.cutting()))
                .left();
        List<Operation> fitted = left.operations().stream().filter(o -> o.phase() == Phase.FITTED).toList();
        assertThat(fitted).isNotEmpty().allSatisfy(operation -> assertThat(left.precedences())
                .anySatisfy(p -> {
                    assertThat(p.after()).isEqualTo(operation.id());
                    assertThat(left.operations().get(p.before()).phase()).isEqualTo(Phase.SIZE);
                }));
    }
}
