package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.GrainRing;
import dev.treen.joinery.Joined;
import dev.treen.model.Direction;
import dev.treen.model.GrainRun;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A run of grain round a box does not meet where it begins and ends; that corner belongs at the back, the left one by
 * preference (rule of the trade Y-04; common practice, no source). The author's order stays: it may be meant.
 */
final class GrainBreaks implements Check {
    static final FindingKind IN_VIEW = FindingKind.note("grain-breaks-in-view",
            "A run of grain begins and ends at a corner in view");

    @Override
    public List<FindingKind> kinds() {
        return List.of(IN_VIEW);
    }

    @Override
    public List<Finding> run(Joined joined) {
        return GrainRing.of(joined).stream()
                .filter(ring -> !ring.odd().atBack())
                .flatMap(ring -> better(ring).stream().map(corner -> finding(ring, corner)))
                .toList();
    }

    /** The place of a corner at the back; none where the ring has no back, as that of an upright case. */
    private static Optional<Integer> better(GrainRing ring) {
        return IntStream.range(0, ring.corners().size())
                .boxed()
                .filter(i -> ring.corners().get(i).atBack())
                .min(Comparator.comparingInt(i -> hidden(ring.corners().get(i))));
    }

    private static int hidden(GrainRing.Corner corner) {
        boolean left = corner.sides().contains(Direction.LEFT) || corner.sides().contains(Direction.DOWN);
        return left ? 0 : corner.sides().size() > 1 ? 1 : 2;
    }

    private static Finding finding(GrainRing ring, int last) {
        GrainRun run = ring.run();
        GrainRing.Corner odd = ring.odd();
        List<String> names = run.named().stream().map(Span::text).toList();
        List<String> turned = new ArrayList<>(names);
        Collections.rotate(turned, -(last + 1));
        List<Edit> edits = new ArrayList<>();
        for (int i = 0; i < turned.size(); i++) {
            edits.add(new Edit(run.named().get(i), turned.get(i)));
        }
        Finding.Builder finding = Finding.of(IN_VIEW, run.at(),
                "The grain of `" + odd.one() + "` and `" + odd.other() + "` does not meet " + odd.place()
                        + ", in view")
                .label("begins and ends there")
                .found("Round " + names.size() + " parts in one strip it meets at " + ring.meets()
                        + ", and breaks between the last part and the first.")
                .because("The back is seen least: let the strip begin and end there (common practice, no source).")
                .remedy(Remedy.choice("write `run " + String.join(", ", turned) + "`, so that it breaks "
                        + ring.corners().get(last).place(), edits.toArray(Edit[]::new)))
                .remedy(Remedy.choice("accept this with the reason, where the back is what is seen"));
        run.parts().forEach(finding::about);
        return finding.build();
    }
}
