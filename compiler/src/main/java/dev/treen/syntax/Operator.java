package dev.treen.syntax;

/** The operators of expressions. */
public enum Operator {
    PLUS("+"),
    MINUS("-"),
    TIMES("*"),
    OVER("/"),
    LESS("<"),
    AT_MOST("<="),
    MORE(">"),
    AT_LEAST(">="),
    EQUAL(
            "=="),
    UNEQUAL("!="),
    AND("and"),
    OR("or"),
    NOT("not");

    private final String sign;

    Operator(String sign) {
        this.sign = sign;
    }

    /** As it is written. */
    public String sign() {
        return sign;
    }
}
