package dev.treen.joinery;

import dev.treen.solid.Solid;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The shape of a part, cut when somebody first looks at it: exact solids cost more than all the rest of a quick check,
 * and most keystrokes need none.
 */
public final class Shaped {
    private final Supplier<Solid> make;
    private @Nullable Solid made;

    Shaped(Supplier<Solid> make) {
        this.make = make;
    }

    /** The shape in the assembly; the same one at every call. */
    public synchronized Solid solid() {
        Solid known = made;
        if (known == null) {
            known = make.get();
            made = known;
        }
        return known;
    }
}
