package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.solid.Contact;
import dev.treen.solid.Distance;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Parts said to be joined whose finished bodies share no face: another cut took away the wood they would have met on. What
 * lies loose may keep off by the room that its joint gives it.
 */
final class JointTouches implements Check {
    static final FindingKind TOUCHES_NOTHING = FindingKind.error("joint-touches-nothing",
            "The parts of a joint do not touch once all is cut");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOUCHES_NOTHING);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Standing standing = Standing.of(joined);
        Set<Set<String>> loose = loose(joined);
        List<Finding> findings = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            String left = made.joint().left().name();
            String right = made.joint().right().name();
            standing.solid(left)
                    .filter(one -> !loose.contains(Set.of(left, right)))
                    .flatMap(one -> standing.solid(right).filter(other -> !Contact.touch(one, other)))
                    .filter(other -> !standing.unsettled(left) && !standing.unsettled(right))
                    .ifPresent(other -> findings.add(finding(
                            made, Distance.between(standing.solid(left).orElseThrow(), other),
                            joined.project().settings())));
        }
        return findings;
    }

    /** The pairs of parts of which one lies loose beside the other: whether they have too much room is judged elsewhere. */
    private static Set<Set<String>> loose(Joined joined) {
        return joined.joints().stream()
                .filter(made -> !made.holdsFast())
                .map(made -> Set.of(made.joint().left().name(), made.joint().right().name()))
                .collect(Collectors.toSet());
    }

    private static Finding finding(MadeJoint made, double apart, Settings settings) {
        String left = made.joint().left().name();
        String right = made.joint().right().name();
        return Finding.of(
                TOUCHES_NOTHING,
                made.joint().at(),
                "`" + left + "` and `" + right + "` are joined and do not touch")
                .found(apart > 0
                        ? "With all joints cut the nearest wood of both is " + Amounts.fine(apart, settings) + " apart."
                        : "With all joints cut they meet along an edge or at a corner alone: no face lies on a face.")
                .because("Glue, nails and screws hold where face lies on face. Another cut has taken that wood away.")
                .related(made.meeting().left().placing().span(), "`" + left + "` lies here")
                .related(made.meeting().right().placing().span(), "`" + right + "` lies here")
                .about(left)
                .about(right)
                .about(made.joint().name())
                .number("apart", apart)
                .remedy(Remedy.choice("move the one to where the other has wood, or stop the cut that is in the way"))
                .build();
    }
}
