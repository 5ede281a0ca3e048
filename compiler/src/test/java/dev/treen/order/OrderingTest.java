package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.Work;
import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order of whole projects, against rules of the trade that handbooks print. */
class OrderingTest {
    private static final Compilation CADDY = Projects.example("tea-caddy");
    private static final Compilation SHELF = Projects.example("wall-shelf");

    private static int first(Compilation compilation, Phase phase, String part) {
        return steps(compilation, phase, part).stream().mapToInt(Step::number).min().orElseThrow();
    }

    private static int last(Compilation compilation, Phase phase, String part) {
        return steps(compilation, phase, part).stream().mapToInt(Step::number).max().orElseThrow();
    }

    private static List<Step> steps(Compilation compilation, Phase phase, String part) {
        return compilation.order().steps().stream()
                .filter(s -> s.operation().phase() == phase && s.operation().parts().contains(part))
                .sorted(Comparator.comparingInt(Step::number))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf"})
    void everyPrecedenceIsKeptAndHasItsReason(String name) {
        Compilation compilation = Projects.example(name);
        OperationGraph graph = Ordering.graph(compilation.joined(), compilation.cutting());
        List<Integer> ids = compilation.order().steps().stream().map(s -> s.operation().id()).toList();
        assertThat(ids).hasSize(graph.operations().size()).doesNotHaveDuplicates();
        assertThat(graph.precedences()).isNotEmpty().allSatisfy(each -> {
            assertThat(ids.indexOf(each.before())).isLessThan(ids.indexOf(each.after()));
            assertThat(each.because()).isNotBlank();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf"})
    void everyPartIsMadeFromSawToFinish(String name) {
        Compilation compilation = Projects.example(name);
        compilation.joined().parts().forEach(part -> {
            for (Phase phase : List.of(Phase.SAW, Phase.TRUE, Phase.SIZE, Phase.FINISH)) {
                assertThat(steps(compilation, phase, part.part().name())).isNotEmpty();
            }
        });
    }

    /** Noyes, Handwork in Wood, ch. VIII (mitred frames) and nos. 17, 49: groove and rebate before the ends are cut. */
    @Test
    void groovesArePloughedBeforeStripsAreCutApartAndEndsAreMitred() {
        for (String part : List.of("front", "back", "left")) {
            int groove = last(CADDY, Phase.ALONG, part);
            assertThat(groove).isGreaterThan(last(CADDY, Phase.SIZE, part));
            assertThat(groove).isLessThan(first(CADDY, Phase.LENGTH, part));
            assertThat(groove).isLessThan(first(CADDY, Phase.JOINTS, part));
            steps(CADDY, Phase.APART, part).forEach(s -> assertThat(groove).isLessThan(s.number()));
        }
    }

    /** A sheet is brought to length and width at once, by its edges (common practice, no source). */
    @Test
    void aSheetIsSizedByItsEdges() {
        Compilation tray = Projects.compile("""
                project "Letter tray" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board ash { species white_ash; size 1200 x 120 x 20; rings quarter; moisture 9% }
                sheet ply { size 600 x 300 x 4 }
                part rail { length 200; width 40; thickness 12; from ash; place { length right; width up; at 0, -12, 0 } }
                part base { length 200; width 80; thickness 4; from ply; place { length right; width back; at 0, 0, 0 } }
                joint rebate base into rail { deep 4 }
                """);
        List<Step> steps = steps(tray, Phase.LENGTH, "base");
        assertThat(steps).singleElement().satisfies(step -> {
            assertThat(step.operation().action()).isEqualTo("Plane the edges square, to 200 mm x 84 mm");
            assertThat(step.operation().settings()).extracting(Work.GaugeSetting::value)
                    .containsExactly(Length.ofMm(200), Length.ofMm(84));
        });
        assertThat(steps(tray, Phase.SIZE, "base")).isEmpty();
        assertThat(steps(tray, Phase.LENGTH, "rail").getFirst().operation().action()).startsWith("Shoot both ends");
    }

    /** Noyes, Handwork in Wood, ch. V: dry first; rules of the trade O-07: walls, measure, base. */
    @Test
    void theBaseIsMadeToWhatWasMeasuredOnTheDryBox() {
        int dry = first(CADDY, Phase.TRY, "front");
        int measure = first(CADDY, Phase.MEASURE, "base");
        assertThat(dry).isGreaterThan(last(CADDY, Phase.JOINTS, "front")).isLessThan(measure);
        assertThat(steps(CADDY, Phase.TRY, "base")).isEmpty();
        for (String panel : List.of("base", "lid")) {
            assertThat(first(CADDY, Phase.FITTED, panel)).isGreaterThan(measure);
            assertThat(first(CADDY, Phase.FITTED, panel)).isLessThan(first(CADDY, Phase.GLUE, "front"));
            assertThat(steps(CADDY, Phase.LENGTH, panel)).as("not cut to a planned length").isEmpty();
        }
    }

    /** Noyes, Handwork in Wood, ch. V: rehearse without glue, then glue, then the diagonals while it is wet. */
    @Test
    void theGlueUpIsRehearsedAndSquaredAndThePanelStaysDry() {
        int glue = first(CADDY, Phase.GLUE, "front");
        assertThat(first(CADDY, Phase.REHEARSE, "front")).isLessThan(glue);
        assertThat(first(CADDY, Phase.INSIDE, "base")).isLessThan(glue);
        assertThat(first(CADDY, Phase.SQUARE, "front")).isEqualTo(glue + 1);
        assertThat(steps(CADDY, Phase.GLUE, "base")).isEmpty();
        assertThat(steps(CADDY, Phase.GLUE, "lid")).isEmpty();
    }

    /** Common practice, no source (rules of the trade F-05): 0.5 mm on small boxes, 1 to 600, 1.6 to 1200. */
    @Test
    void theLimitOnDiagonalsFollowsTheSize() {
        assertThat(steps(CADDY, Phase.SQUARE, "front").getFirst().operation().check()).contains("0.5 mm");
        assertThat(steps(SHELF, Phase.SQUARE, "side_left").getFirst().operation().check()).contains("1/16 in");
    }

    /** Noyes, Handwork in Wood, no. 25: the housing is scribed from the shelf as made; the notch from the housing. */
    @Test
    void housingsAreMarkedFromTheShelfAndTheNotchFromTheHousing() {
        int housing = last(SHELF, Phase.JOINTS, "side_left");
        assertThat(first(SHELF, Phase.JOINTS, "side_left")).isGreaterThan(last(SHELF, Phase.SIZE, "shelf[1]"));
        assertThat(first(SHELF, Phase.JOINTS, "shelf[1]")).isGreaterThan(housing);
        assertThat(first(SHELF, Phase.TRY, "shelf[1]")).isGreaterThan(last(SHELF, Phase.JOINTS, "shelf[1]"));
        assertThat(steps(SHELF, Phase.MEASURE, "shelf[1]")).isEmpty();
    }

    @Test
    void likeWorkIsOneStep() {
        assertThat(steps(SHELF, Phase.GLUE, "side_left")).hasSize(1);
        assertThat(steps(SHELF, Phase.GLUE, "side_left").getFirst().operation().parts()).hasSize(5);
        Predicate<Step> widths = s -> s.operation().action().contains("wide");
        assertThat(SHELF.order().steps().stream().filter(widths)).hasSize(1);
    }

    /** Rules of the trade O-05: fewer settings than part by part, and proved the fewest for projects of this size. */
    @Test
    void settingsAreCountedAndFew() {
        for (Compilation each : List.of(CADDY, SHELF)) {
            assertThat(each.order().fewest()).isTrue();
            assertThat(each.order().settings()).isLessThanOrEqualTo(each.order().separately());
            assertThat(each.order().setups()).hasSize(each.order().settings());
        }
    }

    /** Noyes planes width before thickness by hand (ch. IV); by machine the planer comes first (common practice). */
    @Test
    void handAndMachineSizeInTheirOwnOrder() {
        assertThat(steps(CADDY, Phase.SIZE, "front").getFirst().operation().action()).contains("wide");
        assertThat(steps(SHELF, Phase.SIZE, "side_left").getFirst().operation().action()).contains("thick");
    }

    /** Rules of the trade S-09: dust, rags, small parts, machines, glue and finish, and who decides what we do not. */
    @Test
    void cautionsAreThereOnce() {
        assertThat(CADDY.order().cautions()).doesNotHaveDuplicates();
        String all = String.join("\n", CADDY.order().cautions());
        assertThat(all).contains("dust", "Rags", "small parts", "manual", "label", "local code", "licensed engineer");
    }

    /** Rules of the trade Q-07: never told finer than five minutes. */
    @Test
    void timesAreHonestRanges() {
        for (Step step : CADDY.order().steps()) {
            step.operation().minutes().ifPresent(minutes -> {
                assertThat(minutes.least() % 5).isZero();
                assertThat(minutes.most() % 5).isZero();
                assertThat(minutes.least()).isLessThan(minutes.most());
            });
        }
    }

    /** Franklin International's gluing guide (archived): 7 to 14 days; the square of the thickness is our reckoning. */
    @Test
    void thickerBoardsRestLonger() {
        Wait wait = steps(CADDY, Phase.REST, "plank").getFirst().operation().pause().orElseThrow();
        assertThat(wait.leastHours()).isEqualTo((int) Math.ceil(7 * 24 * (27.0 / 25) * (27.0 / 25)));
    }

    @Test
    void aProjectWithoutJointsOrBoardsIsStillPutInOrder() {
        Compilation loose = Projects.compile("""
                project "Two slats" { units mm }
                part a { length 200; width 40; thickness 10 }
                part b like a
                """);
        assertThat(loose.order().steps()).extracting(s -> s.operation().phase())
                .containsExactly(Phase.TRUE, Phase.SIZE, Phase.SIZE, Phase.LENGTH, Phase.FINISH, Phase.FINISH,
                        Phase.CURE);
        assertThat(Projects.compile("").order().steps()).isEmpty();
    }
}
