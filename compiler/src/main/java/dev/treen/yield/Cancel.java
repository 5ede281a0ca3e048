package dev.treen.yield;

/** Asked now and then during a search; when it says yes the search ends with the best layout so far. */
@FunctionalInterface
public interface Cancel {

    /** Whether to stop. */
    boolean asked();

    /** Never stops a search. */
    static Cancel never() {
        return () -> false;
    }
}
