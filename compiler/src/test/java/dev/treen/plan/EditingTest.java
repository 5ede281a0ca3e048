package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingPage;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is taken over from the version before is what would be worked out anew. */
class EditingTest {
    private static final int EDITS = Integer.getInteger("treen.edits", 800);
    private static final int ROW = 12;
    private static final String[] TYPED = {"", "", "{", "}", "\n", " ", "x", "9", "part p", "let a = 1\n", ";", "-",
            "let wall = 8\n", "accept panel-tight because \"so\"\n", "when 1 < 2 {\npart q { length 1 }\n}\n", "/*",
            "("};

    @Test
    void anyRowOfEditsComesToTheSame() throws Exception {
        List<String> texts = texts();
        assertThat(texts).hasSizeGreaterThan(50);
        for (int i = 0; i < texts.size(); i++) {
            Random random = new Random(i);
            String begin = texts.get(i);
            String text = begin;
            Editing editing = new Editing("bench.treen");
            for (int edit = 0; edit < Math.max(5, EDITS / texts.size()); edit++) {
                Compilation after = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE, editing);
                Compilation fresh = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE);
                assertThat(all(after)).as("text %s, edit %s:%n%s", i, edit, text).isEqualTo(all(fresh));
                text = edit % ROW == ROW - 1 ? begin : edited(text, random);
            }
        }
    }

    @Test
    void chainsThatGrowTooLongAreTold() {
        StringBuilder text = new StringBuilder("let a0 = 1\n");
        Editing editing = new Editing("bench.treen");
        for (int i = 1; i < 140; i++) {
            text.insert(0, "let a" + i + " = a" + (i - 1) + " + 1\n");
            SourceFile file = new SourceFile("bench.treen", text.toString());
            Compilation after = Compilation.of(file, FileLoader.NONE, editing);
            assertThat(all(after)).isEqualTo(all(Compilation.of(file, FileLoader.NONE)));
        }
    }

    @Test
    void aUsedFileThatChangesChangesWhatRestsOnIt() {
        String text = "use \"shop\"\npart a { length wide; width 9; thickness 9 }\n";
        Editing editing = new Editing("bench.treen");
        for (int wide = 100; wide < 103; wide++) {
            SourceFile shop = new SourceFile("shop.treen", "let wide = " + wide + "\n");
            Compilation after = Compilation.of(
                    new SourceFile("bench.treen", text), (path, from) -> Optional.of(shop), editing);
            assertThat(after.joined().parts().getFirst().length().value().toDoubleMm()).isEqualTo(wide);
        }
    }

    @Test
    void whatAnEditLeavesAloneIsTheSameObject() {
        String text = """
                let wall = 9
                part a { length 100; width 50; thickness wall; place { length right; width up; at 0, 0, 0 } }
                part b { length 100; width 50; thickness 12; place { length right; width up; at 0, 300, 0 } }
                """;
        Editing editing = new Editing("bench.treen");
        Compilation before = Compilation.of(new SourceFile("bench.treen", text), FileLoader.NONE, editing);
        var kept = before.joined().part("b").orElseThrow();
        Compilation after = Compilation.of(
                new SourceFile("bench.treen", text.replace("wall = 9", "wall = 10.5")), FileLoader.NONE, editing);
        assertThat(after.joined().part("b").orElseThrow()).isSameAs(kept);
        assertThat(after.joined().part("a").orElseThrow().thickness().value().toDoubleMm()).isEqualTo(10.5);
    }

    private static List<String> texts() throws Exception {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
            for (Path path : files.filter(each -> each.toString().endsWith(".treen")).sorted().toList()) {
                texts.add(Files.readString(path));
            }
        }
        Compilation.kinds().forEach(kind -> FindingPage.of(kind)
                .ifPresent(page -> texts.add(page.text(FindingPage.Section.BAD).replaceAll("```\\w*", ""))));
        return texts;
    }

    private static String edited(String text, Random random) {
        int start = random.nextInt(text.length() + 1);
        if (random.nextInt(3) == 0) {
            int begin = text.lastIndexOf('\n', start - 1) + 1;
            int end = text.indexOf('\n', start) < 0 ? text.length() : text.indexOf('\n', start) + 1;
            String line = text.substring(begin, end);
            return text.substring(0, begin) + (random.nextBoolean() ? "" : line + line) + text.substring(end);
        }
        if (random.nextInt(3) == 0) {
            while (start < text.length() && !Character.isDigit(text.charAt(start))) {
                start++;
            }
            return start == text.length() ? text
                    : text.substring(0, start) + random.nextInt(10) + text.substring(start + 1);
        }
        int end = random.nextBoolean() ? start : Math.min(text.length(), start + random.nextInt(12));
        return text.substring(0, start) + TYPED[random.nextInt(TYPED.length)] + text.substring(end);
    }

    /** Everything that an editor shows, each with its places. */
    private static String all(Compilation compilation) {
        StringBuilder all = new StringBuilder();
        compilation.quick().findings().forEach(each -> add(all, each));
        compilation.checked().findings().forEach(each -> add(all, each));
        compilation.evaluation().symbols().stream().map(each -> each.name() + each.kind() + at(each.nameAt())
                + at(each.span())).sorted().forEach(each -> all.append(each).append('\n'));
        compilation.evaluation().usages().stream()
                .map(each -> at(each.at()) + at(each.declaredAt()) + each.value().value())
                .sorted().forEach(each -> all.append(each).append('\n'));
        compilation.evaluation().bareNumbers().stream().map(each -> at(each.at()) + each.value()).sorted()
                .forEach(each -> all.append(each).append('\n'));
        compilation.joined().parts().forEach(part -> all.append(part.part().name()).append(part.finished())
                .append(part.rough()).append(at(part.length().at())).append('\n'));
        compilation.joined().joints().forEach(joint -> {
            all.append(joint.joint().name()).append(joint.joint().statement()).append(at(joint.joint().at()));
            joint.figures().forEach(each -> all.append(each.name()).append(each.measure().value()));
            joint.works().forEach(each -> all.append(each));
            all.append('\n');
        });
        return all.toString();
    }

    private static void add(StringBuilder to, Finding finding) {
        to.append(finding.code()).append(at(finding.at())).append(finding.headline()).append(finding.found());
        finding.related().forEach(each -> to.append(at(each.at())).append(each.label()));
        finding.remedies().forEach(each -> {
            to.append(each.text());
            each.edits().forEach(edit -> to.append(at(edit.at())).append(edit.text()));
        });
        to.append('\n');
    }

    private static String at(Span span) {
        return " " + span.file().name() + ':' + span.start() + '-' + span.end() + ' ';
    }
}
