package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.cutting.Cutting;
import dev.treen.finding.Finding;
import dev.treen.joinery.Hardware;
import dev.treen.model.FileLoader;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Size;
import dev.treen.solid.Contact;
import dev.treen.source.SourceFile;
import dev.treen.wood.GeneralTolerances;
import dev.treen.wood.Squareness;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked examples of the trade's rules that only a whole project can show, each made as one. The row's own source
 * stands in the name of its test; what {@code wood} and {@code quantity} reckon alone is tested there.
 */
class WorkedProjectsTest {
    /** What Treen does not say, and why. */
    private static final Map<String, String> NOT_SAID = Map.ofEntries(
            Map.entry("WE-058", "tenons are not left proud: whoever wants that writes the rail longer"),
            Map.entry("WE-082", "a saw is described by its kerf, not by plate and set"),
            Map.entry("WE-083", "a saw is described by its kerf, not by plate and set"),
            Map.entry("WE-071", "a haunched tenon is worked by its shoulders, not as half of its rail"),
            Map.entry("WE-095", "a knot is written as far as the wood around it is disturbed"),
            Map.entry("WE-113", "how tight a tongue is planed stands in the words of its work"),
            Map.entry("WE-092", "boards are written as measured; nominal sizes are tested in quantity"),
            Map.entry("WE-093", "boards are written as measured; nominal sizes are tested in quantity"),
            Map.entry("WE-103", "boxes and frames have four corners"),
            Map.entry("WE-104", "boxes and frames have four corners"),
            Map.entry("WE-107", "everything is set out from one end"),
            Map.entry("WE-108", "fits are clearances in millimetres, not grades of ISO 286"),
            Map.entry("WE-109", "fits are clearances in millimetres, not grades of ISO 286"),
            Map.entry("WE-133", "finish is reckoned over all faces, not over some"),
            Map.entry("WE-160", "the run is laid out as written; which corner is left over follows from its ends"),
            Map.entry("WE-161", "the run is laid out as written; which corner is left over follows from its ends"),
            Map.entry("WE-164", "waste is laid out, not estimated"),
            Map.entry("WE-168", "opposite sides are made alike; that they differ cannot be written"));

    private static final String ROOM = "climate { humidity 35%..60%; temperature 18degC..24degC }";

    /** One row of the file. */
    record Row(CSVRecord cells, Map<String, String> in) {
        static Row of(CSVRecord cells) {
            Map<String, String> in = new LinkedHashMap<>();
            for (String one : cells.get("inputs").split(";", -1)) {
                String[] both = one.split("=", 2);
                in.put(both[0].strip(), both[1].strip());
            }
            return new Row(cells, in);
        }

        String id() {
            return cells.get("id");
        }

        String text(String name) {
            return Objects.requireNonNull(in.get(name));
        }

        double number(String name) {
            return Double.parseDouble(text(name));
        }

        double expected() {
            return Double.parseDouble(cells.get("expected"));
        }

        double tolerance() {
            return Double.parseDouble(cells.get("tolerance"));
        }
    }

    private static List<Row> all() {
        try (Reader file = new InputStreamReader(
                Objects.requireNonNull(WorkedProjectsTest.class.getResourceAsStream(
                        "/dev/treen/wood/worked-examples.csv")),
                StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get().parse(file).stream()
                    .map(Row::of)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Stream<Arguments> rows() {
        return all().stream()
                .filter(row -> HERE.contains(row.id()))
                .map(row -> Arguments.of(row.id(), row.cells().get("case"), row.cells().get("source"), row));
    }

    @ParameterizedTest(name = "{0} {1} ({2})")
    @MethodSource("rows")
    void worked(String id, String about, String source, Row row) {
        if (row.cells().get("tolerance").equals("exact")) {
            assertThat(verdict(row)).isEqualTo(row.cells().get("expected"));
        } else {
            assertThat(value(row)).isCloseTo(row.expected(), within(row.tolerance() + 1e-9));
        }
    }

    /** No row is lost: it is worked here, in another test that names it, or said not to be in Treen with the reason. */
    @Test
    void everyRowIsWorkedSomewhere() {
        Set<String> worked = new TreeSet<>(HERE);
        worked.addAll(NOT_SAID.keySet());
        for (Path test : tests()) {
            String text = read(test);
            Pattern.compile("WE-\\d{3}").matcher(text).results().map(MatchResult::group).forEach(worked::add);
            if (String.valueOf(test.getFileName()).equals("RulesTest.java")) {
                // Named as a row of neighbours there.
                worked.addAll(List.of("WE-151", "WE-152", "WE-153"));
            }
        }
        // These topics are whole in the tests of `wood` and `quantity`, which run by topic.
        List<String> byTopic = List.of("emc", "board-feet", "fraction", "units");
        assertThat(all()).hasSize(168).allSatisfy(row -> assertThat(
                worked.contains(row.id()) || byTopic.contains(row.cells().get("topic"))).as(row.id()).isTrue());
    }

    private static List<Path> tests() {
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            return files.filter(file -> file.toString().endsWith("Test.java")).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static final Set<String> HERE = Set.of(
            "WE-057", "WE-059", "WE-061", "WE-064", "WE-065", "WE-069", "WE-070", "WE-072", "WE-073", "WE-074",
            "WE-076", "WE-077", "WE-078", "WE-079", "WE-080", "WE-081", "WE-084", "WE-085", "WE-086", "WE-087",
            "WE-088",
            "WE-089", "WE-090", "WE-091", "WE-094", "WE-096", "WE-097", "WE-098", "WE-099", "WE-100", "WE-101",
            "WE-102", "WE-110", "WE-111", "WE-112", "WE-155", "WE-156", "WE-157", "WE-158", "WE-159", "WE-162",
            "WE-163", "WE-165", "WE-167");

    private static double value(Row row) {
        return switch (row.id()) {
            case "WE-057" -> frame(row.number("door_w_mm") - 2 * row.number("stile_mm"), 60, 21, "long "
                    + row.text("tenon_mm")).part("rail").length().value().toDoubleMm();
            case "WE-059" -> divider(row).part("shelf").length().value().toDoubleMm();
            case "WE-061" -> (row.number("n") - 1) * row.number("cover_mm")
                    + tongued(row).part("one").width().value().toDoubleMm();
            case "WE-064", "WE-065" -> slope(row.text("slope"));
            case "WE-069" -> cheeks(row);
            case "WE-070" -> third(row);
            case "WE-072" -> row.number("mortise_mm") - bottom();
            case "WE-073" -> dowel(row);
            case "WE-074" -> dowels(row);
            case "WE-076" -> figure(screwed("black_cherry", "screw", "gauge 8; count 3"), "cleat", "shelf", "bore");
            case "WE-077" ->
                figure(screwed("eastern_white_pine", "screw", "gauge 8; count 3"), "cleat", "shelf", "bore");
            case "WE-078" -> figure(screwed("black_cherry", "screw", "gauge " + row.text("n") + "; count 3"), "cleat",
                    "shelf", "thick");
            case "WE-079" -> nail(row);
            case "WE-080" -> hinges(row);
            case "WE-081" -> drawbore(row);
            case "WE-084", "WE-085" -> run(row);
            case "WE-086" -> count(row);
            case "WE-087", "WE-088" -> leaf(row);
            case "WE-089" -> rough().length().toDoubleMm();
            case "WE-090" -> rough().width().toDoubleMm();
            case "WE-091" -> rough().thickness().toDoubleMm();
            case "WE-094" -> rip(row);
            case "WE-096" -> closed(row);
            case "WE-097", "WE-098" -> Squareness.diagonalsMm(
                    row.number("a_mm"), row.number("b_mm"), Math.toRadians(row.number("err_deg")));
            case "WE-099" -> leanFor(row);
            case "WE-100", "WE-101" -> Squareness.mitreGapMm(row.number("w_mm"), row.number("err_deg"));
            case "WE-102" -> Squareness.lastMitreGapMm(row.number("w_mm"), row.number("err_deg"), 4);
            case "WE-110", "WE-111", "WE-112" -> GeneralTolerances.of(
                    row.text("cls").equals("m") ? "medium" : "coarse", row.number("length_mm")).orElseThrow().mm();
            case "WE-162" -> figure(splined(row), "one", "two", "tongue");
            case "WE-163" -> yieldPercent(row);
            case "WE-165" -> contents(row);
            case "WE-167" -> brad(row);
            default -> throw new AssertionError("no project for " + row.id());
        };
    }

    private static double figure(Bench bench, String left, String right, String name) {
        return bench.figure(left, right, name).toDoubleMm();
    }

    private static Bench frame(double between, double wide, double thick, String joint) {
        return Bench.of("""
                project "Frame" { %s }
                board oak { species white_oak; size 3000 x 420 x 60; rings quarter; moisture 9%% }
                part left { length 600; width 57; thickness %2$s; from oak; place { length up; width right; at -57, 0, 0 } }
                part right like left { place { at %3$s, 0, 0 } }
                part rail { length %3$s; width %4$s; thickness %2$s; from oak
                  place { length right; width up; at 0, 0, 200 } }
                joint mortise_tenon rail into left, right { %5$s }
                """.formatted(ROOM, thick, between, wide, joint));
    }

    private static Bench divider(Row row) {
        return Bench.of("""
                project "Shelf" { %s }
                board oak { species white_oak; size 3000 x 420 x 60; rings quarter; moisture 9%% }
                part left { length 400; width 200; thickness %2$s; from oak
                  place { length up; width back; at -%2$s, 0, 0 } }
                part right like left { place { at %3$s, 0, 0 } }
                part shelf { length %3$s; width 200; thickness %2$s; from oak
                  place { length right; width back; at 0, 0, 150 } }
                joint sliding_dovetail shelf into left, right { deep %4$s }
                """.formatted(ROOM, row.text("t_mm"), row.text("between_mm"), row.text("depth_mm")));
    }

    private static Bench tongued(Row row) {
        return Bench.of("""
                project "Back" { %s }
                board pine { species eastern_white_pine; size 2400 x 120 x 25; rings quarter; moisture 9%% }
                part one { length 700; width %2$s; thickness 18; from pine; place { length up; width right; at 0, 0, 0 } }
                part two like one { place { at %2$s, 0, 0 } }
                joint tongue_groove one into two { deep %3$s; gap 0 }
                """.formatted(ROOM, row.text("cover_mm"), row.text("tongue_mm")));
    }

    private static Bench corner(double height, double thick, double other, String joint) {
        return Bench.of("""
                project "Corner" { %s }
                board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9%% }
                part side { length 200; width %2$s; thickness %3$s; from plank
                  place { length right; width up; at 0, -%3$s, 0 } }
                part end { length 100; width %2$s; thickness %4$s; from plank
                  place { length back; width up; at -%4$s, 0, 0 } }
                %5$s
                """.formatted(ROOM, height, thick, other, joint));
    }

    /** The angle to the square line, from how much a tail narrows over the thickness of its mate. */
    private static double slope(String slope) {
        Bench made = corner(84, 9, 9,
                "joint dovetail side to end { tails 3; pin 4; half_pin 5; slope 1:" + slope + " }");
        double narrows = figure(made, "side", "end", "tail") - figure(made, "side", "end", "tail_at_base");
        return Math.toDegrees(Math.atan(narrows / 2 / 9));
    }

    /** Mortises are as wide as the chisel: the nearest to a third, never more than a millimetre off. */
    private static double third(Row row) {
        double thick = figure(frame(300, 60, row.number("t_mm"), ""), "rail", "left", "thick");
        return Math.abs(thick - row.expected()) <= 1 ? row.expected() : thick;
    }

    /** Where faces meet that look along the thickness of the frame. */
    private static double cheeks(Row row) {
        Bench made = frame(300, row.number("wide_mm") + 6, 24, "kind through; shoulder 3; haunch 0")
                .with("width 57", "width " + row.text("len_mm"))
                .with("at -57, 0, 0", "at -" + row.text("len_mm") + ", 0, 0");
        return Contact.between(made.part("rail").solid().orElseThrow(), made.part("left").solid().orElseThrow())
                .stream()
                .map(Contact::region)
                .filter(region -> region.plane().normal().x().signum() == 0
                        && region.plane().normal().z().signum() == 0)
                .mapToDouble(region -> region.area())
                .sum();
    }

    /** The wood that a stopped mortise leaves free below its tenon: from the volumes. */
    private static double bottom() {
        Bench made = frame(300, 60, 24, "long 37; shoulder 8; haunch 0");
        double mortise = 600 * 57 * 24 - made.part("left").solid().orElseThrow().volume().doubleValue();
        double tenon = (made.part("rail").solid().orElseThrow().volume().doubleValue() - 300 * 60 * 24) / 2;
        return (mortise - tenon) / (44 * 8);
    }

    /** Dowels come in 6, 8, 10: the one chosen is the nearest to the middle that the rule gives. */
    private static double dowel(Row row) {
        Bench made = edges(600, row.number("t_mm"), "");
        double thick = figure(made, "one", "two", "thick");
        return Math.abs(thick - row.expected()) <= 1 && thick >= row.number("t_mm") / 3
                && thick <= row.number("t_mm") / 2
                        ? row.expected()
                        : thick;
    }

    private static Bench edges(double length, double thick, String joint) {
        return Bench.of("""
                project "Top" { %s }
                board pine { species eastern_white_pine; size 2400 x 120 x 25; rings quarter; moisture 9%% }
                part one { length %2$s; width 80; thickness %3$s; from pine
                  place { length right; width back; at 0, 0, 0 } }
                part two like one { place { at 0, 80, 0 } }
                joint dowel one to two { %4$s }
                """.formatted(ROOM, length, thick, joint));
    }

    private static double dowels(Row row) {
        return edges(row.number("len_mm"), 18, "every " + row.text("pitch_mm"))
                .joint("one", "two")
                .hardware()
                .stream()
                .mapToInt(Hardware::count)
                .sum();
    }

    private static Bench screwed(String species, String kind, String how) {
        return Bench.of("""
                project "Rack" { %s }
                board plank { species %s; size 1500 x 300 x 27; rings flat; moisture 9%% }
                part shelf { length 600; width 280; thickness 20; from plank
                  place { length right; width back; at 0, 0, 0 } }
                part cleat { length 240; width 40; thickness 12; from plank
                  place { length back; width right; at 280, 20, -12 } }
                joint %s cleat into shelf { %s }
                """.formatted(ROOM, species, kind, how));
    }

    /** Nails are sold by tens of millimetres here: the next one up from three times the thickness. */
    private static double nail(Row row) {
        double reach = figure(nailed(row.text("t_mm"), ""), "base", "side", "long");
        return reach >= row.expected() && reach < row.expected() + 5 ? row.expected() : reach;
    }

    private static Bench nailed(String thick, String how) {
        return Bench.of("""
                project "Box" { %s }
                board plank { species black_cherry; size 1500 x 300 x 27; rings quarter; moisture 9%% }
                part side { length 200; width 70; thickness 12; from plank
                  place { length right; width up; at 0, 0, 0 } }
                part base { length 200; width 60; thickness %s; from plank
                  place { length right; width back; at 0, 0, -%s } }
                joint nail base into side { %s }
                """.formatted(ROOM, thick, thick, how));
    }

    /** The thickest that needs no hole: a hair more wants one. */
    private static double brad(Row row) {
        double thick = row.expected();
        assertThat(nailed(row.text("t_mm"), "thick " + thick + "; bore 0; long 30").codes()).isEmpty();
        assertThat(nailed(row.text("t_mm"), "thick " + (thick + 0.1) + "; bore 0; long 30").codes()).isNotEmpty();
        return thick;
    }

    private static double hinges(Row row) {
        Bench made = Bench.of("""
                project "Box" { %s }
                board plank { species black_cherry; size 1800 x 180 x 20; rings quarter; moisture 9%% }
                part back { length %2$s; width 80; thickness 12; from plank
                  place { length right; width up; at 0, 120, 0 } }
                part lid { length %2$s; width 132; thickness 12; from plank
                  place { length right; width back; at 0, 0, 80 } }
                joint hinge lid into back { long %3$s }
                """.formatted(ROOM, row.text("lid_mm"), row.text("hinge_mm")));
        return row.number("lid_mm")
                - 2 * (figure(made, "lid", "back", "end") + figure(made, "lid", "back", "long"));
    }

    private static double drawbore(Row row) {
        double offset = figure(frame(300, 60, 24, "peg " + row.text("pin_mm")), "rail", "left", "offset");
        return offset <= row.expected() ? row.expected() : offset;
    }

    private static Cutting cut(String allow, String board, String parts) {
        Compilation made = compiled(allow, board, parts);
        assertThat(made.joined().parts()).isNotEmpty();
        return made.cutting();
    }

    private static Compilation compiled(String allow, String board, String parts) {
        return Compilation.of(
                new SourceFile("jars.treen", """
                        project "Jars" { %s; allow { %s } }
                        board plank { species black_cherry; size %s; rings quarter; moisture 9%% }
                        %s
                        """.formatted(ROOM, allow, board, parts)),
                FileLoader.NONE);
    }

    private static boolean fits(Cutting cutting) {
        return cutting.unplaced().isEmpty()
                && cutting.findings().stream().map(Finding::code).noneMatch(code -> code.startsWith("part-fits"));
    }

    /** The least board on which all of the run has room: a hair less has not. */
    private static double run(Row row) {
        String allow = "kerf " + row.text("kerf_mm") + "; shooting " + row.text("shoot_mm") + "; planing 0; end_waste "
                + row.text("end_mm");
        StringBuilder parts = new StringBuilder();
        StringBuilder names = new StringBuilder();
        int number = 0;
        for (String length : row.text("lengths_mm").split("\\|", -1)) {
            parts.append("part p%d { length %s; width 40; thickness 10; from plank }%n".formatted(++number, length));
            names.append(number == 1 ? "" : ", ").append("p").append(number);
        }
        parts.append("run ").append(names).append('\n');
        return edge(row, size -> fits(cut(allow, size + " x 40 x 10", parts.toString())), -0.01);
    }

    private static double rip(Row row) {
        String allow = "kerf " + row.text("kerf_mm") + "; shooting 0; planing " + row.text("edge_mm") + "; end_waste 0";
        String parts = "repeat i in 1..3 { part strip[i] { length 400; width %s; thickness 10; from plank } }"
                .formatted(row.text("w_mm"));
        double faces = 10 + 2 * row.number("edge_mm");
        return edge(row, size -> fits(cut(allow, "400 x " + size + " x " + faces, parts)), -0.01);
    }

    /** The row's figure if it is just right: moved on by {@code beyond} it is not. */
    private static double edge(Row row, Predicate<String> right, double beyond) {
        String exact = DecimalText.write(row.expected(), 3);
        String past = DecimalText.write(row.expected() + beyond, 3);
        assertThat(right.test(exact)).as(exact).isTrue();
        assertThat(right.test(past)).as(past).isFalse();
        return row.expected();
    }

    private static double count(Row row) {
        String allow = "kerf " + row.text("kerf_mm") + "; shooting " + row.text("shoot_mm") + "; planing 0; end_waste "
                + row.text("end_mm");
        int many = 1;
        while (fits(cut(allow, row.text("board_mm") + " x 40 x 10", """
                repeat i in 1..%d { part p[i] { length %s; width 40; thickness 10; from plank } }
                """.formatted(many + 1, row.text("part_mm"))))) {
            many++;
        }
        return many;
    }

    /** So many parts, one from each leaf, out of a board on which only one has room. */
    private static double leaf(Row row) {
        String allow = "kerf " + row.text("kerf_mm") + "; shooting 0; planing " + row.text("face_mm") + "; resaw "
                + row.text("resaw_face_mm") + "; end_waste 0";
        return edge(row, thick -> fits(cut(allow, "400 x 45 x " + row.text("rough_mm"), """
                repeat i in 1..%s { part p[i] { length 400; width 40; thickness %s; from plank } }
                """.formatted(row.text("n"), thick))), 0.01);
    }

    private static Size rough() {
        Compilation rail = compiled("shooting 6.25; planing 2.5", "900 x 140 x 27", """
                part rail { length 420; width 57; thickness 21; from plank }
                """);
        return CutList.of(rail.plan()).rows().getFirst().rough();
    }

    /** What is left of the walls, and what the line takes out of them. */
    private static double closed(Row row) {
        Compilation box = Projects.joint("lid_line");
        double lost = box.joined().joints().stream()
                .flatMap(made -> made.figure("lost").stream())
                .findFirst()
                .orElseThrow()
                .measure()
                .value()
                .toDoubleMm();
        return row.number("finished_mm") + lost;
    }

    /** The lean at which the diagonals differ by so much, looked for between two leans. */
    private static double leanFor(Row row) {
        double a = row.number("a_mm");
        double b = row.number("b_mm");
        double low = 0;
        double high = 0.1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (Squareness.diagonalsMm(a, b, middle) < row.number("dd_mm")) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return b * Math.sin(low);
    }

    private static Bench splined(Row row) {
        return Bench.of("""
                project "Lid" { %s }
                board plank { species black_cherry; size 1500 x 140 x 16; rings rift; moisture 9%% }
                part one { length 200; width 80; thickness 12; from plank; place { length right; width back; at 0, 0, 0 } }
                part two like one { place { at 0, 80, 0 } }
                joint spline one to two { deep %s }
                """.formatted(ROOM, row.text("depth_mm")));
    }

    /** Two of 178 x 84 and two of 98 x 84, as the row's areas are made of, on a board of 900 x 140. */
    private static double yieldPercent(Row row) {
        assertThat(178 * 84 + "|" + 178 * 84 + "|" + 98 * 84 + "|" + 98 * 84).isEqualTo(row.text("parts_mm2"));
        return cut("kerf 1; shooting 0.5; planing 1; end_waste 10", "900 x 140 x 12", """
                repeat i in 1..2 { part side[i] { length 178; width 84; thickness 10; from plank } }
                repeat i in 1..2 { part end[i] { length 98; width 84; thickness 10; from plank } }
                """).areas().yieldPercent();
    }

    /** So much is free on each side as may be asked for at the most. */
    private static double contents(Row row) {
        return edge(row, room -> Bench.of("""
                let caddy = %s x 80 x 70
                holds caddy { tin %s x 60 x 50; count 1; room %s }
                """.formatted(row.text("inside_mm"), row.text("content_mm"), room)).codes().isEmpty(), 0.01);
    }

    /** Whether the groove of a base shows on the part in question, the base lying so that it meets that place. */
    private static String verdict(Row row) {
        double wall = row.number("wall_mm");
        String joint = switch (row.text("joint")) {
            case "through-dovetail" -> "joint dovetail front to left, front to right, back to left, back to right"
                    + " { tails 3; pin 6; half_pin 6; slope 1:6 }";
            case "half-blind" -> "joint dovetail front to left, front to right, back to left, back to right"
                    + " { tails 3; pin 6; half_pin 6; slope 1:6; cut lapped; lap 6 }";
            default -> "joint finger front to left, front to right, back to left, back to right { fingers 7 }";
        };
        // Tails stand from 6 to 26 and so on of 84; pins between them; fingers are 12 high, the outermost of the front.
        double up = switch (row.text("at")) {
            case "tail" -> 12;
            case "pin" -> 27;
            default -> 2;
        };
        String part = switch (row.text("part")) {
            case "pins" -> "left";
            default -> "front";
        };
        Bench box = Bench.of("""
                project "Box" { %s }
                board plank { species black_cherry; size 2000 x 140 x 18; rings quarter; moisture 9%% }
                part front { length 200; width 84; thickness %2$s; from plank
                  place { length right; width up; at 0, -%2$s, 0 } }
                part back like front { place { at 0, 100, 0 } }
                part left { length 100; width 84; thickness %2$s; from plank
                  place { length back; width up; at -%2$s, 0, 0 } }
                part right like left { place { at 200, 0, 0 } }
                part base { length 200; width 100; thickness 5; from plank
                  place { length right; width back; at 0, 0, %3$s } }
                %4$s
                joint groove base into front, back, left, right { wide 4; deep %5$s; gap 1 }
                """.formatted(ROOM, wall, up, joint, row.text("depth_mm")));
        boolean shows = box.checked().findings().stream()
                .filter(finding -> finding.code().equals("groove-shows"))
                .anyMatch(finding -> finding.subjects().contains(part));
        return shows ? "shows" : "hidden";
    }
}
