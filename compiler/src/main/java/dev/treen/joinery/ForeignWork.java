package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Board;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Joints of what is bought and neither wood nor a sheet of it: a pane of glass is not cut, worked or glued, but laid in when
 * all else has its finish.
 */
final class ForeignWork {
    private static final String CARE = "Wear gloves and eye protection where edges are raw; what hangs, is leaned on or is"
            + " within reach of children wants safety glass, by the local code.";

    private ForeignWork() {
    }

    /** The works that a statement asks for, where some of its parts are such. */
    static List<Work> in(List<MadeJoint> statement, List<Work> asked) {
        if (statement.stream().noneMatch(MadeJoint::foreign)) {
            return asked;
        }
        Set<String> foreign = new LinkedHashSet<>();
        Set<String> round = new LinkedHashSet<>();
        for (MadeJoint made : statement) {
            for (Part part : List.of(made.joint().left(), made.joint().right())) {
                if (part.foreign()) {
                    foreign.add(part.name());
                } else if (made.foreign()) {
                    round.add(part.name());
                }
            }
        }
        boolean allForeign = statement.stream().allMatch(MadeJoint::foreign);
        boolean glued = asked.stream().anyMatch(work -> work.stage() == Work.Stage.GLUE);
        List<Work> works = new ArrayList<>();
        for (Work work : asked) {
            boolean onlyIt = foreign.containsAll(work.parts());
            if (onlyIt && work.stage() == Work.Stage.AFTER_MEASURING) {
                works.add(toSize(work, statement));
            } else if (!onlyIt && !(allForeign && work.stage() == Work.Stage.GLUE)) {
                works.add(without(work, foreign));
            }
        }
        if (glued) {
            works.add(laidIn(statement.getFirst().joint(), List.copyOf(foreign), List.copyOf(round)));
        }
        return works;
    }

    private static Work without(Work work, Set<String> foreign) {
        List<String> parts = work.parts().stream().filter(name -> !foreign.contains(name)).toList();
        return new Work(work.stage(), work.action(), parts, work.after(), work.tool(), work.settings(), work.from(),
                work.check(), work.caution());
    }

    private static Work toSize(Work work, List<MadeJoint> statement) {
        return new Work(
                Work.Stage.AFTER_MEASURING,
                "Have " + String.join(", ", work.parts()) + " cut by its seller to the opening as measured",
                work.parts(),
                work.after(),
                "rule",
                statement.stream()
                        .map(made -> new Work.GaugeSetting("gap", Work.figure(made, "gap")))
                        .distinct()
                        .toList(),
                "",
                "it goes in dry all round, without force",
                CARE);
    }

    private static Work laidIn(Joint joint, List<String> foreign, List<String> round) {
        boolean rebate = joint.kind().equals("rebate");
        return new Work(
                Work.Stage.FIT,
                (rebate ? "Lay in `" : "Put on `") + String.join("`, `", foreign) + "` without glue"
                        + (rebate ? ", and hold with brads, points or a bead pinned to the wood"
                                : ", as its maker says"),
                foreign,
                round,
                rebate ? "brad pusher or small hammer with a card under it, pincers" : "as its maker says",
                List.of(),
                "",
                rebate ? "it lies flat and free all round, and nothing presses on it"
                        : "it sits firm and can be taken off",
                CARE);
    }

    /** That a joint would be cut into such a part; empty where it is left whole. */
    static Optional<Finding> cut(Meeting meeting, Effect effect) {
        Joint joint = meeting.joint();
        return Stream.of(joint.left(), joint.right())
                .filter(Part::foreign)
                .filter(part -> effect.cuts().stream().anyMatch(cut -> cut.part().equals(part.name())))
                .findFirst()
                .map(part -> finding(joint, part));
    }

    private static Finding finding(Joint joint, Part part) {
        Board bought = part.bought().orElseThrow();
        String stuff = bought.species().orElse("");
        return Finding.of(
                JoineryFindings.BOUGHT_CUT,
                joint.at(),
                "This `" + joint.kind() + "` would be cut into `" + part.name() + "`, which is bought ready, of "
                        + stuff)
                .found("A part that is bought goes in as it comes.")
                .because("The plan would tell the maker to cut what the tools at hand do not cut.")
                .related(bought.speciesAt(), "it is bought here")
                .about(part.name())
                .about(joint.name())
                .remedy(Remedy.choice("lay it in a step of the other part: `rebate " + part.name() + " into …`"))
                .remedy(Remedy.choice("name the wood, if it is of wood: `bought european_beech`"))
                .build();
    }
}
