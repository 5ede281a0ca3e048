package dev.treen.check;

import dev.treen.joinery.Fasteners;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.wood.Figures;
import dev.treen.wood.PullOut;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How hard the screws or nails of a joint are to pull straight out (rules of the trade S-04: Wood Handbook ch. 8). */
final class PullOuts {
    private PullOuts() {
    }

    /**
     * One joint's screws or nails.
     *
     * @param pull what one of them bears
     * @param gravity the specific gravity of the wood that holds them
     */
    record Held(MadeJoint made, Fasteners set, PullOut.Pull pull, double gravity) {
        /** What all of them bear in the long run, in N. */
        double workingN() {
            return pull.workingN() * set.count();
        }

        /** The weight that they bear, in kg. */
        double kilograms() {
            return workingN() / Figures.standard().value("gravity");
        }
    }

    /** Those whose wood the tables know; sheets hold by other formulas. */
    static List<Held> of(Joined joined) {
        List<Held> all = new ArrayList<>();
        for (MadeJoint made : joined.joints()) {
            made.fasteners().ifPresent(set -> {
                OptionalDouble gravity = made.joint().right().stuff()
                        .filter(board -> !board.sheet())
                        .map(PullOuts::gravity)
                        .orElseGet(OptionalDouble::empty);
                gravity.ifPresent(g -> all.add(new Held(made, set, pull(set, g), g)));
            });
        }
        return all;
    }

    private static OptionalDouble gravity(Board board) {
        return Woods.of(board).map(PullOut::specificGravity).orElseGet(OptionalDouble::empty);
    }

    private static PullOut.Pull pull(Fasteners set, double gravity) {
        return PullOut.of(
                set.form(),
                set.endGrain() ? PullOut.Grain.END : PullOut.Grain.SIDE,
                gravity,
                set.thick().toDoubleMm(),
                set.hold().toDoubleMm(),
                Figures.standard());
    }
}
