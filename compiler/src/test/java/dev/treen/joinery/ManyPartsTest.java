package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Large and hostile projects: near-linear time, the same answer twice, and never a stack trace. */
class ManyPartsTest {

    private static String caddies(int count) {
        StringBuilder text = new StringBuilder(
                "project \"Row of caddies\" { }\nlet wall = 9\nlet inside = 160 x 80 x 70\n");
        text.append("board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }\n");
        for (int i = 0; i < count; i++) {
            int x = 200 * (i % 400);
            int y = 200 * (i / 400);
            text.append("""
                    part front%1$d { length 160; width 84; thickness 9; from plank; place { length right; width up; at %2$d, %3$d - 9, 0 } }
                    part back%1$d like front%1$d { place { at %2$d, %3$d + 80, 0 } }
                    part left%1$d { length 80; width 84; thickness 9; from plank; place { length back; width up; at %2$d - 9, %3$d, 0 } }
                    part right%1$d like left%1$d { place { at %2$d + 160, %3$d, 0 } }
                    part base%1$d { length 160; width 80; thickness 7; from plank; place { length right; width back; at %2$d, %3$d, 5 } }
                    joint mitre front%1$d to left%1$d, left%1$d to back%1$d, back%1$d to right%1$d, right%1$d to front%1$d
                    joint groove base%1$d into front%1$d, back%1$d, left%1$d, right%1$d { wide 5; deep 4; gap auto }
                    """
                    .formatted(i, x, y));
        }
        return text.toString();
    }

    private static Duration joining(Joined joined) {
        // Time of this thread alone: other work on the machine does not count.
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        long begun = thread.getCurrentThreadCpuTime();
        Joinery.join(joined.project());
        return Duration.ofNanos(thread.getCurrentThreadCpuTime() - begun);
    }

    @Test
    void tenThousandPartsAreJoinedInNearlyLinearTime() {
        Bench few = Bench.of(caddies(200));
        Bench many = Bench.of(caddies(2000));
        assertThat(many.joined().parts()).hasSize(10_000);
        assertThat(many.codes()).containsOnly("climate-assumed");
        assertThat(many.part("base1999").width().value()).isEqualTo(many.part("base0").width().value());
        Duration small = joining(few.joined());
        Duration large = joining(many.joined());
        // Ten times as many: thirty times as long would be no accident of the machine.
        assertThat(large).isLessThan(small.plusMillis(20).multipliedBy(30));
    }

    @Test
    void theSameProjectGivesTheSameAnswer() {
        Bench one = Bench.caddy().with("gap auto", "gap 0.2");
        Bench two = Bench.caddy().with("gap auto", "gap 0.2");
        assertThat(one.checked().findings()).isEqualTo(two.checked().findings());
        assertThat(one.joined().parts()).extracting(FinishedPart::finished)
                .isEqualTo(two.joined().parts().stream().map(FinishedPart::finished).toList());
    }

    /** Every number of two projects replaced by hostile ones: always findings, never an exception. */
    @Test
    void hostileNumbersNeverThrow() {
        for (Bench bench : new Bench[]{Bench.caddy(), Bench.shelf()}) {
            String text = bench.text();
            for (int at = 0; at < text.length(); at++) {
                boolean begins = Character.isDigit(text.charAt(at))
                        && (at == 0 || (!Character.isLetterOrDigit(text.charAt(at - 1)) && text.charAt(at - 1) != '.'));
                if (begins) {
                    int end = at;
                    while (end < text.length() && Character.isDigit(text.charAt(end))) {
                        end++;
                    }
                    for (String hostile : new String[]{"0", "-1", "1/3", "99999", "0.0001"}) {
                        Bench.of(text.substring(0, at) + hostile + text.substring(end));
                    }
                }
            }
        }
    }

    /** Every kind of joint between parts that meet in every way. */
    @Test
    void everyJointBearsEveryMeeting() {
        for (String joint : new String[]{"mitre a to b", "butt a to b", "butt a to b { through b }", "rebate a into b",
                "groove a into b", "groove a into b { slide up; shoulder left; wide 3 }",
                "housing a into b { stop 5 from back }"}) {
            for (String at : new String[]{"20, 0, 0", "20, 10, 0", "20, 10, 10", "0, 10, 0", "0, 0, 10", "5, 5, 5",
                    "-20, 0, 0", "30, 0, 0", "-20, -10, 0", "0, -10, -30"}) {
                for (String grain : new String[]{"length right; width back", "length up; width back",
                        "length back; width up"}) {
                    for (String overall : new String[]{"", " overall"}) {
                        Bench.of(
                                "part a { length 20%s; width 10%s; thickness 10; place { length right; width back; at 0, 0, 0 } }%n"
                                        .formatted(overall, overall)
                                        + "part b { length 20; width 10; thickness 30; place { " + grain + "; at " + at
                                        + " } }\njoint " + joint + "\n");
                    }
                }
            }
        }
    }
}
