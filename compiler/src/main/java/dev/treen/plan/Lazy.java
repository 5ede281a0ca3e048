package dev.treen.plan;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value made once, when it is first asked for, by whichever thread asks first. */
public final class Lazy<T> {
    private final Supplier<T> make;
    private @Nullable T value;

    /** Will ask {@code make}, at most once. */
    public Lazy(Supplier<T> make) {
        this.make = make;
    }

    /** The value; the same one at every call. */
    public synchronized T get() {
        T known = value;
        if (known == null) {
            known = make.get();
            value = known;
        }
        return known;
    }
}
