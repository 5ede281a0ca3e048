package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.Joined;
import dev.treen.plan.Projects;
import dev.treen.yield.AtOnce;
import dev.treen.yield.Cancel;
import dev.treen.yield.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A layout is the same whether one, two or eight threads look for it. */
class SameOnAnyProcessorsTest {
    @Test
    void everyExampleIsLaidOutTheSame() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
            for (Path folder : folders.filter(each -> !each.endsWith("joints")).sorted().toList()) {
                String name = folder.getFileName().toString();
                same(name, Projects.example(name).joined());
            }
        }
    }

    /** Two woods apart, wide panels to be glued up, thick boards to be resawn, sets that match; invented. */
    @Test
    void generatedRacksAreLaidOutTheSame() {
        for (int seed = 0; seed < 6; seed++) {
            same("rack " + seed, Projects.compile(rack(new Random(seed))).joined());
        }
    }

    private static void same(String name, Joined joined) {
        Cutting one = AtOnce.on(1, () -> Cutter.cut(joined));
        assertThat(AtOnce.<Cutting>on(2, () -> Cutter.cut(joined))).as(name).isEqualTo(one);
        assertThat(AtOnce.<Cutting>on(8, () -> Cutter.cut(joined))).as(name).isEqualTo(one);
    }

    static String rack(Random random) {
        StringBuilder text = new StringBuilder(
                "project \"Kitchen rack\" { units mm; layout { matched part0, part3 } }\n");
        for (int b = 0; b < 6; b++) {
            text.append("board plank").append(b).append(" { species ").append(b < 3 ? "white_oak" : "black_cherry")
                    .append("; size ").append(900 + random.nextInt(900)).append(" x ").append(110 + random.nextInt(80))
                    .append(" x ").append(random.nextInt(3) == 0 ? 54 : 25)
                    .append("; knot { at ").append(200 + random.nextInt(600)).append(", ").append(random.nextInt(100))
                    .append("; radius ").append(6 + random.nextInt(12)).append(" } }\n");
        }
        for (int p = 0; p < 9; p++) {
            boolean wide = p == 8;
            text.append("part part").append(p).append(" { length ").append(150 + random.nextInt(400)).append("; width ")
                    .append(wide ? 260 : 40 + random.nextInt(60)).append("; thickness 19")
                    .append(p == 1 || p == 2 ? "; from plank" + p : p > 4 && p < 8 ? "; from plank" + (p - 2) : "")
                    .append(wide ? "; glue_up { }" : "").append(" }\n");
        }
        return text.toString();
    }

    /** Whoever is told of progress is told by one thread at a time, and can stop all of them. */
    @Test
    void progressIsToldByOneThreadAtATimeAndAStopStopsAll() {
        Joined joined = Projects.compile(rack(new Random(3))).joined();
        var inside = new AtomicInteger();
        List<Integer> together = new ArrayList<>();
        Progress progress = report -> {
            together.add(inside.incrementAndGet());
            Thread.onSpinWait();
            inside.decrementAndGet();
        };
        Cutting whole = AtOnce.on(4, () -> Cutter.cut(joined, EarlierLayout.NONE, progress, Cancel.never()));
        assertThat(together).isNotEmpty().allMatch(count -> count == 1);
        assertThat(whole.unplaced()).isEmpty();
        Cutting stopped = AtOnce.on(4, () -> Cutter.cut(joined, EarlierLayout.NONE, Progress.none(), () -> true));
        assertThat(stopped.boards()).isNotEmpty();
        assertThat(stopped.unplaced()).isEmpty();
    }
}
