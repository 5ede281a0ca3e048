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
    public T get() {
        return get(make);
    }

    /** The value, made by {@code other} where it is not known yet; should that throw, it stays unknown. */
    public synchronized T get(Supplier<T> other) {
        T known = value;
        if (known == null) {
            known = other.get();
            value = known;
        }
        return known;
    }
}
