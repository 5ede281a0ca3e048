package dev.treen.order;

import dev.treen.joinery.Fasteners;
import dev.treen.joinery.FinishedPart;
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
 * is done once (O-05).
 */
final class JointWork {
    /** Operations, and which of them, by index, follow one another because one is marked from the other. */
    record Result(List<Operation> operations, List<int[]> scribed) {}

    /** No name in a project holds this character. */
    private static final String HOLE = "\u0001";

    private final Workshop shop;
    private final List<Operation> operations = new ArrayList<>();
    private final List<int[]> scribed = new ArrayList<>();

    private JointWork(Workshop shop) {
        this.shop = shop;
    }

    static Result of(Workshop shop) {
        JointWork work = new JointWork(shop);
        Map<Integer, Integer> joints = new HashMap<>();
        shop.joined().joints().forEach(m -> joints.merge(m.joint().statement(), 1, Integer::sum));
        for (MadeJoint made : shop.joined().joints()) {
            work.statement(made, joints.getOrDefault(made.joint().statement(), 1));
        }
        return new Result(work.operations, work.scribed);
    }

    /** The works of a statement stand with its first pair; {@code joints} counts its pairs. */
    private void statement(MadeJoint made, int joints) {
        List<Integer> places = new ArrayList<>();
        for (Work work : made.works()) {
            int place = put(operation(work, made, joints));
            for (int earlier : places) {
                if (earlier != place && operations.get(earlier).phase() == operations.get(place).phase()) {
                    scribed.add(new int[]{earlier, place});
                }
            }
            places.add(place);
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
        String known = switch (phase) {
            case FITTED -> "panel";
            case GLUE -> "glue";
            case FIT -> work.stage() == Work.Stage.AFTER_GLUE ? made.joint().kind() : "";
            default -> phase.compareTo(Phase.FITTED) < 0 ? made.joint().kind() : "";
        };
        boolean timed = shop.times().knows(known);
        return timed ? operation.taking(shop.times().of(known, units(known, work, made, joints))) : operation;
    }

    private double units(String kind, Work work, MadeJoint made, int joints) {
        return switch (kind) {
            case "groove", "rebate", "tongue_groove", "edge" -> metres(work.parts());
            case "housing", "mortise_tenon", "dovetail", "halving", "bridle", "dowel", "sliding_dovetail", "corner_block"
                    -> joints;
            // Both ends that meet are cut at one setting, in one piece of work.
            case "finger" -> 2.0 * joints;
            case "screw", "nail", "batten" -> (double) joints * made.fasteners().map(Fasteners::count).orElse(1);
            case "hinge" -> (double) joints;
            case "panel" -> work.parts().size();
            case "glue" -> 1;
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

    private static Phase phase(Work work, MadeJoint made) {
        return switch (work.stage()) {
            case ALONG_STRIP -> Phase.ALONG;
            case AFTER_LENGTH -> Phase.JOINTS;
            case AFTER_MEASURING -> toMeasure(work, made) ? Phase.FITTED : Phase.JOINTS;
            case GLUE -> Phase.GLUE;
            case AFTER_GLUE -> Phase.KEYED;
            // What slides is fitted to the piece as it came out of the clamps; what stays is closed in by the glue-up.
            case WHEN_SET -> Phase.FIT;
            case FIT -> made.joint().word("slide").isPresent() ? Phase.FIT : Phase.ENCLOSE;
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
        for (int i = 0; i < operations.size(); i++) {
            Operation there = operations.get(i);
            if (alike(there, operation)) {
                operations.set(i, joined(there, operation));
                return i;
            }
        }
        operations.add(operation);
        return operations.size() - 1;
    }

    private static boolean alike(Operation a, Operation b) {
        boolean same = a.phase() == b.phase()
                && nameless(a).equals(nameless(b))
                && a.tool().equals(b.tool())
                && a.settings().equals(b.settings())
                && a.from().equals(b.from())
                && a.check().equals(b.check())
                && a.caution().equals(b.caution());
        // Two assemblies that share no part are glued one after the other.
        return same && (a.phase() != Phase.GLUE || a.parts().stream().anyMatch(b.parts()::contains));
    }

    /** The action with a hole where it names the parts that it is marked from or done to. */
    private static String nameless(Operation operation) {
        String with = quoted(operation.with());
        if (!operation.with().isEmpty() && operation.action().contains(with)) {
            return operation.action().replace(with, HOLE + "with");
        }
        return operation.action().replace(quoted(operation.parts()), HOLE + "on");
    }

    private static Operation joined(Operation a, Operation b) {
        List<String> on = union(a.parts(), b.parts());
        List<String> with = union(a.with(), b.with());
        String action = nameless(a).replace(HOLE + "with", quoted(with)).replace(HOLE + "on", quoted(on));
        Operation both = a.saying(action).on(on).using(with);
        return a.minutes()
                .flatMap(one -> b.minutes().map(one::plus))
                .map(both::taking)
                .orElse(both);
    }

    private static String quoted(List<String> names) {
        return "`" + String.join("`, `", names) + "`";
    }

    private static List<String> union(List<String> a, List<String> b) {
        Set<String> all = new LinkedHashSet<>(a);
        all.addAll(b);
        return List.copyOf(all);
    }
}
