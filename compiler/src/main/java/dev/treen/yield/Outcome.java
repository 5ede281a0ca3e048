package dev.treen.yield;

import java.util.List;

/** What a call of the solver gives: a layout that was checked, or the reasons why the problem makes no sense. */
public sealed interface Outcome permits Layout, Outcome.Refusal {

    /**
     * The problem cannot be worked on.
     *
     * @param faults everything found wrong with it
     */
    record Refusal(List<Fault> faults) implements Outcome {

        /** Keeps its own copy of the list. */
        public Refusal {
            faults = List.copyOf(faults);
        }
    }

    /**
     * One thing wrong with a problem.
     *
     * @param kind what
     * @param where the id of the stock, piece or setting
     */
    record Fault(Kind kind, String where) {}

    /** What can be wrong with a problem. */
    enum Kind {
        /** No boards at all. */
        NO_STOCK,
        /** A size that is zero or below. */
        SIZE_NOT_POSITIVE,
        /** A count, cost, value, kerf or allowance below zero. */
        NEGATIVE,
        /** Sizes, counts or costs so great that sums leave the range of a long. */
        TOO_GREAT,
        /** Two stocks or two pieces of one name. */
        TWICE,
        /** A run or an only-from list names something that is not there. */
        UNKNOWN_NAME,
        /** A run asks for more copies of a piece than there are. */
        RUN_TOO_LONG,
        /** No limit on copies where all copies are wanted. */
        UNLIMITED_COPIES,
        /** The layout found did not pass the checker: a fault of the solver; it is not given out. */
        FAILED_CHECK
    }
}
