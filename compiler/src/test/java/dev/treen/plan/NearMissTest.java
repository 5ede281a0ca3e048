package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip of the pen, in every kind of name: the finding offers what was meant, and its fix makes the slip good. */
class NearMissTest {
    private static final String PROJECT = """
            project "Tray" { units mm; tools hand; climate { humidity 35%..65%; temperature 18degC..24degC } }

            board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }

            let wall = 9mm

            pattern rim {
              param high : length = 40
              part edge { length 200; width high; thickness wall; from plank }
            }

            part front { length 160; width 40; thickness wall; from plank; place { length right; width up; at 0, -wall, 0 } }
            part side { length 100; width 40; thickness wall; from plank; place { length back; width up; at -wall, 0, 0 } }
            joint mitre front to side

            rim upper { high 30 }

            require front.width >= 30mm because "the pencils are short"
            """;

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
            "statement, part side, prat side",
            "property, thickness wall; from plank; place { length right, thicknes wall; from plank; place { length right",
            "property of the project, humidity, humidty",
            "species, black_cherry, black_chery",
            "board, from plank; place { length back, from plnak; place { length back",
            "let, at -wall, at -wal",
            "part of a joint, front to side, frnot to side",
            "member, front.width, front.widht",
            "unit, 9mm, 9mmm",
            "kind of joint, joint mitre, joint mitr",
            "direction, length back, length bakc",
            "choice, rings flat, rings falt",
            "pattern, rim upper, rimm upper",
            "parameter, high 30, hihg 30"})
    void theFixMakesTheSlipGood(String kind, String right, String wrong) {
        assertThat(Projects.codes(findings(PROJECT))).isEmpty();
        assertThat(PROJECT).containsOnlyOnce(right);
        String slipped = PROJECT.replace(right, wrong);
        List<Finding> findings = findings(slipped);
        assertThat(findings).as("what is said of it").isNotEmpty();
        Finding told = findings.getFirst();
        Remedy remedy = told.remedies().stream().filter(r -> !r.edits().isEmpty()).findFirst()
                .orElseThrow(() -> new AssertionError("no fix: " + new FindingText(false).of(findings)));
        assertThat(applied(slipped, remedy)).as(new FindingText(false).of(findings)).isEqualTo(PROJECT);
    }

    private static List<Finding> findings(String text) {
        return Compilation.of(new SourceFile("tray.treen", text), FileLoader.NONE).checked().findings();
    }

    private static String applied(String text, Remedy remedy) {
        return Edit.applied(text, remedy.edits());
    }
}
