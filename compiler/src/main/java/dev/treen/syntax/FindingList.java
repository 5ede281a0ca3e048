package dev.treen.syntax;

import dev.treen.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Collects the findings of one file, up to a bound; the last one then says how many more there were. */
final class FindingList {
    /** How many findings of one file are shown. */
    static final int MOST = 100;

    private final List<Finding> kept = new ArrayList<>();
    private final TreeSet<Integer> places = new TreeSet<>();
    private int count;

    /** Adds a finding, or only counts it once there are enough. */
    void add(Finding finding) {
        count++;
        places.add(finding.at().start());
        if (kept.size() < MOST) {
            kept.add(finding);
        }
    }

    /** Whether further findings are only counted, so that nobody need work on their words. */
    boolean isFull() {
        return kept.size() >= MOST;
    }

    /** Counts a finding that is not worth wording any more. */
    void addUnworded() {
        count++;
    }

    /** Whether something between the two offsets has been reported. */
    boolean hasWithin(int start, int end) {
        return !places.subSet(start, true, end, true).isEmpty();
    }

    /** The findings by their place in the text. */
    List<Finding> sorted() {
        List<Finding> all = new ArrayList<>(kept);
        all.sort(Comparator.comparingInt(finding -> finding.at().start()));
        if (count > all.size()) {
            int more = count - all.size() + 1;
            Finding last = all.removeLast();
            all.add(Finding.of(SyntaxFindings.MORE_FINDINGS, last.at(), "and " + more + " more findings in this file")
                    .because("the first ones are the likeliest cause of the rest")
                    .build());
        }
        return List.copyOf(all);
    }
}
