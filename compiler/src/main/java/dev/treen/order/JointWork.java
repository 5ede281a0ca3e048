package dev.treen.order;

import dev.treen.joinery.Fasteners;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Loose;
import dev.treen.joinery.LoosePiece;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The work that joints ask for, with like work of several joint statements made one operation, so that what is set once
 * is done once (O-05). Glue is left to {@link GlueWork}, which knows what goes together.
 */
final class JointWork {
    private final Workshop shop;
    private final Draft draft;
    private final List<Integer> places = new ArrayList<>();

    private JointWork(Workshop shop, Draft draft) {
        this.shop = shop;
        this.draft = draft;
    }

    /** Adds the work of all joints of {@code shop} to {@code draft}. */
    static void add(Workshop shop, Draft draft) {
        JointWork work = new JointWork(shop, draft);
        Map<Integer, Integer> joints = new HashMap<>();
        shop.joined().joints().forEach(m -> joints.merge(m.joint().statement(), 1, Integer::sum));
        for (MadeJoint made : shop.joined().joints()) {
            work.statement(made, joints.getOrDefault(made.joint().statement(), 1));
        }
        work.tell();
    }

    /** The works of a statement stand with its first pair; {@code joints} counts its pairs. */
    private void statement(MadeJoint made, int joints) {
        List<Integer> earlier = new ArrayList<>();
        for (Work work : made.works()) {
            if (work.stage() == Work.Stage.GLUE) {
                continue;
            }
            int place = put(operation(work, made, joints));
            for (int before : earlier) {
                if (draft.at(before).phase() == draft.at(place).phase()) {
                    draft.follows(before, place, "one is marked from the other, never from a drawing");
                }
            }
            earlier.add(place);
        }
    }

    private Operation operation(Work work, MadeJoint made, int joints) {
        Phase phase = phase(work, made);
        Operation operation = Operation.of(phase, work.action(), work.parts(), work.tool())
                .using(work.after())
                .setting(work.settings())
                .from(work.from())
                .checking(work.check())
                .minding(work.caution());
        String kind = switch (phase) {
            case FITTED -> "panel";
            case FIT -> work.stage() == Work.Stage.WHEN_SET ? made.joint().kind() : "fit";
            case MOUNT -> "mount";
            default -> work.stage() == Work.Stage.PIECES ? "piece" : made.joint().kind();
        };
        String known = shop.times().knows(kind) ? kind : "other";
        return operation.taking(shop.times().of(known, units(known, work, made, joints)));
    }

    private double units(String kind, Work work, MadeJoint made, int joints) {
        return switch (kind) {
            case "groove", "rebate", "tongue_groove", "edge" -> metres(work.parts());
            case "housing", "mortise_tenon", "dovetail", "halving", "bridle", "dowel", "sliding_dovetail",
                    "corner_block", "breadboard", "hinge", "mount" ->
                joints;
            // Both ends that meet are cut at one setting, in one piece of work.
            case "finger" -> 2.0 * joints;
            case "screw", "nail", "batten" -> (double) joints * made.fasteners().map(Fasteners::count).orElse(1);
            case "piece" -> (double) joints * made.pieces().stream().mapToInt(LoosePiece::count).sum();
            case "panel", "fit", "lid_line", "other" -> work.parts().size();
            default -> 2.0 * work.parts().size();
        };
    }

    private double metres(List<String> names) {
        double mm = 0;
        for (FinishedPart part : shop.named(names)) {
            mm += part.length().value().toDoubleMm();
        }
        return mm / 1000;
    }

    private Phase phase(Work work, MadeJoint made) {
        return switch (work.stage()) {
            case ALONG_STRIP -> Phase.ALONG;
            case AFTER_LENGTH, PIECES -> Phase.JOINTS;
            case AFTER_MEASURING -> Loose.in(made.joint())
                    ? Phase.FIT
                    : toMeasure(work, made) ? Phase.FITTED : Phase.JOINTS;
            case GLUE -> Phase.GLUE;
            case AFTER_GLUE -> Phase.KEYED;
            case CUT_FREE -> Phase.FREED;
            case WHEN_SET -> Phase.FIT;
            // What slides is fitted bare; what holds finished things together, such as a top on its base, comes last.
            case FIT -> made.joint().word("slide").isPresent() ? Phase.FIT : Phase.MOUNT;
        };
    }

    /**
     * Whether {@code work} makes parts to what was measured. A part from which the other was marked had its size before,
     * so it is only marked back from the other (rules of the trade O-07).
     */
    static boolean toMeasure(Work work, MadeJoint made) {
        return work.stage() == Work.Stage.AFTER_MEASURING
                && made.works().stream().noneMatch(other -> other.after().stream().anyMatch(work.parts()::contains));
    }

    /** Joins like work to what is there already; the place where it stands. */
    private int put(Operation operation) {
        for (int place : places) {
            if (alike(draft.at(place), operation)) {
                draft.replace(place, joined(draft.at(place), operation));
                return place;
            }
        }
        places.add(draft.add(operation));
        return places.getLast();
    }

    private static boolean alike(Operation a, Operation b) {
        return a.phase() == b.phase()
                && Wording.nameless(a).equals(Wording.nameless(b))
                && a.tool().equals(b.tool())
                && a.settings().equals(b.settings())
                && a.from().equals(b.from())
                && a.check().equals(b.check())
                && a.caution().equals(b.caution());
    }

    private static Operation joined(Operation a, Operation b) {
        List<String> on = union(a.parts(), b.parts());
        List<String> with = union(a.with(), b.with());
        Operation both = a.saying(Wording.naming(a, on, with, names -> String.join(", ", names))).on(on).using(with);
        return a.minutes()
                .flatMap(one -> b.minutes().map(one::plus))
                .map(both::taking)
                .orElse(both);
    }

    private static List<String> union(List<String> a, List<String> b) {
        Set<String> all = new LinkedHashSet<>(a);
        all.addAll(b);
        return List.copyOf(all);
    }

    /** Names the parts in the words of the plan, and says which strips are still whole. */
    private void tell() {
        for (int place : places) {
            Operation each = draft.at(place);
            Operation told = each.saying(Wording.naming(each, each.parts(), each.with(), Names::quoted));
            draft.replace(place, each.phase() == Phase.ALONG ? told.inSteps(shop.whole(each.parts())) : told);
        }
    }
}
