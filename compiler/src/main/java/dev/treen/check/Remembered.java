package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Subassembly;
import dev.treen.solid.Solid;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * What was said of each subassembly of the latest project that was looked at. One that an edit leaves as it was is the same
 * object, and the same is to be said of it; of its bodies, where those near it are the same too. Looking at bodies takes
 * long, and never keeps what is quick waiting.
 */
public final class Remembered {
    private final Object ofBodies = new Object();
    private IdentityHashMap<Subassembly, List<Finding>> quick = new IdentityHashMap<>();
    private IdentityHashMap<Subassembly, Seen> bodies = new IdentityHashMap<>();

    /** What was said of bodies, and which bodies that rests on. */
    private record Seen(List<Solid> within, List<Finding> said) {
        boolean restsOn(List<Solid> others) {
            if (within.size() != others.size()) {
                return false;
            }
            for (int i = 0; i < within.size(); i++) {
                if (!isSame(within.get(i), others.get(i))) {
                    return false;
                }
            }
            return true;
        }

        // A body is worked out once for each part, and comparing two would take longer than looking at one.
        @SuppressWarnings("ReferenceEquality")
        private static boolean isSame(Solid one, Solid other) {
            return one == other;
        }
    }

    /** Remembers nothing yet. */
    public Remembered() {
    }

    synchronized List<Finding> quick(List<Subassembly> all, Function<Subassembly, List<Finding>> check) {
        IdentityHashMap<Subassembly, List<Finding>> said = new IdentityHashMap<>(all.size());
        List<Finding> findings = new ArrayList<>();
        for (Subassembly each : all) {
            List<Finding> before = quick.get(each);
            List<Finding> now = before == null ? List.copyOf(check.apply(each)) : before;
            said.put(each, now);
            findings.addAll(now);
        }
        quick = said;
        return findings;
    }

    /** What {@code check} says of all, each among the bodies of {@code whole}. When it is stopped, what it has is kept. */
    List<Finding> bodies(
            List<Subassembly> all, Standing whole, BiFunction<Joined, Standing, List<Finding>> check,
            BooleanSupplier stopped) {
        synchronized (ofBodies) {
            IdentityHashMap<Subassembly, Seen> said = new IdentityHashMap<>(all.size());
            List<Finding> findings = new ArrayList<>();
            try {
                for (Subassembly each : all) {
                    goOnUnless(stopped);
                    Standing standing = whole.of(each);
                    List<Solid> within = standing.within();
                    Seen before = bodies.get(each);
                    Seen now = before != null && before.restsOn(within)
                            ? before
                            : new Seen(within, List.copyOf(check.apply(each.joined(), standing)));
                    said.put(each, now);
                    findings.addAll(now.said());
                }
            } finally {
                for (Subassembly each : all) {
                    Seen before = bodies.get(each);
                    if (before != null) {
                        said.putIfAbsent(each, before);
                    }
                }
                bodies = said;
            }
            return findings;
        }
    }

    static void goOnUnless(BooleanSupplier stopped) {
        if (stopped.getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
