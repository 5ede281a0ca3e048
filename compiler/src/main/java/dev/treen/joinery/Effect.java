package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What one joint does: to sizes, to shapes, and what it has to say.
 *
 * @param isMade whether the joint can be made at all
 * @param fasteners its screws or nails, where it is made with any
 * @param hardware what it takes besides wood and glue
 * @param pieces the small pieces of wood that it takes
 */
public record Effect(
        List<Addition> additions,
        List<Figure> figures,
        List<Cut> cuts,
        List<Finding> findings,
        boolean isMade,
        Optional<Fasteners> fasteners,
        List<Hardware> hardware,
        List<LoosePiece> pieces) {
    /** Keeps its own copies. */
    public Effect {
        additions = List.copyOf(additions);
        figures = List.copyOf(figures);
        cuts = List.copyOf(cuts);
        findings = List.copyOf(findings);
        hardware = List.copyOf(hardware);
        pieces = List.copyOf(pieces);
    }

    /** Nothing but something to say. */
    static Effect only(Finding finding) {
        return new Effect(List.of(), List.of(), List.of(), List.of(finding), false, Optional.empty(), List.of(),
                List.of());
    }

    /** Sizes and shapes. */
    static Effect of(List<Addition> additions, List<Figure> figures, List<Cut> cuts) {
        return new Effect(additions, figures, cuts, List.of(), true, Optional.empty(), List.of(), List.of());
    }

    /** The same with something to say. */
    Effect saying(List<Finding> more) {
        return new Effect(additions, figures, cuts, more, isMade, fasteners, hardware, pieces);
    }

    /** The same with screws or nails. */
    Effect with(Fasteners held) {
        return new Effect(additions, figures, cuts, findings, isMade, Optional.of(held), hardware, pieces);
    }

    /** The same with small pieces of wood; what has no size is none. */
    Effect taking(List<LoosePiece> more) {
        List<LoosePiece> some = more.stream()
                .filter(piece -> piece.count() > 0)
                .filter(piece -> piece.size().length().signum() > 0 && piece.size().width().signum() > 0
                        && piece.size().thickness().signum() > 0)
                .toList();
        return new Effect(additions, figures, cuts, findings, isMade, fasteners, hardware, some);
    }

    /** The same with what is to be bought for it. */
    Effect taking(Hardware.Kind kind, int count, Measure... sizes) {
        Hardware taken = new Hardware(kind, Arrays.stream(sizes).map(Measure::value).toList(), count);
        return new Effect(additions, figures, cuts, findings, isMade, fasteners, List.of(taken), pieces);
    }
}
