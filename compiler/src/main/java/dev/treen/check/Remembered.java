package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.joinery.Subassembly;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Function;

/**
 * What was said of each subassembly of the latest project that was looked at. One that an edit leaves as it was is the same
 * object, and the same is to be said of it.
 */
public final class Remembered {
    private IdentityHashMap<Subassembly, List<Finding>> quick = new IdentityHashMap<>();
    private IdentityHashMap<Subassembly, List<Finding>> bodies = new IdentityHashMap<>();

    /** Remembers nothing yet. */
    public Remembered() {
    }

    synchronized List<Finding> quick(List<Subassembly> all, Function<Subassembly, List<Finding>> check) {
        quick = of(all, quick, check);
        return all(all, quick);
    }

    synchronized List<Finding> bodies(List<Subassembly> all, Function<Subassembly, List<Finding>> check) {
        bodies = of(all, bodies, check);
        return all(all, bodies);
    }

    private static IdentityHashMap<Subassembly, List<Finding>> of(
            List<Subassembly> all, IdentityHashMap<Subassembly, List<Finding>> known,
            Function<Subassembly, List<Finding>> check) {
        IdentityHashMap<Subassembly, List<Finding>> said = new IdentityHashMap<>(all.size());
        for (Subassembly each : all) {
            List<Finding> before = known.get(each);
            said.put(each, before == null ? List.copyOf(check.apply(each)) : before);
        }
        return said;
    }

    private static List<Finding> all(List<Subassembly> all, IdentityHashMap<Subassembly, List<Finding>> said) {
        List<Finding> findings = new ArrayList<>();
        all.forEach(each -> findings.addAll(said.getOrDefault(each, List.of())));
        return findings;
    }
}
