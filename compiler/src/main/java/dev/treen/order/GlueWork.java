package dev.treen.order;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Groove;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Axis;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/** One assembly from the dry fit to the cleaned outside (rules of the trade O-02, O-03; Noyes, ch. V). */
final class GlueWork {
    private static final String DRY = "stays dry";

    private final Workshop shop;
    private final Draft draft;
    private final Assembly assembly;
    private final List<GlueStage> stages;
    private final Map<Integer, List<Work>> glue;

    private GlueWork(Workshop shop, Draft draft, Assembly assembly) {
        this.shop = shop;
        this.draft = draft;
        this.assembly = assembly;
        stages = GlueStage.of(assembly, shop.joined());
        glue = Assembly.glue(shop.joined());
    }

    static void add(Workshop shop, Draft draft, Assembly assembly) {
        GlueWork work = new GlueWork(shop, draft, assembly);
        work.tryAndMeasure();
        work.before();
        work.glueUp();
        work.clean();
    }

    private void tryAndMeasure() {
        List<String> fixed = assembly.parts().stream().filter(name -> !shop.measured().contains(name)).toList();
        List<String> measured = assembly.enclosed().stream().filter(shop.measured()::contains).toList();
        draft.add(Operation.of(
                Phase.TRY,
                "Put " + assembly.called() + " together dry"
                        + (measured.isEmpty() ? "" : "; " + Names.quoted(measured) + " not yet"),
                fixed,
                "clamps, square")
                .inSteps(numbered(assembly.joints(), Set.of()))
                .checking("joints close under light clamps; square; no winding")
                .taking(shop.times().of("dry", assembly.joints().size())));
        List<String> openings = shop.openings(assembly);
        if (!openings.isEmpty()) {
            draft.add(Operation.of(
                    Phase.MEASURE,
                    (openings.size() == 1 ? "Measure the opening for " : "Measure the openings for ")
                            + Names.quoted(openings)
                            + " at both ends, to the bottom of the grooves, and write it down",
                    openings,
                    "rule, pinch rods")
                    .using(fixed)
                    .checking("what is made to fit is made to what is, not to what was planned; put it into the project"
                            + " as `measured`, and sizes follow")
                    .taking(shop.times().of("measure", openings.size())));
        }
    }

    private void before() {
        // What is bought comes clean, and is not worked.
        List<FinishedPart> all = shop.named(assembly.all()).stream()
                .filter(part -> !part.part().foreign())
                .toList();
        List<FinishedPart> coated = all.stream().filter(Workshop::finished).toList();
        List<String> panels = Workshop
                .names(shop.named(assembly.enclosed()).stream().filter(Workshop::finished).toList());
        Operation clean = Operation.of(
                Phase.INSIDE,
                "Clean the faces of " + assembly.called() + " that will lie inside or in corners"
                        + (coated.isEmpty() ? "" : ", and finish "
                                + (coated.size() == all.size() ? "them"
                                        : "those of " + Names.quoted(Workshop.names(coated)))
                                + (panels.isEmpty() ? "" : "; " + Names.quoted(panels) + " on all sides")),
                Workshop.names(all),
                shop.tool("smoothing plane or scraper", "fine paper on a block")
                        + (coated.isEmpty() ? "" : ", brush or cloth"))
                .checking("no pencil line is left"
                        + (coated.isEmpty() ? "" : ", and no finish on surfaces that will be glued"));
        Minutes minutes = shop.times().of("clean", Workshop.tenths(all));
        draft.add(coated.isEmpty() ? clean.taking(minutes) : clean
                .taking(minutes.plus(shop.times().of("coat", Workshop.tenths(coated) * 2 / 5)))
                .waiting(shop.times().wait("coat")));
        draft.add(Operation.of(
                Phase.REHEARSE,
                "Rehearse the glue-up of " + assembly.called()
                        + " dry, with clamps, blocks, square and rag laid out",
                Workshop.names(all),
                "clamps, blocks, square")
                .inSteps(stages.size() == 1 ? List.of() : stages.stream().map(this::told).toList())
                .checking("everything closes, and you know which clamp comes first")
                .taking(shop.times().of("rehearse", assembly.joints().size())));
    }

    private String told(GlueStage stage) {
        return "glue-up " + (stages.indexOf(stage) + 1) + ": " + Names.quoted(stage.parts())
                + stage.dry().map(dry -> ", with `" + dry + "` put on dry").orElse("");
    }

    private void glueUp() {
        List<Integer> earlier = new ArrayList<>();
        for (GlueStage stage : stages) {
            boolean last = stage.equals(stages.getLast());
            int at = draft.add(glued(stage, last));
            int square = draft.add(squared(stage, last));
            draft.follows(at, square, "only while the glue is wet can it still be pushed square");
            for (int before : earlier) {
                if (draft.at(before).parts().stream().anyMatch(stage.parts()::contains)) {
                    draft.follows(before, at,
                            "glued one after the other, each leaves time to clamp and push it square");
                }
            }
            earlier.add(square);
        }
    }

    private Operation glued(GlueStage stage, boolean last) {
        Set<Work> works = new LinkedHashSet<>();
        stage.joints().forEach(made -> works.addAll(glue.getOrDefault(made.joint().statement(), List.of())));
        List<String> dry = new ArrayList<>(last ? assembly.enclosed() : List.of());
        stage.dry().ifPresent(dry::add);
        List<String> cautions = new ArrayList<>(cautions(works));
        if (stage.joints().size() > GlueStage.JOINTS_IN_TIME) {
            cautions.add(
                    stage.joints().size() + " joints take longer than yellow glue stays open (5 to 10 minutes): take"
                            + " a slower glue, or a helper.");
        }
        return Operation.of(
                Phase.GLUE,
                "Glue " + (stages.size() == 1 ? assembly.called() : Names.quoted(stage.parts())) + ": "
                        + String.join("; ", each(works, GlueWork::lowered)) + (last ? closedIn() : ""),
                List.copyOf(stage.parts()),
                String.join("; ", each(works, Work::tool)))
                .using(dry)
                .inSteps(moves(stage))
                .setting(works.stream().flatMap(work -> work.settings().stream()).distinct().toList())
                .from(String.join("; ", each(works, Work::from)))
                .checking(String.join("; ", each(works, Work::check)))
                .minding(String.join(" ", cautions))
                .taking(shop.times().of("glue", 1).plus(stage.joints().size() > 4
                        ? shop.times().of("glue_joint", stage.joints().size() - 4.0)
                        : Minutes.NONE));
    }

    /** What becomes of the panels that it closes in. */
    private String closedIn() {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (String name : assembly.enclosed()) {
            alike.computeIfAbsent(shop.joined().joints().stream()
                    .filter(made -> made.joint().left().name().equals(name))
                    .map(made -> held(made.joint()))
                    .filter(how -> !how.isEmpty())
                    .findFirst()
                    .orElse(DRY), how -> new ArrayList<>()).add(name);
        }
        StringBuilder words = new StringBuilder();
        alike.forEach((how, names) -> words.append("; ").append(Names.quoted(names)).append(' ').append(
                how.equals(DRY) && names.size() > 1 ? "stay dry" : how));
        return words.toString();
    }

    private static String held(Joint joint) {
        return Groove.heldInTheMiddle(joint) ? "is pinned at the middle of both ends and stays dry"
                : Groove.heldAt(joint).isPresent() ? "is glued along its "
                        + joint.word("held").flatMap(Direction::named).map(Direction::surface).orElse("long")
                        + " edge alone" : "";
    }

    private static String lowered(Work work) {
        String action = work.action();
        return action.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + action.substring(1);
    }

    /** The cautions of {@code works}; what another says and more is not said again. */
    private static List<String> cautions(Collection<Work> works) {
        List<String> all = each(works, Work::caution);
        return all.stream()
                .filter(one -> all.stream().noneMatch(other -> !other.equals(one)
                        && other.startsWith(one.substring(0, one.length() - 1))))
                .toList();
    }

    private static List<String> each(Collection<Work> works, java.util.function.Function<Work, String> what) {
        return works.stream().map(what).filter(text -> !text.isEmpty()).distinct().toList();
    }

    private List<String> moves(GlueStage stage) {
        List<String> lines = new ArrayList<>();
        Set<Integer> told = new TreeSet<>();
        for (AssemblyOrder.Move move : stage.moves()) {
            Set<String> onto = new LinkedHashSet<>();
            NavigableSet<Integer> numbers = new TreeSet<>();
            for (MadeJoint made : shop.joined().joints()) {
                String left = made.joint().left().name();
                String right = made.joint().right().name();
                boolean first = move.parts().contains(left) && move.onto().contains(right);
                if (first || (move.parts().contains(right) && move.onto().contains(left))) {
                    onto.add(first ? right : left);
                    shop.numbers().of(left, right).ifPresent(numbers::add);
                }
            }
            if (!onto.isEmpty()) {
                lines.add(Names.quoted(move.parts()) + (move.parts().size() == 1 ? " goes " : " go ") + way(move.to())
                        + " onto " + Names.quoted(onto) + (numbers.isEmpty() ? "" : " (" + labels(numbers) + ")"));
                told.addAll(numbers);
            }
        }
        lines.addAll(numbered(stage.joints(), told));
        return lines;
    }

    private static String labels(NavigableSet<Integer> numbers) {
        return (numbers.size() == 1 ? "number " : "numbers ") + String.join(", ", Names.runs(numbers))
                + " on the labels";
    }

    /** The numbers of {@code joints} on the labels of their parts, but for those that have been {@code told}. */
    private List<String> numbered(Collection<MadeJoint> joints, Set<Integer> told) {
        NavigableSet<Integer> numbers = new TreeSet<>();
        joints.forEach(made -> shop.numbers().of(made.joint().left().name(), made.joint().right().name())
                .ifPresent(numbers::add));
        numbers.removeAll(told);
        return numbers.isEmpty() ? List.of() : List.of("same number to same number: " + labels(numbers));
    }

    private static String way(Vec3 to) {
        for (Axis axis : Axis.values()) {
            int sign = to.get(axis).signum();
            if (sign != 0) {
                return switch (axis) {
                    case X -> sign < 0 ? "to the left" : "to the right";
                    case Y -> sign < 0 ? "to the front" : "to the back";
                    case Z -> sign < 0 ? "down" : "up";
                };
            }
        }
        return "in";
    }

    private Operation squared(GlueStage stage, boolean last) {
        boolean diagonals = last && assembly.ring();
        return Operation.of(
                Phase.SQUARE,
                (diagonals ? "Compare the diagonals and push until they agree"
                        : "Try it with the square and sight it for"
                                + " winding")
                        + "; leave it in its clamps",
                List.copyOf(stage.parts()),
                diagonals ? "rule or pinch rods" : "square, straight edge")
                .checking(diagonals
                        ? Diagonals.check(assembly, shop)
                        : "square at every joint; it lies flat on the bench; squeezed-out glue is off")
                .taking(shop.times().of("square", 1))
                .waiting(shop.times().wait("glue"));
    }

    private void clean() {
        draft.add(Operation.of(
                Phase.CLEAN,
                "Level the joints of " + assembly.called() + " and clean its outside",
                assembly.parts(),
                shop.tool("smoothing plane, scraper", "random orbit sander or scraper"))
                .from("the corners inward, so that no end grain breaks out")
                .checking("no glue shows when the surface is wiped with a damp cloth")
                .taking(shop.times().of("clean", Workshop.tenths(shop.named(assembly.parts())))));
    }
}
