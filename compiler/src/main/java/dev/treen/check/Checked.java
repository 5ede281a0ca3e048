package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.joinery.Joined;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A project with everything that Treen has to say about it before boards are cut.
 *
 * @param joined the project with its joints made
 * @param facts what is known of its parts beside their sizes
 * @param found what was found, bodies apart, whether the project accepts it or not
 * @param bodies what its finished bodies show; empty while they have not been looked at
 * @param findings of all layers up to here, in the order of their places, without those the project accepts
 */
public record Checked(
        Joined joined, Facts facts, List<Finding> found, Optional<List<Finding>> bodies, List<Finding> findings) {
    /** Keeps its own copies. */
    public Checked {
        found = List.copyOf(found);
        bodies = bodies.map(List::copyOf);
        findings = List.copyOf(findings);
    }

    /** The same with what its finished bodies show. */
    public Checked with(List<Finding> shown) {
        List<Finding> all = new ArrayList<>(found);
        all.addAll(shown);
        return new Checked(joined, facts, found, Optional.of(shown),
                Checks.settled(all, joined.project().acceptances(), List.of()));
    }

    /** The same, saying {@code these}. */
    public Checked saying(List<Finding> these) {
        return new Checked(joined, facts, found, bodies, these);
    }
}
