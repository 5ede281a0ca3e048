package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Whether what is joined can be put together by straight moves along the three axes, in some order, single parts or parts
 * already joined: found by taking the bodies apart, without asking which joints made them. Each group of joined parts is
 * looked at by itself, and only pairs of parts whose answer is needed; the search ends after {@link #MOST} of them.
 */
final class GoesTogether implements BodyCheck {
    static final FindingKind LOCKED = FindingKind.warning("cannot-go-together",
            "Joined parts cannot be put together by straight moves");
    static final FindingKind NOT_SEARCHED = FindingKind.note("assembly-not-searched",
            "The search for a way to put the parts together was cut short");

    /** How many pairs of parts, each along one axis, are looked at in one group of joined parts: enough for about 100 parts. */
    static final int MOST = 15_000;

    private static final List<Vec3> WAYS = Arrays.stream(Side.values()).map(Side::unit).toList();

    @Override
    public List<FindingKind> kinds() {
        return List.of(LOCKED, NOT_SEARCHED);
    }

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        List<Finding> findings = new ArrayList<>();
        for (List<Placed> group : standing.joinedGroups(joined.joints())) {
            switch (AssemblyOrder.of(group, WAYS, MOST)) {
                case AssemblyOrder.Possible possible -> {
                }
                case AssemblyOrder.Blocked(List<Set<String>> locked, var moves) -> locked.stream()
                        .filter(names -> Overlap.among(named(group, names)).isEmpty())
                        .forEach(names -> findings.add(locked(List.copyOf(names), joined.joints(), standing)));
                case AssemblyOrder.Unknown unknown -> findings.add(unknown(group, standing));
            }
        }
        return findings;
    }

    /** Parts that share volume block each other in every direction; that was told. */
    private static List<Placed> named(List<Placed> group, Set<String> names) {
        return group.stream().filter(part -> names.contains(part.name())).toList();
    }

    private static Finding locked(List<String> names, List<MadeJoint> joints, Standing standing) {
        List<MadeJoint> between = joints.stream()
                .filter(made -> names.contains(made.joint().left().name())
                        && names.contains(made.joint().right().name()))
                .toList();
        Finding.Builder finding = Finding.of(
                LOCKED,
                standing.part(names.getFirst()).part().nameAt(),
                listed(names) + " cannot be put together")
                .found("None of them, and no group of them, comes away from the rest straight to any of the six sides; so"
                        + " none can be put there either.")
                .because(
                        "Each joint goes in along one line. Where joints round a corner want three different lines, the last"
                                + " part has no way in (derived, from the bodies alone).");
        between.stream().limit(3).forEach(made -> finding.related(made.joint().at(),
                "`" + made.joint().left().name() + "` and `" + made.joint().right().name() + "` hold each other here"));
        names.forEach(finding::about);
        return finding.number("parts", names.size())
                .remedy(Remedy.choice(
                        "let one joint go in another way: a butt joint, a housing open at one end, a loose tongue"))
                .remedy(Remedy.choice("split one part in two, joined last"))
                .build();
    }

    private static Finding unknown(List<Placed> group, Standing standing) {
        return Finding.of(
                NOT_SEARCHED,
                standing.part(group.getFirst().name()).part().nameAt(),
                "Whether these " + group.size() + " joined parts can be put together was not found out")
                .found("The search looks at no more than " + MOST
                        + " pairs of parts, so that an answer comes while you type.")
                .because("Nothing is known to be wrong.")
                .about(group.getFirst().name())
                .number("parts", group.size())
                .build();
    }

    private static String listed(List<String> names) {
        int shown = Math.min(names.size(), 4);
        String text = "`" + String.join("`, `", names.subList(0, shown)) + "`";
        return names.size() > shown ? text + " and " + (names.size() - shown) + " more" : text;
    }
}
