package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.JointKinds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages of the joints say and draw what the compiler does; {@code -Dtreen.update=true} writes them anew. */
class JointReferenceTest {
    private static final Path EXAMPLES = Path.of("..", "examples", "joints");
    private static final Path REFERENCE = Path.of("..", "grammar", "joints");

    private static Map<String, String> texts(Path folder, String ending) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file).replace("\r\n", "\n"));
            }
        }
        return texts;
    }

    @Test
    void thePagesAreNotStale() throws IOException {
        Map<String, String> files = JointReference.files(texts(EXAMPLES, ".treen"));
        if (Boolean.getBoolean("treen.update")) {
            Files.createDirectories(REFERENCE);
            for (String old : texts(REFERENCE, "").keySet()) {
                Files.delete(REFERENCE.resolve(old));
            }
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(REFERENCE.resolve(file.getKey()), file.getValue());
            }
        }
        Map<String, String> there = texts(REFERENCE, "");
        assertThat(there.keySet()).isEqualTo(new TreeSet<>(files.keySet()));
        files.forEach((name, text) -> assertThat(there.get(name)).as(name).isEqualTo(text));
    }

    @Test
    void everyJointHasAPageWithADrawingAndStandsOnTheSheet() throws IOException {
        Map<String, String> there = texts(REFERENCE, "");
        String sheet = there.getOrDefault(JointReference.SHEET, "");
        JointKinds.schemas().forEach(schema -> {
            String kind = schema.kind();
            assertThat(there.get(kind + ".md")).as(kind).contains("(" + kind + ".svg)");
            assertThat(there.get(kind + ".svg")).as(kind).contains("apart").contains("together");
            assertThat(sheet).contains(">" + kind + "</text>");
        });
    }

    /** Forms for which the trade has names of its own (rules of the trade, section 2), by kind and as the sheet calls them. */
    private static final Map<String, List<String>> FORMS = Map.ofEntries(
            Map.entry("mitre", List.of("box, plain", "box, keyed", "frame, plain", "frame, keyed")),
            Map.entry("spline", List.of("mitre", "edge")),
            Map.entry("groove", List.of("plain panel", "panel with tongue", "raised panel", "sliding lid")),
            Map.entry("housing", List.of("through", "stopped", "rebated")),
            Map.entry("halving", List.of("cross", "corner", "tee", "mitred face")),
            Map.entry("bridle", List.of("corner", "tee")),
            Map.entry("mortise_tenon", List.of("stopped", "through, wedged", "stub in a groove", "haunched", "twin",
                    "one above the other", "draw-bored", "loose tenon")),
            Map.entry("dovetail", List.of("through", "lapped", "secret", "mitred shoulder")),
            Map.entry("sliding_dovetail", List.of("barefaced, stopped", "both sides, tapered")),
            Map.entry("nail", List.of("brads, corner", "brads, face")));

    @Test
    void everyFormOfTheTradeStandsOnTheSheetAndOnThePageOfItsJoint() throws IOException {
        Map<String, String> there = texts(REFERENCE, "");
        String sheet = there.getOrDefault(JointReference.SHEET, "");
        FORMS.forEach((kind, forms) -> forms.forEach(form -> {
            assertThat(sheet).contains(kind + " (" + form + ")").contains(">" + form + "</text>");
            assertThat(there.get(kind + ".md")).contains("**" + form + "**");
        }));
    }

    /** What a joint cuts is seen in its drawing, but for those that cut nothing. */
    @Test
    void theSheetIsBlackAndWhite() throws IOException {
        for (Map.Entry<String, String> file : texts(REFERENCE, ".svg").entrySet()) {
            assertThat(Pattern.compile("#[0-9a-f]{6}").matcher(file.getValue()).results().map(m -> m.group()))
                    .as(file.getKey())
                    .allMatch(colour -> colour.substring(1, 3).equals(colour.substring(3, 5))
                            && colour.substring(3, 5).equals(colour.substring(5, 7)));
        }
    }
}
