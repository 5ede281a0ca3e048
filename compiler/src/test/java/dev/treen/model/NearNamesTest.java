package dev.treen.model;

import static dev.treen.model.Texts.evaluate;
import static dev.treen.model.Texts.only;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** For a name that is not known one is offered that can stand there: a length for a length, a count for a count. */
class NearNamesTest {
    private static final String NAMES = """
            let side_long = 100mm
            let side_lean = 7deg
            let side_part = 3
            part base  { length 200; width 100; thickness 9; place { length right; width back; at 0, 0, 0 } }
            part other { length 200; width 100; thickness 9; place { length up; width back; at 0, 0, 0 } }
            """;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            part third { length side_lont; width 20; thickness 9 }  | side_long
            part third { length side_leaf; width 20; thickness 9 }  |
            part third { length side_parr; width 20; thickness 9 }  | side_part
            joint dovetail base to other { tails side_parr }        | side_part
            joint dovetail base to other { tails side_lont }        |
            joint dovetail base to other { slope side_leaf }        | side_lean
            joint dovetail base to other { slope side_lont }        |
            """)
    void nothingOfAnotherKindIsOffered(String line, String offered) {
        Finding unknown = evaluate(NAMES + line).project().findings().stream()
                .filter(each -> each.kind().equals(ModelFindings.UNKNOWN_NAME)).findFirst().orElseThrow();
        List<String> texts = unknown.remedies().stream().flatMap(each -> each.edits().stream()).map(Edit::text)
                .toList();
        assertThat(texts).isEqualTo(offered == null ? List.of() : List.of(offered));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            joint dovetail base into other                       | joint dovetail base to other
            joint dovetail base /* here */ into other { tails 3 } | joint dovetail base /* here */ to other { tails 3 }
            joint housing base to other                          | joint housing base into other
            """)
    void aJointSaidTheWrongWayIsWrittenTheOther(String line, String right) {
        String text = NAMES + line;
        Finding wrong = only(evaluate(text));
        assertThat(wrong.kind()).isEqualTo(ModelFindings.JOINED_WRONGLY);
        assertThat(Edit.applied(text, wrong.remedies().getFirst().edits())).isEqualTo(NAMES + right);
    }
}
