package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.joinery.Joined;
import java.util.List;

/**
 * A project with everything that Treen has to say about it before boards are cut.
 *
 * @param joined the project with its joints made
 * @param facts what is known of its parts beside their sizes
 * @param findings of all layers up to here, in the order of their places, without those the project accepts
 */
public record Checked(Joined joined, Facts facts, List<Finding> findings) {
    /** Keeps its own copy. */
    public Checked {
        findings = List.copyOf(findings);
    }
}
