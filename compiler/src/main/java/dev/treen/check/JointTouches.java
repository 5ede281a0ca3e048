package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.solid.Contact;
import dev.treen.solid.Distance;
import dev.treen.solid.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Parts said to be joined whose finished bodies share no face: another cut took away the wood they would have met on. What
 * lies loose may keep off by the room that its joint gives it.
 */
final class JointTouches implements BodyCheck {
    static final FindingKind TOUCHES_NOTHING = FindingKind.error("joint-touches-nothing",
            "The parts of a joint do not touch once all is cut");

    @Override
    public List<FindingKind> kinds() {
        return List.of(TOUCHES_NOTHING);
    }

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        Map<Set<String>, Length> rooms = rooms(joined);
        List<Finding> findings = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            String left = made.joint().left().name();
            String right = made.joint().right().name();
            standing.solid(left)
                    .flatMap(one -> standing.solid(right)
                            .filter(other -> !Contact.touch(one, other))
                            .filter(other -> !keepsOff(rooms.get(pair(made)), one, other))
                            .map(other -> Distance.between(one, other)))
                    .ifPresent(apart -> findings.add(finding(made, apart, joined.project().settings())));
        }
        return findings;
    }

    /** How far the parts of a pair may keep off each other: the room that a joint leaves in which one of them lies loose. */
    private static Map<Set<String>, Length> rooms(Joined joined) {
        Map<Set<String>, Length> rooms = new HashMap<>();
        for (MadeJoint made : joined.joints()) {
            if (!made.holdsFast()) {
                Length room = made.figure("gap").map(gap -> gap.measure().value()).orElse(Length.ZERO);
                rooms.merge(pair(made), room, Length::max);
            }
        }
        return rooms;
    }

    /** Whether {@code room} is left by a joint and the two are no farther apart; by squares, which are exact. */
    private static boolean keepsOff(@Nullable Length room, Solid one, Solid other) {
        return room != null
                && Exact.compare(Distance.squared(one, other), room.mm().multiply(room.mm())) <= 0;
    }

    private static Set<String> pair(MadeJoint made) {
        return Set.copyOf(List.of(made.joint().left().name(), made.joint().right().name()));
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
