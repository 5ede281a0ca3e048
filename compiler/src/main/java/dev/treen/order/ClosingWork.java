package dev.treen.order;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Hinge;
import dev.treen.joinery.Loose;
import dev.treen.joinery.MadeJoint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What comes when the glue is hard: openings, doors and drawers, hardware, finish (rules of the trade O-02, J-20, Q-03). */
final class ClosingWork {
    private final Workshop shop;
    private final Draft draft;

    private ClosingWork(Workshop shop, Draft draft) {
        this.shop = shop;
        this.draft = draft;
    }

    static void add(Workshop shop, Draft draft) {
        ClosingWork work = new ClosingWork(shop, draft);
        Map<String, List<MadeJoint>> insets = new LinkedHashMap<>();
        shop.joined().joints().stream()
                .filter(made -> Loose.in(made.joint()))
                .forEach(made -> insets.computeIfAbsent(made.joint().left().name(), n -> new ArrayList<>()).add(made));
        insets.forEach(work::opening);
        work.hang();
        work.finish();
    }

    private void opening(String part, List<MadeJoint> round) {
        Set<String> walls = new LinkedHashSet<>();
        round.forEach(made -> walls.add(made.joint().right().name()));
        List<String> whole = shop.assemblies().stream()
                .filter(assembly -> assembly.parts().contains(part))
                .findFirst()
                .map(Assembly::parts)
                .orElse(List.of(part));
        draft.add(Operation.of(
                Phase.OPENING,
                "Measure the opening for `" + part + "` at both ends, and its diagonals, and write them down",
                List.of(part),
                "rule, pinch rods")
                .using(List.copyOf(walls))
                .checking("the opening as it came out of the clamps, not as it was planned")
                .taking(shop.times().of("measure", 1)));
        round.stream()
                .flatMap(made -> made.joint().word("hinge").stream())
                .findFirst()
                .ifPresent(side -> hinges(part, side, whole, List.copyOf(walls)));
    }

    private void hinges(String part, String side, List<String> whole, List<String> walls) {
        int let = draft.add(Operation.of(
                Phase.FIT,
                "Let the hinges of `" + part + "` in on the " + side
                        + ", hang it with one screw in each leaf, then take"
                        + " it off again",
                whole,
                "marking gauge, knife, chisel, drill with a stop, screwdriver")
                .using(walls)
                .from("the leaf itself: half the thickness of the knuckle deep in each part, a shade less rather than more")
                .checking("it shuts without springing back, and the gap is even all round")
                .minding("Bore for every screw; drive a steel screw first where brass ones go in.")
                .taking(shop.times().of("hinge", 1)));
        for (int place = 0; place < let; place++) {
            Operation other = draft.at(place);
            if (other.phase() == Phase.FIT && other.parts().contains(part)) {
                draft.follows(place, let, "hinges go on a door that fits its opening");
            }
        }
        draft.add(Operation.of(
                Phase.MOUNT,
                "Hang `" + part + "` for good, with all screws",
                whole,
                "screwdriver")
                .using(walls)
                .checking("it opens and shuts freely, and the gap is still even")
                .taking(shop.times().of("mount", 1)));
    }

    /** What was hung by a hinge joint of its own, and taken off for the finish, goes on again. */
    private void hang() {
        Map<String, Set<String>> hung = new LinkedHashMap<>();
        shop.joined().joints().stream()
                .filter(made -> made.joint().kind().equals(Hinge.KIND))
                .forEach(made -> hung.computeIfAbsent(made.joint().left().name(), n -> new LinkedHashSet<>())
                        .add(made.joint().right().name()));
        hung.forEach((part, on) -> draft.add(Operation.of(
                Phase.MOUNT,
                "Screw the hinges of " + hungAs(part) + " on for good, with all screws",
                List.of(part),
                "screwdriver")
                .using(List.copyOf(on))
                .checking("all pins lie in one line, and it opens and shuts freely")
                .taking(shop.times().of("mount", on.size()))));
    }

    /** What hangs by one of its parts: the door or lid that is glued up of it and others, or the part alone. */
    private String hungAs(String part) {
        return shop.assemblies().stream()
                .filter(assembly -> assembly.parts().contains(part))
                .findFirst()
                .map(Assembly::called)
                .orElse("`" + part + "`");
    }

    private void finish() {
        List<FinishedPart> all = shop.parts().stream().filter(Workshop::finished).toList();
        if (all.isEmpty()) {
            return;
        }
        List<String> names = Workshop.names(all);
        double area = Workshop.tenths(all) * 2 / 5;
        int first = draft.add(Operation.of(
                Phase.FINISH,
                "Finish what is still raw: the first coat, the same on both faces of every part",
                names,
                "brush or cloth")
                .checking("no dust, no glue and no pencil line is under it; wet edges have run together")
                .minding("Read the label; air the room; spread oily rags flat outdoors to dry.")
                .taking(shop.times().of("coat", area))
                .waiting(shop.times().wait("coat")));
        int more = draft.add(Operation.of(
                Phase.FINISH,
                "Rub it down lightly and give the next coats, two as a rule, each when the one before is dry",
                names,
                "fine paper, brush or cloth")
                .checking("a coat is dry when the paper makes dust and does not clog")
                .taking(shop.times().of("coat", 2 * area))
                .waiting(shop.times().wait("coat", 2)));
        draft.follows(first, more, "a coat is rubbed down when it is dry");
        int cure = draft.add(Operation.of(
                Phase.CURE,
                "Let the finish cure before the piece is used",
                names,
                "nothing")
                .checking("it smells of nothing")
                .waiting(shop.times().wait("cure")));
        for (int place = 0; place < cure; place++) {
            Operation other = draft.at(place);
            if (other.phase() == Phase.MOUNT && other.parts().stream().noneMatch(names::contains)
                    && other.with().stream().anyMatch(names::contains)) {
                draft.follows(place, cure, "what goes on last is on before the piece is put aside");
            }
        }
    }
}
