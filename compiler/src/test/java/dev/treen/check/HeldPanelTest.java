package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.treen.finding.Severity;
import dev.treen.joinery.FinishedPart;
import dev.treen.model.Datum;
import org.junit.jupiter.api.Test;

/**
 * Panels that are pinned at the middle or glued along one edge (rules of the trade M-05 and M-06, derived; that both are
 * done: Woodworking periodicals named there). The caddy's base is 80 between walls in grooves 4 deep.
 */
class HeldPanelTest {
    private static Bench base(String held) {
        return Bench.caddy().with("gap auto", "gap auto; held " + held);
    }

    private static double grows(Bench bench) {
        FinishedPart base = bench.part("base");
        return bench.joined().nature(base.part()).swelling(1, base.width().value().toDoubleMm());
    }

    private static double shrinks(Bench bench) {
        FinishedPart base = bench.part("base");
        return bench.joined().nature(base.part()).shrinking(1, base.width().value().toDoubleMm());
    }

    private static double fact(Bench bench, String name) {
        return bench.checked().facts().fact("base", name).orElseThrow().value() instanceof Datum.Exactly(var quantity)
                ? quantity.amount().doubleValue()
                : Double.NaN;
    }

    /** Glued in front, the base takes all of that groove, and the back's leaves all that it grows, and 0.5 mm. */
    @Test
    void gluedAlongOneEdgeItMovesAtTheOther() {
        Bench front = base("front");
        assertThat(front.codes()).isEmpty();
        assertThat(front.figure("base", "front", "gap").toDoubleMm()).isZero();
        assertThat(front.figure("base", "back", "gap").toDoubleMm()).isCloseTo(grows(front) + 0.5, offset(0.011));
        assertThat(front.part("base").width().value().toDoubleMm())
                .isCloseTo(80 + 4 + 4 - grows(front) - 0.5, offset(0.011));
        // Along the grain nothing changes.
        assertThat(front.figure("base", "left", "gap").toDoubleMm()).isEqualTo(0.5);
        // Dry, the back edge draws back by all that the base shrinks.
        double gap = front.figure("base", "back", "gap").toDoubleMm();
        assertThat(fact(front, "cover")).isCloseTo(4 - gap - shrinks(front), offset(1e-4));
        assertThat(Clearances.of(front.joined()).getFirst().deviations())
                .as("the whole of each error comes out at the one edge")
                .allSatisfy(each -> assertThat(Math.abs(each.slope())).isEqualTo(1));
    }

    /** A gap that serves both edges of a free base is too small for one that moves at one edge; the fix makes it pass. */
    @Test
    void theSameGapIsTooTightForOneEdge() {
        Bench free = Bench.caddy().with("gap auto", "gap 0.6");
        assertThat(free.finding("panel-tight").severity()).isEqualTo(Severity.WARNING);
        Bench glued = Bench.caddy().with("gap auto", "gap 0.6; held back");
        assertThat(glued.finding("panel-tight").severity()).isEqualTo(Severity.ERROR);
        assertThat(glued.finding("panel-tight").found()).contains("all of it away from the edge that is glued");
        assertThat(glued.mended("panel-tight").codes()).isEmpty();
    }

    /** Pushed aside a free base with 3 mm of room a side covers nothing; pinned it covers half of what is over. */
    @Test
    void pinnedAtTheMiddleItIsHeldOnBothSides() {
        Bench free = Bench.caddy().with("gap auto", "gap 2.4");
        assertThat(free.codes()).containsExactly("panel-loose");
        assertThat(free.finding("panel-loose").remedies()).anyMatch(r -> r.text().contains("`held middle`"));
        Bench pinned = Bench.caddy().with("gap auto", "gap 2.4; held middle");
        assertThat(pinned.codes()).isEmpty();
        assertThat(fact(pinned, "cover")).isCloseTo(4 - 2.4 - shrinks(pinned) / 2, offset(1e-4));
        assertThat(pinned.figure("base", "front", "gap")).isEqualTo(free.figure("base", "front", "gap"));
    }

    /** Glued along both edges it cannot move at all. */
    @Test
    void gluedAlongBothEdgesItFights() {
        Bench both = Bench.caddy().with(
                "joint groove base into front, back, left, right { wide 5; deep 4; gap auto }",
                """
                joint groove base into front, left, right { wide 5; deep 4; gap 1; held front }
                joint groove base into back { wide 5; deep 4; gap 1; held back }
                """);
        assertThat(both.codes()).contains("two-fixed-lines");
    }

    /** An end is no edge to glue by. */
    @Test
    void itsEndsCannotBeGlued() {
        Bench left = base("left");
        assertThat(left.codes()).contains("setting-does-not-fit");
        assertThat(left.finding("setting-does-not-fit").found()).contains("front").contains("back");
    }

    /** What is to be done says where the glue goes. */
    @Test
    void theWorkSaysWhereItIsHeld() {
        assertThat(words(base("middle"))).contains("at the middle of both ends");
        assertThat(words(base("front"))).contains("along its front edge alone");
        assertThat(words(Bench.caddy())).contains("Never glue it in");
    }

    private static String words(Bench bench) {
        StringBuilder words = new StringBuilder();
        bench.joint("base", "front").works().forEach(work -> words.append(work.caution()).append(' '));
        return words.toString();
    }
}
