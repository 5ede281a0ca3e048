package dev.treen.plan;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.FindingPage;
import dev.treen.model.FileLoader;
import dev.treen.model.Joint;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What Treen may say of each kind of joint: gathered from the wrong examples on the pages of the findings. */
final class JointFindings {
    private final Map<String, Set<FindingKind>> byJoint = new LinkedHashMap<>();

    JointFindings() {
        for (FindingKind kind : Compilation.kinds()) {
            FindingPage.of(kind).ifPresent(page -> read(kind, page.text(FindingPage.Section.BAD)));
        }
    }

    /** In the order of the list of all findings. */
    List<FindingKind> of(String joint) {
        return List.copyOf(byJoint.getOrDefault(joint, Set.of()));
    }

    private void read(FindingKind kind, String example) {
        if (!example.contains("joint ")) {
            return;
        }
        String text = example.substring(example.indexOf('\n') + 1, example.lastIndexOf("```"));
        Compilation compilation = Compilation.of(new SourceFile(kind.code(), text), FileLoader.NONE);
        List<Joint> joints = compilation.evaluation().project().joints();
        compilation.checked().findings().stream()
                .filter(finding -> finding.kind().equals(kind))
                .flatMap(JointFindings::places)
                .map(Span::line)
                .forEach(line -> joints.stream()
                        .filter(joint -> lines(joint).contains(line))
                        .forEach(joint -> byJoint.computeIfAbsent(joint.kind(), k -> new LinkedHashSet<>()).add(kind)));
    }

    private static Stream<Span> places(Finding finding) {
        return Stream.concat(Stream.of(finding.at()), finding.related().stream().map(related -> related.at()));
    }

    private static List<Integer> lines(Joint joint) {
        List<Integer> lines = new ArrayList<>(List.of(joint.kindAt().line(), joint.at().line()));
        joint.settings().values().forEach(setting -> lines.add(setting.nameAt().line()));
        return lines;
    }
}
