package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.treen.check.Bench;
import dev.treen.finding.Severity;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of joint with what it cannot bear: parts that lie wrongly to each other, sizes that no wood has, settings out
 * of all proportion. Nothing is thrown and nothing hangs; what cannot be made gets a finding that has a place. What a kind
 * is and which settings it has comes from its schema, so that a new kind is tried without a line here.
 */
final class BadJointsTest {
    /** What is written for a length, a count or anything else that a property may take. */
    private static final List<String> VALUES = List.of("0", "0.001", "999", "-5");
    /** A bound on steps is what keeps a search short; this is only there so that a hang fails and does not block. */
    private static final Duration LONG = Duration.ofSeconds(30);

    static List<String> kinds() {
        return JointKinds.schemas().stream().map(JointSchema::kind).toList();
    }

    private static JointSchema schema(String kind) {
        return JointKinds.named(kind).orElseThrow().schema();
    }

    private static String joint(String kind, String left, String right, String settings) {
        return "joint " + kind + " " + left + (schema(kind).into() ? " into " : " to ") + right
                + (settings.isEmpty() ? "" : " { " + settings + " }") + "\n";
    }

    /** Two parts, the second where {@code place} says. */
    private static String two(String size, String otherSize, String place) {
        return """
                project "Shelf" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 4000 x 400 x 60; rings quarter; moisture 9%% }
                part one { %s; from plank; place { length right; width up; at 0, 0, 0 } }
                part other { %s; from plank; place { %s } }
                """.formatted(size, otherSize, place);
    }

    private static String sized(String length, String width, String thickness) {
        return "length " + length + "; width " + width + "; thickness " + thickness;
    }

    /** Runs a project, and holds it against what is promised of all of them. */
    private static Bench tried(String text) {
        Bench[] made = new Bench[1];
        assertTimeoutPreemptively(LONG, () -> assertThatCode(() -> {
            made[0] = Bench.of(text);
            made[0].joined().parts().forEach(part -> part.bare().ifPresent(solid -> solid.volume()));
        }).as(text).doesNotThrowAnyException(), text);
        assertThat(made[0].checked().findings()).as(text).allSatisfy(
                finding -> assertThat(finding.at().end()).isGreaterThanOrEqualTo(finding.at().start()));
        return made[0];
    }

    private static boolean cannot(Bench bench) {
        return bench.checked().findings().stream()
                .anyMatch(finding -> finding.severity() == Severity.ERROR && finding.at().end() > finding.at().start());
    }

    /** Places in which no kind of joint can be made. */
    private static Map<String, String> impossible() {
        String wood = sized("200", "80", "20");
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("far apart", two(wood, wood, "length right; width up; at 5000, 3000, 900"));
        texts.put("a hair apart", two(wood, wood, "length right; width up; at 0, 20.01, 0"));
        texts.put("the same place", two(wood, wood, "length right; width up; at 0, 0, 0"));
        texts.put("one corner", two(wood, wood, "length right; width up; at 200, 20, 80"));
        texts.put("in each other, parallel", two(wood, wood, "length right; width up; at 50, 5, 5"));
        texts.put("of no length", two(sized("0", "80", "20"), wood, "length right; width up; at 0, 20, 0"));
        texts.put("of no thickness", two(sized("200", "80", "0"), wood, "length right; width up; at 0, 20, 0"));
        return texts;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void whatCannotBeMadeIsTold(String kind) {
        impossible().forEach((where, text) -> assertThat(cannot(tried(text + joint(kind, "one", "other", ""))))
                .as(kind + ", " + where)
                .isTrue());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aPartJoinedToItselfIsTold(String kind) {
        String wood = sized("200", "80", "20");
        String text = two(wood, wood, "length right; width up; at 5000, 3000, 900");
        assertThat(cannot(tried(text + joint(kind, "one", "one", "")))).as(kind).isTrue();
        assertThat(cannot(tried(text + joint(kind, "one", "nobody", "")))).as(kind).isTrue();
    }

    /** Every way in which two boards may touch, from a hair to a beam. */
    private static List<String> touching() {
        List<String> texts = new ArrayList<>();
        List<String> ways = List.of("length right; width up", "length right; width back", "length back; width up",
                "length back; width right", "length up; width right", "length up; width back");
        for (String thick : List.of("0.001", "3", "100000")) {
            String wood = sized("200", "80", thick);
            for (String way : ways) {
                texts.add(two(sized("200", "80", "20"), wood, way + "; at 200, 0, 0"));
                texts.add(two(sized("200", "80", "20"), wood, way + "; at 0, 20, 0"));
                texts.add(two(sized("200", "80", "20"), wood, way + "; at 200, 20, 0"));
                texts.add(two(sized("200", "80", "20"), wood, way + "; at 60, 0, 80"));
                texts.add(two(sized("200", "80", "20"), wood, way + "; at 0, 0, 0"));
            }
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void nothingIsThrownHoweverTwoPartsTouch(String kind) {
        touching().forEach(text -> tried(text + joint(kind, "one", "other", "")));
    }

    /** The kind's own example, with each setting in turn out of all proportion. */
    @ParameterizedTest
    @MethodSource("kinds")
    void nothingIsThrownWhateverASettingSays(String kind) throws Exception {
        for (String text : examples(kind)) {
            for (PropertySchema property : schema(kind).block().properties()) {
                for (String value : VALUES) {
                    tried(set(text, kind, property.name() + " " + value));
                }
            }
        }
    }

    /** An example's joint of that kind with one setting and no other. */
    private static String set(String text, String kind, String setting) {
        StringBuilder changed = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            boolean mine = line.strip().startsWith("joint " + kind + " ");
            int block = line.indexOf('{');
            changed.append(mine ? (block < 0 ? line : line.substring(0, block)) + " { " + setting + " }" : line)
                    .append('\n');
        }
        return changed.toString();
    }

    private static List<String> examples(String kind) throws Exception {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "examples", "joints"))) {
            for (Path file : files.sorted().toList()) {
                String text = Files.readString(file);
                boolean oneLine = text.lines().anyMatch(line -> line.startsWith("joint " + kind + " ")
                        && (line.indexOf('{') < 0 || line.indexOf('}') > 0));
                if (oneLine && texts.isEmpty()) {
                    texts.add(text);
                }
            }
        }
        return texts;
    }
}
