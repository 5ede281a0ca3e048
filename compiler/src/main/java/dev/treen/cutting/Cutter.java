package dev.treen.cutting;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.model.GlueUp;
import dev.treen.model.LayoutWishes;
import dev.treen.yield.BoardLayout;
import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Outcome;
import dev.treen.yield.Progress;
import dev.treen.yield.Settings;
import dev.treen.yield.Steady;
import dev.treen.yield.Unplaced;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Lays all rough parts out on the boards of a project. */
public final class Cutter {
    /** Enough to see that everything fits, which is nearly always so. */
    private static final long GLANCE = 1;

    /** So many parts have all the steps; with more there are fewer steps, since each takes longer. */
    private static final double MANY = 1000;

    private final Joined joined;
    private final Wished wished;
    private final EarlierLayout earlier;
    private final Dividing dividing;
    private Rack rack;
    private final List<Finding> findings = new ArrayList<>();

    private Cutter(Joined joined, EarlierLayout earlier) {
        this.joined = joined;
        this.earlier = earlier;
        this.wished = Wished.of(joined);
        this.dividing = new Dividing(joined, wished, earlier, made());
        this.rack = dividing.first();
        findings.addAll(wished.findings());
    }

    /** The layout of {@code joined}'s parts on its boards. */
    public static Cutting cut(Joined joined) {
        return cut(joined, EarlierLayout.NONE);
    }

    /** The same, moving as little as it can of what an earlier plan had. */
    public static Cutting cut(Joined joined, EarlierLayout earlier) {
        return cut(joined, earlier, Progress.none(), Cancel.never());
    }

    /** The same as a job: told of progress, and giving the best so far when it is cancelled. */
    public static Cutting cut(Joined joined, EarlierLayout earlier, Progress progress, Cancel cancel) {
        return new Cutter(joined, earlier).run(Settings.USUAL_STEPS, progress, cancel);
    }

    /** All that the layout depends on: where two are equal, so are the layouts. */
    public static Object input(Joined joined) {
        Cutter cutter = new Cutter(joined, EarlierLayout.NONE);
        return List.of(cutter.rack.leaves().isEmpty() ? List.of() : cutter.rack.problem(Settings.USUAL_STEPS),
                cutter.dividing.input(), cutter.wished.pairs(), joined.project().settings().layout().labour(),
                joined.project().settings().layout().matched().stream().map(LayoutWishes.Group::parts).toList());
    }

    /** What there is to say of the layout, without looking for the best one where any will do. */
    public static List<Finding> findings(Joined joined) {
        Cutting glance = new Cutter(joined, EarlierLayout.NONE).run(GLANCE, Progress.none(), Cancel.never());
        return glance.unplaced().isEmpty() ? glance.findings() : cut(joined).findings();
    }

    private Cutting run(long steps, Progress progress, Cancel cancel) {
        List<String> all = joined.made().stream().map(p -> p.part().name()).toList();
        if (all.isEmpty()) {
            return Cutting.none(List.of(), List.of());
        }
        if (rack.leaves().isEmpty()) {
            return Cutting.none(all, List.of(noBoards()));
        }
        Dividing.Chosen chosen = dividing.best(rack, steps == GLANCE, cancel);
        rack = chosen.rack();
        YieldProblem problem = rack.problem(fewer(steps, rack.blanks().size()));
        var matching = new Matching(rack);
        Steady.Result result = steady(problem, matching, progress, cancel);
        matching.without().forEach(group -> findings.add(noMatch(group)));
        return switch (result.outcome()) {
            case Layout layout -> cutting(layout, result, chosen, cancel);
            case Outcome.Refusal refusal -> Cutting.none(all, List.of(refused(refusal)));
        };
    }

    private static long fewer(long steps, int parts) {
        double share = Math.min(1, MANY / parts);
        return Math.max(GLANCE, (long) (steps * share * share));
    }

    private Steady.Result steady(YieldProblem problem, Matching matching, Progress progress, Cancel cancel) {
        if (earlier.boards().isEmpty()) {
            return new Steady.Result(matching.solve(problem, progress, cancel), problem, false, 0);
        }
        var wish = new Steady.Wish(
                cut(),
                rack.matched().stream().map(group -> (Set<String>) new HashSet<>(group)).toList(),
                joined.project().settings().layout().steady());
        return Steady.solve(
                problem, earlier.read(problem), wish, it -> matching.solve(it, progress, cancel), cancel);
    }

    /** Parts that must be there, or what was measured could not have been. */
    private Set<String> made() {
        Set<String> made = new HashSet<>();
        joined.project().measurements().forEach(measurement -> made.addAll(measurement.made()));
        return made;
    }

    /** The ids of what is sawn out for them. */
    private Set<String> cut() {
        Set<String> made = made();
        Set<String> cut = new HashSet<>();
        rack.blanks().values().stream()
                .filter(blank -> made.containsAll(blank.parts()))
                .forEach(blank -> cut.add(blank.name()));
        return cut;
    }

    private Finding noBoards() {
        return Finding.of(
                CuttingFindings.NO_BOARDS,
                joined.project().settings().at().endPoint(),
                "The project names no boards, so there is no cutting layout")
                .remedy(Remedy.choice("add a board: `board plank { species …; size … x … x … }`"))
                .build();
    }

    private Finding noMatch(List<String> ids) {
        List<String> group = ids.stream().flatMap(id -> rack.blank(id).parts().stream()).distinct().toList();
        return Finding.of(
                CuttingFindings.NO_MATCH,
                joined.project().settings().layout().matched().stream()
                        .filter(wish -> wish.parts().containsAll(group))
                        .map(LayoutWishes.Group::at)
                        .findFirst()
                        .or(() -> joined.part(group.getFirst()).flatMap(part -> part.part().glueUp()).map(GlueUp::at))
                        .orElse(joined.project().settings().at()),
                "No one board gives " + (group.size() == 1 ? "all staves of " : "") + "`"
                        + String.join("`, `", group) + "`")
                .found("They are laid out wherever there is room.")
                .about(group.getFirst())
                .remedy(Remedy.choice("name the board of each with `from`, or add a board that gives them all"))
                .build();
    }

    private Finding refused(Outcome.Refusal refusal) {
        List<String> what = refusal.faults().stream()
                .map(fault -> (fault.where().isEmpty() ? "" : "`" + fault.where() + "` ") + words(fault.kind()))
                .distinct()
                .toList();
        return Finding.of(
                CuttingFindings.NOT_LAID_OUT,
                joined.project().settings().at(),
                "The boards cannot be laid out")
                .found(String.join("; ", what) + ".")
                .build();
    }

    private static String words(Outcome.Kind kind) {
        return switch (kind) {
            case NO_STOCK -> "there are no boards";
            case SIZE_NOT_POSITIVE -> "has no size";
            case NEGATIVE -> "takes less than nothing";
            case TOO_GREAT -> "is too large to reckon with";
            case TWICE -> "is there twice";
            case UNKNOWN_NAME -> "is not known";
            case RUN_TOO_LONG, UNLIMITED_COPIES -> "is asked for too often";
            case FAILED_CHECK -> "is a fault in Treen: the layout found breaks a rule";
        };
    }

    private Cutting cutting(Layout layout, Steady.Result result, Dividing.Chosen chosen, Cancel cancel) {
        YieldProblem problem = result.problem();
        List<BoardCut> boards = new ArrayList<>();
        Set<String> cut = new HashSet<>();
        Set<String> opened = new HashSet<>();
        for (BoardLayout each : layout.boards()) {
            Rack.Leaf leaf = rack.leaf(each.stockId());
            boards.add(Sawing.of(each, rack, problem));
            cut.add(each.stockId());
            opened.add(leaf.of().source().name());
        }
        List<String> untouched = rack.leaves().entrySet().stream()
                .filter(e -> !cut.contains(e.getKey())
                        && opened.contains(e.getValue().of().source().name()))
                .map(java.util.Map.Entry::getKey)
                .toList();
        var nearest = new Nearest(problem, rack, layout.unplaced(), NoRoom.step(joined));
        var noRoom = new NoRoom(joined, rack, wished, nearest, cancel);
        List<String> unplaced = new ArrayList<>();
        for (Unplaced each : layout.unplaced()) {
            unplaced.add(each.pieceId());
            noRoom.of(each).ifPresent(findings::add);
        }
        List<Glued> glued = joined.made().stream()
                .flatMap(part -> Optional.ofNullable(rack.division().glued().get(part.part().name())).stream())
                .toList();
        var remarks = new Remarks(joined);
        findings.addAll(BoardFindings.of(joined, boards, glued, remarks.hollow()));
        Proof proof = Proof.of(layout, chosen, dividing);
        Cutting cutting = new Cutting(
                boards,
                untouched,
                unplaced,
                AreaSums.of(joined, boards, glued),
                glued,
                proof.gap(),
                proof.proved(),
                proof.how(),
                earlier.boards().isEmpty() ? Moves.NONE
                        : Moves.of(earlier, boards, made(), !result.stays(), result.more()),
                remarked(layout, problem, boards, remarks, cancel),
                findings);
        List<String> breaches = CutChecker.check(joined, cutting);
        return breaches.isEmpty() ? cutting
                : Cutting.none(List.copyOf(rack.blanks().keySet()), List.of(broken(breaches)));
    }

    private List<String> remarked(
            Layout layout, YieldProblem problem, List<BoardCut> boards, Remarks remarks, Cancel cancel) {
        if (problem.settings().steps() == GLANCE) {
            return List.of();
        }
        List<String> all = new ArrayList<>(remarks.shavings(boards));
        new OneMore(joined, rack, problem).saves(layout, cancel).ifPresent(all::add);
        return all;
    }

    private Finding broken(List<String> breaches) {
        return Finding.of(
                CuttingFindings.NOT_LAID_OUT,
                joined.project().settings().at(),
                "The boards cannot be laid out")
                .found("This is a fault in Treen: the layout found breaks a rule: " + String.join("; ", breaches) + ".")
                .build();
    }
}
