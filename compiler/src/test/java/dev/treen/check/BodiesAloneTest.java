package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.joinery.HandCut;
import dev.treen.joinery.Joined;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Solid;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The checks from solids on bodies that no joint has cut: boxes put together and hollowed out here, in the place of what
 * butt joints leave. Each finding of theirs has a row with a right and a wrong set of bodies; all checks look at both.
 */
class BodiesAloneTest {
    /**
     * One finding.
     *
     * @param parts each part as {@code name from x, y, z to x, y, z}: where its box stands
     * @param joints as they are written
     * @param right what is cut from the boxes or added to them, and nothing is found
     * @param wrong the same, and the finding of {@code code} is found and no other
     */
    record Row(String code, List<String> parts, List<String> joints, List<Change> right, List<Change> wrong) {
        @Override
        public String toString() {
            return code;
        }
    }

    /** A box cut out of a part by hand, in the name of its joint with another part, or added to it. */
    record Change(String part, String mate, Box box, boolean adds) {}

    private static Change cut(String part, String mate, long... at) {
        return new Change(part, mate, Box.of(at[0], at[1], at[2], at[3], at[4], at[5]), false);
    }

    private static Change add(String part, long... at) {
        return new Change(part, "", Box.of(at[0], at[1], at[2], at[3], at[4], at[5]), true);
    }

    private static final List<String> POST = List.of("post 0 0 0 40 40 300", "side 40 10 200 240 30 260",
            "back 10 40 200 30 240 260");
    private static final List<String> BUTTED = List.of("joint butt side to post", "joint butt back to post");
    private static final List<String> PLATE = List.of("plate 0 0 0 100 60 20", "bar 20 20 20 80 40 40");
    private static final List<String> CORNER = List.of("front -10 -10 0 110 0 60", "left -10 0 0 0 80 60",
            "right 100 0 0 110 80 60", "base 0 0 10 100 80 16");
    private static final List<String> LID = List.of("left -10 0 0 0 100 30", "right 60 0 0 70 100 30",
            "lid 0 0 12 60 100 18", "stop 0 -10 0 60 0 12");

    static List<Row> rows() {
        return List.of(
                new Row("parts-clash", PLATE, List.of("joint butt bar to plate"),
                        List.of(), List.of(add("bar", 30, 25, 15, 70, 35, 20))),
                new Row("joint-touches-nothing", PLATE, List.of("joint butt bar to plate"),
                        List.of(cut("plate", "bar", 20, 20, 16, 80, 30, 20)),
                        List.of(cut("plate", "bar", 20, 20, 16, 80, 40, 20))),
                // A bar through a hole, with a head at one end or at both.
                new Row("cannot-go-together", PLATE, List.of("joint butt bar to plate"),
                        List.of(cut("plate", "bar", 30, 25, 0, 70, 35, 20), add("bar", 30, 25, 0, 70, 35, 20)),
                        List.of(cut("plate", "bar", 30, 25, 0, 70, 35, 20), add("bar", 30, 25, 0, 70, 35, 20),
                                add("bar", 20, 20, -10, 80, 40, 0))),
                new Row("assembly-not-searched", List.of("rail 0 0 0 8000 20 20"),
                        List.of(), many(5), many(400)),
                new Row("groove-shows", CORNER,
                        List.of("joint butt left to front", "joint butt right to front", "joint butt base to front"),
                        List.of(cut("front", "base", 0, -5, 10, 100, 0, 16), add("base", 0, -5, 10, 100, 0, 16)),
                        List.of(cut("front", "base", -10, -5, 10, 110, 0, 16), add("base", 0, -5, 10, 100, 0, 16))),
                new Row("cuts-meet", POST, BUTTED,
                        List.of(cut("post", "side", 20, 15, 210, 40, 25, 250),
                                cut("post", "back", 10, 30, 210, 20, 40, 250)),
                        List.of(cut("post", "side", 10, 15, 210, 40, 25, 250),
                                cut("post", "back", 14, 20, 210, 24, 40, 250))),
                new Row("wall-too-thin", PLATE, List.of("joint butt bar to plate"),
                        List.of(cut("plate", "bar", 30, 25, 4, 70, 35, 20)),
                        List.of(cut("plate", "bar", 30, 25, 2, 70, 35, 20))),
                new Row("cannot-slide-out", LID,
                        List.of("joint groove lid into left, right { wide 6; deep 3; gap 1; slide front }"),
                        List.of(cut("left", "lid", -3, 0, 12, 0, 100, 18), cut("right", "lid", 60, 0, 12, 63, 100, 18),
                                add("lid", -3, 0, 12, 0, 100, 18), add("lid", 60, 0, 12, 63, 100, 18)),
                        List.of(cut("left", "lid", -3, 0, 12, 0, 100, 18), cut("right", "lid", 60, 0, 12, 63, 100, 18),
                                add("lid", -3, 0, 12, 0, 100, 18), add("lid", 60, 0, 12, 63, 100, 18),
                                add("stop", 0, -10, 12, 60, 0, 20))));
    }

    /** Pegs on the rail: so many boxes more, each a part with a joint. */
    private static List<Change> many(int pegs) {
        return Stream.iterate(0, i -> i + 1).limit(pegs)
                .map(i -> add("peg" + i, 20L * i, 0, 20, 20L * i + 10, 20, 80))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theWrongBodiesAreToldAndTheRightOnesAreNot(Row row) {
        assertThat(codes(row, row.right())).as("right").isEmpty();
        assertThat(codes(row, row.wrong())).as("wrong").isNotEmpty().containsOnly(row.code());
    }

    @Test
    void everyFindingFromSolidsHasARow() {
        assertThat(rows().stream().map(Row::code))
                .containsExactlyInAnyOrderElementsOf(Checks.ofBodies().stream().map(FindingKind::code).toList());
    }

    private static List<String> codes(Row row, List<Change> changes) {
        Map<String, Solid> bodies = new HashMap<>();
        StringBuilder text = new StringBuilder();
        for (String part : row.parts()) {
            String[] words = part.split(" ");
            long[] at = Stream.of(words).skip(1).mapToLong(Long::parseLong).toArray();
            declare(text, words[0], Box.of(at[0], at[1], at[2], at[3], at[4], at[5]), bodies);
        }
        row.joints().forEach(joint -> text.append(joint).append('\n'));
        for (Change change : changes) {
            if (!bodies.containsKey(change.part())) {
                declare(text, change.part(), change.box(), bodies);
                text.append("joint butt ").append(change.part()).append(" to ").append("rail\n");
            }
        }
        Joined joined = Bench.of(text.toString()).joined();
        for (Change change : changes) {
            bodies.computeIfPresent(change.part(), (name, body) -> changed(body, change, joined));
        }
        Joined cut = HandCut.with(joined, bodies);
        Standing standing = Standing.of(cut);
        return Checks.bodyChecks().stream()
                .flatMap(check -> check.run(cut, standing).stream())
                .map(Finding::code)
                .toList();
    }

    /** A part whose box, where nothing is cut from it, is this one. */
    private static void declare(StringBuilder text, String name, Box box, Map<String, Solid> bodies) {
        bodies.put(name, Solid.of(box));
        text.append("part %s { length %d; width %d; thickness %d; place { length right; width back; at %d, %d, %d } }%n"
                .formatted(name, box.size().x().intValue(), box.size().y().intValue(), box.size().z().intValue(),
                        box.min().x().intValue(), box.min().y().intValue(), box.min().z().intValue()));
    }

    private static Solid changed(Solid body, Change change, Joined joined) {
        if (change.adds()) {
            return body.union(Solid.of(change.box()));
        }
        String joint = joined.joints().stream()
                .filter(made -> made.joint().left().name().equals(change.mate())
                        && made.joint().right().name().equals(change.part()))
                .findFirst().orElseThrow().joint().name();
        return body.subtract(Convex.box(change.box(), Origin.STOCK), Origin.cut(joint));
    }
}
