package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.JointKinds;
import dev.treen.lsp.Editor;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.junit.jupiter.api.Test;

/** What an editor shows of a joint. */
class JointHoversTest {
    private static final Path EXAMPLES = Path.of("..", "examples", "joints");
    private static final Pattern PICTURE = Pattern
            .compile("!\\[[^]]*]\\(data:image/svg\\+xml;base64,([A-Za-z0-9+/=]+)\\)");

    private static ClientCapabilities showing(String... formats) {
        ClientCapabilities can = new ClientCapabilities();
        TextDocumentClientCapabilities texts = new TextDocumentClientCapabilities();
        texts.setHover(new HoverCapabilities(List.of(formats), false));
        can.setTextDocument(texts);
        return can;
    }

    private static String hover(Editor editor, String uri, String text, int in) throws Exception {
        return get(editor.document().hover(new HoverParams(file(uri), editor.at(uri, text, in))))
                .getContents().getRight().getValue();
    }

    private static byte[] picture(String hover) {
        Matcher matcher = PICTURE.matcher(hover);
        return matcher.find() ? Base64.getDecoder().decode(matcher.group(1)) : new byte[0];
    }

    @Test
    void theKindShowsAPictureAndTheNumbersOfAllPairs() throws Exception {
        try (Editor editor = new Editor(showing("markdown", "plaintext"))) {
            String uri = editor.open(EXAMPLES.resolve("dovetail.treen"));
            String hover = hover(editor, uri, "joint dovetail left to back", 8);
            // Three tails on 84 mm with half-pins of 5 and pins of 4: (84 − 10 − 8) / 3 = 22.
            assertThat(hover).contains("dovetail left to back: deep 9 mm, tail 22 mm")
                    .contains(
                            "a corner: the wide face and the end of `left` meet there with the end and the wide face of")
                    .contains("dovetail right to back: deep 9 mm")
                    .contains("Tails on the end of the left part");
            assertThat(picture(hover)).isNotEmpty();
        }
    }

    @Test
    void aPairBetweenItsPartsShowsItself() throws Exception {
        try (Editor editor = new Editor(showing("markdown"))) {
            String uri = editor.open(EXAMPLES.resolve("dovetail.treen"));
            String hover = hover(editor, uri, "right to back", 7);
            assertThat(hover).contains("dovetail right to back: deep 9 mm").doesNotContain("left to back");
            assertThat(picture(hover)).isNotEmpty();
        }
    }

    @Test
    void anEditorWithoutMarkdownGetsTheNumbersAlone() throws Exception {
        for (ClientCapabilities can : List.of(showing("plaintext"), new ClientCapabilities())) {
            try (Editor editor = new Editor(can)) {
                String uri = editor.open(EXAMPLES.resolve("dovetail.treen"));
                assertThat(hover(editor, uri, "joint dovetail left to back", 8))
                        .contains("tail 22 mm").doesNotContain("data:image");
            }
        }
    }

    /** Only joints with rods in both parts have too many faces for a picture that nobody waits for. */
    @Test
    void picturesAreSmallAndWellFormed() throws Exception {
        List<String> without = new ArrayList<>();
        try (Editor editor = new Editor(showing("markdown")); Stream<Path> files = Files.list(EXAMPLES)) {
            for (Path each : files.sorted().toList()) {
                String uri = editor.open(each);
                String kind = each.getFileName().toString().replace(".treen", "");
                // An example of a further form of a joint is named for the form.
                String word = JointKinds.named(kind).isPresent() ? kind : "\\w+";
                Matcher joint = Pattern.compile("joint " + word + "\\b").matcher(Files.readString(each));
                assertThat(joint.find()).isTrue();
                byte[] svg = picture(hover(editor, uri, joint.group(), 7));
                if (svg.length == 0) {
                    without.add(kind);
                } else {
                    assertThat(svg.length).as(kind).isLessThanOrEqualTo(JointHovers.MOST_BYTES);
                    var root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                            .parse(new ByteArrayInputStream(svg)).getDocumentElement();
                    assertThat(root.getTagName()).isEqualTo("svg");
                    assertThat(root.getElementsByTagName("path").getLength()).as(kind).isGreaterThan(2);
                }
            }
        }
        assertThat(without).containsExactly("dowel");
    }
}
