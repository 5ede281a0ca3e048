package dev.treen.yield;

import java.util.List;

/**
 * A board or sheet that may be taken, or several alike.
 *
 * @param id name, unique in the problem
 * @param length along the grain
 * @param width across the grain
 * @param defects what parts keep clear of
 * @param cost price or area of one, in whole units; what is added up over the boards taken
 * @param count how many there are, or {@link #UNLIMITED}
 * @param preferred already cut into: taken before fresh boards, so it weighs a hundredth of its cost
 * @param klass the class of thickness and wood, compared with what each part accepts
 * @param blemishes what only those parts keep clear of that do not take it
 */
public record Stock(
        String id,
        long length,
        long width,
        List<Defect> defects,
        long cost,
        int count,
        boolean preferred,
        String klass,
        List<Blemish> blemishes) {

    /** As many as are needed. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /** Keeps its own copies of the lists. */
    public Stock {
        defects = List.copyOf(defects);
        blemishes = List.copyOf(blemishes);
    }

    /** A board whose defects are the same for all parts. */
    public Stock(
            String id, long length, long width, List<Defect> defects, long cost, int count, boolean preferred,
            String klass) {
        this(id, length, width, defects, cost, count, preferred, klass, List.of());
    }

    /** One clear fresh board that costs its area, in the nameless class. */
    public static Stock clear(String id, long length, long width) {
        return new Stock(id, length, width, List.of(), length * width, 1, false, "");
    }

    /** The same with another count. */
    public Stock times(int howMany) {
        return new Stock(id, length, width, defects, cost, howMany, preferred, klass, blemishes);
    }

    /** The same with these defects. */
    public Stock with(List<Defect> flaws) {
        return new Stock(id, length, width, flaws, cost, count, preferred, klass, blemishes);
    }

    /** The same at another cost. */
    public Stock costing(long price) {
        return new Stock(id, length, width, defects, price, count, preferred, klass, blemishes);
    }

    /** What one of these counts for in the objective: its cost, or a hundredth of it for an offcut that is to go first. */
    public long weight() {
        return preferred ? Math.max(1, cost / 100) : cost;
    }

    /** The same with these blemishes. */
    public Stock blemished(List<Blemish> marks) {
        return new Stock(id, length, width, defects, cost, count, preferred, klass, marks);
    }
}
