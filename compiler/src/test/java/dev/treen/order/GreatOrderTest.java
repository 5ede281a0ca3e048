package dev.treen.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A plan of 500 parts. The bound is generous: it tells a search that has no end from one that has. */
class GreatOrderTest {
    private static Compilation slats(int count) {
        StringBuilder text = new StringBuilder("project \"Slats for the garden room\" { units mm; tools machine }\n");
        for (int i = 0; i < count; i++) {
            text.append("part slat").append(i).append(" { length ").append(200 + 10 * (i % 40)).append("; width ")
                    .append(30 + i % 25).append("; thickness ").append(8 + i % 9).append(" }\n");
        }
        return Projects.compile(text.toString());
    }

    @Test
    void fiveHundredPartsAreOrderedInBoundedTime() {
        Compilation compilation = slats(500);
        OperationGraph graph = Ordering.graph(compilation.joined(), compilation.cutting());
        long begin = System.nanoTime();
        BuildOrder order = Ordering.order(graph);
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(Duration.ofSeconds(60));
        assertThat(order.steps()).hasSize(graph.operations().size());
        assertThat(order.fewest()).isTrue();
        assertThat(order.settings()).isEqualTo(40 + 25 + 9).isLessThan(order.separately());
        assertThatCode(() -> Calendar.of(order.steps())).doesNotThrowAnyException();
    }

    @Test
    void manyJointedPartsAreOrderedToo() {
        StringBuilder text = new StringBuilder("project \"Racks for the larder\" { units mm; tools hand }\n");
        for (int rack = 0; rack < 100; rack++) {
            text.append("""
                    part side%1$d_a { length 300; width 90; thickness 15; place { length up; width back; at -15, %2$d, 0 } }
                    part side%1$d_b like side%1$d_a { place { at 280, %2$d, 0 } }
                    part rail%1$d_a { length 280; width 90; thickness 12; place { length right; width back; at 0, %2$d, 40 } }
                    part rail%1$d_b like rail%1$d_a { place { at 0, %2$d, 150 } }
                    part rail%1$d_c like rail%1$d_a { place { at 0, %2$d, 260 } }
                    joint housing rail%1$d_a into side%1$d_a, side%1$d_b { deep 4 }
                    joint housing rail%1$d_b into side%1$d_a, side%1$d_b { deep 4 }
                    joint housing rail%1$d_c into side%1$d_a, side%1$d_b { deep 4 }
                    """.formatted(rack, rack * 200));
        }
        Compilation compilation = Projects.compile(text.toString());
        assertThat(compilation.joined().parts()).hasSize(500);
        OperationGraph graph = Ordering.graph(compilation.joined(), compilation.cutting());
        long begin = System.nanoTime();
        BuildOrder order = Ordering.order(graph);
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(Duration.ofSeconds(60));
        for (Step step : order.steps()) {
            assertThat(step.after()).allSatisfy(number -> assertThat(number).isLessThan(step.number()));
        }
    }
}
