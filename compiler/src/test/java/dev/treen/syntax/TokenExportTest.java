package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Writes the tokens of every Treen file of the project to {@code target/tokens}, a line each: kind, first UTF-16 unit,
 * one past the last. The tests of the editors' grammars in {@code editor-support} compare their colours with them.
 */
class TokenExportTest {
    private static final Path ROOT = Path.of("..");
    private static final Path OUT = Path.of("target", "tokens");

    static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String folder : List.of("examples", "library", "compiler/src")) {
            Path start = ROOT.resolve(folder);
            if (Files.isDirectory(start)) {
                try (Stream<Path> all = Files.walk(start)) {
                    all.filter(file -> file.toString().endsWith(".treen")).sorted().forEach(files::add);
                }
            }
        }
        return files;
    }

    @ParameterizedTest
    @MethodSource("files")
    void tokensAndBlanksCoverTheFile(Path path) throws IOException {
        String text = Files.readString(path);
        List<Token> tokens = Parser.parse(new SourceFile(path.toString(), text)).tokens();
        StringBuilder rest = new StringBuilder(text);
        for (Token token : tokens) {
            for (int i = token.start(); i < token.end(); i++) {
                rest.setCharAt(i, ' ');
            }
        }
        assertThat(rest.toString()).isBlank();
        export(path, tokens);
    }

    private static void export(Path path, List<Token> tokens) throws IOException {
        Path out = OUT.resolve(ROOT.relativize(path) + ".tokens");
        Files.createDirectories(out.getParent());
        Files.writeString(out, tokens.stream()
                .map(token -> token.kind() + " " + token.start() + " " + token.end() + "\n")
                .collect(Collectors.joining()));
    }
}
