package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Reading edit by edit gives what reading the whole text gives. */
class EditedTextTest {
    private static final int EDITS = Integer.getInteger("treen.edits", 400);
    private static final String[] TYPED = {"", "", "{", "}", "\n", "\"", " ", "x", "9", "°", "½", "🪵", "/*", "*/",
            "//",
            "/// about\n", "part p", "\nlet b = (2\n", ")", "[", "]", "joint mitre ", "let a = 1\n", ";", ".", "-",
            "\r\n",
            "else ", "\nelse {", "\n", "when a {\nlet c = 1\n}\n", "\n}\n"};

    @Test
    void anyRowOfEditsReadsAsTheWhole() throws Exception {
        List<Path> all;
        try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
            all = files.filter(path -> path.toString().endsWith(".treen")).sorted().toList();
        }
        assertThat(all).isNotEmpty();
        for (Path path : all) {
            Random random = new Random(path.getFileName().toString().length());
            String begin = Files.readString(path);
            String text = begin;
            EditedText edited = new EditedText("bench.treen");
            edited.read(new SourceFile("bench.treen", text));
            for (int i = 0; i < Math.max(10, EDITS / all.size()); i++) {
                text = i % 25 == 24 ? begin : text;
                int start = random.nextInt(text.length() + 1);
                int end = random.nextBoolean() ? start : Math.min(text.length(), start + random.nextInt(12));
                String typed = TYPED[random.nextInt(TYPED.length)];
                text = text.substring(0, start) + typed + text.substring(end);
                SourceFile file = new SourceFile("bench.treen", text);
                same(edited.read(file), Parser.parse(file), path + " edit " + i + ": " + typed + "\n" + text);
            }
        }
    }

    @Test
    void whatHasNotChangedIsTheSameAndMovesAlong() {
        String text = "let a = 1\n\npart lid {\n  length a\n}\nlet b = 2\n";
        EditedText edited = new EditedText("bench.treen");
        SyntaxTree before = edited.read(new SourceFile("bench.treen", text));
        Statement lid = before.statements().get(1);
        Span gone = before.statements().getFirst().span();
        SourceFile now = new SourceFile("bench.treen", text.replace("let a = 1", "let a = 1\nlet c = 4"));
        SyntaxTree after = edited.read(now);
        assertThat(after.statements().get(2)).isSameAs(lid);
        assertThat(lid.span().line()).isEqualTo(4);
        assertThat(lid.span().file()).isSameAs(now);
        assertThat(gone.file()).isNotEqualTo(now);
    }

    @Test
    void aBraceTypedInOneStatementLeavesTheOthersAlone() {
        String text = "part a {\n  length 1\n}\npart b {\n  length 2\n}\npart c {\n  length 3\n}\n";
        EditedText edited = new EditedText("bench.treen");
        SyntaxTree before = edited.read(new SourceFile("bench.treen", text));
        SyntaxTree after = edited.read(new SourceFile("bench.treen", text.replace("length 2", "length {2")));
        assertThat(after.findings()).isNotEmpty();
        assertThat(after.statements().getFirst()).isSameAs(before.statements().getFirst());
        assertThat(after.statements().getLast()).isSameAs(before.statements().getLast());
    }

    private static void same(SyntaxTree edited, SyntaxTree fresh, String what) {
        assertThat(edited.statements().toString()).as(what).isEqualTo(fresh.statements().toString());
        assertThat(edited.tokens()).as(what).isEqualTo(fresh.tokens());
        assertThat(edited.findings().toString()).as(what).isEqualTo(fresh.findings().toString());
        assertThat(edited.beginning().start()).isZero();
        assertThat(edited.beginning().file()).isEqualTo(fresh.file());
        for (int i = 0; i < fresh.statements().size(); i++) {
            assertThat(edited.statements().get(i).span().end()).isEqualTo(fresh.statements().get(i).span().end());
        }
    }
}
