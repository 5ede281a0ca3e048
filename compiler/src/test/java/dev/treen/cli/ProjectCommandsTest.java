package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.treen.plan.Projects;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands on good and bad input, through their streams and exit codes. */
class ProjectCommandsTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder = Path.of("");

    private Path project = Path.of("");

    @BeforeEach
    void write() throws IOException {
        project = folder.resolve("caddy.treen");
        Files.writeString(project, Projects.text("tea-caddy"));
    }

    private int run(Object... arguments) {
        out.reset();
        err.reset();
        return Main.run(Stream.of(arguments).map(Object::toString).toList(), streams());
    }

    private Subcommand.Streams streams() {
        return new Subcommand.Streams(
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private static List<String> names(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private void spoil(String from, String to) throws IOException {
        String text = Files.readString(project);
        assertThat(text).contains(from);
        Files.writeString(project, text.replace(from, to));
    }

    @Test
    void buildsBesideTheProject() throws IOException {
        assertThat(run("build", project)).isZero();
        assertThat(complained()).isEmpty();
        assertThat(printed()).contains("Cut list", "Layout", "Order of work", "Cautions");
        assertThat(names(folder)).containsExactly("caddy-plan", "caddy.treen");
        List<String> made = names(folder.resolve("caddy-plan"));
        assertThat(made).contains("step-1.svg", "step-31.svg").doesNotContain("step-32.svg");
        assertThat(made).filteredOn(name -> !name.matches("step-[0-9]+\\.svg")).containsExactly(".treen-made",
                "assembled.svg", "assembly.gltf",
                "cut-list.csv", "labels.html", "layout-plank-leaf-1.svg", "layout-plank-leaf-2.svg", "order.md",
                "part-base.dxf", "part-base.svg", "part-front.dxf", "part-front.svg", "part-left.dxf",
                "part-left.svg", "part-lid.dxf", "part-lid.svg", "part-right.dxf", "part-right.svg", "plan.html",
                "plan.json", "plan.md", "plan.pdf", "rack.treen", "shopping.csv", "taken-apart.svg", "year.svg");
    }

    @Test
    void buildsAgainOverItsOwnFilesAndTakesAwayWhatIsNoLongerMade() throws IOException {
        Path to = folder.resolve("out");
        assertThat(run("build", project, "-o", to)).isZero();
        spoil("board plank", "board slab");
        spoil("from       plank", "from       slab");
        assertThat(run("build", project, "-o", to)).isZero();
        assertThat(names(to)).contains("layout-slab-leaf-1.svg").doesNotContain("layout-plank-leaf-1.svg");
    }

    @Test
    void boardsWithLongOrLikeNamesGetFilesOfTheirOwn() throws IOException {
        String name = "b".repeat(400);
        Files.writeString(project, "project \"x\" { units mm }\n" + Stream.of(name, name + "2", "slab", "Slab")
                .map(b -> "board " + b + " { species black_cherry; size 300 x 90 x 10; rings flat; moisture 9% }\n"
                        + "part of_" + b + " { length 200; width 80; thickness 9; from " + b + " }\n")
                .reduce("", String::concat));
        assertThat(run("build", project, "-o", folder.resolve("out"))).isZero();
        assertThat(names(folder.resolve("out"))).filteredOn(n -> n.startsWith("layout-")).hasSize(4)
                .contains("layout-slab.svg", "layout-Slab-2.svg");
    }

    @Test
    void neverWritesOverAFileThatItDidNotMake() throws IOException {
        Path to = Files.createDirectory(folder.resolve("out"));
        Files.writeString(to.resolve("order.md"), "mine");
        Files.writeString(to.resolve("notes.txt"), "mine too");
        assertThat(run("build", project, "-o", to)).isEqualTo(1);
        assertThat(complained()).contains("output-not-written", "was not made by Treen", "Nothing was written");
        assertThat(names(to)).containsExactly("notes.txt", "order.md");
        assertThat(to.resolve("order.md")).hasContent("mine");
    }

    @Test
    void aListThatWasTamperedWithLeadsNowhere() throws IOException {
        Path to = folder.resolve("out");
        assertThat(run("build", project, "-o", to)).isZero();
        Files.writeString(to.resolve(".treen-made"),
                "../caddy.treen\n" + project + "\n..\n.\n\n" + String.join("\n", names(to)) + "\n");
        assertThat(run("build", project, "-o", to)).isZero();
        assertThat(project).exists();
    }

    @Test
    void aFolderThatIsAFileIsSaidAndLeftAlone() throws IOException {
        Path to = Files.writeString(folder.resolve("out"), "mine");
        assertThat(run("build", project, "-o", to)).isEqualTo(1);
        assertThat(complained()).contains("output-not-written", "is a file, and a folder is wanted");
        assertThat(to).hasContent("mine");
    }

    @Test
    void errorsInAProjectLeaveNothingBehind() throws IOException {
        spoil("gap auto", "gap 0.2");
        assertThat(run("build", project)).isEqualTo(1);
        assertThat(complained()).contains("error panel-tight", "^^^", "Nothing was written.");
        assertThat(printed()).isEmpty();
        assertThat(names(folder)).containsExactly("caddy.treen");
    }

    @Test
    void partsThatFitNoBoardAreAnErrorAndThePlanSaysWhichAreMissing() throws IOException {
        spoil("900 x 140", "400 x 140");
        assertThat(run("check", project)).isEqualTo(1);
        assertThat(printed()).contains("part-fits-no-board");
        assertThat(run("build", project)).isEqualTo(1);
        assertThat(complained()).contains("part-fits-no-board", "without the parts for which there is no wood");
        assertThat(folder.resolve("caddy-plan/plan.html")).content().contains("No board has room for: ");
    }

    /** What is missing is named in every form of the plan, and nothing of it is laid out. */
    @Test
    void thePlanWithoutAPartIsMadeInAllItsForms() throws IOException {
        spoil("900 x 140", "400 x 140");
        assertThat(run("build", project, "--paper", "none")).isEqualTo(1);
        Path plan = folder.resolve("caddy-plan");
        assertThat(plan.resolve("plan.md")).content().contains("**No board has room for:**");
        assertThat(plan.resolve("plan.json")).content().containsPattern("\"unplaced\" : \\[ \"\\w+");
        assertThat(names(plan)).contains("cut-list.csv", "shopping.csv", "labels.html", "order.md");
    }

    @Test
    void aProjectWithoutPartsGivesAPlanThatSaysSo() throws IOException {
        Files.writeString(project, "project \"Nothing yet\" { units mm }\nboard plank { size 900 x 100 x 20 }\n");
        assertThat(run("build", project)).isZero();
        Path plan = folder.resolve("caddy-plan");
        assertThat(plan.resolve("plan.md")).content().contains("The project names no parts yet");
        assertThat(names(plan)).contains("plan.html", "plan.pdf", "plan.json", "cut-list.csv");
    }

    @Test
    void aPlanBuiltFromItsOwnPageIsTheSame() throws IOException {
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        assertThat(run("build", project, "--paper", "none", "-o", first)).isZero();
        assertThat(run("build", first.resolve("plan.html"), "--paper", "none", "-o", second)).isZero();
        assertThat(names(second)).isEqualTo(names(first));
        for (String name : names(first)) {
            assertThat(second.resolve(name)).hasSameBinaryContentAs(first.resolve(name));
        }
    }

    @Test
    void checksInTextAndJson() throws IOException {
        assertThat(run("check", project)).isZero();
        spoil("gap auto", "gap 0.2");
        assertThat(run("check", project)).isEqualTo(1);
        assertThat(printed()).contains("error panel-tight");
        assertThat(run("check", project, "--format", "json")).isEqualTo(1);
        assertThat(new ObjectMapper().readTree(printed()).at("/findings/0/code").asText()).isEqualTo("panel-tight");
    }

    @Test
    void showsLengthsInOtherUnits() throws IOException {
        assertThat(run("build", project, "--units", "in/16", "-o", folder.resolve("out"))).isZero();
        assertThat(printed()).contains("Cut list (in)", "7+  x  3 11/16+", "board feet");
        assertThat(folder.resolve("out").resolve("cut-list.csv")).content().contains(",7+,3 11/16+,");
        assertThat(run("explain", project, "base.width", "--units", "in")).isZero();
        assertThat(printed()).contains("base.width finished = 3 13/32- in")
                .contains("80 mm opening + 2 × (4 mm groove − 0.033 in gap)", "0.013 in swelling + 0.02 in for making");
        spoil("gap auto", "gap 0.2");
        assertThat(run("check", project, "--units", "in")).isEqualTo(1);
        assertThat(printed()).contains("0.008 in");
        assertThat(run("check", project, "--units", "in/8")).isEqualTo(2);
        assertThat(complained()).contains("not shown in in/8", "in/16, in/32, in/64");
    }

    @Test
    void explainsANumberAndACode() {
        assertThat(run("explain", project, "base.width")).isZero();
        assertThat(printed()).contains("base.width", "opening");
        assertThat(run("explain", "part-fits-no-board")).isZero();
        assertThat(printed()).startsWith("error part-fits-no-board: ");
        assertThat(run("explain", "part-fits-no-bord")).isEqualTo(2);
        assertThat(complained()).contains("near is part-fits-no-board");
        assertThat(run("explain", project, "bass.width")).isEqualTo(1);
        assertThat(complained()).contains("`base.width`");
    }

    @Test
    void whatCannotBeReadIsAFinding() throws IOException {
        Path binary = Files.write(folder.resolve("oak.jpg"), new byte[]{(byte) 0xff, (byte) 0xd8, 0, 1, 2});
        for (Object file : new Object[]{folder.resolve("no-such.treen"), folder, binary, "\0"}) {
            for (String command : List.of("build", "check")) {
                assertThat(run(command, file)).as(command + " " + file).isIn(1, 2);
                assertThat(complained() + printed()).doesNotContain("Exception").isNotBlank();
            }
            assertThat(run("check", file, "--format", "json")).isEqualTo(1);
            assertThat(new ObjectMapper().readTree(printed()).at("/findings/0/code").asText())
                    .isEqualTo("file-not-read");
        }
        assertThat(names(folder)).containsExactly("caddy.treen", "oak.jpg");
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "build", "check", "build a b", "check a b", "explain a b c", "build x -o", "check x --format",
            "check x --format yaml", "check x --fromat json", "build --loud x", "chekc x"})
    void aCommandLineThatMakesNoSenseEndsWithTwoAndAHint(String line) {
        assertThat(run((Object[]) line.split(" "))).isEqualTo(2);
        assertThat(complained()).contains("treen: ").containsAnyOf("Use: ", "Try ");
        assertThat(printed()).isEmpty();
    }

    @Test
    void hintsAtNearNames() {
        run("chekc");
        assertThat(complained()).contains("near is check");
        run("check", "x", "--fromat", "json");
        assertThat(complained()).contains("near is --format");
    }

    @Test
    void everyCommandTellsHowItIsUsed() {
        for (String command : List.of("build", "check", "explain")) {
            assertThat(run(command, "--help")).isZero();
            assertThat(printed()).startsWith("usage: treen " + command);
        }
    }

    /** A command that fails as nothing should, to see what the user gets. */
    private record Faulty() implements Subcommand {
        @Override
        public String name() {
            return "faulty";
        }

        @Override
        public String summary() {
            return "fail";
        }

        @Override
        public int run(List<String> arguments, Streams streams) {
            throw new IllegalStateException("the glue has set");
        }
    }

    @Test
    void aFaultOfTreenApologisesAndSaysWhereTheDetailsAre() throws IOException {
        assertThat(Main.run(new Faulty(), List.of(), streams())).isEqualTo(3);
        assertThat(complained()).startsWith("Sorry: ").doesNotContain("Exception");
        Path details = Path.of(complained().strip().substring(complained().strip().lastIndexOf(' ') + 1));
        assertThat(Files.readString(details)).contains("the glue has set");
        Files.delete(details);
    }
}
