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

    private final @Nullable Shaped bare;

    Shaped(Supplier<Solid> make) {
        this(make, null);
    }

    /** A shape that also can be had without the holes of screws, nails and pegs. */
    Shaped(Supplier<Solid> make, @Nullable Shaped bare) {
        this.make = make;
        this.bare = bare;
    }

    /** The shape without the holes of screws, nails and pegs, which are many faces and say nothing of how parts fit. */
    public Solid bare() {
        return bare == null ? solid() : bare.solid();
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
