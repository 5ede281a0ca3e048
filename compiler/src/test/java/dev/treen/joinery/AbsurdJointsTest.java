package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.treen.check.Bench;
import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of joint with each of its settings at values that no joint bears, and with parts, places and settings drawn at
 * random from such values. Nothing is thrown and nothing hangs; whatever is said to be an error has a place and a way out.
 * Kinds and settings come from the schemas, so that a new one is tried without a line here.
 */
final class AbsurdJointsTest {
    /** Only so that a hang fails and does not block: what keeps a search short is a bound on its steps. */
    private static final Duration LONG = Duration.ofSeconds(60);
    private static final List<String> LENGTHS = List.of("-5", "0", "0.001", "9999");
    private static final List<String> COUNTS = List.of("-1", "0", "200", "1.5");
    private static final List<String> SIZES = List.of("0.001", "3", "20", "80", "200", "10000");
    private static final List<String> WAYS = List.of("right", "left", "back", "front", "up", "down");
    private static final String NO_WORD = "sideways";

    static List<String> kinds() {
        return JointKinds.schemas().stream().map(JointSchema::kind).toList();
    }

    private static JointSchema schema(String kind) {
        return JointKinds.named(kind).orElseThrow().schema();
    }

    /** What a property is set to that it cannot bear. */
    private static List<String> absurd(Shape shape) {
        return switch (shape) {
            case Shape.LengthOrAuto _ -> LENGTHS;
            case Shape.OneOf _,Shape.Choice _,Shape.Named _,Shape.Inner _ -> List.of(NO_WORD, "7");
            case Shape.Plain plain -> switch (plain) {
                case LENGTH -> LENGTHS;
                case COUNT -> COUNTS;
                case ANGLE -> List.of("-10deg", "0deg", "90deg", "179deg", "1:0");
                case SIZE, SIZE_2, SIZE_3 -> List.of("0 x 0", "-5 x 4", "9999 x 9999", "0.001 x 0.001");
                case POINT_2, POINT_3 -> List.of("0, 0", "-5, -5", "9999, 9999");
                case PERCENT, PERCENT_RANGE, TEMPERATURE_RANGE, TEXT, DIRECTION, SPECIES, STUFF, BOARD, PART, PARTS,
                        SAW,
                        ROOM, LOAD, MASS, NUMBER, PAIR, FLAWS, RINGS ->
                    List.of(NO_WORD, "-1");
            };
        };
    }

    /** What is wrong in any joint: zero is a value that many settings may have, and 0 the number of a screw. */
    private static boolean alwaysWrong(String value) {
        return !value.equals("0");
    }

    /** Runs a project and holds it against what is promised of all of them. */
    private static List<Finding> findings(String text) {
        List<Finding> found = new ArrayList<>();
        assertTimeoutPreemptively(LONG, () -> assertThatCode(() -> {
            Bench bench = Bench.of(text);
            bench.joined().parts().forEach(part -> part.bare().ifPresent(solid -> solid.volume()));
            found.addAll(bench.checked().findings());
        }).as(text).doesNotThrowAnyException(), text);
        return found;
    }

    private static void everyErrorHelps(List<Finding> findings, String text) {
        assertThat(findings)
                .filteredOn(finding -> finding.severity() == Severity.ERROR)
                .allSatisfy(finding -> {
                    assertThat(finding.at().end()).as(finding + "\n" + text).isGreaterThan(finding.at().start());
                    assertThat(finding.remedies()).as(finding + "\n" + text).isNotEmpty();
                });
    }

    /** The examples of a kind, with each setting in turn absurd and all others as they are. */
    @ParameterizedTest
    @MethodSource("kinds")
    void anAbsurdSettingIsToldWithAWayOut(String kind) throws Exception {
        String text = example(kind);
        List<String> before = findings(text).stream().map(AbsurdJointsTest::said).toList();
        for (PropertySchema property : schema(kind).block().properties()) {
            for (String value : absurd(property.shape())) {
                String changed = set(text, kind, property.name(), value);
                List<Finding> more = findings(changed).stream()
                        .filter(finding -> !before.contains(said(finding)))
                        .toList();
                everyErrorHelps(more, changed);
                if (alwaysWrong(value)) {
                    assertThat(more).as(property.name() + " " + value + "\n" + changed)
                            .anyMatch(finding -> finding.severity() != Severity.NOTE);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void anUnknownSettingIsTold(String kind) throws Exception {
        String changed = set(example(kind), kind, "sidewise", "3");
        List<Finding> told = findings(changed).stream()
                .filter(finding -> finding.at().text().contains("sidewise"))
                .toList();
        assertThat(told).as(changed).isNotEmpty();
    }

    /** Two parts of absurd sizes anywhere to each other, joined by a kind with some absurd settings. */
    @ParameterizedTest
    @MethodSource("kinds")
    void whateverIsDrawnAtRandomIsToldWithAWayOut(String kind) {
        Random random = new Random(kind.hashCode());
        for (int round = 0; round < 40; round++) {
            String text = """
                    project "Shelf" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                    board plank { species black_cherry; size 20000 x 400 x 60; rings quarter; moisture 9%% }
                    part one { %s; from plank; place { length right; width up; at 0, 0, 0 } }
                    part other { %s; from plank; place { %s; at %s } }
                    joint %s one %s other { %s }
                    """.formatted(size(random), size(random), way(random), place(random), kind,
                    schema(kind).into() ? "into" : "to", settings(kind, random));
            everyErrorHelps(findings(text), text);
        }
    }

    /** Parts that touch in another way than their joint wants are told a move after which it can be made. */
    @Test
    void whatMeetsWronglyIsToldHowFarToMove() {
        Bench wrong = Bench.of("""
                project "Shelf" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 900 x 100 x 25; rings quarter; moisture 9% }
                part one { length 200; width 80; thickness 20; from plank; place { length right; width up; at 0, 0, 0 } }
                part other like one { place { length back; width up; at 60, 20, 0 } }
                joint mitre one to other
                """);
        Finding told = wrong.finding("meets-wrongly");
        assertThat(told.remedies().getFirst().text()).startsWith("move `one` 80 mm down");
        assertThat(wrong.applied(told.remedies().getFirst()).codes()).doesNotContain("meets-wrongly");
    }

    private static String any(List<String> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    private static String size(Random random) {
        return "length " + any(SIZES, random) + "; width " + any(SIZES, random) + "; thickness " + any(SIZES, random);
    }

    private static String way(Random random) {
        String length = any(WAYS, random);
        String width = any(WAYS, random);
        boolean along = WAYS.indexOf(length) / 2 == WAYS.indexOf(width) / 2;
        return along ? way(random) : "length " + length + "; width " + width;
    }

    private static String place(Random random) {
        List<String> places = List.of("-20", "0", "3", "20", "80", "200", "10000");
        return any(places, random) + ", " + any(places, random) + ", " + any(places, random);
    }

    private static String settings(String kind, Random random) {
        List<String> settings = new ArrayList<>();
        for (PropertySchema property : schema(kind).block().properties()) {
            if (random.nextInt(4) == 0) {
                settings.add(property.name() + " " + any(absurd(property.shape()), random));
            }
        }
        return String.join("; ", settings);
    }

    private static String said(Finding finding) {
        return finding.code() + finding.headline();
    }

    private static String example(String kind) throws Exception {
        Path own = Path.of("..", "examples", "joints", kind + ".treen");
        if (Files.exists(own)) {
            return Files.readString(own);
        }
        try (Stream<Path> files = Files.list(Path.of("..", "examples", "joints"))) {
            for (Path file : files.sorted().toList()) {
                String text = Files.readString(file);
                if (text.contains("\njoint " + kind + " ")) {
                    return text;
                }
            }
        }
        throw new AssertionError("no example of " + kind);
    }

    /** All joints of a kind with one setting more, or another. */
    private static String set(String text, String kind, String property, String value) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (int begin = text.indexOf("joint " + kind + " "); begin >= 0; begin = text.indexOf(
                "joint " + kind + " ", at)) {
            int end = head(text, begin);
            out.append(text, at, end).append(" { ");
            at = end;
            if (text.startsWith("{", end + 1)) {
                at = closing(text, end + 1);
                statements(text.substring(end + 2, at - 1)).stream()
                        .filter(each -> !each.split("[ {]")[0].equals(property))
                        .forEach(each -> out.append(each).append("; "));
            }
            out.append(property).append(' ').append(value).append(" }");
        }
        return out.append(text.substring(at)).toString();
    }

    /** Where the pairs of a joint end: before the blank in front of its braces, or at the end of the line. */
    private static int head(String text, int begin) {
        int end = begin;
        while (end < text.length()) {
            boolean goesOn = text.charAt(end) == '\n' && text.substring(begin, end).strip().endsWith(",");
            if (text.startsWith(" {", end) || (text.charAt(end) == '\n' && !goesOn)) {
                return end;
            }
            end++;
        }
        return end;
    }

    private static int closing(String text, int brace) {
        int deep = 0;
        int at = brace;
        do {
            deep += text.charAt(at) == '{' ? 1 : text.charAt(at) == '}' ? -1 : 0;
            at++;
        } while (deep > 0);
        return at;
    }

    private static List<String> statements(String block) {
        List<String> all = new ArrayList<>();
        int deep = 0;
        StringBuilder one = new StringBuilder();
        for (char each : (block + "\n").toCharArray()) {
            deep += each == '{' ? 1 : each == '}' ? -1 : 0;
            if (deep == 0 && (each == ';' || each == '\n')) {
                if (!one.toString().isBlank()) {
                    all.add(one.toString().strip());
                }
                one.setLength(0);
            } else {
                one.append(each);
            }
        }
        return all;
    }
}
