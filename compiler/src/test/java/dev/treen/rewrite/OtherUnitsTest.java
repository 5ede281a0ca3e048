package dev.treen.rewrite;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.model.FileLoader;
import dev.treen.model.Part;
import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Unit;
import dev.treen.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A project's file is written in the other unit and keeps all that it says. The projects are invented. */
class OtherUnitsTest {
    private static Compilation compiled(String text) {
        return Compilation.of(new SourceFile("jars.treen", text), FileLoader.NONE);
    }

    private static String in(Unit unit, String text) {
        Compilation project = compiled(text);
        return Edit.applied(text, OtherUnits.of(project, FileLoader.NONE, unit).orElseThrow());
    }

    private static List<String> sizes(String text) {
        return compiled(text).evaluation().project().parts().stream()
                .map((Part part) -> part.name() + " " + part.seen() + " " + part.placing().map(p -> p.at()))
                .toList();
    }

    /** Counts, ratios and angles stay; what is on a mark becomes a fraction; what is not keeps its unit. */
    @Test
    void whatIsNoLengthStays() {
        String text = """
                project "Pegs" { units mm; tools hand }
                board plank { species black_cherry; size 1270 x 127 x 25.4; rings flat; moisture 9% }
                let pegs = 3
                let pitch = 50.8
                let wide = pitch / 2
                part rail { length pitch * (pegs + 1); width wide; thickness 19.05; from plank; place { length right; width up; at 0, 0, 0 } }
                repeat i in 1..pegs {
                  part peg[i] { length 60; width 12.7; thickness 12.7; place { length back; width up; at pitch * i, -60, 5 } }
                }
                """;
        String inches = in(Unit.IN, text);
        assertThat(inches)
                .contains("units in", "size 50 x 5 x 1;", "let pegs = 3", "let pitch = 2\n", "pitch / 2",
                        "(pegs + 1)", "thickness 3/4", "repeat i in 1..pegs", "length 60mm", "width 1/2", "-60mm, 5mm");
        assertThat(sizes(inches)).isEqualTo(sizes(text));
    }

    @Test
    void inchesBecomeExactMillimetres() {
        String text = """
                project "Tray" { units in }
                part base { length 7 1/2; width 3 3/8; thickness 1/4 }
                """;
        assertThat(in(Unit.MM, text)).contains("units mm", "length 190.5; width 85.725; thickness 6.35");
        assertThat(in(Unit.CM, text)).contains("units cm", "length 19.05;");
    }

    /** Every example that is one file: there and back says the same. */
    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "garden-bench", "wall-shelf", "kitchen-cabinet"})
    void examplesKeepAllTheirSizes(String name) {
        String text = Projects.text(name);
        boolean inches = compiled(text).evaluation().project().settings().units() == Unit.IN;
        String there = in(inches ? Unit.MM : Unit.IN, text);
        assertThat(there).isNotEqualTo(text);
        assertThat(sizes(there)).isNotEmpty().isEqualTo(sizes(text));
        String back = in(inches ? Unit.IN : Unit.MM, there);
        assertThat(sizes(back)).isEqualTo(sizes(text));
    }

    @Test
    void whatHasErrorsOrIsWrittenSoIsLeft() {
        assertThat(OtherUnits.of(compiled("part lid { length x; width 3; thickness 2 }"), FileLoader.NONE, Unit.IN))
                .isEmpty();
        assertThat(OtherUnits.of(compiled("project \"A\" { units in }\npart lid { length 9; width 3; thickness 2 }"),
                FileLoader.NONE, Unit.IN)).isEmpty();
    }

    /** A sum of bare numbers alone is told from its use: here it is a length, and there a count. */
    @Test
    void sumsOfBareNumbers() {
        String text = """
                project "Tray" { units mm }
                let walls = 2 * 9
                let many = 1 + 1
                part base { length 200 + walls; width 100; thickness 9 }
                repeat i in 1..many { part foot[i] { length 20; width 20; thickness 9 } }
                """;
        OtherUnits.of(compiled(text), FileLoader.NONE, Unit.IN)
                .ifPresent(edits -> assertThat(sizes(in(Unit.IN, text))).isEqualTo(sizes(text)));
    }
}
