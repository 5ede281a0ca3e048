package dev.treen.order;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Builds the operations of a project and what must precede what, by the rules of the trade (O-01, O-02, O-07; Noyes,
 * Handwork in Wood, chapters IV, V, VIII and IX; Fairham, Woodwork Joints), and puts them in order.
 */
public final class Ordering {
    private static final int PREPARE = 0;
    private static final int STRIP = 10;
    private static final int LENGTH = 20;
    private static final int ENDS = 30;
    private static final int MEASURE = 40;
    private static final int MEASURED = 50;
    private static final int BEFORE_GLUE = 60;
    private static final int GLUE = 70;
    private static final int AFTER_GLUE = 80;

    private final Joined joined;
    private final Cutting cutting;
    private final LengthFormat format;
    private final List<Operation> operations = new ArrayList<>();
    private final List<Precedence> precedences = new ArrayList<>();

    private Ordering(Joined joined, Cutting cutting) {
        this.joined = joined;
        this.cutting = cutting;
        this.format = joined.project().settings().format();
    }

    /** The order in which {@code joined} is built from {@code cutting}. */
    public static BuildOrder order(Joined joined, Cutting cutting) {
        return new Ordering(joined, cutting).run();
    }

    private BuildOrder run() {
        Set<String> measured = measuredParts();
        List<String> first = joined.parts().stream()
                .map(p -> p.part().name())
                .filter(p -> !measured.contains(p))
                .toList();
        prepare();
        thickness();
        works(Work.Stage.ALONG_STRIP, STRIP);
        lengths(first);
        works(Work.Stage.AFTER_LENGTH, ENDS);
        if (!joined.joints().isEmpty()) {
            dryFit(first, measured);
        }
        works(Work.Stage.AFTER_MEASURING, MEASURED);
        List<Operation> gluing = worksOf(Work.Stage.GLUE);
        if (!gluing.isEmpty()) {
            add(BEFORE_GLUE, "Clean up the inside faces, and finish them and the panels", names(),
                    "smoothing plane or scraper, brush",
                    "no pencil line left inside; glue surfaces kept clear of finish");
            add(BEFORE_GLUE + 1, "Rehearse the glue-up dry, with clamps and blocks laid out", names(), "clamps, square",
                    "everything closes within the glue's open time");
        }
        works(Work.Stage.GLUE, GLUE);
        if (!gluing.isEmpty()) {
            add(AFTER_GLUE, "Compare the diagonals and push until they agree; leave it clamped", names(),
                    "rule or stick",
                    "diagonals equal within 0.5 mm on a small box, 1 mm up to 600 mm (common practice, no source)");
            add(AFTER_GLUE + 2, "Clean up the outside once the glue is hard", names(), "smoothing plane, scraper", "");
        }
        works(Work.Stage.FIT, AFTER_GLUE + 3);
        add(AFTER_GLUE + 6, "Finish the outside: the same coats on both faces of every part", names(), "brush or cloth",
                "");
        byPhase();
        List<Operation> sorted = Sequence.of(operations, precedences);
        List<Step> steps = new ArrayList<>();
        for (Operation each : sorted) {
            steps.add(step(steps.size() + 1, each));
        }
        return new BuildOrder(steps, Sequence.settings(sorted), cautions());
    }

    private Step step(int number, Operation each) {
        String because = precedences.stream()
                .filter(p -> p.after() == each.id())
                .map(Precedence::because)
                .distinct()
                .reduce((a, b) -> b)
                .orElse("");
        return new Step(
                number,
                each.action(),
                each.parts(),
                each.tool(),
                each.settings(),
                each.from(),
                each.check(),
                each.caution(),
                because);
    }

    private List<String> names() {
        return joined.parts().stream().map(p -> p.part().name()).toList();
    }

    private void add(int phase, String action, List<String> parts, String tool, String check) {
        operations.add(Operation.plain(operations.size(), phase, action, parts, tool, check));
    }

    private void prepare() {
        Map<String, BoardCut> boards = new LinkedHashMap<>();
        cutting.boards().forEach(cut -> boards.putIfAbsent(cut.board().name(), cut));
        for (BoardCut cut : boards.values()) {
            String name = cut.board().name();
            if (cut.board().sheet()) {
                continue;
            }
            add(PREPARE, "Let the board lie in the room where the piece will live, one to two weeks", List.of(name),
                    "moisture meter",
                    "two readings a few days apart agree");
            add(PREPARE + 1, "Plane the face side flat and the face edge square to it; mark both", List.of(name),
                    "try plane, winding sticks, square",
                    "no light under a straight edge");
            if (cut.leaves() > 1) {
                operations.add(new Operation(
                        operations.size(),
                        PREPARE + 2,
                        "Resaw the board into " + cut.leaves() + " leaves; keep them in stick for some days",
                        List.of(name),
                        "resaw or frame saw, gauge",
                        List.of(new Work.GaugeSetting("leaf", cut.thickness())),
                        "the face side",
                        "each leaf is at least " + format.text(cut.thickness()) + " once it is flat",
                        "Saw from both edges in turn; hold the board in a vice, not by hand."));
            }
        }
        for (BoardCut cut : cutting.boards()) {
            List<String> parts = cut.parts().stream().map(BoardCut.OnBoard::part).toList();
            add(PREPARE + 3,
                    "Mark out the layout on " + cut.name()
                            + ", clear of its flaws, and rip it into strips along the grain",
                    parts, "rule, square, rip saw",
                    "every part has its arrow along the grain and its name");
        }
    }

    private void thickness() {
        Map<Length, List<String>> by = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            boolean sheet = part.part().from().map(b -> b.sheet()).orElse(false);
            if (!sheet) {
                by.computeIfAbsent(part.thickness().value(), t -> new ArrayList<>())
                        .add(part.part().name());
            }
        }
        by.forEach((thick, parts) -> operations.add(new Operation(
                operations.size(),
                STRIP - 1,
                "Plane the strips to " + format.text(thick) + " and their edges to width",
                parts,
                "gauge, try plane",
                List.of(new Work.GaugeSetting("thickness", thick)),
                "the face side and the face edge",
                "the gauge line is just split all round",
                "By machine: no piece shorter than the maker's manual allows.")));
    }

    private void lengths(List<String> first) {
        Map<Length, List<String>> by = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            if (first.contains(part.part().name())) {
                by.computeIfAbsent(part.length().value(), l -> new ArrayList<>())
                        .add(part.part().name());
            }
        }
        by.forEach((length, parts) -> operations.add(new Operation(
                operations.size(),
                LENGTH,
                "Crosscut and shoot to " + format.text(length) + " over all" + (parts.size() > 1 ? ", together" : ""),
                parts,
                "crosscut saw, shooting board, stop",
                List.of(new Work.GaugeSetting("stop", length)),
                "the face edge",
                parts.size() > 1 ? "stood side by side they are equal" : "",
                "")));
    }

    private void dryFit(List<String> first, Set<String> measured) {
        add(MEASURE, "Put it together dry, and see that it is square and flat", first, "clamps, square",
                "joints close without force");
        if (!measured.isEmpty()) {
            add(MEASURE + 1, "Measure the openings at both ends and write them down", List.copyOf(measured),
                    "rule, pinch rods",
                    "a part made to fit is made to what is, not to what was planned");
        }
    }

    private Set<String> measuredParts() {
        Set<String> measured = new LinkedHashSet<>();
        for (MadeJoint made : joined.joints()) {
            for (Work work : made.works()) {
                if (work.stage() == Work.Stage.AFTER_MEASURING
                        && made.joint().kind().equals(dev.treen.joinery.Groove.KIND)) {
                    measured.addAll(work.parts());
                }
            }
        }
        return measured;
    }

    private List<Operation> worksOf(Work.Stage stage) {
        List<Operation> found = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            for (Work work : made.works()) {
                if (work.stage() == stage) {
                    found.add(new Operation(
                            0,
                            0,
                            work.action(),
                            work.parts(),
                            work.tool(),
                            work.settings(),
                            work.from(),
                            work.check(),
                            work.caution()));
                }
            }
        }
        return found;
    }

    private void works(Work.Stage stage, int phase) {
        for (Operation each : worksOf(stage)) {
            operations.add(new Operation(
                    operations.size(),
                    phase,
                    each.action(),
                    each.parts(),
                    each.tool(),
                    each.settings(),
                    each.from(),
                    each.check(),
                    each.caution()));
        }
    }

    /** What must precede what: between phases wherever both touch the same part, each with its reason. */
    private void byPhase() {
        for (Operation before : operations) {
            for (Operation after : operations) {
                if (before.phase() < after.phase() && (shared(before, after) || gate(before, after))) {
                    precedences.add(new Precedence(before.id(), after.id(), reason(before.phase(), after.phase())));
                }
            }
        }
    }

    private static boolean shared(Operation before, Operation after) {
        return before.parts().stream().anyMatch(after.parts()::contains);
    }

    /** Boards come before all their parts, and nothing passes the dry fit or the glue. */
    private static boolean gate(Operation before, Operation after) {
        return before.phase() < STRIP - 1
                || (before.phase() < MEASURE && after.phase() >= MEASURE)
                || (before.phase() < GLUE && after.phase() >= GLUE)
                || (before.phase() < MEASURED && after.phase() >= MEASURED);
    }

    private static String reason(int before, int after) {
        if (after >= AFTER_GLUE) {
            return "the glue has to be hard, or the corner opens again";
        }
        if (after >= GLUE) {
            return "inside faces and panels cannot be reached once it is glued";
        }
        if (after >= BEFORE_GLUE) {
            return "a panel has to be made before it is closed in";
        }
        if (after >= MEASURED) {
            return "it is made to the opening as measured, not as planned";
        }
        if (after >= MEASURE) {
            return "joints must be cut before they can be tried";
        }
        if (after >= ENDS) {
            return before == STRIP
                    ? "a groove ploughed through the whole strip ends cleanly in the corner"
                    : "joints are marked from ends that are square";
        }
        if (after >= LENGTH) {
            return "one setting serves the whole strip, and long pieces are safer to hold";
        }
        return after >= STRIP - 1 ? "gauge lines need a true face and edge" : "wood has to come to rest first";
    }

    private static List<String> cautions() {
        return List.of(
                "Fine dust harms: wear a mask, and more so with woods that sensitise.",
                "Rags with oil finish heat up by themselves: spread them out, or put them under water.",
                "Small parts are held in jigs or vices, never by hand against a cutter.",
                "Follow the maker's manual of every machine, the labels of glue and finish, and local rules.");
    }
}
