package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.JointNumbers;
import dev.treen.plan.Compilation;
import dev.treen.plan.OrderMarkdown;
import dev.treen.plan.Projects;
import dev.treen.plan.StepReasons;
import dev.treen.plan.StepText;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The orders of the examples, verified by one who knows the list of precedences alone, and read as a maker reads them. */
class ExampleOrdersTest {
    /** Knows numbers and pairs of numbers, nothing of operations. */
    private static void verify(OperationGraph graph, List<Integer> order) {
        assertThat(order).hasSize(graph.operations().size()).doesNotHaveDuplicates();
        Set<Integer> done = new HashSet<>();
        for (int id : order) {
            graph.precedences().stream()
                    .filter(p -> p.after() == id)
                    .forEach(p -> assertThat(done).as(p.because()).contains(p.before()));
            done.add(id);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf", "spice-cupboard", "garden-table", "larder-door", "garden-bench",
            "hall-bookcase", "kitchen-cabinet", "kitchen-drawer", "pencil-box", "print-frame", "breakfast-tray",
            "recipe-box", "sewing-box", "button-box", "spice-cabinet", "tea-caddy-by-pattern"})
    void theOrderKeepsEveryRuleAndIsTheSameEachTime(String name) {
        Compilation compilation = Projects.example(name);
        OperationGraph graph = Ordering.graph(compilation.joined(), compilation.cutting());
        BuildOrder order = compilation.order();
        verify(graph, order.steps().stream().map(s -> s.operation().id()).toList());
        assertThat(graph.precedences()).allSatisfy(p -> assertThat(p.because()).isNotBlank());
        assertThat(Ordering.order(graph).steps()).isEqualTo(order.steps());
        assertThat(order.fewest()).as("no order needs fewer settings").isTrue();
        Network network = new Network(graph);
        Cost plain = network.cost(Sequencer.plain(network));
        assertThat(order.settings()).isLessThanOrEqualTo(plain.settings());
        assertThat(order.steps()).allSatisfy(step -> {
            assertThat(step.operation().minutes().isPresent() || step.operation().pause().isPresent()).isTrue();
            assertThat(step.operation().tool()).isNotBlank();
            assertThat(step.operation().check()).isNotBlank();
            assertThat(step.needs()).extracting(Step.Need::step).containsExactlyElementsOf(step.after());
        });
        assertThat(order.calendar().handsOn()).isEqualTo(order.steps().stream()
                .flatMap(s -> s.operation().minutes().stream())
                .reduce(Minutes.NONE, Minutes::plus));
    }

    /** Noyes, Handwork in Wood, ch. VIII: the ends of a table are glued first, then the whole. */
    @Test
    void theEndsOfATableAreGluedFirst() {
        List<Step> glue = steps(Projects.example("garden-table"), Phase.GLUE).stream()
                .filter(step -> step.operation().parts().contains("garden.leg[1]"))
                .toList();
        assertThat(glue).hasSize(2);
        assertThat(glue.getFirst().operation().parts())
                .containsExactlyInAnyOrder("garden.leg[1]", "garden.leg[4]", "garden.apron_left");
        assertThat(glue.getLast().operation().parts()).hasSize(8);
        assertThat(glue.getLast().after()).contains(glue.getFirst().number() + 1);
        assertThat(steps(Projects.example("garden-table"), Phase.SQUARE))
                .anySatisfy(step -> assertThat(step.number()).isEqualTo(glue.getFirst().number() + 1));
    }

    /** Common practice, no source (rules of the trade O-02): what is finished apart is screwed together last. */
    @Test
    void buttonsAreScrewedOnWhenTopAndBaseAreFinished() {
        Compilation table = Projects.example("garden-table");
        int finished = steps(table, Phase.FINISH).getLast().number();
        Step buttons = steps(table, Phase.MOUNT).getFirst();
        assertThat(buttons.operation().action()).contains("buttons");
        assertThat(buttons.number()).isGreaterThan(finished);
    }

    /** Noyes (lids and doors are fitted to what is glued) and Fairham (hinges let in a shade under the half knuckle). */
    @Test
    void aDoorIsMeasuredOnTheGluedCaseThenPlanedHungTakenOffFinishedAndHung() {
        Compilation cupboard = Projects.example("spice-cupboard");
        int opening = steps(cupboard, Phase.OPENING).getFirst().number();
        assertThat(opening).isGreaterThan(steps(cupboard, Phase.CLEAN).getFirst().number());
        List<Step> fit = steps(cupboard, Phase.FIT);
        assertThat(fit).hasSize(2);
        assertThat(fit.getFirst().operation().action()).startsWith("Plane `door`");
        assertThat(fit.getLast().operation().action()).contains("hinges", "left");
        assertThat(fit.getFirst().number()).isGreaterThan(opening);
        assertThat(steps(cupboard, Phase.MOUNT).getFirst().operation().action()).startsWith("Hang `door` for good");
    }

    /** The numbers stand on the labels of both parts; the lid and the base, which lie loose, have none. */
    @Test
    void whatIsPutTogetherRefersToTheNumbersOnTheLabels() {
        Compilation caddy = Projects.example("tea-caddy");
        assertThat(steps(caddy, Phase.TRY)).singleElement().satisfies(step -> assertThat(step.operation().how())
                .containsExactly("same number to same number: numbers 1 to 4 on the labels"));
        String glued = String.join("\n", steps(caddy, Phase.GLUE).getFirst().operation().how());
        List<JointNumbers.Pair> pairs = JointNumbers.of(caddy.joined()).pairs();
        assertThat(pairs).hasSize(4);
        assertThat(pairs).allSatisfy(pair -> assertThat(glued).containsPattern("\\b" + pair.number() + "\\b"));
    }

    /** Common practice, no source: what lies on a box or is hung on it waits until the glue is hard. */
    @Test
    void aLidThatIsHungOrLaidOnHasNoPartInTheGlueUp() {
        for (String name : List.of("sewing-box", "button-box")) {
            Compilation box = Projects.example(name);
            String lid = box.joined().parts().stream().map(part -> part.part().name())
                    .filter(each -> each.endsWith(".lid")).findFirst().orElseThrow();
            assertThat(steps(box, Phase.GLUE)).allSatisfy(step -> {
                assertThat(step.operation().with()).doesNotContain(lid);
                assertThat(String.join("\n", step.operation().how())).doesNotContain(lid);
            });
        }
        Compilation buttons = Projects.example("button-box");
        assertThat(steps(buttons, Phase.OPENING)).singleElement()
                .satisfies(step -> assertThat(step.operation().action()).contains("opening for `buttons.lid`"));
        assertThat(steps(buttons, Phase.FIT)).singleElement()
                .satisfies(step -> assertThat(step.operation().action()).contains("lip of `buttons.lid`"));
    }

    /** What comes off for the finish goes on again before the piece is used. */
    @Test
    void hingesThatCameOffForTheFinishGoOnAgain() {
        for (String name : List.of("sewing-box", "recipe-box")) {
            Compilation box = Projects.example(name);
            Step on = steps(box, Phase.MOUNT).getFirst();
            assertThat(on.operation().action()).startsWith("Screw the hinges of").contains("for good");
            assertThat(on.number()).isGreaterThan(steps(box, Phase.FINISH).getLast().number())
                    .isLessThan(steps(box, Phase.CURE).getFirst().number());
        }
    }

    /** Where the glue goes on in stages, each tells only the numbers that it closes, and together they tell all. */
    @Test
    void eachGlueUpTellsItsOwnNumbers() {
        Compilation table = Projects.example("garden-table");
        List<Integer> told = steps(table, Phase.GLUE).stream()
                .flatMap(step -> step.operation().how().stream())
                .filter(line -> line.contains("on the labels"))
                .flatMap(line -> Pattern.compile("(\\d+)(?: to (\\d+))?")
                        .matcher(line.substring(line.lastIndexOf("number"))).results())
                .flatMap(run -> IntStream.rangeClosed(Integer.parseInt(run.group(1)),
                        Integer.parseInt(Optional.ofNullable(run.group(2)).orElse(run.group(1)))).boxed())
                .toList();
        assertThat(told).containsExactlyInAnyOrderElementsOf(
                JointNumbers.of(table.joined()).pairs().stream().map(JointNumbers.Pair::number).toList());
    }

    /** Franklin International, gluing guide (archived): 7 to 14 days for an inch; 27 mm is a little more, squared. */
    @Test
    void whyTheDaysAreManyMoreThanTheHoursIsSaid() {
        String said = String.join("\n", StepText.summary(Projects.example("tea-caddy").order()));
        assertThat(said).contains("Most of that is waiting",
                "the wood comes to rest in the room for 9 to 17 days (Franklin",
                "sawn leaves lie in stick for 3 to 14 days", "the glue hardens for 1 to 24 h", "coats dry for",
                "the finish cures for 7 to 28 days");
    }

    /** Rules of the trade O-05: the gauge of the mortises is kept for their tenons. */
    @Test
    void theMortiseGaugeIsSetOnceForMortisesAndTenons() {
        BuildOrder order = Projects.example("larder-door").order();
        List<Setups.Setup> gauge = order.setups().stream()
                .filter(setup -> setup.setting().name().equals("mortise gauge"))
                .toList();
        assertThat(gauge).hasSize(1);
        assertThat(gauge.getFirst().also()).hasSize(1);
    }

    /** Noyes, ch. IX 3: plane the long strip, then saw it up. */
    @Test
    void whatHangsTogetherIsPlanedAndPloughedInOneGo() {
        Compilation caddy = Projects.example("tea-caddy");
        for (Phase phase : List.of(Phase.TRUE, Phase.SIZE, Phase.ALONG)) {
            assertThat(steps(caddy, phase)).anySatisfy(step -> assertThat(String.join("\n", step.operation().how()))
                    .contains("in one go, as strip 1"));
        }
    }

    @Test
    void aStepSaysWhyItStandsWhereItDoes() {
        Compilation caddy = Projects.example("tea-caddy");
        Step step = steps(caddy, Phase.ALONG).getFirst();
        String why = StepReasons.of(step, caddy.order(), caddy.plan().format());
        assertThat(why.replaceAll("\\s+", " ")).contains("Step " + step.number() + ": Plough the groove",
                "It comes after", "because depth",
                "It comes before", "because what runs along the grain");
    }

    @Test
    void theOrderOnPaperHasItsCalendarAndItsSettings() {
        String text = OrderMarkdown.of(Projects.example("tea-caddy").plan());
        assertThat(text).contains("## Calendar", "## What is set, in this order", "## Glue up", "(proved)");
    }

    private static List<Step> steps(Compilation compilation, Phase phase) {
        return compilation.order().steps().stream().filter(s -> s.operation().phase() == phase).toList();
    }

    /** Glued up closed, cleaned as one, cut free, and only then hinged (common practice, no source). */
    @Test
    void aLidIsCutFreeAfterTheGlueAndBeforeTheHinges() {
        List<Operation> all = Projects.example("recipe-box").order().steps().stream().map(Step::operation).toList();
        List<Phase> phases = all.stream().map(Operation::phase).toList();
        int free = phases.indexOf(Phase.FREED);
        assertThat(free).isGreaterThan(phases.lastIndexOf(Phase.GLUE)).isGreaterThan(phases.lastIndexOf(Phase.CLEAN))
                .isLessThan(phases.indexOf(Phase.FIT));
        assertThat(all.get(free).caution()).contains("wedge the kerf");
    }
}
