package dev.treen.model;

import dev.treen.syntax.Expr;

/** The word {@code auto}: the value is left to Treen, which takes it from a rule where the joint is made. */
final class Auto {
    /** The word. */
    static final String WORD = "auto";
    /** As a value. */
    static final Datum VALUE = new Datum.Word(WORD);

    private Auto() {
    }

    /** Whether it stands there as written. */
    static boolean said(Expr expr) {
        return expr instanceof Expr.Word word && word.name().equals(WORD);
    }

    /** Whether a value is it. */
    static boolean is(Datum value) {
        return value.equals(VALUE);
    }
}
