package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.FinishedPart;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ExplanationTest {
    private static FinishedPart part(Compilation compilation, String name) {
        return compilation.joined().part(name).orElseThrow();
    }

    /** The width of a stile is the pattern's own: a reader who looks in the project's line 9 finds something else. */
    @Test
    void aFigureOfAPatternNamesTheFileItStandsIn() {
        Compilation door = Projects.example("larder-door");
        String stile = Explanation.of(part(door, "door.stile_left").width().how(), door.plan().settings());
        assertThat(stile).containsPattern("57 mm  ←  as written, line \\d+ of treen/frame_and_panel");
        String length = Explanation.of(part(door, "door.stile_left").length().how(), door.plan().settings());
        assertThat(length).containsPattern("as written, line \\d+$");
    }

    @Test
    void soDoesAFigureOfAnotherFileOfTheProject() {
        SourceFile rack = new SourceFile("shop/rack.treen", "let wall = 9mm\n");
        FileLoader loader = (path, from) -> path.equals("rack") ? Optional.of(rack) : Optional.empty();
        Compilation box = Compilation.of(new SourceFile("box.treen",
                "use \"rack\"\npart side { length 100mm; width 40mm; thickness wall }\n"), loader);
        assertThat(Explanation.of(part(box, "side").thickness().how(), box.plan().settings()))
                .contains("as written, line 1 of rack.treen");
        assertThat(Explanation.of(part(box, "side").width().how(), box.plan().settings()))
                .isEqualTo("side.width = 40 mm  ←  as written, line 2");
    }

    /** A learner reads days, not four hundred hours. */
    @Test
    void longWaitsAreToldInDays() {
        assertThat(StepText.span(1, 24)).isEqualTo("1 to 24 h");
        assertThat(StepText.span(39, 78)).isEqualTo("39 to 78 h");
        assertThat(StepText.span(39, 392)).isEqualTo("2 to 17 days");
        assertThat(StepText.span(168, 168)).isEqualTo("7 days");
    }
}
