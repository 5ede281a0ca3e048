package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * A linear programme that grows by columns: least cost of patterns that together give at least the need of every row
 * (Gilmore and Gomory 1961). Revised simplex with the inverse held whole. Its prices are rounded and proved elsewhere, so
 * nothing that is promised rests on its rounding errors.
 */
final class Master {
    private static final double TINY = 1e-9;
    private static final double HAIR = 1e-4;
    /** Rounding errors are cleared out after so many pivots. */
    private static final int FRESH = 1000;

    private final int m;
    private final double[] need;
    final Patterns columns;
    /** Basic columns; from m below zero, −1 − row is that row's surplus. */
    private final int[] basis;
    private final double[][] inverse;
    private final double[] x;
    private final double[] price;
    private int pivots;

    /** Each row starts with a pattern of its own, which gives it so many for this cost. */
    Master(int[] demand, int[] alone, double[] cost) {
        m = demand.length;
        need = new double[m];
        basis = new int[m];
        inverse = new double[m][m];
        x = new double[m];
        price = new double[m];
        columns = new Patterns();
        var dice = new Dice(5);
        for (int i = 0; i < m; i++) {
            // A hair more than asked for, each row another, so that no two rows tie.
            need[i] = demand[i] + HAIR * dice.unit();
            columns.add(new Patterns.Pattern(new int[]{i}, new int[]{alone[i]}, cost[i]));
            basis[i] = i;
            inverse[i][i] = 1.0 / alone[i];
            x[i] = need[i] / alone[i];
            price[i] = cost[i] / alone[i];
        }
    }

    private Master(Master other) {
        m = other.m;
        need = other.need.clone();
        basis = other.basis.clone();
        inverse = new double[m][];
        for (int i = 0; i < m; i++) {
            inverse[i] = other.inverse[i].clone();
        }
        x = other.x.clone();
        price = other.price.clone();
        columns = other.columns.copy();
    }

    Master copy() {
        return new Master(this);
    }

    /** The price of each row: what one more of it would cost. */
    double[] prices() {
        return price;
    }

    int pivots() {
        return pivots;
    }

    /** Another pattern that may be used. */
    void add(Patterns.Pattern pattern) {
        columns.add(pattern);
    }

    /** What a pattern costs beyond what it gives, at the prices of now. */
    double reduced(Patterns.Pattern pattern) {
        return pattern.reduced(price);
    }

    double value() {
        double sum = 0;
        for (int i = 0; i < m; i++) {
            sum += basis[i] < 0 ? 0 : columns.get(basis[i]).cost() * x[i];
        }
        return sum;
    }

    /** How often each column is used. */
    double[] uses() {
        var uses = new double[columns.size()];
        for (int i = 0; i < m; i++) {
            if (basis[i] >= 0) {
                uses[basis[i]] += x[i];
            }
        }
        return uses;
    }

    /** Pivots until no column known is worth taking in (true), or so many pivots are done. */
    boolean solve(int most) {
        for (int n = 0; n < most; n++) {
            int enter = enter();
            if (enter == Integer.MIN_VALUE || !pivot(enter)) {
                return true;
            }
        }
        return false;
    }

    /** Works the inverse out anew from the basis. */
    private void refresh() {
        var a = new double[m][2 * m];
        for (int j = 0; j < m; j++) {
            a[j][m + j] = 1;
            if (basis[j] < 0) {
                a[-1 - basis[j]][j] = -1;
            } else {
                Patterns.Pattern column = columns.get(basis[j]);
                for (int k = 0; k < column.rows().length; k++) {
                    a[column.rows()[k]][j] = column.counts()[k];
                }
            }
        }
        for (int j = 0; j < m; j++) {
            int top = j;
            for (int i = j + 1; i < m; i++) {
                top = Math.abs(a[i][j]) > Math.abs(a[top][j]) ? i : top;
            }
            if (Math.abs(a[top][j]) < TINY) {
                return;
            }
            double[] row = a[top];
            a[top] = a[j];
            a[j] = row;
            double by = row[j];
            for (int k = j; k < 2 * m; k++) {
                row[k] /= by;
            }
            for (int i = 0; i < m; i++) {
                double factor = a[i][j];
                if (i != j && factor != 0) {
                    for (int k = j; k < 2 * m; k++) {
                        a[i][k] -= factor * row[k];
                    }
                }
            }
        }
        Arrays.fill(price, 0);
        for (int i = 0; i < m; i++) {
            System.arraycopy(a[i], m, inverse[i], 0, m);
            double sum = 0;
            double cost = basis[i] < 0 ? 0 : columns.get(basis[i]).cost();
            for (int j = 0; j < m; j++) {
                sum += inverse[i][j] * need[j];
                price[j] += cost * inverse[i][j];
            }
            x[i] = sum;
        }
    }

    private int enter() {
        int pick = Integer.MIN_VALUE;
        double least = -TINY;
        for (int i = 0; i < m; i++) {
            if (price[i] < least) {
                least = price[i];
                pick = -1 - i;
            }
        }
        for (int c = 0; c < columns.size(); c++) {
            double left = columns.reduced(price, c);
            if (left < least) {
                least = left;
                pick = c;
            }
        }
        return pick;
    }

    private boolean pivot(int enter) {
        double[] d = direction(enter);
        int leave = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < m; i++) {
            if (d[i] > 1e-7 && x[i] / d[i] < least) {
                least = x[i] / d[i];
                leave = i;
            }
        }
        if (leave < 0) {
            return false;
        }
        exchange(enter, leave, d);
        for (int i = 0; i < m; i++) {
            x[i] = Math.max(0, x[i]);
        }
        return true;
    }

    private double[] direction(int enter) {
        var d = new double[m];
        if (enter < 0) {
            for (int i = 0; i < m; i++) {
                d[i] = -inverse[i][-1 - enter];
            }
            return d;
        }
        for (int i = 0; i < m; i++) {
            d[i] = columns.along(inverse[i], enter);
        }
        return d;
    }

    private void exchange(int enter, int leave, double[] d) {
        double gain = enter < 0 ? price[-1 - enter] : columns.reduced(price, enter);
        double by = d[leave];
        double[] row = inverse[leave];
        for (int j = 0; j < m; j++) {
            row[j] /= by;
            price[j] += gain * row[j];
        }
        x[leave] /= by;
        for (int i = 0; i < m; i++) {
            if (i != leave && d[i] != 0) {
                double factor = d[i];
                double[] other = inverse[i];
                for (int j = 0; j < m; j++) {
                    other[j] -= factor * row[j];
                }
                x[i] -= factor * x[leave];
            }
        }
        basis[leave] = enter;
        if (++pivots % FRESH == 0) {
            refresh();
        }
    }

    /**
     * Takes a used column so many times for good: the rows need that much less, and the rest is put right again by dual
     * pivots. False where that fails.
     */
    boolean fix(int column, int times) {
        int at = -1;
        for (int i = 0; i < m; i++) {
            at = basis[i] == column ? i : at;
        }
        if (at < 0) {
            return false;
        }
        Patterns.Pattern fixed = columns.get(column);
        for (int k = 0; k < fixed.rows().length; k++) {
            need[fixed.rows()[k]] -= (double) times * fixed.counts()[k];
        }
        double rest = x[at] - times;
        x[at] = rest < 0 && rest > -1e-3 ? 0 : rest;
        boolean fresh = false;
        for (int n = 0; n < 4 * m + 50; n++) {
            int worst = 0;
            for (int i = 1; i < m; i++) {
                worst = x[i] < x[worst] ? i : worst;
            }
            if (x[worst] >= -1e-7) {
                return true;
            }
            if (!dualPivot(worst)) {
                if (x[worst] > -1e-3) {
                    x[worst] = 0;
                } else if (fresh) {
                    return false;
                } else {
                    fresh = true;
                    refresh();
                }
            }
        }
        return false;
    }

    private boolean dualPivot(int leave) {
        double[] row = inverse[leave];
        int pick = Integer.MIN_VALUE;
        double least = Double.POSITIVE_INFINITY;
        double steep = 0;
        for (int c = -m; c < columns.size(); c++) {
            double alpha = c < 0 ? -row[-1 - c] : columns.along(row, c);
            if (alpha > -1e-6) {
                continue;
            }
            double ratio = Math.max(0, c < 0 ? price[-1 - c] : columns.reduced(price, c)) / -alpha;
            // Of nearly equal ratios the steepest is the safest.
            if (ratio < least - TINY || (ratio < least + TINY && -alpha > steep)) {
                least = Math.min(least, ratio);
                steep = -alpha;
                pick = c;
            }
        }
        if (pick == Integer.MIN_VALUE) {
            return false;
        }
        exchange(pick, leave, direction(pick));
        return true;
    }

    /** A copy of the prices in whole units of {@code 1/scale}, none below zero. */
    long[] rounded(double scale) {
        return Arrays.stream(price).mapToLong(p -> Math.max(0, (long) Math.floor(p * scale))).toArray();
    }
}
