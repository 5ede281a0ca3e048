package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Derived;
import java.util.Map;

/** One kind of fact about parts. To add one, write a class and name it in {@link Facts}. */
public interface FactKind {
    /** How the language writes it, after the part's name and a dot. */
    String name();

    /** What it is, in one sentence. */
    String doc();

    /** The fact of every part that has it, by the part's name. */
    Map<String, Derived> of(Joined joined);
}
