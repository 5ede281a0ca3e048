package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.syntax.Formatter;
import dev.treen.syntax.Parser;
import dev.treen.syntax.SyntaxTree;
import dev.treen.syntax.Token;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The formatter on every Treen file that ships, whole and damaged: the plan before is the plan after. */
class FormatKeepsModelTest {
    private static final int MUTATIONS = 60;

    static List<Path> files() {
        return TreenFiles.all();
    }

    static List<Path> examples() {
        return TreenFiles.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void examplesAreInTheOneStyleAlready(Path path) {
        String text = TreenFiles.file(path).text();
        assertThat(Formatter.format(Parser.parse(TreenFiles.file(path)))).as("put right by: treen format " + path)
                .isEqualTo(text);
    }

    @ParameterizedTest
    @MethodSource("files")
    void otherBlanksAreTheSameProject(Path path) {
        Random random = new Random(41);
        for (int round = 0; round < 8; round++) {
            keepsAll(path, otherBlanks(TreenFiles.file(path).text(), random));
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void damagedFilesAreTheSameProject(Path path) {
        Random random = new Random(43);
        String text = TreenFiles.file(path).text();
        for (int round = 0; round < MUTATIONS; round++) {
            keepsAll(path, damaged(otherBlanks(text, random), random));
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void partOfTheEditsIsTheSameProject(Path path) {
        Random random = new Random(47);
        for (int round = 0; round < 8; round++) {
            String text = otherBlanks(TreenFiles.file(path).text(), random);
            Compilation before = TreenFiles.compile(path, text);
            String some = Edit.applied(text, Formatter.edits(before.tree()).stream()
                    .filter(edit -> random.nextBoolean())
                    .toList());
            assertThat(ModelText.of(TreenFiles.compile(path, some))).isEqualTo(ModelText.of(before));
        }
    }

    private static void keepsAll(Path path, String text) {
        Compilation before = TreenFiles.compile(path, text);
        String once = Formatter.format(before.tree());
        Compilation after = TreenFiles.compile(path, once);
        assertThat(ModelText.of(after)).as("model of %s", text).isEqualTo(ModelText.of(before));
        assertThat(ModelText.findings(after)).as("findings of %s", text).isEqualTo(ModelText.findings(before));
        assertThat(Formatter.format(after.tree())).as("twice: %s", text).isEqualTo(once);
        assertThat(comments(after.tree())).as("comments of %s", text).isEqualTo(comments(before.tree()));
    }

    private static List<String> comments(SyntaxTree tree) {
        return tree.tokens().stream().flatMap(token -> switch (token.kind()) {
            case COMMENT, DOC_COMMENT ->
                Stream.of(tree.file().text().substring(token.start(), token.end()).stripTrailing());
            case WORD, NAME, RESERVED, NUMBER, UNIT, TEXT, MARK, BRACKET, STRAY, NEW_LINE -> Stream.empty();
        }).toList();
    }

    /** The same tokens with other blanks between them, wherever there are some. */
    private static String otherBlanks(String text, Random random) {
        SyntaxTree tree = Parser.parse(new dev.treen.source.SourceFile("blanks.treen", text));
        StringBuilder other = new StringBuilder();
        int at = 0;
        for (Token token : tree.tokens()) {
            if (token.start() > at) {
                other.append(" ".repeat(1 + random.nextInt(4)));
            }
            other.append(text, token.start(), token.end());
            at = token.end();
        }
        return other.append(text, at, text.length()).toString();
    }

    /** What typing does to a text: pieces gone, moved, doubled, or a stray sign. */
    private static String damaged(String text, Random random) {
        StringBuilder other = new StringBuilder(text);
        int damages = 1 + random.nextInt(4);
        for (int i = 0; i < damages; i++) {
            int from = random.nextInt(other.length());
            int to = Math.min(other.length(), from + random.nextInt(25));
            String piece = other.substring(from, to);
            switch (random.nextInt(4)) {
                case 0 -> other.delete(from, to);
                case 1 -> other.delete(from, to).insert(random.nextInt(other.length()), piece);
                case 2 -> other.insert(random.nextInt(other.length()), piece);
                case 3 -> other.insert(from, "{}()\";,:=*/§ \n".charAt(random.nextInt(14)));
                default -> throw new IllegalStateException();
            }
        }
        return other.toString();
    }
}
