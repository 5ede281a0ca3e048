import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes what the server can do beside what others can, from the tests that passed. Run from the root of the repository
 * after the tests of the server:
 *
 * <pre>java lsp/src/bench/java/FeatureTable.java</pre>
 *
 * A line of {@code editor-support/features.csv} names the tests of its feature; only where all of them passed does the table
 * in {@code editor-support/FEATURES.md} say that Treen has it.
 */
final class FeatureTable {
    private static final Pattern CASE = Pattern.compile(
            "<testcase name=\"([^\"(\\[{]*)[^\"]*\" classname=\"(?:\\w+\\.)*(\\w+)\"[^>]*?(/?)>(?!\\s*<(?:failure|error|skipped))");
    private static final String HEAD = """
            # What the server can do, beside ten others

            Made by `java lsp/src/bench/java/FeatureTable.java` from the reports of the server's tests: Treen has what its
            tests showed, each over the real streams of the protocol, and nothing else. The other columns were read in the
            sources of 2024 to 2026 of smithy-language-server (S), pkl-lsp (P), lemminx (L), gopls (G), rust-analyzer (R),
            tinymist (T), taplo (A), ty (Y), terraform-ls (F) and nil (N): what a server announces and whether its handler
            was seen. *no* means that neither was found by searching the text.

            """;

    private FeatureTable() {
    }

    public static void main(String[] arguments) throws Exception {
        Set<String> passed = passed(Path.of("lsp/target/surefire-reports"));
        StringBuilder out = new StringBuilder(HEAD);
        List<String> lines = Files.readAllLines(Path.of("editor-support/features.csv"));
        List<String> lacking = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(";", -1);
            String ours = cells[11];
            if (i > 0 && !cells[12].isEmpty()) {
                for (String test : cells[12].split(" ")) {
                    if (!passed.contains(test)) {
                        lacking.add(test);
                        ours = "not shown";
                    }
                }
            }
            out.append("| ").append(cells[0]).append(" | **").append(ours).append("** |");
            for (int c = 1; c <= 10; c++) {
                out.append(' ').append(cells[c]).append(" |");
            }
            out.append('\n');
            if (i == 0) {
                out.append("| --- ".repeat(12)).append("|\n");
            }
        }
        Files.writeString(Path.of("editor-support/FEATURES.md"), out.toString());
        System.out.println(passed.size() + " tests passed; missing: " + lacking);
    }

    private static Set<String> passed(Path reports) throws Exception {
        Set<String> passed = new HashSet<>();
        Set<String> failed = new HashSet<>();
        try (Stream<Path> files = Files.list(reports)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".xml")).toList()) {
                for (String one : Files.readString(file).split("(?=<testcase )")) {
                    Matcher found = CASE.matcher(one);
                    Matcher any = Pattern.compile("classname=\"(?:\\w+\\.)*(\\w+)\"").matcher(one);
                    if (found.lookingAt()) {
                        passed.add(found.group(2));
                        passed.add(found.group(2) + '#' + found.group(1).strip());
                    } else if (one.startsWith("<testcase") && any.find()) {
                        failed.add(any.group(1));
                    }
                }
            }
        }
        // A class in which anything failed has shown nothing.
        passed.removeIf(each -> failed.contains(each.replaceAll("#.*", "")));
        return passed;
    }
}
