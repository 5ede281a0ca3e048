package dev.treen.rewrite;

import dev.treen.quantity.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Linear equations, solved exactly by elimination. */
final class Equations {
    private Equations() {
    }

    /**
     * The unknowns for which all {@code rows} hold, each row the factors of the unknowns and then what their sum has to be;
     * none where they contradict each other. Of unknowns that are left open, the later ones are 0.
     */
    static Optional<List<BigFraction>> solved(List<List<BigFraction>> rows, int unknowns) {
        List<BigFraction[]> open = new ArrayList<>();
        rows.forEach(row -> open.add(row.toArray(BigFraction[]::new)));
        int[] pivots = new int[unknowns];
        int done = 0;
        for (int column = 0; column < unknowns; column++) {
            pivots[column] = -1;
            for (int i = done; i < open.size(); i++) {
                if (open.get(i)[column].signum() != 0) {
                    BigFraction[] row = open.remove(i);
                    open.add(done, row);
                    eliminate(open, done, column);
                    pivots[column] = done;
                    done++;
                    break;
                }
            }
        }
        for (BigFraction[] rest : open.subList(done, open.size())) {
            if (rest[unknowns].signum() != 0) {
                return Optional.empty();
            }
        }
        List<BigFraction> values = new ArrayList<>();
        for (int column = 0; column < unknowns; column++) {
            values.add(pivots[column] < 0
                    ? BigFraction.ZERO
                    : Exact.canonical(open.get(pivots[column])[unknowns]));
        }
        return Optional.of(values);
    }

    private static void eliminate(List<BigFraction[]> rows, int pivot, int column) {
        BigFraction[] row = rows.get(pivot);
        BigFraction first = row[column];
        for (int k = column; k < row.length; k++) {
            row[k] = row[k].divide(first);
        }
        for (int i = 0; i < rows.size(); i++) {
            BigFraction[] other = rows.get(i);
            BigFraction factor = other[column];
            if (i == pivot || factor.signum() == 0) {
                continue;
            }
            for (int k = column; k < row.length; k++) {
                other[k] = other[k].subtract(row[k].multiply(factor));
            }
        }
    }
}
