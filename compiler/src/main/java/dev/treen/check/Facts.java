package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Derived;
import dev.treen.model.FactSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The named facts of a project's parts: what `require` may ask for beside sizes, and what editors show. Each kind is
 * worked out for all parts at once, when one of its facts is first asked for.
 */
public final class Facts implements FactSource {
    private static final List<FactKind> KINDS = List.of(
            new PanelFacts.Gap(),
            new PanelFacts.Tightest(),
            new PanelFacts.Loosest(),
            new PanelFacts.Cover(),
            new SagFact(),
            new MassFact(),
            new PullOutFact());

    private final Joined joined;
    private final Map<String, Map<String, Derived>> known = new HashMap<>();

    private @Nullable List<RoomYear> years;

    private Facts(Joined joined) {
        this.joined = joined;
    }

    /** The facts of a project with its joints made. */
    public static Facts of(Joined joined) {
        return new Facts(joined);
    }

    /** All kinds of fact, for the reference. */
    public static List<FactKind> kinds() {
        return KINDS;
    }

    @Override
    public Optional<Derived> fact(String path, String name) {
        return KINDS.stream()
                .filter(kind -> kind.name().equals(name))
                .findFirst()
                .flatMap(kind -> Optional.ofNullable(all(kind).get(path)));
    }

    private synchronized Map<String, Derived> all(FactKind kind) {
        return known.computeIfAbsent(kind.name(), name -> kind.of(joined));
    }

    /** The rooms of panels, doors and lids through the year. */
    public synchronized List<RoomYear> years() {
        List<RoomYear> found = years;
        if (found == null) {
            found = RoomYear.of(joined);
            years = found;
        }
        return found;
    }

    @Override
    public List<String> names(String path) {
        List<String> names = new ArrayList<>();
        for (FactKind kind : KINDS) {
            if (all(kind).containsKey(path)) {
                names.add(kind.name());
            }
        }
        return names;
    }
}
