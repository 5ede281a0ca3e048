package dev.treen.model;

import static dev.treen.model.Texts.codes;
import static dev.treen.model.Texts.evaluate;
import static dev.treen.model.Texts.mm;
import static dev.treen.model.Texts.only;
import static dev.treen.model.Texts.part;
import static dev.treen.model.Texts.parts;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Patterns and what is made by them: invented things, checked against the same written out. */
final class PatternsTest {
    private static final String STOOL = """
            pattern stool {
              param top  : size               /// Along, across, thick.
              param leg  : length = 30mm
              param legs : count = 4
              param foot : one of plain, ring = plain { wide : length = leg + 10mm; deep : length = 5mm }
              param note : text = "oak"
              let under = top.length - 2 * leg
              part seat { length top.length; width top.width; thickness top.thickness
                place { length right; width back; at 0, 0, 400mm } }
              repeat i in 1..legs {
                part leg_[i] { length 400mm; width leg; thickness leg }
              }
              when foot == ring {
                part ring { length under; width foot.wide; thickness foot.deep }
              }
            }
            """;

    @Test
    void whatIsGivenAndWhatIsLeftOutComeTogether() {
        Evaluation made = evaluate(STOOL + "stool low { top 300 x 250 x 20; foot ring { deep 8 } }");
        assertThat(codes(made)).isEmpty();
        assertThat(parts(made)).containsExactly(
                "low.seat", "low.leg_[1]", "low.leg_[2]", "low.leg_[3]", "low.leg_[4]", "low.ring");
        assertThat(part(made, "low.ring").seen().length()).isEqualTo(mm(240));
        assertThat(part(made, "low.ring").seen().width()).isEqualTo(mm(40));
        assertThat(part(made, "low.ring").seen().thickness()).isEqualTo(mm(8));
    }

    @Test
    void bareNumbersAreReadInTheUnitsOfTheFileWhereTheyStand() {
        Evaluation made = evaluate(
                "project \"S\" { units in }\nuse \"stools\"\nstool low { top 12 x 10 x 3/4; leg 1 1/4 }",
                java.util.Map.of("stools", "project \"L\" { units mm }\n" + STOOL));
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "low.seat").seen().length()).isEqualTo(Length.ofInches(12, 1));
        assertThat(part(made, "low.leg_[1]").seen().length()).isEqualTo(mm(400));
        assertThat(part(made, "low.leg_[1]").seen().width()).isEqualTo(Length.ofInches(5, 4));
    }

    @Test
    void theInsideIsReadFromOutsideWhereverItStands() {
        Evaluation made = evaluate(STOOL + """
                part shelf { length low.under; width low.leg_[2].width; thickness low.top.thickness }
                stool low { top 300 x 250 x 20 }
                """);
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "shelf").seen().text(made.project().settings().format())).contains("240", "30", "20");
        assertThat(parts(made).getFirst()).isEqualTo("shelf");
    }

    @Test
    void oneThingInsideCanBeChanged() {
        Evaluation made = evaluate(STOOL + """
                board oak { size 2000 x 200 x 40 }
                board ash { size 2000 x 200 x 40 }
                stool low {
                  top 300 x 250 x 20
                  from oak
                  part seat { from ash; thickness 25 }
                  part leg_[2] { width 35 }
                }
                """);
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "low.seat").from().orElseThrow().name()).isEqualTo("ash");
        assertThat(part(made, "low.seat").seen().thickness()).isEqualTo(mm(25));
        assertThat(part(made, "low.leg_[1]").from().orElseThrow().name()).isEqualTo("oak");
        assertThat(part(made, "low.leg_[1]").seen().width()).isEqualTo(mm(30));
        assertThat(part(made, "low.leg_[2]").seen().width()).isEqualTo(mm(35));
    }

    @Test
    void patternsStandInPatternsAndAreReachedThrough() {
        Evaluation made = evaluate(STOOL + """
                pattern pair {
                  param wide : length
                  repeat i in 1..2 { stool one[i] { top wide x 200mm x 20mm; legs i + 2 } }
                }
                pair two { wide 280; one { leg 22 } }
                let seat = two.one[2].seat.length
                part rail { length seat; width 20; thickness 20 }
                """);
        assertThat(codes(made)).isEmpty();
        assertThat(parts(made)).hasSize(1 + 1 + 3 + 1 + 4).contains("two.one[2].leg_[4]", "two.one[1].leg_[3]");
        assertThat(part(made, "two.one[1].leg_[1]").seen().width()).isEqualTo(mm(22));
        assertThat(part(made, "rail").seen().length()).isEqualTo(mm(280));
    }

    @ParameterizedTest
    @CsvSource({
            "front, 100, 0,  0, right, back",
            "right, -0,  20, 0, back,  left",
            "back,  -20, -0, 0, left,  front",
            "left,  0,   0,  0, front, right"})
    void instancesAreTurnedByQuarters(
            String facing, long x, long y, long z, String length, String width) {
        // A board 80 x 20 x 10 at 0, 0, 0 inside; the corners are worked out by hand for each quarter.
        Evaluation made = evaluate("""
                pattern plank { part board { length 80mm; width 20mm; thickness 10mm
                  place { length right; width back; at 0mm, 0mm, 0mm } } }
                plank p { place { at 100, 0, 0; facing %s } }
                """.formatted(facing));
        assertThat(codes(made)).isEmpty();
        Placing placing = part(made, "p.board").placing().orElseThrow();
        assertThat(placing.length().word()).isEqualTo(length);
        assertThat(placing.width().word()).isEqualTo(width);
        Part board = part(made, "p.board");
        long[][] low = {{100, 0, 0}, {80, 0, 0}, {20, -20, 0}, {100, -80, 0}};
        int which = List.of("front", "right", "back", "left").indexOf(facing);
        for (int axis = 0; axis < 3; axis++) {
            assertThat(placing.low(board, axis)).isEqualTo(mm(low[which][axis]));
        }
    }

    @Test
    void whatIsWrongInsideIsSaidAtTheUse() {
        Evaluation made = evaluate(STOOL + "stool low { top 50 x 250 x 20; foot ring }");
        Finding finding = only(made);
        assertThat(finding.code()).isEqualTo("absurd-size");
        assertThat(finding.at().text()).isEqualTo("low");
        assertThat(finding.related().getFirst().at().text()).isEqualTo("under");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            stool low { }                                  | missing-property | `low` does not say its `top`
            stool { top 1 x 2 x 3 }                        | missing-property | A name is wanted after `stool`
            stool low { top 300; }                         | wrong-kind       | `top` wants two or three measures, as `160 x 80 x 70`
            stool low { top 9 x 9 x 9; legs 1.5 }          | wrong-kind       | `legs` wants a whole number
            stool low { top 9 x 9 x 9; foot rng }          | wrong-kind       | `foot` wants one of `plain`, `ring`
            stool low { top 9 x 9 x 9; tpo 1 }             | unknown-property | The block `stool` has no property `tpo`
            stool low { top 9 x 9 x 9; foot ring { dep 1 } } | unknown-property | The block `foot` has no property `dep`
            stool low { top 9 x 9 x 9; part sea { } }      | unknown-name     | There is no part `sea` in `low`
            stool low { top 9 x 9 x 9; joint j { } }       | unknown-name     | There is no joint `j` in `low`
            stol low { top 9 x 9 x 9 }                     | does-not-belong  | `stol` begins nothing that can stand here
            param loose : length                           | does-not-belong  | A parameter belongs in a pattern
            pattern p { param a : lenght }                 | wrong-kind       | No parameter is of the kind `lenght`
            pattern p { param from : length }              | same-name        | `from` is the name of two things
            """)
    void aWrongUseIsSaidWithItsDeclaration(String line, String code, String headline) {
        Evaluation made = evaluate(STOOL + line);
        assertThat(made.project().findings()).extracting(Finding::code).contains(code);
        Finding finding = made.project().findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow();
        assertThat(finding.headline()).isEqualTo(headline);
        boolean aboutAParameter = code.equals("wrong-kind") && line.startsWith("stool");
        if (aboutAParameter) {
            assertThat(finding.related().getFirst().at().text()).startsWith("param");
        }
    }

    @Test
    void aPatternThatUsesItselfComesToAnEnd() {
        Evaluation made = evaluate("""
                pattern twice { part a { length 1mm; width 1mm; thickness 1mm } twice b { } }
                twice t { }
                """);
        assertThat(codes(made)).contains("too-many");
        assertThat(made.project().findings().getFirst().headline()).contains("20 deep");
    }

    @Test
    void patternsThatMultiplyComeToAnEnd() {
        Evaluation made = evaluate("""
                pattern many { param left : count
                  when left > 0 { repeat i in 1..9 { many m[i] { left left - 1 } } } }
                many t { left 9 }
                """);
        assertThat(codes(made)).contains("too-many").hasSizeLessThan(30_000);
    }

    @Test
    void aRepeatOfABillionIsRefusedWithTheBound() {
        assertThat(only(evaluate("repeat i in 1..1000000000 { part p[i] { length 1; width 1; thickness 1 } }")).found())
                .contains("10000 times");
        assertThat(codes(evaluate(
                "repeat i in 1..5000 { repeat k in 1..5000 { } }\npart p { length 1; width 1; thickness 1 }")))
                .contains("too-many");
    }

    @Test
    void aChoiceOfJointPassesOverWhatOnlyOthersKnow() {
        Evaluation made = evaluate("""
                pattern shelf {
                  param how : one of housing, rebate = housing
                  part side { length 300mm; width 100mm; thickness 18mm
                    place { length up; width back; at -18mm, 0mm, 0mm } }
                  part board { length 200mm; width 100mm; thickness 18mm
                    place { length right; width back; at 0mm, 0mm, 0mm } }
                  joint how board into side as end { stop 10mm from front; lip 9mm }
                }
                shelf a { }
                shelf b { how rebate; joint end { lip 8 } }
                """);
        assertThat(codes(made)).isEmpty();
        assertThat(made.project().joints()).extracting(Joint::kind).containsExactly("housing", "rebate");
        assertThat(made.project().joints()).extracting(Joint::name).containsExactly("a.end", "b.end");
        assertThat(made.project().joints().get(1).length("lip").orElseThrow().value()).isEqualTo(mm(8));
    }

    @Test
    void runsNamePartsOfTheInstance() {
        Evaluation made = evaluate(STOOL + "stool low { top 300 x 250 x 20; run seat, leg_[1], leg_[2] }");
        assertThat(codes(made)).isEmpty();
        assertThat(made.project().runs().getFirst().parts()).containsExactly("low.seat", "low.leg_[1]", "low.leg_[2]");
    }

    @Test
    void aFileOfPatternsAloneIsNoEmptyProject() {
        assertThat(codes(evaluate(STOOL))).isEmpty();
        assertThat(codes(evaluate("// nothing"))).containsExactly("empty-project");
    }

    @Test
    void aLibraryPatternThatIsNotTakenInIsOffered() {
        Finding finding = only(evaluate("box caddy { inside 100 x 50 x 50 }"));
        assertThat(finding.safeRemedy().orElseThrow().text())
                .isEqualTo("write `use \"treen/box\"` for its pattern `box`");
    }
}
