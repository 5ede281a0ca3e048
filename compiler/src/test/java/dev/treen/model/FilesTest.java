package dev.treen.model;

import static dev.treen.model.Texts.codes;
import static dev.treen.model.Texts.evaluate;
import static dev.treen.model.Texts.mm;
import static dev.treen.model.Texts.part;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Racks, shop files and the library. */
final class FilesTest {
    private static final String RACK = "board oak { size 2000 x 200 x 30; species white_oak }\nlet spare = 12";

    @Test
    void aRackGivesItsBoards() {
        Evaluation made = evaluate("use \"rack\"\npart a { length 100; width 20; thickness spare; from oak }",
                Map.of("rack", RACK));
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "a").from().orElseThrow().name()).isEqualTo("oak");
    }

    @Test
    void aRackUnderANameKeepsItsNamesApart() {
        Evaluation made = evaluate("""
                use "rack" as one
                use "other" as two
                part a { length 100; width 20; thickness 12; from two.oak }
                """, Map.of("rack", RACK, "other", RACK));
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "a").from().orElseThrow().name()).isEqualTo("two.oak");
        assertThat(made.project().boards()).extracting(Board::name).containsExactly("one.oak", "two.oak");
    }

    @Test
    void theSameNameFromTwoFilesIsSaidWithBothPlaces() {
        Evaluation boards = evaluate("use \"rack\"\nuse \"other\"\npart a { length 9; width 9; thickness 9 }",
                Map.of("rack", RACK, "other", RACK.replace("spare", "rest")));
        assertThat(codes(boards)).containsExactly("same-name");
        Evaluation lets = evaluate("use \"rack\"\nlet spare = 3\npart a { length 9; width 9; thickness spare }",
                Map.of("rack", RACK));
        Finding finding = Texts.only(lets);
        assertThat(finding.code()).isEqualTo("same-name");
        assertThat(finding.related()).hasSize(2);
        assertThat(part(lets, "a").seen().thickness()).isEqualTo(mm(3));
    }

    @Test
    void filesThatUseEachOtherSeeEachOther() {
        Evaluation made = evaluate("use \"a\"\npart p { length one; width two; thickness 9 }", Map.of(
                "a", "use \"b\"\nlet one = two + 1",
                "b", "use \"a\"\nlet two = 20\nlet three = one + two"));
        // `two` is the other file's own affair until it is taken in here too.
        assertThat(codes(made)).containsExactly("unknown-name");
        Evaluation taken = evaluate("use \"a\"\nuse \"b\"\npart p { length one; width two; thickness three }", Map.of(
                "a", "use \"b\"\nlet one = two + 1",
                "b", "use \"a\"\nlet two = 20\nlet three = one + two"));
        assertThat(codes(taken)).isEmpty();
        assertThat(part(taken, "p").seen().thickness()).isEqualTo(mm(41));
    }

    @Test
    void aFileThatUsesItselfIsFine() {
        Evaluation made = evaluate("use \"main\"\npart p { length 9; width 9; thickness 9 }",
                Map.of("main", "part p { length 9; width 9; thickness 9 }"));
        assertThat(codes(made)).isEmpty();
        assertThat(made.project().parts()).hasSize(1);
    }

    @Test
    void aShopFileGivesSawsAndAllowances() {
        Evaluation made = evaluate("""
                project "P" { saw tenon; allow bench { planing 0.3 } }
                use "shop"
                part p { length 9; width 9; thickness 9 }
                """, Map.of("shop", """
                saw tenon { kerf 0.6; depth 60 }
                allow bench { shooting 2; planing 1 }
                """));
        assertThat(codes(made)).isEmpty();
        Allowances allow = made.project().settings().allow();
        assertThat(allow.kerf().value()).isEqualTo(mm(6).dividedBy(10));
        assertThat(allow.shooting().value()).isEqualTo(mm(2));
        assertThat(allow.planing().value()).isEqualTo(mm(3).dividedBy(10));
        assertThat(made.project().settings().saw().orElseThrow().name()).isEqualTo("tenon");
    }

    @Test
    void whatIsNotASawIsNoSaw() {
        assertThat(codes(evaluate("project \"P\" { saw oak }\nboard oak { size 9 x 9 x 9 }\n"
                + "part p { length 9; width 9; thickness 9 }"))).containsExactly("wrong-kind");
        assertThat(codes(evaluate("project \"P\" { saw ripp }\nsaw rip { kerf 1 }\n"
                + "part p { length 9; width 9; thickness 9 }"))).containsExactly("unknown-name");
        assertThat(codes(evaluate("project \"P\" { saw rip }\nsaw rip { }\n"
                + "part p { length 9; width 9; thickness 9 }"))).containsExactly("missing-property");
    }

    @Test
    void theLibraryHasWhatItSays() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../library/treen"))) {
            List<String> there = files.map(f -> "treen/" + f.getFileName().toString().replace(".treen", ""))
                    .sorted()
                    .toList();
            assertThat(Library.paths()).containsExactlyInAnyOrderElementsOf(there);
        }
        for (String path : Library.paths()) {
            assertThat(Library.tree(path).orElseThrow().findings()).as(path).isEmpty();
            Evaluation used = evaluate("use \"" + path + "\"");
            assertThat(codes(used)).as(path).isEmpty();
            assertThat(used.patterns()).as(path).containsKey(path.substring("treen/".length()));
        }
    }

    @Test
    void aMissingLibraryFileOffersTheNearest() {
        Finding finding = Texts.only(evaluate("use \"treen/bax\""));
        assertThat(finding.safeRemedy().orElseThrow().text()).isEqualTo("write \"treen/box\"");
    }
}
