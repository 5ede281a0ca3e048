package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.joinery.Subassembly;
import dev.treen.model.Derived;
import dev.treen.model.FactSource;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
            found = RoomYear.of(joined, joined, at -> true);
            years = found;
        }
        return found;
    }

    /** The same of those alone that are written where {@code wanted} says. */
    public List<RoomYear> years(Predicate<Span> wanted) {
        return RoomYear.of(joined, joined, wanted);
    }

    /** The same of one part alone. */
    public Optional<RoomYear> year(String part) {
        Joined near = joined.subassemblies().stream()
                .map(Subassembly::joined)
                .filter(each -> each.part(part).isPresent())
                .findFirst()
                .orElse(joined);
        return RoomYear.of(near, joined, at -> true).stream().filter(year -> year.part().equals(part)).findFirst();
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
