package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An example of a page: {@code treen} is a project, {@code treen escaped} one in which characters that cannot be seen are
 * written as Java writes them, {@code treen 60 times} a text that is repeated, {@code console} a command line.
 *
 * @param how what the fence says
 * @param text what stands in it
 * @param others codes that cannot but come with it, which the fence names: {@code treen, with board-too-thin}
 */
record PageExample(String how, String text, Set<String> others) {
    private static final Pattern FENCE = Pattern.compile("```([^,\n]*)(?:, with ([^\n]*))?\n(.*?)\n```",
            Pattern.DOTALL);
    private static final Pattern TIMES = Pattern.compile("treen (\\d+) times");

    static PageExample of(String section) {
        Matcher fence = FENCE.matcher(section);
        return fence.matches()
                ? new PageExample(fence.group(1), fence.group(3), others(fence.group(2)))
                : new PageExample("nothing", "", Set.of());
    }

    private static Set<String> others(@Nullable String list) {
        return list == null ? Set.of() : Set.of(list.split(", ", -1));
    }

    /** The codes that it gives. */
    Set<String> codes(Path folder) throws IOException {
        Matcher times = TIMES.matcher(how);
        return switch (how) {
            case "console" -> command(folder);
            case "treen" -> compiled(text);
            case "treen escaped" -> compiled(unescaped());
            default -> times.matches()
                    ? compiled((text + "\n").repeat(Integer.parseInt(times.group(1))))
                    : Set.of("no example that can be read");
        };
    }

    /** Whether it is a project that can be read as it stands. */
    boolean plain() {
        return how.equals("treen");
    }

    /** All findings of a project. */
    static List<Finding> findings(String project) {
        return Compilation.of(new SourceFile("example.treen", project), new ProjectFiles()).findings();
    }

    private static Path buried(Path folder) throws IOException {
        int longest = 4095;
        Path deep = folder;
        int left;
        while ((left = longest - "/a.treen".length() - deep.toString().length()) > 10) {
            deep = deep.resolve("d".repeat(Math.min(200, left - 1)));
        }
        Files.createDirectories(deep);
        return Files.writeString(deep.resolve("a.treen"), "let   wall = 9\n");
    }

    private String unescaped() {
        return Pattern.compile("\\\\u([0-9A-F]{4})").matcher(text)
                .replaceAll(escape -> Character.toString(Integer.parseInt(escape.group(1), 16)));
    }

    private static Set<String> compiled(String project) {
        return findings(project).stream()
                .map(Finding::code)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Runs the line in a folder that holds `tray.treen`, a project, `notes`, a file that is none, and `protected.treen`. */
    private Set<String> command(Path folder) throws IOException {
        Files.writeString(folder.resolve("tray.treen"), """
                project "Tray" { units mm }
                board plank { species black_cherry; size 900 x 140 x 12; moisture 9% }
                part base { length 200; width 100; thickness 9; from plank }
                """);
        Files.writeString(folder.resolve("notes"), "for the cook");
        Path guarded = folder.resolve("protected.treen");
        Files.deleteIfExists(guarded);
        Files.writeString(guarded, "let   wall = 9\n");
        assertThat(guarded.toFile().setWritable(false)).isTrue();
        // Root writes to anything: there a path so long that nothing can be written beside the file stands in.
        Path buried = Files.isWritable(guarded) ? buried(folder) : guarded;
        List<String> words = new ArrayList<>();
        for (String word : text.substring("treen ".length()).split(" ", -1)) {
            boolean named = word.contains(".") || word.contains("notes");
            words.add(word.equals("protected.treen")
                    ? buried.toString()
                    : named ? folder.resolve(word).toString() : word);
        }
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Main.run(words, new Subcommand.Streams(new ByteArrayInputStream(new byte[0]),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8)));
        String said = err.toString(StandardCharsets.UTF_8);
        return FindingCatalogue.kinds().stream()
                .map(FindingKind::code)
                .filter(code -> Pattern.compile("(?m)^(error|warning|note)\\W+" + code + "\\b").matcher(said).find())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
