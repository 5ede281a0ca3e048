package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
            Operation operation = Operation.of(Phase.JOINTS, "do " + i, List.of("p" + i), tool)
                    .setting(settings)
                    .taking(Minutes.around(5, 5 + random.nextInt(60)))
                    .numbered(i);
            operations.add(
                    random.nextInt(3) == 0 ? operation.waiting(new Wait(1, 2 + random.nextInt(9), "", "", ""))
                            : operation);
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

    /** The least cost of all orders there are, each tried and reckoned anew. */
    private static Cost least(OperationGraph graph, Network network, List<Operation> done, Cost sofar) {
        if (done.size() == graph.operations().size()) {
            return network.cost(done.stream().mapToInt(Operation::id).toArray());
        }
        Cost least = sofar;
        for (Operation each : graph.operations()) {
            boolean open = !done.contains(each)
                    && graph.precedences().stream()
                            .filter(p -> p.after() == each.id())
                            .allMatch(p -> done.contains(graph.operations().get(p.before())));
            if (open) {
                List<Operation> more = new ArrayList<>(done);
                more.add(each);
                Cost found = least(graph, network, more, least);
                least = found.compareTo(least) < 0 ? found : least;
            }
        }
        return least;
    }

    private static final Cost DEAR = new Cost(Integer.MAX_VALUE, 0, 0);

    /** The cost of an order, reckoned by hand and apart from the network that the search uses. */
    private static Cost reckoned(OperationGraph graph, List<Operation> order) {
        Map<String, GaugeSetting> now = new HashMap<>();
        Map<Integer, Integer> over = new HashMap<>();
        int settings = 0;
        int changes = 0;
        int clock = 0;
        int end = 0;
        String hand = "";
        for (Operation each : order) {
            for (GaugeSetting setting : each.settings()) {
                settings += setting.equals(now.put(each.tool(), setting)) ? 0 : 1;
            }
            changes += each.tool().equals(hand) ? 0 : 1;
            hand = each.tool();
            for (Precedence p : graph.precedences()) {
                clock = p.after() == each.id() ? Math.max(clock, over.getOrDefault(p.before(), 0)) : clock;
            }
            clock += (each.minutes().orElseThrow().least() + each.minutes().orElseThrow().most()) / 2;
            over.put(each.id(), clock + 60 * each.pause().map(Wait::leastHours).orElse(0));
            end = Math.max(end, over.getOrDefault(each.id(), 0));
        }
        return new Cost(settings, end, changes);
    }

    @Test
    void smallOrdersAreTheBestOfAllOrders() {
        Random random = new Random(7);
        for (int i = 0; i < 150; i++) {
            int count = i < 120 ? 1 + random.nextInt(7) : 8 + random.nextInt(2);
            OperationGraph graph = random(random, count, i < 120 ? random.nextInt(6) : 9);
            Sequencer.Found found = Sequencer.of(graph);
            valid(graph, found.order());
            assertThat(found.cost()).isEqualTo(reckoned(graph, found.order()));
            assertThat(found.best()).isTrue();
            assertThat(found.cost()).isEqualTo(least(graph, new Network(graph), List.of(), DEAR));
        }
    }

    @Test
    void theSearchAloneFindsTheBestWithoutAnyFirstOrder() {
        Random random = new Random(23);
        for (int i = 0; i < 60; i++) {
            OperationGraph graph = random(random, 1 + random.nextInt(7), random.nextInt(6));
            Network network = new Network(graph);
            Search.Result found = Search.below(DEAR, network, 100_000);
            Cost cost = network.cost(found.order().orElseThrow());
            assertThat(cost).isEqualTo(found.floor()).isEqualTo(least(graph, network, List.of(), DEAR));
        }
    }

    @Test
    void quickOrdersKeepTheRulesAndAreNeverBetterThanTheBest() {
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            OperationGraph graph = random(random, 12, 14);
            Network network = new Network(graph);
            Sequencer.Found best = Sequencer.of(graph);
            valid(graph, best.order());
            for (Greedy.Taste taste : Greedy.Taste.values()) {
                int[] quick = Greedy.order(network, taste);
                valid(graph, network.told(quick));
                int[] polished = Polish.of(network, quick, 1_000);
                valid(graph, network.told(polished));
                assertThat(network.cost(polished)).isLessThanOrEqualTo(network.cost(quick));
                assertThat(best.cost()).isLessThanOrEqualTo(network.cost(polished));
            }
            int[] plain = Sequencer.plain(network);
            valid(graph, network.told(plain));
            assertThat(best.cost()).isLessThanOrEqualTo(network.cost(plain));
        }
    }

    @Test
    void aGreatOrderIsFoundAndSaysWhatNoOrderCanDoWithout() {
        OperationGraph graph = random(new Random(3), 120, 200);
        BuildOrder order = Ordering.order(graph);
        assertThat(order.steps()).hasSize(120);
        assertThat(order.settingsAtLeast()).isBetween(1, order.settings());
        assertThat(order.fewest()).isEqualTo(order.settings() == order.settingsAtLeast());
        for (Step step : order.steps()) {
            assertThat(step.after()).allSatisfy(number -> assertThat(number).isLessThan(step.number()));
        }
    }

    @Test
    void sixtyOperationsAreSearchedInBoundedTimeAndComeOutAlikeEachTime() {
        for (int edges : new int[]{0, 60, 200}) {
            OperationGraph graph = random(new Random(5), 60, edges);
            List<Operation> once = Sequencer.of(graph).order();
            valid(graph, once);
            assertThat(Sequencer.of(graph).order()).isEqualTo(once);
        }
    }

    @Test
    void precedencesInACircleLeaveTheOrderAsGiven() {
        OperationGraph two = random(new Random(1), 2, 0);
        OperationGraph circle = new OperationGraph(
                two.operations(), List.of(new Precedence(0, 1, "so"), new Precedence(1, 0, "so")));
        assertThat(Sequencer.of(circle).order()).isEqualTo(two.operations());
    }

    @Test
    void workIsDoneBesideAWaitWhereThatCostsNoSetting() {
        Operation glue = Operation.of(Phase.JOINTS, "glue", List.of("a"), "clamps")
                .taking(new Minutes(10, 20)).waiting(new Wait(23, 30, "", "", "")).numbered(2);
        List<Operation> operations = List.of(
                Operation.of(Phase.JOINTS, "plane", List.of("b"), "plane").taking(new Minutes(60, 120)).numbered(0),
                Operation.of(Phase.JOINTS, "clean", List.of("a"), "scraper").taking(new Minutes(5, 10)).numbered(1),
                glue);
        BuildOrder order = Ordering.order(new OperationGraph(operations, List.of(new Precedence(2, 1, "hard"))));
        assertThat(order.steps()).extracting(s -> s.operation().id()).containsExactly(2, 0, 1);
        assertThat(order.best()).isTrue();
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
        assertThat(order.best()).isTrue();
        assertThat(order.steps()).extracting(s -> s.operation().id()).containsExactly(0, 2, 1, 3);
        assertThat(order.setups()).extracting(Setups.Setup::step).containsExactly(1, 3);
        assertThat(order.setups()).extracting(Setups.Setup::also).containsExactly(List.of(2), List.of(4));
    }
}
