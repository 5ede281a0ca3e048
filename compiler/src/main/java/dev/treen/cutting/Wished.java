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
 * @param pairs names of two parts that are the leaves of one piece
 * @param findings what there is to say of the wishes
 */
record Wished(
        List<List<String>> runs, List<List<String>> matched, List<List<String>> pairs, List<Finding> findings) {

    static Wished of(Joined joined) {
        List<String> known = joined.made().stream().map(p -> p.part().name()).toList();
        LayoutWishes wishes = joined.project().settings().layout();
        List<Finding> findings = new ArrayList<>();
        List<List<String>> pairs = whole(wishes.bookmatched(), known, joined, Set.of(), findings);
        Set<String> paired = new HashSet<>();
        pairs.forEach(paired::addAll);
        return new Wished(
                whole(
                        joined.project().runs().stream()
                                .map(run -> new LayoutWishes.Group(run.parts(), run.at()))
                                .toList(),
                        known, joined, paired, findings),
                groups(wishes.matched(), known, findings),
                pairs.stream().filter(pair -> pair.size() == 2).toList(),
                findings);
    }

    /** Groups of parts that are sawn out in one piece each: a part glued from staves is none, nor a leaf of another piece. */
    private static List<List<String>> whole(
            List<LayoutWishes.Group> groups, List<String> known, Joined joined, Set<String> paired,
            List<Finding> findings) {
        Set<String> glued = new HashSet<>();
        joined.made().stream()
                .filter(part -> part.part().glueUp().isPresent())
                .forEach(part -> glued.add(part.part().name()));
        List<LayoutWishes.Group> sawn = new ArrayList<>();
        for (LayoutWishes.Group group : groups) {
            List<String> left = new ArrayList<>();
            for (String name : group.parts()) {
                if (!glued.contains(name) && !paired.contains(name)) {
                    left.add(name);
                    continue;
                }
                findings.add(Finding.of(
                        CuttingFindings.WISH_NAMES_NOTHING, group.at(),
                        "`" + name + "` is not sawn out in one piece")
                        .found(glued.contains(name)
                                ? "It is glued up from staves; the wish holds for the others that it names."
                                : "It is a leaf of a piece that is resawn for two parts; the wish holds for the others"
                                        + " that it names.")
                        .about(name)
                        .build());
            }
            sawn.add(new LayoutWishes.Group(left, group.at()));
        }
        return groups(sawn, known, findings);
    }

    /** The two parts that are leaves of one piece, of which a part is one; or nothing. */
    List<String> pairOf(String part) {
        return pairs.stream().filter(pair -> pair.contains(part)).findFirst().orElse(List.of());
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
