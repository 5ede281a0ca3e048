package dev.treen.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.treen.joinery.JointKinds;
import dev.treen.model.BlockSchema;
import dev.treen.model.FileLoader;
import dev.treen.model.JointSchema;
import dev.treen.model.Schemas;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The reference says what the schema says; {@code -Dtreen.update=true} writes the generated part anew. */
class LanguageReferenceTest {
    private static final Path REFERENCE = Path.of("..", "grammar", "LANGUAGE.md");

    @Test
    void theReferenceIsNotStale() throws IOException {
        String text = Files.readString(REFERENCE).replace("\r\n", "\n");
        int begin = text.indexOf(LanguageReference.BEGIN);
        int end = text.indexOf(LanguageReference.END) + LanguageReference.END.length();
        assertTrue(begin >= 0 && end > begin, "the marks are there");
        if (Boolean.getBoolean("treen.update")) {
            Files.writeString(REFERENCE, text.substring(0, begin) + LanguageReference.markdown() + text.substring(end));
            return;
        }
        assertEquals(LanguageReference.markdown(), text.substring(begin, end));
    }

    @Test
    void everyExampleOfTheSchemaCanBeRead() {
        for (BlockSchema block : Schemas.all()) {
            assertTrue(Parser.parse(new SourceFile("example", block.example())).findings().isEmpty(), block.word());
        }
        for (JointSchema joint : JointKinds.schemas()) {
            String example = joint.block().example();
            assertTrue(Parser.parse(new SourceFile("example", example)).findings().isEmpty(), joint.kind());
        }
    }

    /** Whole projects in the hand-written part compile without a finding but that they have no boards. */
    @Test
    void theProjectsInTheReferenceAreRight() throws IOException {
        Matcher blocks = Pattern.compile("```treen project\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(REFERENCE).replace("\r\n", "\n"));
        int count = 0;
        while (blocks.find()) {
            count++;
            var compilation = Compilation.of(new SourceFile("reference", blocks.group(1)), FileLoader.NONE);
            assertEquals(java.util.List.of(), compilation.checked().findings(), blocks.group(1));
        }
        assertTrue(count >= 2, "there are projects to read");
    }
}
