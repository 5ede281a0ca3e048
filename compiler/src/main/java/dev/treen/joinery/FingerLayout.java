package dev.treen.joinery;

import dev.treen.quantity.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Fingers along a corner, all of one width once everything is sawn: where a lid is cut free, the finger on the line is
 * higher by what the saw and the planing take.
 *
 * @param count how many
 * @param line what is sawn out of the corner
 */
record FingerLayout(BoxCorner corner, int count, Optional<BoxCorner.Heights> line) {
    private static final int FEWEST = 3;

    /** With so many fingers as the project says, or with a usual number. */
    static FingerLayout of(BoxCorner corner, Optional<Integer> said, Length wide, Surroundings surroundings) {
        Optional<BoxCorner.Heights> line = corner.sawn(surroundings);
        if (said.isPresent()) {
            return new FingerLayout(corner, said.get(), line);
        }
        int usual = new FingerLayout(corner, FEWEST, line).usual(wide);
        return IntStream.of(0, 2, -2, 4, -4)
                .map(more -> usual + more)
                .filter(count -> count >= FEWEST)
                .mapToObj(count -> new FingerLayout(corner, count, line))
                .filter(layout -> !layout.sliver())
                .findFirst()
                .orElse(new FingerLayout(corner, usual, line));
    }

    /** {@code 2 · round((height / wide − 1) / 2) + 1}, and not under three. */
    int usual(Length wide) {
        BigFraction half = height().ratioTo(wide).subtract(BigFraction.ONE).divide(2).add(BigFraction.of(1, 2));
        BigInteger pairs = half.signum() <= 0 ? BigInteger.ZERO : half.getNumerator().divide(half.getDenominator());
        int rounded = pairs.min(BigInteger.valueOf(DovetailSizes.MOST / 2 - 1)).intValue();
        return Math.max(FEWEST, 2 * rounded + 1);
    }

    /** What the fingers share out: the height without what is sawn out of it. */
    Length height() {
        return line.map(gone -> corner.height().minus(gone.to().minus(gone.from()))).orElse(corner.height());
    }

    /** How high each is in the end. */
    Length finger() {
        return height().dividedBy(Math.max(1, count));
    }

    /** How far the line lies from where one finger ends and the next begins; nothing without a line. */
    Optional<Length> fromEdge() {
        return line.map(gone -> {
            Length rim = gone.from().minus(corner.low());
            Length over = rim.minus(finger().times(rim.ratioTo(finger()).getNumerator()
                    .divide(rim.ratioTo(finger()).getDenominator()).longValue()));
            return over.min(finger().minus(over));
        });
    }

    /** Whether the line leaves a sliver of a finger: less than a quarter of it. */
    boolean sliver() {
        return fromEdge().filter(from -> from.times(4).compareTo(finger()) < 0).isPresent();
    }

    /** All of them, from the lowest; even ones belong to the left part. */
    List<BoxCorner.Heights> fingers() {
        List<BoxCorner.Heights> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Length from = corner.low().plus(finger().times(i));
            Length to = corner.low().plus(finger().times(i + 1L));
            all.add(new BoxCorner.Heights(
                    line.filter(gone -> from.compareTo(gone.from()) >= 0).map(gone -> past(from, gone)).orElse(from),
                    line.filter(gone -> to.compareTo(gone.from()) > 0).map(gone -> past(to, gone)).orElse(to)));
        }
        return all;
    }

    private static Length past(Length at, BoxCorner.Heights gone) {
        return at.plus(gone.to()).minus(gone.from());
    }
}
