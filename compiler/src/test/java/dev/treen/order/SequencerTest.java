package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The orders that are found against precedence alone, and small ones against all orders there are. */
class SequencerTest {
    private static final List<String> TOOLS = List.of("marking gauge", "plough plane", "saw with a stop");

    private static OperationGraph random(Random random, int count, int edges) {
        List<Operation> operations = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String tool = TOOLS.get(random.nextInt(TOOLS.size()));
            List<GaugeSetting> settings = random.nextInt(4) == 0
                    ? List.of()
                    : List.of(new GaugeSetting("stop", Length.ofMm(1 + random.nextInt(3))));
            operations.add(Operation.of(Phase.JOINTS, "do " + i, List.of("p" + i), tool)
                    .setting(settings)
                    .numbered(i));
        }
        List<Precedence> precedences = new ArrayList<>();
        for (int i = 0; i < edges && count > 1; i++) {
            int before = random.nextInt(count - 1);
            precedences.add(new Precedence(before, before + 1 + random.nextInt(count - 1 - before), "so"));
        }
        return new OperationGraph(operations, precedences);
    }

    /** Knows nothing but the list of precedences. */
    private static void valid(OperationGraph graph, List<Operation> order) {
        assertThat(order).containsExactlyInAnyOrderElementsOf(graph.operations());
        List<Integer> ids = order.stream().map(Operation::id).toList();
        for (Precedence each : graph.precedences()) {
            assertThat(ids.indexOf(each.before())).isLessThan(ids.indexOf(each.after()));
        }
    }

    private static int fewest(OperationGraph graph, List<Operation> done) {
        if (done.size() == graph.operations().size()) {
            return Setups.count(done);
        }
        int fewest = Integer.MAX_VALUE;
        for (Operation each : graph.operations()) {
            boolean open = !done.contains(each)
                    && graph.precedences().stream()
                            .filter(p -> p.after() == each.id())
                            .allMatch(p -> done.contains(graph.operations().get(p.before())));
            if (open) {
                List<Operation> more = new ArrayList<>(done);
                more.add(each);
                fewest = Math.min(fewest, fewest(graph, more));
            }
        }
        return fewest;
    }

    @Test
    void smallOrdersAreTheBestOfAllOrders() {
        Random random = new Random(7);
        for (int i = 0; i < 120; i++) {
            int count = 1 + random.nextInt(7);
            OperationGraph graph = random(random, count, random.nextInt(6));
            List<Operation> order = new ExactSequencer().sequence(graph).orElseThrow();
            valid(graph, order);
            assertThat(Setups.count(order)).isEqualTo(fewest(graph, List.of()));
        }
    }

    @Test
    void theNextBestStepKeepsTheRulesAndIsNeverBetterThanTheBest() {
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            OperationGraph graph = random(random, 12, 14);
            List<Operation> greedy = new GreedySequencer().sequence(graph).orElseThrow();
            valid(graph, greedy);
            List<Operation> best = new ExactSequencer().sequence(graph).orElseThrow();
            valid(graph, best);
            assertThat(Setups.count(best)).isLessThanOrEqualTo(Setups.count(greedy));
        }
    }

    @Test
    void aGreatOrderIsFoundAndSaysThatItMayNotBeTheBest() {
        BuildOrder order = Ordering.order(random(new Random(3), 120, 200));
        assertThat(order.steps()).hasSize(120);
        assertThat(order.fewest()).isFalse();
        for (Step step : order.steps()) {
            assertThat(step.after()).allSatisfy(number -> assertThat(number).isLessThan(step.number()));
        }
    }

    @Test
    void manyFreeOperationsDoNotTakeForever() {
        BuildOrder order = Ordering.order(random(new Random(5), 60, 0));
        assertThat(order.steps()).hasSize(60);
    }

    @Test
    void likeSettingsStandTogether() {
        List<Operation> operations = new ArrayList<>();
        for (int mm : new int[]{5, 9, 5, 9}) {
            operations.add(Operation.of(Phase.ALONG, "plough", List.of("p" + operations.size()), "plough plane")
                    .setting(List.of(new GaugeSetting("iron", Length.ofMm(mm))))
                    .numbered(operations.size()));
        }
        BuildOrder order = Ordering.order(new OperationGraph(operations, List.of()));
        assertThat(order.settings()).isEqualTo(2);
        assertThat(order.separately()).isEqualTo(4);
        assertThat(order.fewest()).isTrue();
        assertThat(order.steps()).extracting(s -> s.operation().id()).containsExactly(0, 2, 1, 3);
    }
}
