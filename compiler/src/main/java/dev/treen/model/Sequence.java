package dev.treen.model;

import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run of statements declares, in the order of the text. Names are entered before the order of the text allows
 * (a size may name a part further down), so every statement has a place here that is filled when its turn comes.
 */
final class Sequence implements Declared {
    private final List<Declared> items = new ArrayList<>();

    /** A joint, made when its parts are. */
    record ToJoin(Statement.Joint statement, Scope scope) implements Declared {}

    /** A requirement. */
    record ToRequire(Statement.Require statement, Scope scope) implements Declared {}

    /** An accepted finding. */
    record ToAccept(Statement.Accept statement, Scope scope) implements Declared {}

    /** Parts whose grain runs from one to the next. */
    record ToRun(Statement.Property statement, Scope scope) implements Declared {}

    /** What must fit inside. */
    record ToHold(Statement.Holds statement, Scope scope) implements Declared {}

    /** A measurement. */
    record ToMeasure(Statement.Measured statement, Scope scope) implements Declared {}

    void add(Declared item) {
        items.add(item);
    }

    /** A place in the order, to be filled later. */
    Sequence place() {
        Sequence place = new Sequence();
        items.add(place);
        return place;
    }

    /** Everything of one kind, in order. */
    <T extends Declared> List<T> all(Class<T> kind) {
        List<T> found = new ArrayList<>();
        gather(kind, found);
        return found;
    }

    private <T extends Declared> void gather(Class<T> kind, List<T> to) {
        for (Declared item : items) {
            if (item instanceof Sequence inner) {
                inner.gather(kind, to);
            } else if (kind.isInstance(item)) {
                to.add(kind.cast(item));
            }
        }
    }
}
