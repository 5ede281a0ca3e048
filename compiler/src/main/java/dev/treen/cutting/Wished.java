package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.finding.NearWords;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.LayoutWishes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The project's wishes for its layout with the parts that they name found; a name that is no part is left out and told.
 *
 * @param runs names of parts that follow each other along a strip
 * @param matched names of parts that come from one board
 * @param findings what there is to say of the wishes
 */
record Wished(List<List<String>> runs, List<List<String>> matched, List<Finding> findings) {

    static Wished of(Joined joined) {
        List<String> known = joined.parts().stream().map(p -> p.part().name()).toList();
        LayoutWishes wishes = joined.project().settings().layout();
        List<Finding> findings = new ArrayList<>();
        return new Wished(
                groups(
                        joined.project().runs().stream()
                                .map(run -> new LayoutWishes.Group(run.parts(), run.at()))
                                .toList(),
                        known, findings),
                groups(wishes.matched(), known, findings),
                findings);
    }

    private static List<List<String>> groups(
            List<LayoutWishes.Group> groups, List<String> known, List<Finding> findings) {
        List<List<String>> found = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (LayoutWishes.Group group : groups) {
            List<String> parts = new ArrayList<>();
            for (String name : group.parts()) {
                if (!known.contains(name)) {
                    findings.add(unknown(group, name, known));
                } else if (taken.add(name)) {
                    parts.add(name);
                } else {
                    findings.add(Finding.of(
                            CuttingFindings.WISH_NAMES_NOTHING, group.at(),
                            "`" + name + "` is wished for twice")
                            .found("The first place that names it counts.")
                            .about(name)
                            .build());
                }
            }
            if (parts.size() > 1) {
                found.add(List.copyOf(parts));
            }
        }
        return List.copyOf(found);
    }

    private static Finding unknown(LayoutWishes.Group group, String name, List<String> known) {
        Finding.Builder finding = Finding.of(
                CuttingFindings.WISH_NAMES_NOTHING, group.at(), "The layout asks for `" + name + "`, which is no part")
                .found("The wish holds for the others that it names.")
                .about(name);
        NearWords.of(name, known).forEach(near -> finding.remedy(Remedy.choice("write `" + near + "`")));
        return finding.build();
    }

    /** The run that a part belongs to, or nothing. */
    List<String> runOf(String part) {
        return runs.stream().filter(run -> run.contains(part)).findFirst().orElse(List.of());
    }
}
