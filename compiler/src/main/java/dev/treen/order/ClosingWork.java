package dev.treen.order;

import dev.treen.joinery.FinishedPart;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** From cut joints to a finished piece: dry fit, measuring, inside finish, glue-up, square, clean-up, finish (O-02, O-03). */
final class ClosingWork {
    /** Yellow glue stays open five to ten minutes, and a joint takes about one (rules of the trade O-03). */
    private static final int JOINTS_IN_TIME = 8;

    private final Workshop shop;
    private final List<Operation> operations = new ArrayList<>();

    private ClosingWork(Workshop shop) {
        this.shop = shop;
    }

    /** The operations around {@code joints}, the work of the joints themselves. */
    static List<Operation> of(Workshop shop, List<Operation> joints) {
        ClosingWork work = new ClosingWork(shop);
        if (!shop.joined().joints().isEmpty()) {
            work.tryAndMeasure();
        }
        Set<String> glued = new LinkedHashSet<>();
        joints.stream().filter(o -> o.phase() == Phase.GLUE).forEach(o -> glued.addAll(o.parts()));
        if (!glued.isEmpty()) {
            work.beforeGlue(glued);
            work.afterGlue(List.copyOf(glued));
        }
        if (!shop.parts().isEmpty()) {
            work.finish();
        }
        return work.operations;
    }

    private void tryAndMeasure() {
        List<String> measured = List.copyOf(shop.measured());
        operations.add(Operation.of(
                Phase.TRY,
                "Put it together dry" + (measured.isEmpty() ? "" : ", without " + Workshop.quoted(measured)),
                shop.first(),
                "clamps, square")
                .checking("joints close under light clamps; square; no winding")
                .taking(shop.times().of("dry", shop.joined().joints().size())));
        if (!measured.isEmpty()) {
            operations.add(Operation.of(
                    Phase.MEASURE,
                    "Measure the openings for " + Workshop.quoted(measured)
                            + " at both ends, to the bottom of the grooves, and write them down",
                    measured,
                    "rule, pinch rods")
                    .checking("what is made to fit is made to what is, not to what was planned")
                    .taking(shop.times().of("measure", measured.size())));
        }
    }

    private void beforeGlue(Set<String> glued) {
        List<FinishedPart> inside = shop.parts();
        operations.add(Operation.of(
                Phase.INSIDE,
                "Clean the faces that will be inside, and finish them and all panels",
                Workshop.names(inside),
                shop.tool("smoothing plane or scraper, brush or cloth", "fine paper on a block, brush or cloth"))
                .checking("no pencil line is left, and no finish on surfaces that will be glued")
                .taking(shop.times().of("clean", Workshop.tenths(inside)))
                .waiting(shop.times().wait("coat")));
        int joints = (int) shop.joined().joints().stream()
                .filter(m -> glued.contains(m.joint().left().name())
                        && glued.contains(m.joint().right().name()))
                .count();
        operations.add(Operation.of(
                Phase.REHEARSE,
                "Rehearse the glue-up without glue, all clamps, blocks, square and rag laid out",
                Workshop.names(inside),
                "clamps, blocks, square")
                .checking("everything closes, and you know which clamp comes first")
                .minding(joints > JOINTS_IN_TIME
                        ? joints + " joints take longer than yellow glue stays open (5 to 10 minutes): glue in stages, or"
                                + " take a slower glue."
                        : "")
                .taking(shop.times().of("dry", shop.joined().joints().size())));
    }

    private void afterGlue(List<String> glued) {
        operations.add(Operation.of(
                Phase.SQUARE,
                "Compare the diagonals and push until they agree; leave it in its clamps",
                glued,
                "rule or pinch rods")
                .checking(diagonals(glued))
                .waiting(shop.times().wait("glue")));
        List<FinishedPart> parts = shop.named(glued);
        operations.add(Operation.of(
                Phase.CLEAN,
                "Level the joints and clean the outside",
                glued,
                shop.tool("smoothing plane, scraper", "random orbit sander or scraper"))
                .from("from the corners inward, so that no end grain breaks out")
                .checking("no glue shows when the surface is wiped with a damp cloth")
                .taking(shop.times().of("clean", Workshop.tenths(parts))));
    }

    /** The difference of diagonals that still counts as square, by the longest part (rules of the trade F-05). */
    private String diagonals(List<String> glued) {
        double longest = shop.named(glued).stream()
                .mapToDouble(p -> p.length().value().toDoubleMm())
                .max()
                .orElse(0);
        String limit = longest <= 300 ? "0.5 mm" : longest <= 600 ? "1 mm" : "1.6 mm";
        return "opposite parts are equal, and the diagonals differ by no more than " + limit
                + " (common practice, no source)";
    }

    private void finish() {
        operations.add(Operation.of(
                Phase.FINISH,
                "Finish what is still raw: the same coats on both faces of every part",
                Workshop.names(shop.parts()),
                "brush or cloth")
                .checking("a coat is dry before the next; the last one is cured before use")
                .taking(shop.times().of("coat", Workshop.tenths(shop.parts()) * 2 / 5))
                .waiting(shop.times().wait("coat")));
    }
}
